import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { unitRuns } from './unit-dark.ts';

export const muteWire: ChoiceStep<'cured' | 'no-change' | 'none'> = choice({
  place: 'unit',
  id: 'mute-wire',
  short: 'Mute wire off',
  ask: 'Key off, the head unit’s mute wire taken off whatever it is joined to, end taped, key on: is there sound now?',
  phone:
    'Find the thin single wire marked mute, in the radio’s papers or on its adapter. Key off, take it off whatever it is joined to, tape its end. Key on, music on, low, then turn it up slowly: sound now, no change, or is there no such wire?',
  how: [
    'Many replaced head units have one, for a hands-free kit. Their papers say where it is.',
    'Key off before it comes off. Tape its end, so that it touches no metal.',
    'Key on, music on, low, then turn it up slowly.',
  ],
  why: 'On ground it says that somebody is on the telephone, and the head unit keeps silent with nothing broken.',
  tool: 'ears',
  minutes: 8,
  conditions: ['key-off', 'panel-off'],
  sensible: (f) => is(f, 'unit-kind', 'replaced') && unitRuns(f),
  observes: ['unit', 'unit-leads', 'settings'],
  cautions: ['key-off', 'comes-back-loud'],
  options: { cured: 'Yes, it plays', 'no-change': 'No change', none: 'There is no mute wire' },
  outcomes: { cured: 'plays without the mute wire', 'no-change': 'silent without it too', none: 'no mute wire' },
});
