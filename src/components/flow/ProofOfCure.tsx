import { proofFor } from '../../causes/proof-of-cure.ts';
import type { Findings } from '../../steps/outcome.ts';
import { toolsAtHand } from '../../steps/tools/tools-at-hand.ts';
import type { Remedy } from '../../verdicts/verdict.ts';

/** The check that proves a cure, with the tools that are at hand. The other one, if there is one, is folded behind it. */
export function ProofOfCure({ remedy, findings }: { readonly remedy: Remedy; readonly findings: Findings }) {
  const { first, other } = proofFor(remedy.proof, findings.outcome(toolsAtHand.id) === 'meter');
  return (
    <>
      <p>{first}</p>
      {other && (
        <details>
          <summary>{other.title}</summary>
          <p>{other.text}</p>
        </details>
      )}
    </>
  );
}
