import { drawFigures } from '../amp-load.ts';
import type { Cause } from '../cause.ts';
import { TEN_STARTS } from '../supply-ways.ts';
import { ampName } from '../the-amp.ts';
import { YOURSELF } from '../who.ts';

export const ampBodyFuseOpen: Cause = {
  id: 'amp-body-fuse-open',
  title: (f) => `A fuse in the case of ${ampName(f)} is open`,
  faults: ['amp-body-fuse-open'],
  split: {
    byMeter: 'Key off, the small fuses out of the amplifier’s case, meter on ohms across each: does one read OL?',
    needs: ['meter-on-ohms'],
    without: 'Key off, pull the small fuses beside its power plug: is a strip burnt through?',
    asStep: { without: 'body-fuse' },
  },
  mends: ['amp-supply', 'amp'],
  article: 'wire-fuse-and-ground',
  remedy: (f) => ({
    what: `A fuse in the case of ${ampName(f)}, beside its power plug, is open: the supply ends there.`,
    background: 'It looks exactly like a dead amplifier and costs a hundredth as much.',
    numbers: drawFigures(f),
    repair: [{ do: 'renew-fuse', fuse: 'amp-body' }],
    fix: [
      'Key off. Speaker plugs and remote wire off the amplifier, bare ends taped.',
      'Fit one new fuse of the rating printed next to its holder.',
      'Key on: does it hold? Then the remote wire, then the speakers one at a time, key off for each.',
      'It blows again: stop. With the speakers off, it is the amplifier; with one of them on, it is that run.',
    ],
    tools: 'None',
    minutes: 10,
    who: YOURSELF,
    parts: ['One fuse of the rating printed next to its holder'],
    notBuy: ['An amplifier, before one fuse has been tried.', 'A bigger fuse.'],
    proofOfCure: { byEar: `${TEN_STARTS} The same fuse is whole after ten loud minutes.` },
  }),
};
