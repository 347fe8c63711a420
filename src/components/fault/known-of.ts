import type { Standing } from '../../case/standing.ts';
import { outcomeNamed } from '../../steps/outcome.ts';
import type { Step } from '../../steps/step.ts';
import { said } from '../flow/said.ts';

/** What is known of a step: what was answered, or what "my bike" says where nobody asked. */
export function knownOf(step: Step, { terminals, findings }: Standing): string {
  const terminal = terminals.find((one) => one.step.id === step.id);
  if (terminal) return said(terminal, true);
  const outcome = outcomeNamed(findings, step.id) ?? '';
  return `${step.outcomes[outcome] ?? outcome}, from “My bike”`;
}
