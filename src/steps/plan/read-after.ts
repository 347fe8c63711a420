import { dayInWords } from '../../rig/day.ts';
import type { Situation } from '../step.ts';
import { type ChoiceStep, choice } from '../step.ts';

const dayOf = ({ rig }: Situation): string => (rig.profileRead ? dayInWords(rig.profileRead.on) : 'some day');

export const readAfter: ChoiceStep<'yes' | 'no'> = choice({
  place: 'plan',
  id: 'read-after',
  short: 'Reading taken after it',
  ask: (s) => `A reading from ${dayOf(s)} is saved with this bike. Was it taken after that work on the head unit?`,
  phone: (s) => `There is a reading from ${dayOf(s)} on file. Was that after the reflash or swap, or before it?`,
  how: ['The date is on the job card of the visit.'],
  why: 'An earlier reading says what was stored then. The work has changed that.',
  tool: 'none',
  minutes: 0.3,
  observes: ['profile'],
  options: { yes: 'Yes, after it', no: 'No, before it' },
  outcomes: { yes: 'after the work', no: 'before the work' },
  ifCannot: 'Then it does not count, and we ask again.',
  givenUnder: ['planned-change'],
});
