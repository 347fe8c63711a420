import { choice, type Facts, type Situation } from './step.ts';

export const toolsAtHand = choice<'meter' | 'none'>({
  id: 'tools-at-hand',
  short: 'Meter at hand',
  ask: 'Do you have a multimeter with you?',
  phone: 'Do you have a multimeter there, even a cheap one, and are you willing to use it?',
  how: ['Any meter with AC volts and ohms will do.', 'The test tones come from this page, or from a memory stick.'],
  why: 'Ears and eyes rank the suspects. A reading proves one of them.',
  tool: 'none',
  minutes: 0.2,
  observes: [],
  options: { meter: 'Yes, a meter', none: 'No meter here' },
  outcomes: { meter: 'yes', none: 'no meter' },
});

export const metersDigit = choice<'0.001' | '0.01' | '0.1'>({
  id: 'meter-digit',
  short: 'Smallest AC digit',
  ask: 'On its lowest AC volts range, what is the last digit your meter shows?',
  phone: 'Turn the meter to AC volts, lowest range, probes apart. How many digits stand behind the point?',
  how: [
    'AC volts (V~), lowest range. Probes in the air.',
    'Then both probes on a resting battery: it must read 0. A meter that shows about 27 V there lies on every speaker wire: do not use it.',
  ],
  why: 'A basic meter starts at 200 V AC and sees nothing below 0.1 V. We then ask for more signal instead of guessing.',
  tool: 'meter',
  minutes: 1,
  observes: [],
  options: { '0.001': '0.001 V, or it has a mV range', '0.01': '0.01 V', '0.1': '0.1 V' },
  outcomes: { '0.001': '0.001 V', '0.01': '0.01 V', '0.1': '0.1 V' },
  ifCannot: 'We take it as a basic meter, 0.1 V.',
  article: 'two-tones-one-ratio',
  givenUnder: ['tools-at-hand'],
});

/** Whether this meter is fine enough for a reading of "nothing" to prove something. */
export const readsFine = ({ facts }: Situation): boolean => smallestDigitV(facts) < 0.1;

/** The smallest AC digit of the meter at hand; that of a basic meter until somebody has said. */
export function smallestDigitV(facts: Facts): number {
  const answer = facts[metersDigit.id];
  return answer && 'option' in answer && Object.hasOwn(metersDigit.options, answer.option)
    ? Number(answer.option)
    : 0.1;
}
