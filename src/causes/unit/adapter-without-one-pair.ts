import type { Cause } from '../cause.ts';
import { Placed, placed, silentOne } from '../where.ts';
import { FITTER } from '../who.ts';
import { halfSupplyHealthy, pairRestsAlike } from './half-supply.ts';

export const adapterWithoutOnePair: Cause = {
  id: 'adapter-without-one-pair',
  title: (f) => Placed(silentOne(f), 'pair missing in the adapter of the replaced head unit'),
  faults: [
    'replaced-unit-adapter-gap@one-pair',
    'replaced-unit-adapter-gap@one-pair-right',
    'replaced-unit-adapter-gap@one-rear',
    'replaced-unit-adapter-gap@one-rear-right',
  ],
  split: {
    byMeter: 'Key off, adapter plug apart, meter on ohms: does a pin of that pair read OL through the adapter?',
    needs: ['meter-on-ohms'],
    without: 'Look at both sides of the adapter’s plug: does a wire of that speaker lack its pin on one of them?',
  },
  mends: ['unit-leads'],
  article: 'one-speaker-or-one-side',
  remedy: (f) => ({
    what: `The replaced head unit’s adapter does not pass on the ${placed(silentOne(f), 'pair')}.`,
    background: 'A pin was left out or never pushed home, or the adapter was made for a bike with fewer speakers.',
    numbers: [halfSupplyHealthy(f)],
    repair: [{ do: 'complete-adapter', carries: 'pair', where: silentOne(f) }],
    fix: [
      'Key off, adapter plug apart. Find the two wires of that speaker on the head unit’s side, by its papers.',
      'A pin missing or set back? Push it in until it latches, or crimp a new one on. No wires at all? Add the two wires.',
      'Keep the pair a pair, positive to positive. No common negative, nothing to ground.',
    ],
    tools: 'Meter, pin tool, crimp tool',
    minutes: 40,
    who: FITTER,
    parts: ['Two pins that fit the adapter, two lengths of speaker wire if none are there'],
    notBuy: ['A reflash, a speaker or another head unit: a wire is missing.'],
    ifDoneAnyway: 'Two negative wires joined together, or to ground, kill a head unit output.',
    proofOfCure: {
      byEar: 'That speaker plays on its own, with balance and fader turned fully to it.',
      byMeter: pairRestsAlike(f),
      needs: ['music-paused'],
    },
  }),
};
