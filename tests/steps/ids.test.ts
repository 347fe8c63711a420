import { describe, expect, expectTypeOf, it } from 'vitest';
import type { KnownOf, StepId } from '../../src/steps/ids.ts';
import { answeredWith, findingsFrom, is } from '../../src/steps/outcome.ts';

const NONE = findingsFrom(
  { rig: {}, facts: {} },
  () => undefined,
  () => ({}),
);

describe('a step that a condition names', () => {
  it('does not compile when its id is misspelt', () => {
    // @ts-expect-error no step has this name
    expect(is(NONE, 'run-ohm', 'open')).toBe(false);
    // @ts-expect-error no step has this name
    expect(NONE.outcome('amp-lamp')).toBeUndefined();
    // @ts-expect-error no step has this name
    expect(NONE.values('rear-pairs')).toEqual({});
    // @ts-expect-error this step is not asked of an axle
    expect(is(NONE, 'coil-ohms@front', 'open')).toBe(false);
    // @ts-expect-error about its first subject it goes by its id alone
    expect(NONE.outcome('coil-ohms@silent')).toBeUndefined();
    expectTypeOf<'coil-ohms@front-left'>().toExtend<StepId>();
    expectTypeOf<'amp-rear-kind'>().toExtend<StepId>();
  });
  it('does not compile with an outcome of another step', () => {
    // @ts-expect-error only the lamp shows a fault
    expect(is(NONE, 'run-ohms', 'fault')).toBe(false);
    // @ts-expect-error only the lamp shows a fault
    expect(answeredWith({}, 'rear-hiss', 'fault')).toBe(false);
    expectTypeOf<KnownOf<'rear-hiss'>>().toEqualTypeOf<'hiss' | 'silent' | 'cannot'>();
  });
  it('may always turn out as something that he cannot do', () => {
    expect(is(NONE, 'run-ohms', 'cannot', 'open')).toBe(false);
  });
});
