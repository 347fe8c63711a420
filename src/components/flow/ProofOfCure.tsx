import type { ProofOfCure as Proof } from '../../causes/cause.ts';
import { proofFor } from '../../causes/proof-of-cure.ts';

interface Props {
  readonly proof: string | Proof;
  readonly hasMeter: boolean;
}

/** The check that proves a cure, with the tools that are at hand. The other one, if there is one, is folded behind it. */
export function ProofOfCure({ proof, hasMeter }: Props) {
  const { first, other } = proofFor(proof, hasMeter);
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
