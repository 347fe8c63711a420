import { type ChoiceStep, choice } from '../step.ts';
import { unitRuns } from '../unit/unit-dark.ts';

export const otherSource: ChoiceStep<'good' | 'same'> = choice({
  place: 'ears',
  id: 'other-source',
  short: 'Another source',
  ask: 'Switch from the phone to the radio or a memory stick, at low volume: is there sound?',
  phone:
    'Turn the radio down, then pick a strong local station, or a memory stick if it was the radio. Then turn it up slowly. Sound now, or still none?',
  how: ['Pick a strong local station, or a memory stick with music. Then turn up slowly.'],
  why: 'If another source plays, everything after it is fine: look at the phone, its volume, its lead or its link.',
  tool: 'ears',
  minutes: 2,
  conditions: ['head-unit-playing'],
  sensible: unitRuns,
  observes: ['settings', 'unit'],
  cautions: ['comes-back-loud'],
  options: { good: 'Yes, the other one plays', same: 'No, that is silent too' },
  outcomes: { good: 'another source plays', same: 'silent from another source too' },
});
