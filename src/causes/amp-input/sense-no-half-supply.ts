import type { Cause } from '../cause.ts';
import { AmpName } from '../the-amp.ts';
import { halfSupplyHealthy, pairDcRead } from '../unit/half-supply.ts';
import { FITTER } from '../who.ts';
import { WAKES_BY_DC_ABOVE } from './arrives.ts';
import { STARTS_WITH_KEY, WAKE_BY_WIRE_PARTS, WAKE_BY_WIRE_STEPS } from './wake-by-wire.ts';

export const senseNoHalfSupply: Cause = {
  id: 'sense-no-half-supply',
  title: (f) => `${AmpName(f)} waits for DC that does not come`,
  faults: ['sense-no-half-supply'],
  split: {
    byMeter:
      'Music paused, each of its input wires against battery negative: no DC, while the speaker wires at the head unit have some?',
    needs: ['music-paused'],
    touches: ['amp-in-plus'],
    without: 'Follow its signal wires: is there a box, a converter or a line-level lead on the way?',
  },
  mends: ['amp-supply', 'amp'],
  article: 'half-the-supply-on-a-speaker-wire',
  remedy: (f) => ({
    what: 'This amplifier wakes by the DC on a speaker wire. Its feed carries sound but no DC.',
    background:
      'A transformer, a capacitor or a line output blocks DC. An amplifier without a remote terminal has to be fed from real speaker wires instead.',
    numbers: [...pairDcRead(f), halfSupplyHealthy(f), WAKES_BY_DC_ABOVE],
    repair: [{ do: 'wake-by-wire' }],
    fix: WAKE_BY_WIRE_STEPS,
    tools: 'Crimp tool, spanner for the battery',
    minutes: 45,
    who: FITTER,
    parts: WAKE_BY_WIRE_PARTS,
    notBuy: ['An amplifier: this one was never woken.', 'A reflash: the level is not what it waits for.'],
    ifDoneAnyway: 'DC fed into an input to “wake” it ends up in the head unit or in a coil.',
    proofOfCure: { byEar: STARTS_WITH_KEY },
  }),
};
