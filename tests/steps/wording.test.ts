import { existsSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../machines/amp-wont-turn-on.ts';
import { isAReflashNeeded } from '../../machines/is-a-reflash-needed.ts';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import { whatIsInTheHeadUnit } from '../../machines/what-is-in-the-head-unit.ts';
import { probesOf } from '../../src/components/flow/probes.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import { ALL_STEPS } from '../../src/steps/all.ts';
import { CAUTIONS } from '../../src/steps/cautions.ts';
import { conditionOf } from '../../src/steps/conditions.ts';
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
      const { red, black } = typeof step.probes === 'function' ? step.probes(situation) : step.probes;
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

/*
 * Harm that the trade knows, from memory: a probe that slips to the frame kills a bridge output, ohms on a live output
 * kill the meter, a tone at full volume hurts, an engine indoors kills.
 */
describe('the cautions of a step', () => {
  const where = (holds: (step: Step) => boolean) => [...STEPS.values()].filter(holds).map(({ id }) => id);
  /** What is read before a step: its own cautions, and those of what it needs. */
  const cautionsOf = (step: Step | undefined) => [
    ...(step?.cautions ?? []),
    ...(step?.conditions ?? []).flatMap((id) => conditionOf(id).cautions),
  ];
  const without = (caution: keyof typeof CAUTIONS, ids: readonly string[]) =>
    ids.filter((id) => !cautionsOf(STEPS.get(id)).includes(caution));
  const touches = (point: RegExp) => (step: Step) =>
    step.kind === 'reading' &&
    SITUATIONS.some((s) =>
      Object.values(step.readings)
        .flatMap((reading) => Object.values(probesOf(step, reading, s) ?? {}))
        .some((at) => point.test(at)),
    );

  it('warn of the bridge output wherever a probe touches one of the head unit', () => {
    const ids = where(touches(/^(unit|amp-in)-/));
    expect(ids).toEqual(
      expect.arrayContaining(['rear-pair', 'amp-in', 'half-supply', 'tones-off', 'tones-running', 'top-step']),
    );
    expect(without('bridge', ids)).toEqual([]);
  });
  it('ask for a dead circuit wherever ohms are read', () => {
    const ids = where((s) => s.kind === 'reading' && Object.values(s.readings).some(({ unit }) => unit === 'Ω'));
    const names = new Set(ids.map((id) => STEPS.get(id)?.about?.step ?? id));
    const expected = ['amp-runs', 'amp-wires-to-frame', 'coil-ohms', 'run-ohms', 'wire-to-frame'];
    expect([...names].toSorted()).toEqual(expected);
    expect(without('ohms-dead', [...ids, 'run-split'])).toEqual([]);
  });
  it('warn of the tone wherever one is played, and of the top of the scale at the loudest step', () => {
    const ids = where((s) => s.kind === 'reading' && (s.tones?.length ?? 0) > 0);
    expect(ids.length).toBeGreaterThan(4);
    expect(without('loud-tone', ids)).toEqual(['top-step']);
    expect(without('full-tone', ['top-step'])).toEqual([]);
  });
  it('keep a running engine outdoors', () => {
    const ids = where((s) => /engine (on|idling)/i.test(plainly(s.ask) + plainly(s.phone)));
    expect(ids).toEqual(['tones-running']);
    expect(without('outdoors', ids)).toEqual([]);
  });
  it('forbid an output swap while a short is possible, and a 9 V battery as the cell', () => {
    expect(without('short-suspected', ['swap-outputs'])).toEqual([]);
    expect(
      without(
        'cell',
        where(({ tool }) => tool === 'cell'),
      ),
    ).toEqual([]);
    expect(CAUTIONS.cell).toMatch(/never a 9 V battery/);
  });
  it('warn of the frame wherever a probe is on the plus of the supply', () => {
    const ids = where(touches(/^(battery-plus|fuse-in|fuse-out|amp-plus)$/));
    expect(ids.toSorted()).toEqual([
      'amp-terminals',
      'fuse-sides',
      'half-supply',
      'joint-drop',
      'lowest-volts',
      'plus-path',
      'supply-under-load',
    ]);
    expect(without('plus-probe', ids)).toEqual([]);
  });
  it('warn of the lamp where one is the load or stands in for the fuse, and of the minus lead where the plus is opened', () => {
    expect(without('lamp-hot', ['supply-under-load', 'plus-path', 'fuse-lamp', 'lead-off-amp'])).toEqual([]);
    expect(without('minus-first', ['fuse-lamp', 'lead-off-amp', 'rings-look', 'temporary-leads'])).toEqual([]);
    // With an open ground a load or a jumper sends its current through the shield of a line-level lead.
    expect(without('ground-open', ['supply-under-load', 'remote-jumper', 'temporary-leads'])).toEqual([]);
  });
  it('allow one fuse of the same rating, and never a bigger one', () => {
    expect(without('fuse', ['spare-fuse', 'fuse-lamp', 'body-fuse'])).toEqual([]);
    expect(CAUTIONS.fuse).toMatch(/Never a bigger fuse/);
  });
  it('say how the jumper goes on, and that an amplifier may wake at full blast', () => {
    expect(without('jumper', ['remote-jumper'])).toEqual([]);
    expect(CAUTIONS.jumper).toMatch(/remote wire off first .* 1 A fuse\. Never to ground/);
    expect(without('wakes-loud', ['remote-jumper', 'input-plug'])).toEqual([]);
  });
  it('warn of a start into a short where the fault lamp is waited for or runs are plugged back', () =>
    expect(without('into-a-short', ['recover', 'one-by-one'])).toEqual([]));
  it.each([
    'lid-check',
    'contacts-look',
    'swap-inputs',
    'swap-outputs',
    'pop-run',
    'amp-out',
    'run-ohms',
    'wire-to-frame',
    'amp-runs',
    'amp-wires-to-frame',
    'speakers-unplugged',
    'one-by-one',
    'input-plug',
    'adapter-look',
    'fuse-look',
    'body-fuse',
    'spare-fuse',
  ])('ask for the key off in %s, where a plug goes in or out', (id) => expect(without('key-off', [id])).toEqual([]));
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
    'keeps the probe off the frame at the battery plus in %s',
    (id) => expect(phoneOf(id)).toMatch(/never touching the frame/),
  );
  it('sets a turn-on selector to wire and keeps the remote wire off before the jumper goes on', () =>
    expect(phoneOf('remote-jumper')).toMatch(
      /Key off, set it to wire\. The remote wire stays off\..* never to ground/,
    ));
  it('tells whoever has a meter that reads DC as AC to take another one', () =>
    expect(phoneOf('meter-digit')).toMatch(/swapped: about 27, either time\?.* another meter/));
});
