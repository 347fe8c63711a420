import { describe, expect, it } from 'vitest';
import { type Bench, contradiction, SECOND_FAULT, WRONG_ANSWER } from '../../src/diagnosis/contradiction.ts';
import type { Signs } from '../../src/diagnosis/signs.ts';

/* Three who can be behind a pump that does not start, made up for the test. Each figure is worked out by hand. */
const FUSE: Signs = { weight: 6, shows: { lamp: { off: 1 }, hum: { silent: 1 }, shaft: { turns: 1 } } };
const MOTOR: Signs = { weight: 3, shows: { lamp: { on: 1 }, hum: { silent: 0.8, hums: 0.2 }, shaft: { turns: 1 } } };
const SHAFT: Signs = { weight: 1, shows: { lamp: { on: 1 }, hum: { hums: 1 }, shaft: { stuck: 1 } } };
const PUMP = [FUSE, MOTOR, SHAFT];
const BENCH: Bench = {
  minutesOf: (step) => ({ lamp: 1, hum: 2, shaft: 10 })[step] ?? 0,
  sound: { lamp: 'on', shaft: 'turns' },
};
const found = (outcomes: Readonly<Record<string, string>>, more: Partial<Bench> = {}) =>
  contradiction(PUMP, new Map(Object.entries(outcomes)), { ...BENCH, ...more });

describe('a contradiction', () => {
  it('is not seen while one fault explains every answer', () => {
    expect(found({})).toBeNull();
    expect(found({ lamp: 'off', hum: 'silent', shaft: 'turns' })).toBeNull();
    expect(found({ lamp: 'on', hum: 'hums', shaft: 'stuck' })).toBeNull();
  });
  it('is not seen in an unlikely outcome that is possible: one motor in five hums', () => {
    expect(found({ lamp: 'on', hum: 'hums', shaft: 'turns' })).toBeNull();
  });
  it('names the answer that is wrong if the likeliest is true', () => {
    // With the shaft misread it is the fuse, 6/10 · 1/30; with the lamp misread the shaft, 1/10 · 1/30, a sixth of that.
    expect(found({ lamp: 'off', shaft: 'stuck' })?.step).toBe('shaft');
  });
  it('names the cheaper check of two that restore sense about as well', () => {
    const equal = PUMP.map((signs) => ({ ...signs, weight: 1 }));
    const outcomes = { lamp: 'off', shaft: 'stuck' };
    expect(contradiction(equal, new Map(Object.entries(outcomes)), BENCH)?.step).toBe('lamp');
    const dearLamp = { ...BENCH, minutesOf: (step: string) => (step === 'lamp' ? 20 : 10) };
    expect(contradiction(equal, new Map(Object.entries(outcomes)), dearLamp)?.step).toBe('shaft');
  });
  it('says how much likelier one wrong answer is than two faults at once', () => {
    const pair = SECOND_FAULT * 0.6 * 0.1;
    expect(found({ lamp: 'off', shaft: 'stuck' })?.timesLikelier).toBeCloseTo((WRONG_ANSWER * 0.6) / pair, 12);
  });
  it('is not seen when two faults at once explain everything and no single wrong answer does', () => {
    // Off, stuck and burnt: the fuse gives the first, the shaft the other two. One wrong answer leaves two that clash.
    const burning = [
      { ...FUSE, shows: { ...FUSE.shows, smell: { none: 1 }, noise: { none: 1 } } },
      { ...SHAFT, shows: { ...SHAFT.shows, smell: { burnt: 1 }, noise: { grinds: 1 } } },
    ];
    const both = { lamp: 'off', hum: 'silent', shaft: 'stuck', smell: 'burnt', noise: 'grinds' };
    expect(contradiction(burning, new Map(Object.entries(both)), BENCH)).toBeNull();
  });
  it('does not take what is sound for a sign of two faults: it takes both to leave it as it is', () => {
    // The lamp is on, so no fuse; the shaft turns, so no jam; silent is only the fuse or the motor.
    expect(
      contradiction(
        [FUSE, SHAFT],
        new Map([
          ['lamp', 'on'],
          ['hum', 'silent'],
        ]),
        BENCH,
      ),
    ).not.toBeNull();
  });
  it('leaves an answer alone that was checked already', () => {
    // The lamp, 1/10 · 1/30, is still likelier than the pair, 6/10 · 1/10 · 1/20.
    expect(found({ lamp: 'off', shaft: 'stuck' }, { checked: new Set(['shaft']) })?.step).toBe('lamp');
    expect(found({ lamp: 'off', shaft: 'stuck' }, { checked: new Set(['shaft', 'lamp']) })).toBeNull();
  });
  it.each(['cannot', 'unclear'])('takes “%s” as unknown', (outcome) => {
    expect(found({ lamp: outcome, hum: 'hums', shaft: 'stuck' })).toBeNull();
  });
  it('is not seen in an outcome that nobody shows: then the cause is none of these', () => {
    expect(found({ lamp: 'flickers' })).toBeNull();
    expect(found({ lamp: 'flickers', shaft: 'stuck' })).toBeNull();
  });
  it('is not seen in a step that tells nobody apart', () => expect(found({ smell: 'burnt', lamp: 'off' })).toBeNull());
});
