import { ofEachAmp } from '../fitted/of-each-amp.ts';
import { ampName, atAmp } from '../fitted/the-amp.ts';
import type { AmpPair } from '../fitted/which-amp.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import type { OfEach } from '../subject.ts';
import { supplyMayFail } from './may-fail.ts';

/** Whether its lead has a breaker, which comes back by itself once it has cooled, and whether that sits in the heat. */
export const breakerLook: OfEach<ChoiceStep<'fuse' | 'cool' | 'hot'>, 'meant', AmpPair> = ofEachAmp(
  choice({
    place: 'supply',
    id: 'breaker-look',
    short: atAmp('Fuse or breaker'),
    ask: (s) => `What protects the positive lead of ${ampName(s)}: a fuse, or a breaker, and does it sit in the heat?`,
    phone:
      'Engine cold, look only. Follow the thick positive lead from the battery. Is there a fuse in it, or a breaker: a box with a button, a lever, or just two studs? If it is a breaker: is it near a cylinder, the exhaust or in the sun, or somewhere cool?',
    how: [
      'Engine cold. Look only: nothing is loosened.',
      'A breaker is a small box with two studs, often with a button or a lever. Some have neither and come back by themselves.',
      'In the heat: within a hand’s width of a cylinder, the exhaust or the oil cooler, or in full sun.',
    ],
    why: 'A breaker trips by heat, and does not ask whose. It cools, and all is well again, with nothing to be seen.',
    tool: 'none',
    minutes: 2,
    conditions: ['key-off'],
    sensible: (f) => supplyMayFail(f) && is(f, 'amp-goes-off', 'hot', 'unknown', 'cannot'),
    observes: ['amp-supply'],
    cautions: ['hot'],
    options: {
      fuse: 'A fuse',
      cool: 'A breaker, and it sits cool',
      hot: 'A breaker, and it sits in the heat',
    },
    outcomes: { fuse: 'a fuse', cool: 'a breaker, cool', hot: 'a breaker in the heat' },
  }),
);
