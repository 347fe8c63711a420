import type { Terminal } from '../../case/standing.ts';

/** A label within a sentence: “80 Hz tone” keeps its unit, “AC volts” its letters. */
const within = (label: string): string => label.replace(/^[A-Z](?=[a-z\s])/, (first) => first.toLowerCase());

/** What was answered on a terminal: the outcome in words, and the readings behind it. */
export function said({ step, answer, outcome }: Terminal, named = false): string {
  if ('cannot' in answer) return step.kind === 'rig' || step.minutes < 1 ? 'not known' : 'could not be done';
  const words = step.outcomes[outcome] ?? outcome;
  if (step.kind !== 'reading' || !('readings' in answer)) return words;
  const readings = Object.entries(step.readings).flatMap(([name, { unit, label }]) => {
    const text = answer.readings[name];
    const written = text && (/[a-zΩ]\s*$/i.test(text) ? text : `${text} ${unit}`);
    return written ? [named ? `${within(label)} ${written}` : written] : [];
  });
  return `${words} (${readings.join(', ')})`;
}
