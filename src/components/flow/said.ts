import type { Standing, Terminal } from '../../case/standing.ts';
import { outcomeNamed } from '../../steps/outcome.ts';
import type { Step } from '../../steps/step.ts';

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

/** What is known of a step: what was answered, or what "my bike" says where nobody asked. */
export function knownOf(step: Step, { terminals, findings }: Standing): string {
  const terminal = terminals.find((one) => one.step.id === step.id);
  if (terminal) return said(terminal, true);
  const outcome = outcomeNamed(findings, step.id) ?? '';
  return `${step.outcomes[outcome] ?? outcome}, from “My bike”`;
}

/** A number is not parted from its unit at the end of a line, nor from the other number that belongs to it. */
export const withUnit = (value: string): string =>
  value.replace(/ (?=(?:[mk]?[VWΩA]|dB|Hz|mm²)(?:[ ,).]|$))/g, '\u00A0').replaceAll(' · ', '\u00A0·\u00A0');
