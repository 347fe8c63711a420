import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { noRearSound } from '../../../machines/no-rear-sound.ts';
import { ProofOfCure } from '../../../src/components/flow/ProofOfCure.tsx';
import { findingsOver } from '../../../src/steps/outcome.ts';
import type { Facts } from '../../../src/steps/step.ts';
import type { Remedy } from '../../../src/verdicts/verdict.ts';

const remedy = (proof: Remedy['proof']): Remedy => ({
  what: 'It is loose.',
  certainty: 'proved',
  howSure: 'It was seen.',
  numbers: [],
  fix: ['Push it home.'],
  tools: 'none',
  minutes: 1,
  who: 'You.',
  notBuy: [],
  cautions: [],
  proof,
});
const shown = (proof: Remedy['proof'], facts: Facts) =>
  renderToString(<ProofOfCure remedy={remedy(proof)} findings={findingsOver(noRearSound.steps)({ rig: {}, facts })} />);
const BOTH = { byEar: 'Both rears play.', byMeter: 'Both rears read alike.' };

describe('ProofOfCure', () => {
  it('asks a rider without a meter for ears, and folds the meter away', () => {
    expect(shown(BOTH, { 'tools-at-hand': { option: 'none' } })).toBe(
      '<p>Both rears play.</p><details><summary>With a meter</summary><p>Both rears read alike.</p></details>',
    );
  });
  it('asks for ears first where nobody has said what is at hand', () => {
    expect(shown(BOTH, {})).toMatch(/^<p>Both rears play\.<\/p>/);
  });
  it('asks for the meter that is at hand', () => {
    expect(shown(BOTH, { 'tools-at-hand': { option: 'meter' } })).toMatch(/^<p>Both rears read alike\.<\/p>/);
  });
  it('shows a proof of one sentence as it is', () => {
    expect(shown('Ride, and listen.', {})).toBe('<p>Ride, and listen.</p>');
  });
});
