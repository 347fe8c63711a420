import type { Cause } from '../cause.ts';
import { YOURSELF } from '../who.ts';

export const unitHung: Cause = {
  id: 'unit-hung',
  title: 'The head unit hangs',
  faults: ['unit-hung'],
  split: {
    byMeter: 'No meter needed: key off until the head unit sleeps, about five minutes, and on again. Does it play?',
    without: 'Key off until the head unit sleeps, about five minutes, and on again. Does it play?',
    asStep: { byMeter: 'unit-restart', without: 'unit-restart' },
  },
  mends: ['unit'],
  article: 'no-sound-at-all',
  remedy: () => ({
    what: 'The head unit is stuck: it is lit, but plays nothing until restarted.',
    background: 'A battery dip while the engine starts does it, or an interrupted update.',
    numbers: [],
    repair: [{ do: 'restart-unit' }],
    fix: [
      'Never during an update.',
      'Does it ask for a code? Then it is locked, as some are once they were without supply. The code is in the bike’s papers, or the dealer has it. Wrong tries lock it for longer.',
      'Key off, phone unplugged, and give it five minutes: it is slow to go to sleep.',
      'Still stuck: have its code at hand, if it has one. Key off, its fuse out for a few minutes, then back in. Presets may be lost.',
      'If it keeps hanging, read the battery while the engine starts. Below 9.6 V, suspect the battery.',
    ],
    tools: 'A fuse puller, if you have one',
    minutes: 8,
    who: YOURSELF,
    parts: [],
    notBuy: ['A head unit, unless it hangs again with a good battery.'],
    proofOfCure: { byEar: 'It starts and plays three times in a row, each time after going to sleep.' },
  }),
};
