import {
  batteryRead,
  FULL_AND_RESTED,
  KEY_ON_FIGURES,
  KEY_ON_OR_MORE,
  staysOn,
  whatItFeeds,
} from '../battery-state.ts';
import type { Cause } from '../cause.ts';
import { CUT_OUT } from '../supply-ways.ts';
import { isWithoutAmp } from '../the-amp.ts';
import { YOURSELF } from '../who.ts';

export const batteryUndercharged: Cause = {
  id: 'battery-undercharged',
  title: 'The battery is not full',
  faults: ['battery-undercharged'],
  split: {
    byMeter: 'Fully charged, then four hours’ rest: lead-acid 12.7 V or more, and still the next day?',
    without: 'Charge it overnight with its own charger: does the trouble stay away for days?',
    cautions: ['battery-gas', 'own-charger'],
  },
  mends: ['amp-supply'],
  article: 'the-charging-system',
  remedy: (f) => ({
    what: isWithoutAmp(f)
      ? 'The battery has too little charge: loud music pulls its volts down until the sound gives out.'
      : 'The battery has too little charge: loud music pulls it below the volts at which an amplifier switches itself off.',
    background:
      'Short rides, months parked up, heated gear, or the radio on with the engine off take out more than riding puts back.',
    numbers: [...batteryRead(f), ...KEY_ON_FIGURES, ...(isWithoutAmp(f) ? [] : [CUT_OUT])],
    repair: [{ do: 'charge-battery' }],
    fix: [
      'Charge it fully, with a charger made for its chemistry. Then four hours’ rest.',
      `${FULL_AND_RESTED} Less, or it drops again within days: it is worn, or something is draining it.`,
      'Music with the engine off: twenty minutes at most, or with a charger on.',
      'Short rides only: a night on the charger once a week.',
    ],
    tools: 'Charger, meter',
    minutes: 30,
    who: YOURSELF,
    parts: [],
    notBuy: [
      'A battery, before this one has been charged and rested.',
      `${whatItFeeds(f)}: nothing can be judged before the battery is full.`,
    ],
    cautions: ['flat-battery'],
    proofOfCure: {
      byEar: `Ten minutes at the volume where it failed, engine off: ${staysOn(f)}. Next morning the bike starts as usual.`,
      byMeter: `Key on, music playing: ${KEY_ON_OR_MORE} at the posts after ten minutes.`,
      touches: ['battery-plus'],
    },
  }),
};
