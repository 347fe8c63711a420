import type { Cause } from '../cause.ts';
import { YOURSELF } from '../who.ts';

export const unitHung: Cause = {
  id: 'unit-hung',
  title: 'The head unit hangs',
  faults: ['unit-hung'],
  split: {
    byMeter: 'No meter needed: key off until the head unit sleeps, about five minutes, and on again. Does it play?',
    without: 'Key off until the head unit sleeps, about five minutes, and on again. Does it play?',
  },
  mends: ['unit'],
  article: 'no-sound-at-all',
  remedy: () => ({
    what: 'The head unit is stuck: it is lit, and plays nothing until it is started anew.',
    background: 'A dip of the battery while the engine starts does it, or an update that was broken off.',
    numbers: [],
    repair: [{ do: 'restart-unit' }],
    fix: [
      'Never during an update.',
      'Key off, phone unplugged, and five minutes of patience: it sleeps late.',
      'Still stuck: key off, its fuse out for a few minutes, and back. Presets may be gone.',
      'It hangs again and again: read the battery while the engine starts. Under 9.6 V is a battery to look at.',
    ],
    tools: 'None, or a fuse puller',
    minutes: 8,
    who: YOURSELF,
    parts: [],
    notBuy: ['A head unit, before it hung again with a good battery.'],
    proofOfCure: { byEar: 'It starts and plays three times in a row, each time after it slept.' },
  }),
};
