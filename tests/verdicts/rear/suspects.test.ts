import { describe, expect, it } from 'vitest';
import { noRearSound } from '../../../machines/no-rear-sound.ts';
import { REAR_SUSPECTS } from '../../../src/verdicts/rear/suspects.ts';

const verdicts = new Map(
  Object.values(noRearSound.states).flatMap((state) =>
    'verdict' in state ? [[state.verdict.id, state.verdict] as const] : [],
  ),
);

/** The table of signs against the flow that it is ranked in. Signs themselves: common practice, no published source. */
describe.each(REAR_SUSPECTS.map((suspect) => [suspect.verdict, suspect] as const))('the suspect %s', (id, suspect) => {
  it('ends in a verdict of the flow', () => expect([...verdicts.keys()]).toContain(id));
  it('names steps of the flow and outcomes that they have', () => {
    for (const [step, outcomes] of Object.entries(suspect.signs)) {
      expect(outcomes.length).toBeGreaterThan(0);
      expect(Object.keys(noRearSound.steps.get(step)?.outcomes ?? {})).toEqual(expect.arrayContaining([...outcomes]));
    }
  });
  it('is weighed by history with factors for outcomes that exist, and none of them rules it out', () => {
    expect(suspect.weight).toBeGreaterThan(0);
    for (const [step, factors] of Object.entries(suspect.odds ?? {})) {
      expect(Object.keys(noRearSound.steps.get(step)?.outcomes ?? {})).toEqual(
        expect.arrayContaining(Object.keys(factors).filter((outcome) => outcome !== 'cannot')),
      );
      for (const factor of Object.values(factors)) expect(factor).toBeGreaterThan(0);
      // A step that can rule it out may weigh only what rules nothing out.
      for (const outcome of Object.keys(factors)) {
        if (suspect.signs[step]) expect(outcome).toBe('cannot');
      }
    }
  });
  it('has a check of its own that harms nothing', () => {
    expect(suspect.split).toMatch(/[.?]$/);
    expect(suspect.split).not.toMatch(/jumper|bridge|bigger fuse/i);
  });
});

describe('the suspects', () => {
  it('cover every verdict that stands for a fault, apart from the other way round', () => {
    const suspected = new Set(REAR_SUSPECTS.map(({ verdict }) => verdict));
    // A wire of an input pair that is off takes one side, never the whole rear: nobody suspects it before it is read.
    const onlyRead = ['one-input-lead-open'];
    const faulty = [...verdicts.values()]
      .filter(({ id, faults }) => faults.length > 0 && !onlyRead.includes(id))
      .map(({ id }) => id);
    expect(faulty.filter((id) => !suspected.has(id))).toEqual([]);
  });
  it('have one title for one verdict', () => {
    const titles = new Map(REAR_SUSPECTS.map(({ verdict, title }) => [verdict, title]));
    for (const { verdict, title } of REAR_SUSPECTS) expect(titles.get(verdict)).toBe(title);
  });
});

describe('the evidence of a verdict', () => {
  it.each([...verdicts.values()].map((verdict) => [verdict.id, verdict] as const))(
    '%s is steps of the flow',
    (_, { evidence }) => {
      expect([...noRearSound.steps.keys()]).toEqual(expect.arrayContaining([...evidence]));
      expect(new Set(evidence).size).toBe(evidence.length);
    },
  );
});
