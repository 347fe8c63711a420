import { type Findings, is } from '../../steps/outcome.ts';
import { proofFor } from '../../verdicts/proof.ts';
import type { Remedy } from '../../verdicts/verdict.ts';

/** The check that proves a cure, with the tools that are at hand. The other one, if there is one, is folded behind it. */
export function ProofOfCure({ remedy, findings }: { readonly remedy: Remedy; readonly findings: Findings }) {
  const { first, other } = proofFor(remedy.proof, is(findings, 'tools-at-hand', 'meter'));
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
