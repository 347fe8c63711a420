import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { ProofOfCure } from '../../../src/components/flow/ProofOfCure.tsx';

const shown = (proof: Parameters<typeof ProofOfCure>[0]['proof'], hasMeter: boolean) =>
  renderToString(<ProofOfCure proof={proof} hasMeter={hasMeter} />);
const BOTH = { byEar: 'Both rears play.', byMeter: 'Both rears read alike.' };

describe('ProofOfCure', () => {
  it('asks a rider without a meter for ears, and folds the meter away', () => {
    expect(shown(BOTH, false)).toBe(
      '<p>Both rears play.</p><details><summary>With a meter</summary><p>Both rears read alike.</p></details>',
    );
  });
  it('asks for the meter that is at hand', () => {
    expect(shown(BOTH, true)).toBe('<p>Both rears read alike.</p><p>Then look and listen: both rears play.</p>');
  });
  it('shows a proof of one sentence as it is', () => {
    expect(shown('Ride, and listen.', true)).toBe('<p>Ride, and listen.</p>');
  });
});
