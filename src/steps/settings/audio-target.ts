import { type ChoiceStep, choice } from '../step.ts';
import { unitRuns } from '../unit/unit-dark.ts';

export const audioTarget: ChoiceStep<'cured' | 'no-change' | 'none'> = choice({
  place: 'settings',
  id: 'audio-target',
  short: 'Where the sound goes',
  ask: 'Switch every headset off and set the sound output to speakers: is there sound now?',
  phone:
    'Turn the radio right down. Switch every headset and helmet fully off. On the radio set the sound to speakers, then turn it up slowly. Sound now, still none, or is there no such setting?',
  how: [
    'Headsets and helmets off at their own switch. The passenger’s too.',
    'In the sound menu of the head unit, and on the phone: output to the bike’s speakers.',
  ],
  why: 'A head unit remembers a paired headset, and may keep sending the sound there after it has been switched off.',
  tool: 'ears',
  minutes: 2,
  conditions: ['head-unit-playing'],
  sensible: unitRuns,
  observes: ['settings', 'unit'],
  cautions: ['comes-back-loud'],
  options: {
    'no-change': 'No, still silent',
    cured: 'Yes. It was going to a headset',
    none: 'No headset, and no such setting',
  },
  outcomes: {
    cured: 'sound, it was going to a headset',
    'no-change': 'still silent',
    none: 'no headset and no such setting',
  },
});
