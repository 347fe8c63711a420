import type { Cause } from '../cause.ts';
import { FITTER } from '../who.ts';
import { halfSupplyHealthy, pairRestsAlike } from './half-supply.ts';

export const adapterWithoutRear: Cause = {
  id: 'adapter-without-rear',
  title: 'Adapter of the replaced head unit without rear pairs',
  faults: ['replaced-unit-adapter-gap@rear-pairs'],
  split: {
    byMeter: 'Key off, adapter plug apart, meter on ohms: does a rear pin read OL through the adapter?',
    needs: ['meter-on-ohms'],
    without: 'Look at both sides of the adapter’s plug: is one of the four rear pins missing?',
    asStep: { without: 'adapter-look' },
  },
  mends: ['unit-leads'],
  article: 'half-the-supply-on-a-speaker-wire',
  remedy: (f) => ({
    what: 'The replaced head unit’s adapter does not pass on the rear pairs.',
    background: 'An adapter made for a bike with two speakers has no rear pins.',
    numbers: [halfSupplyHealthy(f)],
    repair: [{ do: 'complete-adapter', carries: 'rear-pairs' }],
    fix: [
      'Key off, adapter plug apart. Find both rear pairs on the head unit’s side, by its papers.',
      'Add the four wires, or fit the adapter for a bike with four speakers.',
      'Keep each pair a pair, positive to positive. No common negative, nothing to ground.',
    ],
    tools: 'Meter, crimp tool',
    minutes: 60,
    who: FITTER,
    parts: ['Adapter for four speaker pairs, or four pins with wires that fit the one that is there'],
    notBuy: ['A reflash, an amplifier or another head unit: wires are missing.'],
    ifDoneAnyway: 'Two negative wires joined together, or to ground, kill a head unit output.',
    proofOfCure: {
      byEar: 'The rear plays, left on the left and right on the right.',
      byMeter: pairRestsAlike(f),
      needs: ['music-paused'],
    },
  }),
};
