import type { Findings } from '../../steps/outcome.ts';
import type { Cause, Remedy, Split } from '../cause.ts';
import { readsForGain } from '../read-first.ts';
import { AmpName, ampOf } from '../the-amp.ts';
import { DEALER_OR_SPECIALIST, FITTER } from '../who.ts';
import { WAKES_AT_USUAL_VOLUME } from './arrives.ts';
import { AFTER_THE_VISIT, gainSteps, setGain, settingFigures } from './gain.ts';
import { hearsFigures } from './hears.ts';
import { STARTS_WITH_KEY, WAKE_BY_WIRE_PARTS, WAKE_BY_WIRE_STEPS } from './wake-by-wire.ts';

const SPLIT: Split = {
  byMeter: '400 Hz tone at your usual volume, across its inputs: less than its papers say it wakes at?',
  needs: ['tone-400'],
  touches: ['amp-in-plus'],
  without: 'Gain down, steady music, one step at a time well above your usual volume: does it wake then?',
  cautions: ['loud-tone', 'wakes-loud'],
};

const PHONE_FIRST =
  'Phone at full media volume, its equaliser off. Does it wake at your usual volume now? Then skip the rest.';
const NOT_BUY = [
  'A new amplifier: this one works.',
  'Another profile for amplifiers: they all lower the level, none raises it.',
];

/** One that was made for any source is at home on the lowered level: nothing is sent into it that its gain was not set for. */
const byWire = (f: Findings): Remedy => ({
  what: 'This amplifier wakes by the sound on its inputs, and at your volume too little reaches it.',
  background: 'It was made for any source, so the level can stay as it is. A wire wakes it whatever the level.',
  numbers: hearsFigures(f),
  repair: [{ do: 'wake-by-wire' }],
  fix: [
    PHONE_FIRST,
    'Is there a thin wire in its remote terminal? Then only its turn-on selector is wrong: key off, set it to wire, and try it.',
    ...WAKE_BY_WIRE_STEPS,
  ],
  tools: 'Crimp tool, spanner for the battery',
  minutes: 45,
  who: FITTER,
  parts: WAKE_BY_WIRE_PARTS,
  notBuy: [...NOT_BUY, 'A reflash to the full level: its gain is set for the lowered one, and it would clip.'],
  proofOfCure: { byEar: STARTS_WITH_KEY },
});

/** Somebody who did not look yet what it was made for. */
const papersFirst = (f: Findings): readonly string[] =>
  ampOf(f).needs === undefined
    ? [
        'Check its papers: was it made for the unaltered output? If any source will do, no visit: give it a thin wire from a feed that is live only with the ignition, 1 A fuse where it starts, and set its turn-on selector to wire.',
      ]
    : [];

const byLevel = (f: Findings): Remedy => ({
  what: 'This amplifier wakes by the sound on its inputs, and at your volume too little reaches it.',
  background:
    'It was made for the unaltered output. A profile for amplifiers lowers the output and takes the bass boost out. A remote wire would wake it, but not bring back the level and the bass.',
  numbers: [...hearsFigures(f), ...settingFigures(f)],
  readFirst: [...(ampOf(f).needs === undefined ? (['made-for'] as const) : []), ...readsForGain(f)],
  repair: [{ do: 'select-profile', level: 'full', boost: 'as-delivered' }, setGain(f, 'both')],
  fix: [
    PHONE_FIRST,
    ...papersFirst(f),
    'Before the visit: every amplifier’s gain to minimum, speaker-level range, high-pass on at 80 to 100 Hz.',
    'Ask for full level and the factory bass boost. Say that the rear channels stay as they are: plain “unaltered” can switch them off.',
    AFTER_THE_VISIT,
    ...gainSteps(f),
  ],
  tools: 'A dealer’s or a specialist’s tool, then a meter and a small screwdriver',
  minutes: 60,
  who: DEALER_OR_SPECIALIST,
  parts: [],
  notBuy: NOT_BUY,
  cautions: ampOf(f).needs === undefined ? ['fuse', 'data'] : [],
  proofOfCure: {
    byEar: WAKES_AT_USUAL_VOLUME,
    byMeter: '400 Hz tone at your usual volume, across its inputs: above the volts that wake it.',
    needs: ['tone-400'],
  },
});

export const senseStarved: Cause = {
  id: 'sense-starved',
  title: (f) => `${AmpName(f)} wakes by sound, and gets too little`,
  faults: ['sense-starved-by-profile'],
  split: SPLIT,
  mends: ['profile', 'amp'],
  article: 'amplifiers-that-listen',
  remedy: (f) => (ampOf(f).needs === 'any' ? byWire(f) : byLevel(f)),
};
