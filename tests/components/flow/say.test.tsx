import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { readyFor } from '../../../src/components/flow/ready.ts';
import { Say } from '../../../src/components/flow/Say.tsx';
import { ALL_STEPS } from '../../../src/steps/all.ts';
import { offered } from '../../../src/steps/outcome.ts';
import type { Step } from '../../../src/steps/step.ts';
import { plainly } from '../../steps/words.ts';

const steps = new Map(Object.values(ALL_STEPS).map((step) => [step.id, step as Step]));
const situation = { rig: {}, facts: {} };
const said = (step: Step): string => {
  const ready = readyFor(step, { flow: '', events: [] }, steps, situation);
  const html = renderToString(<Say step={step} situation={situation} ready={ready} />);
  return html
    .replace(/<[^>]+>/g, ' ')
    .replaceAll('&amp;', '&')
    .replaceAll('&quot;', '"')
    .replaceAll('&lt;', '<');
};

describe.each([...steps])('what is said to a caller of %s', (_, step) => {
  const text = said(step);
  it('begins with what has to be done first, in the words for the phone', () => {
    const { phone } = readyFor(step, { flow: '', events: [] }, steps, situation);
    const places = phone.map((sentence) => text.indexOf(sentence));
    expect(places).not.toContain(-1);
    for (const place of places) expect(place).toBeLessThan(text.indexOf(plainly(step.phone)));
  });
  it('ends with every answer that is offered, or with every reading that is wanted', () => {
    const wanted =
      step.kind === 'reading'
        ? Object.values(step.readings).map(({ label }) => label)
        : offered(step, situation).map(([, label]) => label);
    for (const one of wanted) expect(text.indexOf(one, text.indexOf(plainly(step.phone)))).toBeGreaterThan(-1);
  });
});
