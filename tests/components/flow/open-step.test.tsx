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
