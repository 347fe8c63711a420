import { type ChoiceStep, choice, EVERY_PART } from '../step.ts';

export const whenWrong: ChoiceStep<'always' | 'loud' | 'running' | 'times'> = choice({
  place: 'told',
  id: 'when-wrong',
  short: 'When it is wrong',
  ask: 'When is it wrong: all the time, or only at certain times?',
  phone:
    'When do you notice it? All the time? Only when it is turned up? Only with the engine running, or on the road? Or now and then: on bumps, when somebody sits on, in the rain, when hot, or with no pattern?',
  how: ['Think of the last three times.', 'More than one fits? Take the one that bothers you most.'],
  why: 'Bad only when loud means levels or supply. With the engine: stored EQ, noise or charging. Now and then: a contact, heat or water.',
  tool: 'none',
  minutes: 0.5,
  observes: EVERY_PART,
  options: {
    always: 'Always',
    loud: 'When it is loud',
    running: 'With the engine running, or riding',
    times: 'Now and then: bumps, a passenger, rain, heat, quiet music, or with no pattern',
  },
  outcomes: {
    always: 'always',
    loud: 'when loud',
    running: 'with the engine running',
    times: 'now and then',
  },
  article: 'talk-a-caller-through',
});
