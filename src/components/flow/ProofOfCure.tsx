import type { ProofOfCure as Proof } from '../../causes/cause.ts';
import { proofFor } from '../../causes/proof-of-cure.ts';

interface Props {
  readonly proof: string | Proof;
  readonly hasMeter: boolean;
}

/** The check that proves a cure, with the tools at hand. What would take a meter is folded behind it where there is none. */
export function ProofOfCure({ proof, hasMeter }: Props) {
  const { first, sensed, other } = proofFor(proof, hasMeter);
  return (
    <>
      <p>{first}</p>
      {sensed && <p>{sensed}</p>}
      {other && (
        <details>
          <summary>{other.title}</summary>
          <p>{other.text}</p>
        </details>
      )}
    </>
  );
}
