import { type ChoiceStep, choice } from '../step.ts';
import { unitRuns } from '../unit/unit-dark.ts';

export const sourcePlays: ChoiceStep<'cured' | 'no-change' | 'stopped' | 'mute-stays'> = choice({
  place: 'settings',
  id: 'source-plays',
  short: 'Playing, not muted, turned up',
  ask: 'Press play, mute off, and turn up phone and head unit, both from low: is there sound now?',
  phone:
    'Turn the radio right down. On the phone press play: do the seconds count up? Turn the phone up full, mute off on the radio, then turn it up slowly. Sound now, or still none? Are the seconds not moving? Or does the screen stay on mute or in a call, whatever you press?',
  how: [
    'Play a song you know. Its seconds must count up.',
    'Phone’s own media volume up. Mute off, on the phone and on the head unit.',
    'End any call, even one on hold. Then turn up slowly.',
  ],
  why: 'A glove on a button or a call on hold silences everything with nothing broken. It is the commonest cause.',
  tool: 'ears',
  minutes: 1,
  conditions: ['head-unit-playing'],
  sensible: unitRuns,
  observes: ['settings', 'unit'],
  cautions: ['comes-back-loud'],
  options: {
    'no-change': 'No. It counts up, it is not muted, and there is no sound',
    cured: 'Yes. It was paused, muted or turned down',
    stopped: 'The seconds do not count up, whatever I press',
    'mute-stays': 'The head unit stays on mute or in a call, whatever I press',
  },
  outcomes: {
    cured: 'sound after play or mute off',
    'no-change': 'it plays, no sound',
    stopped: 'it does not play',
    'mute-stays': 'it stays on mute',
  },
});
