import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { ProbeDrawing } from '../../../src/components/flow/ProbeDrawing.tsx';
import { EXAMPLE_RIGS } from '../../../src/rig/examples.ts';
import { ALL_STEPS } from '../../../src/steps/all.ts';
import { probesOf } from '../../../src/steps/probes-of.ts';
import type { Probes, ReadingStep, Step } from '../../../src/steps/step.ts';
import { TEST_POINTS, type TestPoint } from '../../../src/steps/test-points.ts';
import { on } from '../../steps/situation.ts';

const STEPS = (Object.values(ALL_STEPS) as readonly Step[]).filter(
  (step): step is ReadingStep => step.kind === 'reading',
);
const SITUATIONS = [{}, ...Object.values(EXAMPLE_RIGS)].map((rig) => on(rig));

/** What is written on the place, or beside it, where the tip of a probe belongs. */
const WRITTEN_AT: Readonly<Record<TestPoint, string>> = {
  'unit-front-plus': 'front',
  'unit-front-minus': 'front',
  'unit-rear-plus': 'rear',
  'unit-rear-minus': 'rear',
  'amp-in-plus': 'input pair',
  'amp-in-minus': 'input pair',
  'amp-out-plus': 'one output',
  'amp-out-minus': 'one output',
  'run-plus': 'speaker’s half',
  'run-minus': 'speaker’s half',
  'speaker-plus': 'tabs',
  'speaker-minus': 'tabs',
  frame: 'a bare, bright bolt',
  'battery-minus': '−',
  'battery-plus': '+',
  'fuse-in': 'battery side',
  'fuse-out': 'amp side',
  'amp-plus': '+',
  'amp-ground': 'ground',
  'plus-copper': '+',
  'ground-copper': 'ground',
  'amp-remote': 'remote',
  'remote-start': 'remote out',
};

interface Drawn {
  readonly caption: string;
  readonly tips: Readonly<Record<'red' | 'black', readonly [x: number, y: number]>>;
  /** The words on the two places, where they stand on the drawing. */
  readonly words: readonly { readonly text: string; readonly x: number; readonly y: number }[];
}

const plain = (html: string) => html.replace(/<[^>]+>/g, '').trim();

function drawn(reading: string, probes: Probes): Drawn {
  const html = renderToString(<ProbeDrawing reading={reading} probes={probes} conditions={[]} onAmp />);
  const tip = (name: string) => {
    const [, cx = '', cy = ''] =
      new RegExp(`class="probe-${name}".*?<circle cx="([\\d.]+)" cy="([\\d.]+)"`, 's').exec(html) ?? expect.fail(html);
    return [Number(cx), Number(cy)] as const;
  };
  const panels = html.split('transform="translate(').slice(1);
  const words = panels.flatMap((panel) => {
    const [, x = '', y = ''] = /^([\d.]+) ([\d.]+)\)/.exec(panel) ?? [];
    const inside = panel.split(/class="probe-/)[0] ?? '';
    return [...inside.matchAll(/<text x="([\d.]+)" y="([\d.]+)"[^>]*>([^<]+)</g)].map(
      ([, wordX, wordY, text = '']) => ({
        text,
        x: Number(x) + Number(wordX),
        y: Number(y) + Number(wordY),
      }),
    );
  });
  return {
    caption: plain(/<figcaption.*<\/figcaption>/s.exec(html)?.[0] ?? ''),
    tips: { red: tip('red'), black: tip('black') },
    words: words.filter(({ text }) => text !== 'wire side'),
  };
}

const nearest = ({ words, tips }: Drawn, name: 'red' | 'black'): string | undefined => {
  const [x, y] = tips[name];
  return words.toSorted((a, b) => Math.hypot(a.x - x, a.y - y) - Math.hypot(b.x - x, b.y - y))[0]?.text;
};

describe.each(STEPS.map((step) => [step.id, step] as const))('the drawing of %s', (_, step) => {
  it('shows for each reading both probes at their places, and says the same in its caption', () => {
    for (const reading of Object.values(step.readings))
      for (const situation of SITUATIONS) {
        const probes = probesOf(step, reading, situation);
        if (!probes) continue;
        const drawing = drawn(reading.label, probes);
        expect(drawing.caption).toBe(
          `${reading.label}. Red probe: ${TEST_POINTS[probes.red]}. Black probe: ${TEST_POINTS[probes.black]}.`,
        );
        expect([nearest(drawing, 'red'), nearest(drawing, 'black')]).toEqual([
          WRITTEN_AT[probes.red],
          WRITTEN_AT[probes.black],
        ]);
        expect(drawing.tips.red).not.toEqual(drawing.tips.black);
      }
  });
});

describe('a drawing', () => {
  it('keeps both probes and their names inside its frame, wherever they stand', () => {
    for (const red of Object.keys(TEST_POINTS) as TestPoint[])
      for (const black of Object.keys(TEST_POINTS) as TestPoint[]) {
        const { tips } = drawn('Any', { red, black });
        for (const [x, y] of Object.values(tips)) {
          expect(x).toBeGreaterThan(10);
          expect(x).toBeLessThan(280);
          expect(y).toBeLessThan(150);
        }
      }
  });
  it('is left out for a reading that is taken at no place of the bike', () => {
    expect(renderToString(<ProbeDrawing reading="Any" probes={null} conditions={[]} onAmp />)).toBe('');
  });
  it.each([
    ['meter-on-ac', 'V AC'],
    ['meter-on-dc', 'V DC'],
    ['meter-on-ohms', 'Ω'],
  ] as const)('shows what the meter is set to: %s', (condition, shown) => {
    const probes = { red: 'battery-plus', black: 'battery-minus' } as const;
    const html = renderToString(
      <ProbeDrawing reading="Any" probes={probes} conditions={['key-off', condition]} onAmp={false} />,
    );
    expect(html).toContain(`>${shown}</text>`);
  });
});
