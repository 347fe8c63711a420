import { batteryRead, FULL_AND_RESTED, KEY_ON_FIGURES, KEY_ON_OR_MORE } from '../battery-state.ts';
import type { Cause } from '../cause.ts';
import { CUT_OUT } from '../supply-ways.ts';
import { YOURSELF } from '../who.ts';

export const batteryUndercharged: Cause = {
  id: 'battery-undercharged',
  title: 'The battery is not full',
  faults: ['battery-undercharged'],
  split: {
    byMeter: 'Fully charged, then four hours’ rest: lead-acid 12.7 V or more, and still the next day?',
    without: 'Charged for a night with its own charger: does the trouble stay away for days?',
    cautions: ['battery-gas', 'own-charger'],
  },
  mends: ['amp-supply'],
  article: 'the-charging-system',
  remedy: (f) => ({
    what: 'The battery has too little charge: loud music pulls it under the volts at which an amplifier switches itself off.',
    background:
      'Short rides, months of standing, heated gear, or the radio on with the engine off take more than the road puts back.',
    numbers: [...batteryRead(f), ...KEY_ON_FIGURES, CUT_OUT],
    repair: [{ do: 'charge-battery' }],
    fix: [
      'Charge it fully, with a charger made for its chemistry. Then four hours’ rest.',
      `${FULL_AND_RESTED} Less, or it falls again within days: it is worn, or something empties it.`,
      'Music with the engine off: twenty minutes at most, or a charger on it meanwhile.',
      'Short rides only: a night on the charger once a week.',
    ],
    tools: 'Charger, meter',
    minutes: 30,
    who: YOURSELF,
    parts: [],
    notBuy: [
      'A battery, before this one was charged and rested.',
      'An amplifier: nothing can be judged before it is full.',
    ],
    cautions: ['flat-battery'],
    proofOfCure: {
      byEar:
        'Ten minutes at the volume that failed, engine off: the amplifier stays on. The next morning the bike starts as ever.',
      byMeter: `Key on, music playing: ${KEY_ON_OR_MORE} at the posts after ten minutes.`,
    },
  }),
};
