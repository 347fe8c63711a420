import type { Cause } from '../cause.ts';
import { ampName } from '../the-amp.ts';
import { halfSupplyHealthy, PAIR_DIFFERENCE_HEALTHY, pairDcRead, pairRestsAlike } from '../unit/half-supply.ts';
import { UNIT_REPAIR, UNIT_REPAIR_STEPS } from '../unit/unit-repair.ts';

export const inputDc: Cause = {
  id: 'input-dc',
  title: (f) => `DC from the head unit on an input of ${ampName(f)}`,
  faults: ['input-dc'],
  split: {
    byMeter: 'Music paused, DC volts between the two wires of each input pair: more than 0.5 V between those of one?',
    needs: ['music-paused'],
    touches: ['amp-in-plus'],
    without: 'Key off, signal plug out of the amplifier, key on: does its fault light turn normal?',
    asStep: { without: 'signal-plug-out' },
  },
  mends: ['unit'],
  article: 'half-the-supply-on-a-speaker-wire',
  remedy: (f) => ({
    ...UNIT_REPAIR,
    what: 'A damaged output of the head unit puts DC between the two wires of a pair, and the amplifier shuts down to protect itself.',
    background: 'Half the supply on both wires of a pair is normal. It is the difference between the two that counts.',
    numbers: [...pairDcRead(f), halfSupplyHealthy(f), PAIR_DIFFERENCE_HEALTHY],
    fix: [
      'Key off, signal plug out of the amplifier. Key on, music paused: DC volts between the two wires of each pair, at the head unit. The pair with a difference is the one.',
      'Key off. Leave that pair unplugged and insulated: the rest can play meanwhile.',
      ...UNIT_REPAIR_STEPS,
    ],
    tools: 'Meter',
    minutes: 30,
    notBuy: ['An amplifier: this one is doing what protection is for.', 'A reflash: it won’t mend an output.'],
    ifDoneAnyway: 'A speaker on that pair is heated by the DC until its coil burns.',
    cautions: ['bridge'],
    proofOfCure: {
      byEar: 'Its light stays normal with the signal plug in, and all its speakers play.',
      byMeter: pairRestsAlike(f),
      needs: ['music-paused'],
    },
  }),
};
