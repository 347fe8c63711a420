import { type ChoiceStep, choice } from '../step.ts';

export const metersDigit: ChoiceStep<'0.001' | '0.01' | '0.1'> = choice({
  place: 'tools',
  id: 'meter-digit',
  short: 'Smallest AC digit',
  ask: 'On its lowest AC volts range, what is the last digit your meter shows?',
  phone:
    'Lowest AC volts range, probes on the two posts of a resting battery, then the probes swapped: about 27, either time? Then it takes DC for AC, so take another meter. Probes apart: how many digits stand behind the point?',
  how: [
    'The lowest range, probes in the air.',
    'Then both probes on a resting battery: it must read 0. Swap the probes: 0 again.',
    'It shows about 27 V, if only one way round? It reads DC as AC, about twice over, and lies on every speaker wire. Take another meter, or say at each AC question that you cannot.',
  ],
  why: 'A basic meter starts at 200 V AC and sees nothing below 0.1 V. We then ask for more signal instead of guessing.',
  tool: 'meter',
  minutes: 1,
  conditions: ['meter-on-ac'],
  observes: [],
  options: { '0.001': '0.001 V, or it has a mV range', '0.01': '0.01 V', '0.1': '0.1 V' },
  outcomes: { '0.001': '0.001 V', '0.01': '0.01 V', '0.1': '0.1 V' },
  ifCannot: 'We take it as a basic meter, 0.1 V.',
  article: 'two-tones-one-ratio',
  givenUnder: ['tools-at-hand'],
});
