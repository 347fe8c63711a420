import { type ChoiceStep, choice } from '../step.ts';

export const unitRestart: ChoiceStep<'cured' | 'no-change'> = choice({
  place: 'unit',
  id: 'unit-restart',
  short: 'Head unit restarted',
  ask: 'Key off, wait until the head unit is asleep, key on again: is there sound now?',
  phone:
    'Never while it is updating. Key off, disconnect the phone. Wait five minutes with everything off, key on, and wait for the start screen. Music on, low: sound now, or no change?',
  how: [
    'Never during an update.',
    'Disconnect the phone. Wait five minutes: it is slow to go to sleep.',
    'Key on, let it start, music on, low. Don’t pull its fuse instead: presets may be lost.',
  ],
  why: 'A battery dip while starting can leave it stuck. A clean restart costs nothing.',
  tool: 'none',
  minutes: 6,
  conditions: ['key-off'],
  // Whether there is sound hangs on what is set as well.
  observes: ['settings', 'unit'],
  cautions: ['comes-back-loud'],
  options: { cured: 'Yes, it plays', 'no-change': 'No change' },
  outcomes: { cured: 'plays after a restart', 'no-change': 'no change' },
});
