import { type ChoiceStep, choice } from '../step.ts';

export const metersDigit: ChoiceStep<'0.001' | '0.01' | '0.1'> = choice({
  place: 'tools',
  id: 'meter-digit',
  short: 'Smallest AC digit',
  ask: 'On its lowest AC volts range, what is the smallest step your meter shows?',
  phone:
    'Lowest AC volts range, key off, probes on the two battery posts, then the probes swapped: about 27, either time? Then it reads DC as AC, so use another meter. Probes apart: how many digits after the point?',
  how: [
    'Lowest range, probes in the air.',
    'Then, key off, both probes on the battery: it must read 0. Swap the probes: 0 again.',
    'Does it show about 27 V, even one way round only? Then it reads DC as AC, doubled, and is wrong on every speaker wire. Use another meter, or answer “I can’t” to each AC question.',
  ],
  why: 'A basic meter’s lowest range is 200 V AC, and it sees nothing below 0.1 V. We then ask for more signal instead of guessing.',
  tool: 'meter',
  minutes: 1,
  conditions: ['meter-on-ac'],
  observes: [],
  options: { '0.001': '0.001 V, or it has a mV range', '0.01': '0.01 V', '0.1': '0.1 V' },
  outcomes: { '0.001': '0.001 V', '0.01': '0.01 V', '0.1': '0.1 V' },
  ifCannot: 'We assume a basic meter, 0.1 V.',
  article: 'two-tones-one-ratio',
  givenUnder: ['tools-at-hand'],
});
