import { existsSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../machines/amp-wont-turn-on.ts';
import { isAReflashNeeded } from '../../machines/is-a-reflash-needed.ts';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import { whatIsInTheHeadUnit } from '../../machines/what-is-in-the-head-unit.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import { ALL_STEPS } from '../../src/steps/all.ts';
import { CAUTIONS } from '../../src/steps/cautions.ts';
import { probesOf } from '../../src/steps/probes-of.ts';
import { EVERY_PART, inWords, type Step, TOOL_NAMES } from '../../src/steps/step.ts';
import { TEST_POINTS } from '../../src/steps/test-points.ts';
import { type Digit, on } from './situation.ts';
import { allWords, plainly, TOLD } from './words.ts';

const FLOWS = [noRearSound, ampWontTurnOn, isAReflashNeeded, whatIsInTheHeadUnit];
const STEPS: ReadonlyMap<string, Step> = new Map(Object.entries(ALL_STEPS));
const steps = [...STEPS.values()].map((step) => [step.id, step] as const);

const DIGITS: readonly Digit[] = ['0.001', '0.01', '0.1'];
const SITUATIONS = [{}, ...Object.values(EXAMPLE_RIGS)].flatMap((rig) => DIGITS.map((digit) => on(rig, digit)));

/** Everything that a step says in words, on every bike and meter that changes them. */
function textsOf(step: Step): readonly string[] {
  const how = typeof step.how === 'function' ? SITUATIONS.flatMap(step.how) : step.how;
  const options = step.kind === 'reading' ? [] : Object.values<string>(step.options);
  const readings =
    step.kind === 'reading' ? Object.values(step.readings).flatMap(({ label, impossible }) => [label, impossible]) : [];
  const healthy = step.kind === 'reading' ? SITUATIONS.map((s) => step.healthy({}, s)) : [];
  const rest = [
    ...[step.short, step.ask, step.phone].flatMap(allWords),
    step.why,
    ...(step.ifCannot === undefined ? [] : [step.ifCannot]),
  ];
  return [...new Set([...rest, ...how, ...Object.values<string>(step.outcomes), ...options, ...readings, ...healthy])];
}
const sentencesOf = (text: string) => text.split(/(?<=[.?!:…])\s+/);
const wordsOf = (sentence: string) => sentence.split(/\s+/).filter((word) => /[\p{L}\d]/u.test(word));

describe('the steps of all flows', () => {
  it('are one step for one name, whichever flow asks it', () => {
    for (const flow of FLOWS) {
      for (const [id, step] of flow.steps) expect(JSON.stringify(step)).toBe(JSON.stringify(STEPS.get(id)));
      expect(flow.steps.size).toBeGreaterThan(5);
    }
    expect(STEPS.size).toBeGreaterThan(100);
  });
  it('have names that can stand in a link', () => {
    for (const id of STEPS.keys()) expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*(@[a-z]+(-[a-z]+)*)?$/);
  });
  it.each(FLOWS)('are called differently on the wire of $id', (flow) => {
    for (const told of TOLD) {
      const shorts = [...flow.steps.values()].map(({ short }) => inWords(short, told));
      expect(new Set(shorts).size).toBe(shorts.length);
    }
  });
});

describe.each(steps)('%s', (id, step) => {
  it('asks one question at the bike and another wording of it on the phone, and says how and why', () => {
    for (const told of TOLD) {
      const [ask, phone] = [inWords(step.ask, told), inWords(step.phone, told)];
      expect(ask).toMatch(/\?$/);
      expect(phone).not.toBe('');
      expect(phone).not.toBe(ask);
    }
    for (const situation of SITUATIONS) {
      expect((typeof step.how === 'function' ? step.how(situation) : step.how).length).toBeGreaterThan(0);
    }
    for (const text of textsOf(step)) {
      expect(text.trim()).toBe(text);
      expect(text).not.toMatch(/^$|undefined|NaN|Infinity|\[object|\d\.\d{4,}/);
    }
  });
  it('has no sentence of more than 30 words', () => {
    const long = textsOf(step)
      .flatMap(sentencesOf)
      .filter((sentence) => wordsOf(sentence).length > 30);
    expect(long).toEqual([]);
  });
  it('has a name for each outcome, and an outcome for each answer', () => {
    const outcomes = Object.keys(step.outcomes);
    expect(outcomes.length).toBeGreaterThan(1);
    expect(outcomes).not.toContain('cannot');
    if (step.kind !== 'reading') expect(outcomes.toSorted()).toEqual(Object.keys(step.options).toSorted());
  });
  it('names cautions, tool, parts, test points, steps and an article that exist', () => {
    expect(Object.keys(CAUTIONS)).toEqual(expect.arrayContaining([...(step.cautions ?? [])]));
    expect(Object.keys(TOOL_NAMES)).toContain(step.tool);
    expect(EVERY_PART).toEqual(expect.arrayContaining([...step.observes]));
    expect([...STEPS.keys()]).toEqual(expect.arrayContaining([...(step.givenUnder ?? [])]));
    expect(step.givenUnder ?? []).not.toContain(id);
    if (step.article !== undefined) {
      const kinds = ['explanation', 'how-to'];
      expect(kinds.filter((kind) => existsSync(`content/${kind}/${step.article}.mdx`))).toHaveLength(1);
    }
    if (step.kind !== 'reading') return;
    for (const situation of SITUATIONS) {
      const places = probesOf(step, undefined, situation);
      if (!places) continue;
      const { red, black } = places;
      expect(Object.keys(TEST_POINTS)).toEqual(expect.arrayContaining([red, black]));
      expect(red).not.toBe(black);
    }
  });
  it('takes more than no time, and a measurement takes a meter', () => {
    expect(step.minutes).toBeGreaterThan(0);
    expect(step.minutes).toBeLessThanOrEqual(15);
    if (step.kind === 'reading') expect(step.tool).toBe('meter');
  });
});

/* A caller hears the spoken line and nothing else. Harm that the trade knows, from memory. */
describe('the spoken line of a step', () => {
  const phoneOf = (id: string) => plainly(STEPS.get(id)?.phone ?? '');
  it.each(['lid-check', 'swap-outputs', 'swap-inputs', 'input-plug', 'body-fuse', 'one-by-one', 'spare-fuse'])(
    'says key off in %s, before a plug or a fuse goes in or out',
    (id) => expect(phoneOf(id)).toMatch(/key off/i),
  );
  it('asks for no swap of outputs while a wire may touch the frame', () =>
    expect(phoneOf('swap-outputs')).toMatch(/^Skip this if .* touch the frame\./));
  it.each(['supply-under-load', 'plus-path', 'joint-drop'])('says how the hot lamp is held in %s', (id) =>
    expect(phoneOf(id)).toMatch(/very hot: hold it by its leads, away from seat and plastic\./),
  );
  it.each(['amp-terminals', 'supply-under-load', 'half-supply'])(
    'keeps the probe off the frame at the battery positive in %s',
    (id) => expect(phoneOf(id)).toMatch(/never touching the frame/),
  );
  it('tells whoever has a meter that reads DC as AC to take another one', () =>
    expect(phoneOf('meter-digit')).toMatch(/swapped: about 27, either time\?.* another meter/));
});

/* What stands beside “Go on without it” is no choice of its own. Common sense, no published source. */
describe('what follows where something cannot be done', () => {
  it('says that it comes without it, where another way takes its place', () => {
    expect(STEPS.get('supply-under-load')?.ifCannot).toMatch(/^Without it we .*temporary wires/);
    for (const { id, ifCannot = '' } of STEPS.values()) expect(ifCannot, id).not.toMatch(/\bwe\b[^.?]* instead\.$/i);
  });
});

describe('a reading of a coil that is not named', () => {
  it('is each one’s own: both may be silent', () => {
    const ask = STEPS.get('run-split')?.ask ?? '';
    expect(plainly(ask)).toContain('each silent coil’s own reading');
    const left = { rig: {}, facts: { 'which-silent': { option: 'left' } } };
    expect(inWords(ask, left)).toContain('the rear left coil’s own reading');
  });
});
