import { type ChoiceStep, choice } from '../step.ts';

export const unitRestart: ChoiceStep<'cured' | 'no-change'> = choice({
  place: 'unit',
  id: 'unit-restart',
  short: 'Head unit started anew',
  ask: 'Key off, wait until the head unit sleeps, key on again: is there sound now?',
  phone:
    'Never while it updates itself. Key off, phone’s lead out. Wait five minutes with everything off, key on, and wait for the start screen. Music on, low: sound now, or no change?',
  how: [
    'Never during an update.',
    'Phone’s lead out. Wait five minutes: it goes to sleep late.',
    'Key on, let it start, music on, low. Radio presets may be gone if you pull its fuse instead.',
  ],
  why: 'A dip of the battery while starting can leave it stuck. A clean start costs nothing.',
  tool: 'none',
  minutes: 6,
  conditions: ['key-off'],
  observes: ['unit'],
  cautions: ['comes-back-loud'],
  options: { cured: 'Yes, it plays', 'no-change': 'No change' },
  outcomes: { cured: 'plays after a clean start', 'no-change': 'no change' },
});
