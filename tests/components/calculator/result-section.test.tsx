import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { CALCULATORS } from '../../../src/calculators/all.ts';
import { shown } from '../../../src/calculators/shown.ts';
import { worked } from '../../../src/calculators/typed.ts';
import { ResultSection } from '../../../src/components/calculator/ResultSection.tsx';

describe('the result of a calculator', () => {
  it.each(CALCULATORS.map((one) => [one.id, one] as const))(
    '%s is drawn with its answer, and old ones say so',
    (_, one) => {
      const { result } = worked(one, {});
      const [id = ''] = Object.keys(one.inputs);
      const fresh = renderToString(<ResultSection {...shown(one, worked(one, {}))} assumed={0} />);
      const old = renderToString(<ResultSection {...shown(one, worked(one, { [id]: 'abc' }), result)} assumed={0} />);
      for (const html of [fresh, old]) {
        expect(html).toContain(`<b>${result?.lines[0]?.text}</b>`);
        expect(html).toContain('role="img"');
      }
      expect(fresh).not.toContain('last result');
      expect(old).toMatch(
        /class="result old".*role="status" class="notice">“[^<]*last result that could be worked out\./,
      );
    },
  );
});
