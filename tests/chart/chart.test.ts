import { describe, expect, it } from 'vitest';
import { FAULT_FLOWS } from '../../src/case/flows.ts';
import { replay } from '../../src/case/replay.ts';
import { BUILDS } from '../../src/chart/builds.ts';
import { COVER_SHARE, onOneSheet } from '../../src/chart/on-one-sheet.ts';
import { heightMm, TYPE_SIZES_PT } from '../../src/chart/type-size.ts';
import type { Branch } from '../../src/chart/unroll.ts';

const charts = (
  await Promise.all(
    FAULT_FLOWS.map(async ([id, row]) => {
      const [flow, late] = [await row.load(), await row.late()];
      return BUILDS.filter((build) => build.fits(flow)).map((build) => {
        return { name: `${id} ${build.id}`, flow, late, build, ...onOneSheet(flow, late, build) };
      });
    }),
  )
).flat();
const each = charts.map((one) => [one.name, one] as const);

const branches = (branch: Branch): readonly Branch[] =>
  branch.kind === 'question' ? [branch, ...branch.answers.flatMap(({ to }) => branches(to))] : [branch];

describe('the charts for the wall', () => {
  it('are there for every fault flow with an amplifier', () => {
    for (const [id] of FAULT_FLOWS) expect(charts.map(({ name }) => name)).toContain(`${id} with-an-amplifier`);
  });
  it.each(each)('%s names the cause of four callers in five, on one side of A4', (_, { chart, sheet, sizePt }) => {
    expect(COVER_SHARE).toBe(0.8);
    expect(chart.coveredShare).toBeGreaterThanOrEqual(COVER_SHARE);
    expect(chart.coveredShare).toBeLessThan(1);
    // ISO 216: A4 is 297 mm high. The margins are what a printer of an office leaves.
    expect(heightMm(sheet, sizePt)).toBeLessThan(297 - 2 * 7 + 0.1);
  });
  it.each(each)('%s takes less room in smaller type', (_, { sheet }) => {
    const heights = TYPE_SIZES_PT.map((sizePt) => heightMm(sheet, sizePt));
    expect(heights).toEqual(heights.toSorted((a, b) => b - a));
  });
  it.each(each)('%s gives no branch more callers than come to it', (_, { chart }) => {
    for (const branch of branches(chart.root))
      if (branch.kind === 'question')
        expect(branch.answers.reduce((sum, { share }) => sum + share, 0)).toBeLessThanOrEqual(branch.share + 1e-9);
  });
  it.each(each)('%s leads from its first box to every other, and to no box that is not there', (_, { sheet }) => {
    expect(sheet.boxes.map(({ number }) => number)).toEqual(sheet.boxes.map((_, i) => i + 1));
    const led = sheet.boxes.flatMap(({ answers }) =>
      answers.flatMap(({ leads }) => (leads.kind === 'box' ? [leads.number] : [])),
    );
    const first = sheet.boxes.slice(0, 1).map(({ number }) => number);
    expect(first).toEqual([1]);
    expect(new Set([...first, ...led])).toEqual(new Set(sheet.boxes.map(({ number }) => number)));
    // Nobody is sent round in a circle.
    const behind = (number: number, seen: readonly number[] = []): boolean =>
      !seen.includes(number) &&
      (sheet.boxes[number - 1]?.answers ?? []).every(
        ({ leads }) => leads.kind !== 'box' || behind(leads.number, [...seen, number]),
      );
    for (const number of first) expect(behind(number)).toBe(true);
  });
  it.each(each)('%s says what to do in each box, and where each of its answers leads', (_, { sheet }) => {
    for (const { ask, answers } of sheet.boxes) {
      expect(ask.length).toBeGreaterThan(10);
      expect(answers.length).toBeGreaterThan(0);
      for (const { said, leads } of answers) {
        expect(said.length).toBeGreaterThan(1);
        if (leads.kind === 'causes') expect(leads.titles.every((title) => title.length > 3)).toBe(true);
      }
    }
  });
  it.each(each)('%s has in each box one row for each place to go', (_, { sheet }) => {
    for (const { answers } of sheet.boxes) {
      const places = answers.map(({ leads }) => JSON.stringify(leads));
      expect(new Set(places).size).toBe(places.length);
    }
  });
  it.each(each)('%s asks nothing twice on one way', (_, { chart }) => {
    const walk = (branch: Branch, asked: readonly string[]): void => {
      if (branch.kind !== 'question') return;
      expect(asked).not.toContain(branch.step.id);
      for (const { to } of branch.answers) walk(to, [...asked, branch.step.id]);
    };
    walk(chart.root, []);
  });
  it.each(each)('%s begins as the page does with the same bike', (_, { flow, late, build, chart }) => {
    // The page asks about the past first, and takes any answer to it; the paper leaves out what tells little.
    if (chart.root.kind !== 'question' || flow.told.has(chart.root.step.id)) return;
    let events: Parameters<typeof replay>[1]['events'] = [{ type: 'rig', rig: build.rig }];
    for (let i = 0; i < 20; i++) {
      const { open } = replay(flow, { flow: flow.id, events }, late);
      if (open.kind !== 'step' || !flow.inOrder.includes(open.step)) {
        expect('step' in open && open.step.id).toBe(chart.root.step.id);
        return;
      }
      events = [...events, { type: 'answer', step: open.step.id, answer: { cannot: true } }];
    }
    expect.fail('the page never came to its first look');
  });
});
