import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { asText, Sheet } from '../../../src/components/flow/Sheet.tsx';
import { fixSections } from '../../../src/components/flow/sheet-sections.ts';
import { CAUTIONS } from '../../../src/steps/cautions.ts';

const SECTIONS = [
  ...fixSections({
    fix: ['Key off.', 'Fuse out.'],
    tools: 'None',
    minutes: 15,
    who: 'You.',
    parts: ['One fuse, 40 A'],
    notBuy: ['A bigger fuse.'],
    cautions: ['key-off', 'fuse'],
  }),
  { title: 'Nothing', lines: [] },
];

describe('what is taken along of a verdict', () => {
  const text = asText({ title: 'Main fuse open', sections: SECTIONS });
  it('is plain text: headings, the steps numbered, no heading without lines', () => {
    expect(text).toMatch(/^Main fuse open\n\n/);
    expect(text).toContain('DO THIS\n1. Key off.\n2. Fuse out.');
    expect(text).not.toContain('NOTHING');
    expect(text).not.toContain('\u00A0');
  });
  it('has every caution with its signal word, the gravest first, before what is to be done', () => {
    const places = [`WARNING: ${CAUTIONS.fuse}`, `NOTICE: ${CAUTIONS['key-off']}`, 'DO THIS'].map((part) =>
      text.indexOf(part),
    );
    expect(places).not.toContain(-1);
    expect(places).toEqual(places.toSorted((a, b) => a - b));
  });
  it('is the same on paper', () => {
    const html = renderToString(<Sheet title="Main fuse open" sections={SECTIONS} />);
    const sheet = html.slice(html.indexOf('class="sheet'));
    for (const { lines } of SECTIONS) for (const line of lines) expect(sheet).toContain(line);
  });
});
