import { upperFirst } from '../../compute/first-letter.ts';
import type { Findings } from '../../steps/outcome.ts';
import { reads, withCautions } from '../acts.ts';
import { apartInWords, doesInWords, kindOf, propertyIn } from '../demand.ts';
import { deadPair, readingBehind } from '../read-values.ts';
import type { PlanNumber, PlanVerdict } from '../verdict.ts';
import { deliveredOf, isUnclear, measuredProfile, PROPERTIES, type Property, type Tri } from './profile.ts';
import { whyNoProfile } from './profile-clash.ts';
import { profileSheet } from './profile-sheet.ts';
import { readingsClash } from './read-again.ts';
import { believed, covering } from './stored.ts';

/** What a head unit was found to do, property by property, each with the reading behind it and how far it may be off. */

const YOURSELF = 'You can do this yourself.';
const LABELS: Readonly<Record<Property, string>> = {
  rear: 'Rear channels',
  lowered: 'Level',
  boosted: 'Bass boost',
  sameEq: 'EQ with the engine',
};
const FINDING_OUT: Readonly<Record<Property, string>> = {
  rear: 'Rear channels: play the 400 Hz tone and compare the rear pairs with the front pair.',
  lowered: 'Level: read the loudest clean step of the loud 80 Hz tone.',
  boosted: 'Bass boost: read 80 and 400 Hz at one volume step.',
  sameEq: 'EQ and engine: take the same tones with the engine idling outdoors.',
};
/** So sure, by the inference, is what is called stored without every property having been read. */
const SURE_SHARE = 0.95;

function row(property: Property, known: Tri, f: Findings): PlanNumber {
  const behind = readingBehind(property, f);
  const value =
    known !== 'unknown' ? propertyIn(property, known === 'yes') : isUnclear(f, property) ? 'read, unclear' : 'not read';
  return { label: behind ? `${LABELS[property]} · ${behind}` : LABELS[property], value };
}

const OR = new Intl.ListFormat('en-GB', { type: 'disjunction' });
/** Kinds of profile, one of which it is: their names have commas in them. */
const anyOf = (kinds: readonly string[]): string => OR.format(kinds.map((kind) => `“${kind}”`));

function howSure(f: Findings, open: readonly Property[]): string {
  const unclear = open.filter((property) => isUnclear(f, property));
  const notRead = open.filter((property) => !unclear.includes(property));
  const named = (some: readonly Property[]) => some.map((property) => LABELS[property]).join(', ');
  return [
    ...(open.length === 0
      ? ['All four properties were read. A profile is known by what it does, never by its name.']
      : []),
    ...(unclear.length > 0 ? [`Read, but unclear: ${named(unclear)}.`] : []),
    ...(notRead.length > 0 ? [`Not read: ${named(notRead)}.`] : []),
  ].join(' ');
}

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
    const shares = believed(f, 'readings');
    const fitting = covering(shares, SURE_SHARE);
    const clash = readingsClash(f);
    const also = clash ? whyNoProfile(now, deliveredOf(f)).slice(1) : [];
    const [only] = fitting;
    const nothing = open.length === PROPERTIES.length && !open.some((property) => isUnclear(f, property));
    const what = clash
      ? 'No stored profile does all of this, so one reading is not what it seems.'
      : nothing
        ? 'Nothing was read yet, so nothing is known of the stored profile.'
        : fitting.length === 1 && only
          ? `By what it does, this is ${kindOf(only)}: ${doesInWords(only)}.`
          : `Still possible: ${anyOf(fitting.map(kindOf))}.`;
    const sure = fitting.length === 1 && !nothing;
    return withCautions(
      {
        what,
        certainty: clash ? 'short list' : sure && open.length === 0 ? 'proved' : sure ? 'likely' : 'short list',
        howSure: clash ? `${clash.says} ${clash.likely} ${clash.check}` : howSure(f, open),
        numbers: PROPERTIES.map((property) => row(property, now[property], f)),
        fix: [
          ...deadPair(f),
          ...open.map((property) => FINDING_OUT[property]),
          'Write down what it does, not what somebody calls it. Or keep it with “My bike”, below.',
          'Take these readings into the plan “Does it need a reflash at all?”: it says whether anything must change.',
        ],
        tools: open.length === 0 ? 'None' : 'Meter and tones',
        minutes: open.length === 0 ? 1 : 10 * open.length,
        who: YOURSELF,
        notBuy: [
          'A reading of the profile’s name: a name with a number of amplifiers in it proves nothing.',
          ...(open.length === 0 ? ['A read-out by a tool: these readings say the same.'] : []),
        ],
        sheet: profileSheet(f, what),
        acts: reads(...open, ...(clash?.properties ?? [])),
        proofActs: reads(...PROPERTIES.filter((property) => !open.includes(property))),
        proof: 'The same tones, read again another day at the same volume step, give the same ratios.',
        mayAlsoBe: clash
          ? also.map((other) => ({ what: other.says.replace(/\.$/, ''), split: other.check }))
          : nothing || fitting.length < 2
            ? []
            : fitting.map((id) => ({
                what: upperFirst(`${kindOf(id)}: ${doesInWords(id)}`),
                split: `It is this one if it reads: ${apartInWords([id], fitting)}.`,
              })),
      },
      f,
    );
  },
};

export const replacedHasNone: PlanVerdict = {
  id: 'replaced-unit-has-no-profile',
  title: 'A replaced head unit has no stored profile',
  faults: [],
  evidence: ['unit-kind'],
  mends: [],
  article: 'what-a-reflash-is',
  remedy: (f) =>
    withCautions(
      {
        what: 'A replaced head unit has no stored factory profile. Its outputs are set in its own menu.',
        certainty: 'proved',
        howSure: 'Stored output profiles belong to factory head units only.',
        numbers: [],
        fix: ['Go through its own menu: rear outputs, high-pass, loudness, speed volume.', 'Write down what you find.'],
        tools: 'None',
        minutes: 10,
        who: YOURSELF,
        notBuy: ['A reflash: there is nothing in this head unit that it could change.'],
        acts: [{ do: 'set-unit-menu' }],
        proofActs: [],
        proof: 'Every setting is still there after key off and on.',
      },
      f,
    ),
};
