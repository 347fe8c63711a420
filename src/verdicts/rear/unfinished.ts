import { ampDriving } from '../../rig/rig.ts';
import { fedFromRear } from '../../steps/fitted/fed-from.ts';
import type { Findings } from '../../steps/outcome.ts';
import { rearPairFound } from '../../steps/unit/rear-pair-found.ts';
import { oneEach, type Ranked, rank, type Suspect, shareInWords, stillPossible } from '../suspects.ts';
import type { Remedy, Verdict } from '../verdict.ts';
import { YOURSELF, YOURSELF_OR_FITTER } from '../who.ts';
import { ON_THE_FRAME, RUN_SHORTED, supplyUnseen, WIRES_TOGETHER } from './alternatives.ts';

/** Ends that name no single fault: another complaint, everything healthy, or a short list. */

const MOST_IN_A_LIST = 4;
/** The ways in which a head unit sends nothing to the rear. */
const SILENT_UNIT = new Set([
  'rear-channels-disabled',
  'profile-reverted',
  'replaced-unit-setting',
  'replaced-unit-adapter-gap',
  'rear-loom-open',
]);

/** What only a reading at the head unit takes apart: in a long list it is one entry. */
const UNIT_SENDS_NOTHING: Suspect = {
  verdict: 'nothing-from-the-head-unit',
  title: 'Nothing comes from the head unit',
  weight: 0,
  signs: {},
  split:
    'With a meter: 400 Hz across the rear pair. Nothing while the front reads: switched off, another profile, its own menu, or an adapter without rear pairs.',
};

/** A short is looked for with one meter and one plug apart, wherever it is. */
const SHORTS = new Set(['speaker-wire-to-frame', 'speaker-pair-shorted']);
const SHORT_ON_THE_RUN: Suspect = {
  verdict: 'short-on-the-run',
  title: RUN_SHORTED.what,
  weight: 0,
  signs: {},
  split: RUN_SHORTED.split,
};

/** What sits on the rear outputs of the head unit has no say where the amplifier takes everything from the front pair. */
const ON_REAR_OUTPUTS = new Set([...SILENT_UNIT, 'fader-or-balance-off', 'rear-control-off']);
const canSilence =
  (f: Findings) =>
  ({ verdict }: Suspect): boolean =>
    !ampDriving(f.rig, 'rear') || fedFromRear(f) || !ON_REAR_OUTPUTS.has(verdict);

/** The suspects with some of them in one, when more than one of these is left. */
function inOne(possible: readonly Ranked[], which: ReadonlySet<string>, suspect: Suspect): readonly Ranked[] {
  const some = possible.filter((one) => which.has(one.suspect.verdict));
  if (some.length < 2) return possible;
  const shareRatio = some.reduce((sum, one) => sum + one.shareRatio, 0);
  return [...possible.filter((one) => !some.includes(one)), { suspect, shareRatio, against: [] }];
}
/** The suspects with those in one that nothing but the same reading separates, likeliest first. */
const asClasses = (possible: readonly Ranked[]): readonly Ranked[] =>
  inOne(inOne(possible, SILENT_UNIT, UNIT_SENDS_NOTHING), SHORTS, SHORT_ON_THE_RUN).toSorted(
    (a, b) => b.shareRatio - a.shareRatio,
  );

export const shortList: Verdict = {
  id: 'rear-short-list',
  title: 'A short list, likeliest first',
  faults: [],
  evidence: [
    'rear-history',
    'last-change',
    'fader-centre',
    'four-corners',
    'lid-check',
    'rear-hiss',
    'amp-light',
    'wiggle',
    'swap-inputs',
    'pop-run',
    'rear-pair',
    'run-ohms',
  ],
  mends: ['settings', 'profile', 'unit', 'unit-leads', 'amp-supply', 'amp', 'run', 'speaker'],
  remedy: (f, suspects) => {
    const possible = oneEach(stillPossible(rank((suspects ?? []).filter(canSilence(f)), f)));
    const listed = (possible.length > MOST_IN_A_LIST ? asClasses(possible) : possible).slice(0, MOST_IN_A_LIST);
    const [first] = listed;
    return {
      what: first
        ? `Likeliest: ${first.suspect.title.toLowerCase()}.`
        : suspects
          ? 'Every known cause has an answer that speaks against it, so one of the answers cannot be right.'
          : 'What was answered proves no single cause.',
      certainty: 'short list',
      howSure: first
        ? `What was answered leaves ${possible.length}${possible.length > MOST_IN_A_LIST ? `, of which the ${MOST_IN_A_LIST} likeliest stand below` : ''}.${possible.length > 1 ? ' The checks below tell them apart.' : ''}`
        : 'Go over the answers above, starting with the one you are least sure of.',
      numbers: listed.map(({ suspect, shareRatio }) => ({ label: suspect.title, value: shareInWords(shareRatio) })),
      fix: first
        ? [
            'Go through the checks below in their order. Each is harmless and separates one of them.',
            ...(f.outcome('tools-at-hand') === 'meter'
              ? []
              : [
                  'With a meter and the tones this takes about a quarter of an hour: change the answer “Meter at hand” above.',
                ]),
          ]
        : [
            'Change the answer that you are least sure of. What depends on it is asked again, the rest is kept.',
            'All of them sure? Then two things are wrong at once. Start with the plugs, then the readings, from the head unit outwards.',
          ],
      tools: 'As each check says',
      minutes: 15,
      who: YOURSELF_OR_FITTER,
      notBuy: ['Anything, until one of them is proved.'],
      cautions: ['key-off', 'bridge'],
      proof: 'The rear plays, and stays after key off and on.',
      mayAlsoBe: listed.map(({ suspect }) => ({ what: suspect.title, split: suspect.split })),
    };
  },
};

export const allHealthy: Verdict = {
  id: 'rear-all-healthy',
  title: 'Everything that was measured is healthy',
  faults: [],
  evidence: ['rear-pair', 'rear-pair-again', 'amp-in', 'amp-out', 'run-ohms', 'fader-centre', 'four-corners'],
  mends: ['settings', 'profile', 'unit', 'unit-leads', 'amp-supply', 'amp', 'run', 'speaker'],
  remedy: (f) => ({
    what: 'Every part of the way to the rear reads healthy right now, or good enough to play.',
    certainty: 'short list',
    howSure:
      f.outcome('rear-history') === 'never'
        ? 'It never played, so it does not come and go. A joint between two measured places is left, or one answer was not what it seemed.'
        : f.outcome('fader-centre') === 'plays' || f.outcome('four-corners') === 'all'
          ? 'It plays just now. So it comes and goes.'
          : 'A steady fault would have shown. So it comes and goes, or one answer was not what it seemed.',
    numbers: [],
    fix: [
      ...(f.outcome('run-ohms') === 'high'
        ? [
            'A run reads more ohms than coil and wires. That makes it weaker, not silent. Clean its contacts all the same.',
          ]
        : []),
      ...(f.outcome('amp-out') === 'low'
        ? [
            'The amplifier’s rear outputs read little for their input. That makes it weaker, not silent. Set its range and gain all the same.',
          ]
        : []),
      ...(rearPairFound(f) === 'uneven'
        ? [
            'The rear pairs read less or more than the front. That alone does not silence them. Set the bass, treble and fader to taste later.',
          ]
        : []),
      'Listen at the rear grille again, now: does it play?',
      'Silent: 400 Hz at a low step, at the speaker’s own tabs. As much as at the plug: the speaker. Nothing: the joint in between.',
      'Playing: wait until it fails, and measure while it is failing, moving plugs and lids.',
    ],
    tools: 'Meter, patience',
    minutes: 15,
    who: YOURSELF,
    notBuy: ['Anything: nothing was found broken.'],
    cautions: ['key-off', 'bridge', 'riding'],
    proof: 'The rear plays through a whole ride.',
    mayAlsoBe: [
      ...(f.outcome('rear-history') === 'never'
        ? [
            {
              what: 'A joint between two places that were measured',
              split: 'The same tone at each plug on the way, from the head unit outwards.',
            },
          ]
        : [{ what: 'A contact that opens with movement or heat', split: 'Move lids and plugs while music plays.' }]),
      ...(f.outcome('fader-centre') === 'cannot'
        ? [{ what: 'The fader', split: 'Put fader and balance exactly in the middle, and leave them there.' }]
        : []),
      ...(f.outcome('wire-to-frame') === 'cannot' ? [ON_THE_FRAME] : []),
      ...(f.outcome('run-ohms') === 'cannot' ? [WIRES_TOGETHER] : []),
      ...supplyUnseen(f),
      ...(f.outcome('rear-drive') === 'cannot'
        ? [
            {
              what: 'An amplifier that nobody saw',
              split:
                'Follow the rear wires to the end that feeds them. A box on the way? Change the answer “Rear driven by”.',
            },
          ]
        : []),
      {
        what: 'A reading taken on the wrong pair',
        split: 'Follow the colours from the rear speaker back to the plug and measure again.',
      },
    ],
  }),
};

export const nothingPlays: Verdict = {
  id: 'nothing-plays',
  title: 'Nothing plays anywhere: another complaint',
  faults: [],
  evidence: ['four-corners'],
  mends: ['settings', 'profile', 'unit', 'unit-leads', 'amp-supply', 'amp', 'run', 'speaker'],
  remedy: () => ({
    what: 'This is not a rear fault: no speaker plays at all.',
    certainty: 'short list',
    howSure: 'A rear fault leaves the front playing.',
    numbers: [],
    fix: [
      'Is the track time counting, the phone at full volume, nothing muted?',
      'Does the head unit send the sound to a headset? Switch the headset off and choose the speakers.',
      'Key off for five minutes, key on: does it come back?',
      'Everything on an amplifier? Look at its lamp.',
    ],
    tools: 'None',
    minutes: 10,
    who: YOURSELF,
    notBuy: ['Anything, before these four.'],
    cautions: ['riding', 'loud-tone'],
    proof: 'The front plays. If the rear is then still silent, start here again.',
    mayAlsoBe: [
      { what: 'Paused, muted, or phone volume at zero', split: 'Watch the seconds on the phone.' },
      { what: 'Sound sent to a headset', split: 'Headset off, output set to speakers.' },
      { what: 'Head unit hung', split: 'Key off for five minutes.' },
      { what: 'An amplifier that drives everything is off', split: 'Its lamp.' },
    ],
  }),
};

function whichSide(f: Findings): Pick<Remedy, 'what' | 'howSure'> {
  if (rearPairFound(f) === 'one-only') {
    return {
      what: 'The head unit sends only one of its two rear channels.',
      howSure:
        ampDriving(f.rig, 'rear') || f.outcome('run-ohms') === undefined
          ? 'That explains one silent corner, not both. Mend it first. Still silent on the other side? Say so, and we go on.'
          : 'That explains one silent corner. The other was followed to its speaker and reads healthy: listen there again.',
    };
  }
  if (f.outcome('four-corners') === 'one-corner') {
    return {
      what: 'One rear corner is silent and the other plays: a plug, a wire, a speaker, or one channel.',
      howSure: 'A setting, a profile or an amplifier that is off takes both rear corners.',
    };
  }
  return {
    what: 'One whole side is silent, front and rear. That is balance, a shared plug or a two-channel input before it is two speakers.',
    howSure: 'A rear fault would take both rear corners and leave both front ones.',
  };
}

export const oneSideSilent: Verdict = {
  id: 'one-side-silent',
  title: 'One side or one channel, not the rear',
  faults: [],
  evidence: ['four-corners', 'rear-pair', 'rear-pair-again'],
  mends: ['settings', 'profile', 'unit', 'unit-leads', 'amp-supply', 'amp', 'run', 'speaker'],
  remedy: (f) => ({
    ...whichSide(f),
    certainty: 'short list',
    numbers: [],
    fix: [
      'Balance exactly in the middle.',
      f.outcome('four-corners') === 'one-side'
        ? 'Look for one plug that both silent speakers share.'
        : 'Push home every plug on the way to the silent corner.',
      'With a meter, key off, plug apart: the silent run must read its coil, and no wire of it may touch the frame.',
      'On an amplifier: key off, swap the left and right signal plugs. The silence moves: before the amplifier. It stays: after it.',
    ],
    tools: 'None',
    minutes: 15,
    who: YOURSELF_OR_FITTER,
    notBuy: [
      f.outcome('four-corners') === 'one-side'
        ? 'Two speakers: they do not die together on one side.'
        : 'A speaker, before its coil was measured.',
      'A reflash: it does not know left from right.',
    ],
    cautions: ['key-off', 'bridge'],
    proof: 'All four corners play alone, one after the other.',
    mayAlsoBe: [
      { what: 'Balance at its end', split: 'Put it in the middle.' },
      { what: 'A plug or wire on the way to what is silent', split: 'Key off, push each plug home, listen.' },
      { what: 'A dead channel of the head unit', split: '400 Hz across that pair, next to the other side.' },
    ],
  }),
};
