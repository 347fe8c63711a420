import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { ANSWER_KEYS } from '../../../src/browser/use-answer-keys.ts';
import { OpenStep } from '../../../src/components/flow/OpenStep.tsx';
import { ALL_STEPS } from '../../../src/steps/all.ts';
import { unitKind } from '../../../src/steps/fitted/unit-kind.ts';
import type { Step } from '../../../src/steps/step.ts';
import { whichCorner } from '../../../src/steps/told/which-corner.ts';
import { on } from '../../steps/situation.ts';

const shown = (justCame: boolean, step: Step = unitKind): string =>
  renderToString(
    <OpenStep
      step={step}
      situation={on({})}
      ready={{ bike: [], phone: [], standing: [], brought: [], cautions: [], own: [], readBefore: [], care: [] }}
      seat="bike"
      was={undefined}
      lastTime={undefined}
      draft={{}}
      notes={[]}
      parts={undefined}
      disabled={false}
      justCame={justCame}
      doubt={undefined}
      whyNow={() => undefined}
      root="/"
      onDraft={() => undefined}
      onAnswer={() => undefined}
    />,
  );

describe('a question that has just taken the place of another', () => {
  it('takes no tap at first: the second one of a double tap was meant for the other', () => {
    expect(shown(true)).toMatch(/<div[^>]* inert[^>]*><ul class="options">/);
    expect(shown(false)).not.toContain('inert');
  });
});

describe('the keys of the answers', () => {
  it('are one for each, of every question: digits first, then letters; 0 is for none of them', () => {
    for (const step of Object.values<Step>(ALL_STEPS))
      if (step.kind !== 'reading')
        expect(Object.keys(step.options).length, step.id).toBeLessThanOrEqual(ANSWER_KEYS.length);
    const keys = [...shown(false, whichCorner).matchAll(/class="key[^>]*>(.)</g)].map(([, key]) => key);
    expect(keys).toEqual([...'123456789ab0']);
    expect(new Set([...ANSWER_KEYS, '0']).size).toBe(ANSWER_KEYS.length + 1);
  });
});

describe('how a question is answered', () => {
  it('is numbered only where something is done one after the other: two alternatives are no steps', () => {
    for (const step of Object.values<Step>(ALL_STEPS).filter(({ minutes }) => minutes >= 1)) {
      const html = shown(false, step);
      if (step.observes.length === 0) expect(html, step.id).not.toContain('<ol class="how">');
      else expect(html, step.id).toContain('<ol class="how">');
    }
    expect(shown(false, ALL_STEPS['rear-amp-turn-on'])).toContain('<ul class="how">');
  });
});
