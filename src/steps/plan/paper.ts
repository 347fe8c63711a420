import { choice } from '../step.ts';

export type Paper = 'yes' | 'no' | 'silent';

export const paper = (id: string, short: string, ask: string, phone: string, why: string, yes: string, no: string) =>
  choice<Paper>({
    id,
    place: 'plan',
    short,
    ask,
    phone,
    how: ['Read it off the job card or the read-out. If it does not say, don’t guess.'],
    why,
    tool: 'papers',
    minutes: 0.5,
    observes: ['profile'],
    options: { yes, no, silent: 'It does not say' },
    outcomes: { yes: yes.toLowerCase(), no: no.toLowerCase(), silent: 'the paper does not say' },
    ifCannot: 'Then it counts as unknown.',
    givenUnder: ['profile-source'],
  });
