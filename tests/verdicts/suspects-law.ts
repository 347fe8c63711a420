import { describe, expect, it } from 'vitest';
import type { Flow } from '../../machines/rows.ts';
import type { SuspectTexts } from '../../src/verdicts/made-table.ts';
import type { Suspect } from '../../src/verdicts/suspects.ts';

/** What must hold of any table of suspects and the flow that it is ranked in, and of the evidence of its verdicts. */
export function describeSuspects(flow: Flow, suspects: readonly Suspect[], texts: SuspectTexts): void {
  const verdicts = new Map(
    Object.values(flow.states).flatMap((state) =>
      'verdict' in state ? [[state.verdict.id, state.verdict] as const] : [],
    ),
  );
  const outcomesOf = (step: string) => Object.keys(flow.steps.get(step)?.outcomes ?? {});

  describe.each(suspects.map((suspect, i) => [suspect.verdict, i, suspect] as const))(
    'the suspect %s, row %i',
    (id, _, suspect) => {
      it('ends in a verdict of the flow', () => expect([...verdicts.keys()]).toContain(id));
      it('names steps of the flow and outcomes that they have', () => {
        for (const [step, outcomes] of Object.entries(suspect.signs)) {
          expect(outcomes.length).toBeGreaterThan(0);
          expect(outcomesOf(step), step).toEqual(expect.arrayContaining([...outcomes]));
        }
      });
      it('is weighed by history with factors for outcomes that exist, and none of them rules it out', () => {
        expect(suspect.weight).toBeGreaterThan(0);
        for (const [step, factors] of Object.entries(suspect.odds ?? {})) {
          const named = Object.keys(factors).filter((outcome) => outcome !== 'cannot');
          expect(outcomesOf(step), step).toEqual(expect.arrayContaining(named));
          for (const factor of Object.values(factors)) expect(factor).toBeGreaterThan(0);
          // A step that can rule it out may weigh only what rules nothing out.
          if (suspect.signs[step]) expect(named).toEqual([]);
        }
      });
      it('is ruled out together by outcomes that exist', () => {
        for (const outcomes of suspect.notWith ?? [])
          for (const [step, ruling] of Object.entries(outcomes))
            expect(outcomesOf(step), step).toEqual(expect.arrayContaining([...ruling]));
      });
      it('has a check of its own that harms nothing', () => {
        expect(suspect.split).toMatch(/[.?]$/);
        expect(suspect.split).not.toMatch(/jumper|bridge|bigger fuse/i);
      });
    },
  );

  describe('the texts', () => {
    it('are one for each suspect, and none for anybody else', () =>
      expect(Object.keys(texts).toSorted()).toEqual([...new Set(suspects.map(({ verdict }) => verdict))].toSorted()));
    it('have a title of their own, so that a list can be read', () => {
      const titles = Object.values(texts).map(({ title }) => title);
      expect(new Set(titles).size).toBe(titles.length);
    });
  });

  describe('the evidence of a verdict', () => {
    it.each([...verdicts.values()].map((verdict) => [verdict.id, verdict] as const))(
      '%s is steps of the flow',
      (_, { evidence }) => {
        expect([...flow.steps.keys()]).toEqual(expect.arrayContaining([...evidence]));
        expect(new Set(evidence).size).toBe(evidence.length);
      },
    );
  });
}

/** The verdicts of a flow that stand for a fault and that no suspect leads to. */
export function unsuspected(flow: Flow, suspects: readonly Suspect[]): readonly string[] {
  const suspected = new Set(suspects.map(({ verdict }) => verdict));
  return Object.values(flow.states).flatMap((state) =>
    'verdict' in state && state.verdict.faults.length > 0 && !suspected.has(state.verdict.id) ? [state.verdict.id] : [],
  );
}
