import { formatQuantity, formatRange } from '../../compute/quantity.ts';
import type { Findings } from '../../steps/outcome.ts';
import { bassRatio } from '../../steps/profile/bass-ratio.ts';
import { engineShifts } from '../../steps/profile/engine-shifts.ts';
import { cleanOffV } from '../../steps/profile/tones.ts';
import type { PlanNumber, PlanVerdict } from '../verdict.ts';
import { candidates, measuredProfile, PROPERTIES, type Property, type StoredProfile, type Tri } from './profile.ts';
import { whyNoProfile } from './profile-clash.ts';

/** What a head unit was found to do, property by property, each with the reading behind it and how far it may be off. */

const YOURSELF = 'You can do this yourself.';
const LABELS: Readonly<Record<Property, string>> = {
  rear: 'Rear channels on',
  lowered: 'Level lowered',
  boosted: 'Bass boost in',
  sameEq: 'Same EQ with the engine running',
};
const DOES: Readonly<Record<StoredProfile, string>> = {
  unaltered: 'unaltered: rear off, full level, bass boosted, EQ changes with the engine',
  'rear-on': 'rear channels on, full level, bass boosted, EQ changes with the engine',
  'amplified-same': 'amplified: rear on, level lowered, no boost, same EQ with the engine running',
  'amplified-changes': 'amplified: rear on, level lowered, no boost, EQ changes with the engine',
};
const FINDING_OUT: Readonly<Record<Property, string>> = {
  rear: 'Rear channels: play the 400 Hz tone and compare the rear pair with the front pair.',
  lowered: 'Level: read the loudest clean step of the 80 Hz tone.',
  boosted: 'Bass boost: read 80 and 400 Hz at one volume step.',
  sameEq: 'EQ and engine: take the same tones with the engine idling outdoors.',
};

const ratios = (low: number, high: number) =>
  `${low.toFixed(1)} to ${high === Infinity ? 'anything' : high.toFixed(1)}`;

/** The reading behind a property, with its uncertainty; empty where nothing was read. */
function readingBehind(property: Property, f: Findings): string {
  if (property === 'boosted') {
    if (f.values('tones-off')['v400V'] === undefined) return '';
    const { ratio, lowRatio, highRatio } = bassRatio(f.values('tones-off'), f);
    return `80 over 400 Hz: ${ratio.toFixed(1)} (${ratios(lowRatio, highRatio)})`;
  }
  if (property === 'sameEq') {
    const running = f.values('tones-running');
    const bass = running['v400V'] === undefined ? undefined : engineShifts(running, f)[0];
    return bass
      ? `shift ${bass.shiftRatio.toFixed(2)} times (${bass.lowRatio.toFixed(2)} to ${bass.highRatio.toFixed(2)})`
      : '';
  }
  if (property === 'rear') {
    const { frontV, leftV = 0, rightV = 0 } = f.values('rear-pair');
    return frontV ? `rear over front: ${(leftV / frontV).toFixed(2)} and ${(rightV / frontV).toFixed(2)}` : '';
  }
  const { topV } = f.values('top-step');
  const { lowV, highV } = cleanOffV(f);
  return topV === undefined ? '' : `${formatQuantity(topV, 'V')} of ${formatRange(lowV, highV, 'V')} clean`;
}

const row = (property: Property, known: Tri, f: Findings): PlanNumber => {
  const behind = readingBehind(property, f);
  return { label: behind ? `${LABELS[property]} · ${behind}` : LABELS[property], value: known };
};

export const profileRead: PlanVerdict = {
  id: 'profile-read',
  title: 'What the head unit does',
  faults: [],
  evidence: ['unit-kind', 'delivered-with', 'tones-off', 'rear-pair', 'tones-running', 'top-step'],
  mends: ['profile'],
  article: 'two-tones-one-ratio',
  remedy: (f) => {
    const now = measuredProfile(f);
    const open = PROPERTIES.filter((property) => now[property] === 'unknown');
    const fitting = candidates(now, f.rig.deliveredWith);
    const [clash] = fitting.length === 0 ? whyNoProfile(now, f.rig.deliveredWith) : [];
    const [only] = fitting;
    const what = clash
      ? 'No stored profile does all of this, so one reading is not what it seems.'
      : fitting.length === 1 && only
        ? `This head unit does what this profile does: ${DOES[only]}.`
        : open.length === PROPERTIES.length
          ? 'Nothing was read yet, so nothing is known of the stored profile.'
          : `Still possible: ${fitting.length} stored profiles.`;
    return {
      what,
      certainty: clash ? 'short list' : open.length === 0 ? 'proved' : fitting.length === 1 ? 'likely' : 'short list',
      howSure: clash
        ? `${clash.says} ${clash.likely} ${clash.check}`
        : open.length === 0
          ? 'All four properties were read. A profile is known by what it does, never by its name.'
          : `Not read yet: ${open.map((property) => LABELS[property].toLowerCase()).join(', ')}.`,
      numbers: PROPERTIES.map((property) => row(property, now[property], f)),
      fix: [
        ...open.map((property) => FINDING_OUT[property]),
        'Write down what it does, not what somebody calls it.',
        'Take these readings into the plan “Does it need a reflash at all?”: it says whether anything must change.',
      ],
      tools: open.length === 0 ? 'None' : 'Meter and tones',
      minutes: open.length === 0 ? 1 : 10 * open.length,
      who: YOURSELF,
      notBuy: [
        'A reading of the profile’s name: a name with a number of amplifiers in it proves nothing.',
        ...(open.length === 0 ? ['A read-out by a tool: these readings say the same.'] : []),
      ],
      cautions: open.includes('sameEq') ? ['bridge', 'outdoors'] : ['bridge'],
      proof: 'The same tones, read again another day at the same volume step, give the same ratios.',
      ...(clash || fitting.length < 2
        ? {}
        : {
            mayAlsoBe: fitting.map((id) => ({
              what: DOES[id],
              split: 'Read the properties above that are still unknown.',
            })),
          }),
    };
  },
};

export const replacedHasNone: PlanVerdict = {
  id: 'replaced-unit-has-no-profile',
  title: 'A replaced head unit has no stored profile',
  faults: [],
  evidence: ['unit-kind'],
  mends: [],
  article: 'what-a-reflash-is',
  remedy: () => ({
    what: 'A replaced head unit has no stored factory profile. Its outputs are set in its own menu.',
    certainty: 'proved',
    howSure: 'Stored output profiles belong to factory head units only.',
    numbers: [],
    fix: ['Go through its own menu: rear outputs, high-pass, loudness, speed volume.', 'Write down what you find.'],
    tools: 'None',
    minutes: 10,
    who: YOURSELF,
    notBuy: ['A reflash: there is nothing in this head unit that it could change.'],
    cautions: [],
    proof: 'Every setting is still there after key off and on.',
  }),
};
