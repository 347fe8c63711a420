import type { Cause } from '../cause.ts';
import { ampChannels } from '../where.ts';
import { DEALER_OR_SPECIALIST } from '../who.ts';
import { WAKES_AT_USUAL_VOLUME } from './arrives.ts';
import { AFTER_THE_VISIT, gainSteps, setGain, settingFigures } from './gain.ts';
import { hearsFigures } from './hears.ts';

export const senseStarved: Cause = {
  id: 'sense-starved',
  title: 'Listening amplifier that hears too little',
  faults: ['sense-starved-by-profile'],
  split: {
    byMeter: '400 Hz tone at your usual volume, across its inputs: less than its papers say that it wakes at?',
    needs: ['tone-400'],
    touches: ['amp-in-plus'],
    without: 'Gain down, steady music, one step at a time well above your usual volume: does it wake then?',
  },
  mends: ['profile', 'amp'],
  article: 'amplifiers-that-listen',
  remedy: (f) => ({
    what: 'This amplifier wakes by the sound on its inputs, and at your volume too little reaches it.',
    background:
      'It was made for the unaltered output. A profile for amplifiers lowers the output and takes the bass boost out. A remote wire would wake it, and not bring the level and the bass back.',
    numbers: [...hearsFigures(f), ...settingFigures(f)],
    repair: [{ do: 'select-profile', level: 'full', boost: 'as-delivered' }, setGain(f, ampChannels(f))],
    fix: [
      'Phone at full media volume, its equaliser off. Does it wake at your usual step on the bike? Then leave the rest.',
      'Before the visit: every amplifier’s gain to minimum, speaker-level range, high-pass on at 80 to 100 Hz.',
      'Ask for full level and the bass boost as delivered. Rear channels stay as they are: say so, plain unaltered can switch them off.',
      AFTER_THE_VISIT,
      ...gainSteps(f),
    ],
    tools: 'A dealer’s or a specialist’s tool. Afterwards a meter and a small screwdriver',
    minutes: 60,
    who: DEALER_OR_SPECIALIST,
    parts: [],
    notBuy: [
      'A new amplifier: this one works.',
      'Another profile for amplifiers: each of them lowers the level, none raises it.',
    ],
    cautions: ['wakes-loud'],
    proofOfCure: {
      byEar: WAKES_AT_USUAL_VOLUME,
      byMeter: '400 Hz tone at your usual volume, across its inputs: above the volts that wake it.',
      needs: ['tone-400'],
      touches: ['amp-in-plus'],
    },
  }),
};
