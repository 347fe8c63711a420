import type { Standing } from '../../case/replay.ts';
import { outcomeNamed } from '../../steps/outcome.ts';
import type { Step } from '../../steps/step.ts';
import { said } from './Wire.tsx';

interface Props {
  /** The step whose answer does not fit the others. */
  readonly step: Step;
  readonly standing: Standing;
  readonly onCheck: () => void;
  readonly onKeep: () => void;
}

/** What was answered, or what "my bike" says where it was not asked. */
function inWords(step: Step, { terminals, findings }: Standing): string {
  const terminal = terminals.find((one) => one.step.id === step.id);
  const outcome = outcomeNamed(findings, step.id) ?? '';
  return terminal ? said(terminal) : `${step.outcomes[outcome] ?? outcome}, from “My bike”`;
}

/** The one answer that is likelier wrong than a fault that shows all of this, and the two ways on. */
export function CheckAgain({ step, standing, onCheck, onKeep }: Props) {
  return (
    <div class="notice" role="status">
      <p>
        One answer does not fit the others. <b>{step.short}</b>: {inWords(step, standing)}.
      </p>
      <p>A slip is likelier than a fault that shows all of this. Check it before you go on.</p>
      <button type="button" onClick={onCheck}>
        Check it again
      </button>
      <button type="button" class="plain" onClick={onKeep}>
        It is right
      </button>
    </div>
  );
}
