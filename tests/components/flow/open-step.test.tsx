import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { OpenStep } from '../../../src/components/flow/OpenStep.tsx';
import { unitKind } from '../../../src/steps/fitted/unit-kind.ts';
import { on } from '../../steps/situation.ts';

const shown = (justCame: boolean): string =>
  renderToString(
    <OpenStep
      step={unitKind}
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
