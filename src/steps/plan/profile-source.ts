import { type ChoiceStep, choice } from '../step.ts';

/** Nobody can say that it was never changed after a reflash, or of a head unit from elsewhere. */
export const workedOn = (plan: string | undefined): boolean => plan === 'after-reflash' || plan === 'unit-swapped';

export const profileSource: ChoiceStep<'measure' | 'record' | 'never' | 'unknown'> = choice({
  place: 'plan',
  id: 'profile-source',
  short: 'Stored profile',
  ask: 'How do you know which output profile is stored in the head unit now?',
  phone:
    'What do we know about the settings stored in your radio: can you measure them, is there a paper, has nobody ever touched it, or don’t you know?',
  how: [
    'A paper counts only if it says what the profile does: rear, level, bass boost, EQ.',
    'The name of a profile proves nothing, not even if it names your number of amplifiers.',
    '“Nobody ever changed it” counts only if you have had the bike from new with the same head unit. A dealer’s update counts as a change.',
  ],
  why: 'The answer depends on what is stored now. A reading beats a paper, and a paper beats memory.',
  tool: 'none',
  minutes: 0.5,
  observes: [],
  leftOut: ({ facts: { 'planned-change': plan } }) =>
    workedOn(plan && 'option' in plan ? plan.option : undefined) ? ['never'] : [],
  options: {
    measure: 'I can measure it now',
    record: 'A paper says what it does',
    never: 'Nobody ever changed it',
    unknown: 'I do not know, and I cannot measure now',
  },
  outcomes: {
    measure: 'measured now',
    record: 'from a paper',
    never: 'never changed',
    unknown: 'not known',
  },
  article: 'what-a-reflash-is',
});
