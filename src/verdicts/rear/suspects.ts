import type { Suspect } from '../suspects.ts';

/**
 * Who can be behind a silent rear, with what each step would show. Weights and factors: common practice of the trade,
 * estimates with no published source. Order does not matter; ranking sorts.
 */

/** Nobody's fader. Whether a fault can play just now is a matter of history, and rules nothing out. */
const STILL_SILENT = {
  'fader-centre': ['no-change', 'plays'],
  'rear-control': ['no-change', 'none'],
  'four-corners': ['no-rear'],
};
const ONE_OR_BOTH = { ...STILL_SILENT, 'four-corners': ['no-rear', 'one-corner'] };
const LID_SILENT = { 'lid-check': ['no-effect', 'no-plug'] };
const RUN_GOOD = { 'run-ohms': ['ok'], 'swap-outputs': ['plays'], 'pop-run': ['moves'], 'wire-to-frame': ['clear'] };
// A rear that is weaker or louder than the front is not silent: it speaks against nobody after the head unit.
const UNIT_GOOD = { 'rear-pair': ['ok', 'uneven'], 'rear-pair-again': ['ok', 'uneven'], 'amp-in': ['ok'] };
const AMP_GOOD = {
  'amp-light': ['normal'],
  'amp-switches': ['right', 'range'],
};
const ON_AMP = { 'rear-drive': ['amp'] };
const ON_UNIT = { 'rear-drive': ['unit'] };
/** A run that touches the frame or itself: what feeds it protects itself and the cone is dead silent. */
const TOUCHING = {
  ...STILL_SILENT,
  'four-corners': ['no-rear', 'none'],
  'lid-check': ['reacts', 'no-effect', 'no-plug'],
  'contacts-look': ['clean', 'film'],
  'rear-hiss': ['silent'],
  'swap-inputs': ['silent'],
};

/** What a rear without signal from the head unit looks like; an amplifier that listens sleeps then. */
const NO_REAR_SIGNAL = {
  ...STILL_SILENT,
  ...LID_SILENT,
  ...RUN_GOOD,
  'rear-hiss': ['hiss', 'silent'],
  'amp-light': ['normal', 'off'],
  'amp-switches': ['right', 'range'],

  'rear-pair': ['none'],
  'rear-pair-again': ['none'],
  'rear-inputs': ['own'],
  wiggle: ['no-effect'],
  'swap-inputs': ['plays'],
};
/** Only an amplifier that listens sleeps because the rear is silent: a wire is there all the same. */
const SILENCE_PUTS_TO_SLEEP = [{ 'amp-light': ['off'], 'rear-amp-turn-on': ['wire'] }];
/** What an open place after whatever feeds the rear looks like. */
const OPEN_RUN = {
  ...ONE_OR_BOTH,
  ...UNIT_GOOD,
  ...AMP_GOOD,
  'rear-hiss': ['silent'],
  'amp-out': ['ok'],
  'run-ohms': ['open'],
  'swap-inputs': ['silent'],
  'swap-outputs': ['silent'],
  'pop-run': ['dead'],
  'wire-to-frame': ['clear'],
};
const AMP_ASLEEP = {
  'front-drive': ['unit', 'other'],
  ...STILL_SILENT,
  ...LID_SILENT,
  ...ON_AMP,
  ...RUN_GOOD,
  'rear-hiss': ['silent'],
  'amp-light': ['off'],
  'rear-pair': ['ok'],
  'amp-out': ['none'],
  'swap-inputs': ['silent'],
};

/** Who knows of no amplifier seldom has one. An estimate. */
const NO_AMP_KNOWN = { cannot: 0.3 };

const BY_WORKSHOP = { workshop: 3, reflash: 3, unit: 3, nothing: 0.3 };

const SUSPECTS: readonly Suspect[] = [
  {
    verdict: 'fader-or-balance-off',
    title: 'Fader or balance at its end',
    weight: 8,
    signs: {
      'fader-centre': ['cured'],
      'four-corners': ['all'],
      'rear-pair': ['uneven', 'ok', 'none', 'one-only'],
      'rear-pair-again': ['ok'],
      ...LID_SILENT,
    },
    odds: { 'last-change': { battery: 3 } },
    split: 'Put both exactly in the middle and listen.',
  },
  {
    verdict: 'rear-control-off',
    title: 'Passenger or rear control off',
    weight: 3,
    signs: {
      'fader-centre': ['no-change', 'plays'],
      'rear-control': ['cured'],
      'four-corners': ['no-rear'],
      ...LID_SILENT,
    },
    split: 'Turn the rear control up and listen.',
  },
  {
    verdict: 'rear-channels-disabled',
    title: 'Rear channels switched off in the head unit',
    weight: 9,
    signs: { ...NO_REAR_SIGNAL, 'unit-kind': ['factory'] },
    notWith: SILENCE_PUTS_TO_SLEEP,
    odds: {
      'rear-history': { never: 3, stopped: 0.2, 'comes-and-goes': 0.02 },
      'last-change': { fitted: 3 },
      'delivered-with': { four: 0.1 },
    },
    split: 'With a meter: 400 Hz across the rear pair. Nothing while the front reads, with the fader centred.',
  },
  {
    verdict: 'profile-reverted',
    title: 'Head unit back on a profile without rear channels',
    weight: 3,
    signs: { ...NO_REAR_SIGNAL, 'unit-kind': ['factory'] },
    notWith: SILENCE_PUTS_TO_SLEEP,
    odds: { 'rear-history': { never: 0.05, stopped: 2, 'comes-and-goes': 0.02 }, 'last-change': BY_WORKSHOP },
    split: 'Ask whoever had the bike whether the head unit was updated, swapped or set.',
  },
  {
    verdict: 'rear-loom-open',
    title: 'Plug or joint between the head unit and the rear loom',
    weight: 2,
    signs: { ...NO_REAR_SIGNAL, 'rear-pair-place': ['on-the-way'] },
    notWith: SILENCE_PUTS_TO_SLEEP,
    odds: { 'rear-history': { never: 0.3, 'comes-and-goes': 3 }, 'last-change': { workshop: 2, unit: 2 } },
    split: 'Push home each plug from the head unit on, then measure at the head unit’s own plug.',
  },
  {
    verdict: 'replaced-unit-setting',
    title: 'Rear outputs off in the replaced head unit',
    weight: 4,
    signs: { ...NO_REAR_SIGNAL, 'unit-kind': ['replaced'] },
    notWith: SILENCE_PUTS_TO_SLEEP,
    odds: { 'last-change': { unit: 3 } },
    split: 'Look through the replaced unit’s own menu for its rear outputs.',
  },
  {
    verdict: 'replaced-unit-adapter-gap',
    title: 'Adapter of the replaced head unit without rear pairs',
    weight: 4,
    signs: {
      ...NO_REAR_SIGNAL,
      'unit-kind': ['replaced'],
      'rear-pair': ['ok', 'none'],
      'amp-in': ['none'],
    },
    notWith: SILENCE_PUTS_TO_SLEEP,
    odds: { 'last-change': { unit: 3 }, 'rear-history': { never: 2 } },
    split: 'Look at both sides of the adapter’s plug: are the four rear pins fitted?',
  },
  {
    verdict: 'amp-input-plug-off',
    title: 'Signal plug at the amplifier not home',
    weight: 5,
    signs: {
      ...STILL_SILENT,
      ...LID_SILENT,
      ...ON_AMP,
      ...RUN_GOOD,
      'amp-light': ['normal', 'off'],
      'amp-switches': ['right', 'range'],
      'rear-hiss': ['hiss', 'silent'],
      'rear-pair': ['ok'],
      'amp-in': ['none', 'low'],
      wiggle: ['amp-input', 'no-effect'],
      'swap-inputs': ['plays'],
    },
    notWith: [{ 'amp-light': ['off'], 'rear-amp-turn-on': ['wire'] }],
    odds: { 'last-change': { fitted: 2, workshop: 2, battery: 1.5 } },
    split: 'Key off, pull the signal plug, push it home until it locks, listen.',
  },
  {
    verdict: 'channel-mode-wrong',
    title: 'Input selector of the amplifier wrong',
    weight: 5,
    signs: {
      ...STILL_SILENT,
      ...LID_SILENT,
      ...ON_AMP,
      ...RUN_GOOD,
      'amp-light': ['normal'],
      'amp-switches': ['mode'],
      'rear-hiss': ['hiss'],
    },
    odds: { 'last-change': { fitted: 3 }, 'rear-history': { never: 2 } },
    split: 'Read the amplifier’s input selector: does it fit the plugs that are in?',
  },
  {
    verdict: 'amp-off',
    title: 'Amplifier without power or turn-on',
    weight: 20,
    signs: {
      ...AMP_ASLEEP,
      'amp-switches': ['right', 'range', 'mode', 'turn-on'],
      'amp-in': ['ok'],
      wiggle: ['amp-supply', 'no-effect'],
    },
    odds: { 'last-change': { battery: 2, fitted: 2 } },
    split: 'Plus, ground and turn-on at the amplifier’s own terminals, black probe on the battery minus post.',
  },
  {
    verdict: 'amp-input-too-low',
    title: 'Range or gain of the amplifier too low',
    weight: 3,
    signs: {
      ...STILL_SILENT,
      ...LID_SILENT,
      ...ON_AMP,
      ...RUN_GOOD,
      ...UNIT_GOOD,
      'amp-light': ['normal'],
      'amp-out': ['low'],
      'swap-inputs': ['silent'],
      wiggle: ['no-effect'],
    },
    odds: { 'last-change': { fitted: 2, reflash: 2 }, 'amp-switches': { range: 10, mode: 0.1, 'turn-on': 0.5 } },
    split: 'Read range and gain: do they fit what is plugged in?',
  },
  {
    verdict: 'amp-channel-dead',
    title: 'Rear channels of the amplifier dead',
    weight: 2,
    signs: {
      ...STILL_SILENT,
      ...LID_SILENT,
      ...ON_AMP,
      ...RUN_GOOD,
      ...UNIT_GOOD,
      'amp-light': ['normal'],
      'amp-switches': ['right', 'range'],
      'amp-out': ['none'],
      'swap-inputs': ['silent'],
      wiggle: ['no-effect'],
    },
    odds: { 'rear-history': { never: 0.3 } },
    split: 'No short suspected: put the amplifier’s front output onto the rear speakers.',
  },
  {
    verdict: 'speaker-wire-to-frame',
    title: 'Rear speaker wire on the frame',
    weight: 4,
    signs: {
      ...TOUCHING,
      ...ON_AMP,
      'amp-light': ['fault'],
      'rear-pair': ['ok'],
      'amp-in': ['ok'],
      'amp-out': ['ok'],
      'run-ohms': ['ok'],
      'wire-to-frame': ['shorted'],
    },
    odds: { 'last-change': { fitted: 2, opened: 2 }, 'rear-history': { never: 0.5 } },
    split: 'Key off, plug apart, meter on ohms: each rear wire to bare frame metal, above 100 kΩ?',
  },
  {
    verdict: 'speaker-wire-to-frame',
    title: 'Rear speaker wire on the frame',
    weight: 3,
    signs: {
      ...TOUCHING,
      ...ON_UNIT,
      'rear-pair': ['ok', 'none'],
      'rear-pair-place': ['loaded'],
      'run-ohms': ['ok'],
      'wire-to-frame': ['shorted'],
    },
    odds: { 'last-change': { fitted: 2, opened: 2 }, 'rear-history': { never: 0.5 } },
    split: 'Key off, plug apart, meter on ohms: each rear wire to bare frame metal, above 100 kΩ?',
  },
  {
    verdict: 'speaker-pair-shorted',
    title: 'Rear run or coil shorted',
    weight: 1,
    signs: {
      ...TOUCHING,
      ...LID_SILENT,
      ...ON_AMP,
      'amp-light': ['fault'],
      'amp-in': ['ok'],
      'run-ohms': ['low'],
      'wire-to-frame': ['clear'],
    },
    split: 'Key off, plug apart, meter on ohms: does the run read coil plus wires?',
  },
  {
    verdict: 'speaker-pair-shorted',
    title: 'Rear run or coil shorted',
    weight: 1,
    signs: {
      ...TOUCHING,
      ...LID_SILENT,
      ...ON_UNIT,
      'rear-pair': ['ok', 'none'],
      'rear-pair-place': ['loaded'],
      'run-ohms': ['low'],
      'wire-to-frame': ['clear'],
    },
    split: 'Key off, plug apart, meter on ohms: does the run read coil plus wires?',
  },
  {
    verdict: 'rear-plug-off',
    title: 'Rear plug not home',
    weight: 8,
    signs: {
      ...OPEN_RUN,
      'lid-check': ['cured'],
      'contacts-look': ['apart', 'clean'],
      'coil-ohms': ['ok'],
      'pop-speaker': ['moves'],
      wiggle: ['rear-run', 'no-effect'],
    },
    odds: { 'last-change': { opened: 3, workshop: 2 } },
    split: 'Key off, pull every lid and case plug and push it home until it locks.',
  },
  {
    verdict: 'lid-contacts-dirty',
    title: 'Dirty plug contacts',
    weight: 4,
    signs: {
      ...OPEN_RUN,
      'lid-check': ['cured', 'reacts'],
      'contacts-look': ['film'],
      'run-ohms': ['open', 'high'],
      'run-split': ['contacts'],
      'coil-ohms': ['ok'],
      'pop-speaker': ['moves'],
      wiggle: ['rear-run', 'no-effect'],
    },
    odds: { 'last-change': { opened: 2 }, 'rear-history': { 'comes-and-goes': 3, never: 0.3 } },
    split: 'Clean the contacts: it cures only this.',
  },
  {
    verdict: 'lid-lead-broken',
    title: 'Lead into the lid broken inside',
    weight: 3,
    signs: {
      ...OPEN_RUN,
      'lid-check': ['reacts'],
      'contacts-look': ['clean', 'film'],
      'run-split': ['lid-side'],
      'coil-ohms': ['ok'],
      'pop-speaker': ['moves'],
      wiggle: ['rear-run', 'no-effect'],
    },
    odds: { 'rear-history': { 'comes-and-goes': 3, never: 0.2 } },
    split: 'Move the lid slowly while music plays: does it come and go?',
  },
  {
    verdict: 'speaker-wire-open',
    title: 'Rear speaker wire open',
    weight: 3,
    signs: {
      ...OPEN_RUN,
      ...LID_SILENT,
      'run-split': ['bike-side', 'no-plug'],
      'coil-ohms': ['ok'],
      'pop-speaker': ['moves'],
      wiggle: ['rear-run', 'no-effect'],
    },
    odds: { 'last-change': { fitted: 2 } },
    split: 'A 1.5 V cell on the run, then on the speaker: dead on the run only means the wire.',
  },
  {
    verdict: 'coil-open',
    title: 'Rear coils open',
    weight: 3,
    signs: { ...OPEN_RUN, ...LID_SILENT, 'coil-ohms': ['open'], 'pop-speaker': ['dead'], wiggle: ['no-effect'] },
    odds: { 'rear-history': { never: 0.3, 'comes-and-goes': 0.5 } },
    split: 'A 1.5 V cell on the speaker’s own tabs: no movement means the coil.',
  },
];

export const REAR_SUSPECTS: readonly Suspect[] = SUSPECTS.map((suspect) =>
  suspect.signs['rear-drive'] === ON_AMP['rear-drive']
    ? { ...suspect, odds: { ...suspect.odds, 'rear-drive': NO_AMP_KNOWN } }
    : suspect,
);
