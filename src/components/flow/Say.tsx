import { offered } from '../../steps/outcome.ts';
import { inWords, type Situation, type Step } from '../../steps/step.ts';
import type { Ready } from './ready.ts';

/** The answers as they are read out: every one that is offered, or the readings that are wanted. */
function answersIn(step: Step, situation: Situation): string {
  if (step.kind === 'reading')
    return `Then read me: ${Object.values(step.readings)
      .map(({ label }) => label)
      .join('; ')}.`;
  const labels = offered(step, situation).map(([, label]) => `“${label}”`);
  return `The answers are: ${labels.join(', ')}. Or: you don’t know.`;
}

interface Props {
  readonly step: Step;
  readonly situation: Situation;
  readonly ready: Ready;
}

/** What is said to a caller. He hears nothing else, so it begins with what has to be done and ends with every answer. */
export function Say({ step, situation, ready: { phone } }: Props) {
  return (
    <div class="say seat-only-phone">
      <p class="hint">Say:</p>
      {phone.length > 0 && <p>{phone.join(' ')}</p>}
      <p>{inWords(step.phone, situation)}</p>
      <p>{answersIn(step, situation)}</p>
    </div>
  );
}
