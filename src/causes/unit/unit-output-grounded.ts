import type { Cause } from '../cause.ts';
import { FITTER } from '../who.ts';
import { halfSupplyHealthy, PAIR_DIFFERENCE_HEALTHY, pairDcRead, pairRestsAlike } from './half-supply.ts';

export const unitOutputGrounded: Cause = {
  id: 'unit-output-grounded',
  title: 'A head unit speaker wire on ground',
  faults: ['bridge-output-grounded'],
  split: {
    byMeter:
      'Key off, head unit’s plug apart, meter on ohms: is a speaker wire of the loom below 100 Ω to bare frame metal?',
    needs: ['meter-on-ohms'],
    without: 'Follow the speaker wires from the head unit: is a negative on a ground ring, or are two joined together?',
    asStep: { byMeter: 'unit-wires-to-frame' },
  },
  mends: ['unit-leads'],
  article: 'half-the-supply-on-a-speaker-wire',
  remedy: (f) => ({
    what: 'A speaker wire of the head unit is joined to ground. It sits at half the supply, so its output is shorted.',
    background:
      'Old wiring habits do this: “negative is ground”, an adapter with a common negative, a converter with a grounded input. So does a pinched wire.',
    numbers: [...pairDcRead(f), halfSupplyHealthy(f), PAIR_DIFFERENCE_HEALTHY],
    repair: [{ do: 'free-wire', wire: 'unit-output' }],
    fix: [
      'Leave it off: don’t keep restarting into the short.',
      'Key off. Follow each pair from the head unit: adapter, taps, converter, wherever the loom passes metal.',
      'Undo the joint to ground. Both wires of a pair go to the speaker, or to an input made for a bridge output.',
      'Insulate the wire and tie it with slack.',
    ],
    tools: 'Meter, crimp tool, sleeve',
    minutes: 45,
    who: FITTER,
    parts: [],
    notBuy: ['A reflash, an amplifier or a head unit, before both wires of each pair sit at the same voltage.'],
    ifDoneAnyway: 'A new head unit on the same grounded wire goes the same way as the old one.',
    proofOfCure: {
      byEar: 'It plays clean in every corner, and still does after key off and on.',
      byMeter: pairRestsAlike(f),
      needs: ['music-paused'],
    },
  }),
};
