import { describe, expect, it } from 'vitest';
import { ALL_STEPS } from '../../src/steps/all.ts';
import {
  CONDITIONS,
  type ConditionId,
  conditionOf,
  standTogether,
  toDo,
  undoOf,
  wordsOf,
} from '../../src/steps/conditions.ts';
import type { Step } from '../../src/steps/step.ts';
import { on } from './situation.ts';
import { plainly } from './words.ts';

const IDS = Object.keys(CONDITIONS) as ConditionId[];
const STEPS = Object.values(ALL_STEPS);
const ANY_BIKE = on({});
const firstOf = (step: Step) => toDo(step.conditions ?? [], [], ANY_BIKE).next;
const words = (text: string) => text.split(/\s+/).filter((word) => /[\p{L}\d]/u.test(word));

/** Everything that a step tells somebody to do. */
const told = (step: Step): string =>
  [plainly(step.ask), plainly(step.phone), ...(typeof step.how === 'function' ? step.how(ANY_BIKE) : step.how)].join(
    ' ',
  );

describe.each(IDS)('the condition %s', (id) => {
  const { minutes, opens } = conditionOf(id);
  const { bike, phone } = wordsOf(id, ANY_BIKE);
  it('has words for the bike, and other words for the phone that are one short sentence', () => {
    expect(bike).toMatch(/^[A-Z].*\.$/);
    expect(phone).toMatch(/^[A-Z][^.?!]*\.$/);
    expect(phone).not.toBe(bike);
    expect(words(phone).length).toBeLessThanOrEqual(30);
  });
  it('takes a few minutes at the most, and some step needs it', () => {
    expect(minutes).toBeGreaterThanOrEqual(0);
    expect(minutes).toBeLessThanOrEqual(5);
    expect(STEPS.filter((step) => step.conditions?.includes(id))).not.toEqual([]);
  });
  it('says key off in both seats if something is opened for it', () => {
    if (opens) {
      expect(bike).toMatch(/^Key off\b/);
      expect(phone).toMatch(/^Key off\b/);
    } else {
      expect(`${bike} ${phone}`).not.toMatch(/unplug|plugs?, pull|apart|fuse out|wire off|lead off/i);
    }
  });
});

/* Harm that the trade knows, from memory; no published source. */
describe('the words of a condition', () => {
  const said = (id: ConditionId) => Object.values(wordsOf(id, ANY_BIKE));
  it('start every tone from a volume of zero, and turn it down afterwards', () => {
    for (const id of IDS.filter((one) => one.startsWith('tone-'))) {
      for (const text of said(id)) expect(text).toMatch(/^Volume at zero.* one step at a time\.$/);
      expect(undoOf(id, ANY_BIKE)).toMatch(/^Volume at zero/);
    }
  });
  it('keep an engine outdoors, on the stand and in neutral', () => {
    for (const text of said('engine-running')) expect(text).toMatch(/^Outdoors.* stand.* neutral/);
  });
  it('take the main fuse out while a lamp is clipped on, put a fuse of 10 A into its lead, and say that it gets hot', () => {
    for (const text of said('lamp-on')) expect(text).toMatch(/main fuse out.* 55 W .*10 A fuse in its lead.*very hot/);
  });
  it('name the watts of the lamp in the place of the fuse, and the same rating for the fuse that goes back', () => {
    for (const text of said('lamp-for-fuse')) expect(text).toMatch(/21 to 55 W/);
    expect(undoOf('fuse-out', ANY_BIKE)).toMatch(/same rating/);
    for (const facts of [{ 'spare-fuse': { option: 'opens' } }, { 'fuse-lamp': { option: 'bright' } }])
      expect(undoOf('fuse-out', { rig: {}, facts })).toMatch(/stays out/);
  });
  it('insulate the end of a remote wire that is off, and keep speaker plugs off metal', () => {
    expect(said('remote-off').join(' ')).toMatch(/end insulated.*tape its end/);
    for (const text of said('amp-outputs-off')) expect(text).toMatch(/ends off metal/);
  });
});

describe('the conditions of the steps', () => {
  it('name the range of the meter in every step that takes one, and only one', () => {
    for (const step of STEPS.filter(({ tool }) => tool === 'meter')) {
      expect(step.conditions?.filter((id) => id.startsWith('meter-on-')).length, step.id).toBe(1);
    }
  });
  it('name the range that fits the readings: ohms on a dead bike, AC for tones and ripple, DC against battery negative', () => {
    for (const step of STEPS) {
      if (step.kind !== 'reading') continue;
      const units = new Set(Object.values(step.readings).map(({ unit }) => unit));
      if (units.has('Ω'))
        expect(step.conditions, step.id).toEqual(expect.arrayContaining(['meter-on-ohms', 'key-off']));
      else if (step.tones || Object.values(step.readings).every(({ label }) => /^AC\b/.test(label)))
        expect(step.conditions, step.id).toContain('meter-on-ac');
      else expect(step.conditions, step.id).toContain('meter-on-dc');
      const against = typeof step.probes === 'function' ? step.probes(ANY_BIKE) : step.probes;
      if (against !== 'not drawn' && against.black === 'battery-minus')
        expect(step.conditions, step.id).toContain('black-on-minus');
    }
  });
  it('have the key off before any plug, fuse or wire is opened', () => {
    const opening =
      /unplug|plugs? apart|plugs? off|speakers off the amp|pull (each|the|every|that|one|all)|wire off|fuse (pulled|out)|in place of the fuse|plugs? into/i;
    // What observes no part asks about something that was done, or is fitted.
    const steps = STEPS.filter((step) => step.observes.length > 0 && opening.test(told(step)));
    expect(steps.length).toBeGreaterThan(20);
    // Where it begins with the engine on, the key goes off within the step, and its caution says so.
    for (const step of steps) {
      const says = step.conditions?.includes('engine-running') ? (step.cautions ?? []) : [];
      expect([...firstOf(step), ...says], step.id).toContain('key-off');
    }
  });
  it('are those of steps that are asked at the bike: what is told or fitted needs none', () => {
    for (const step of STEPS.filter(({ kind, observes }) => kind === 'rig' || observes.length === 0))
      expect(step.conditions ?? [], step.id).not.toContain('amp-outputs-off');
  });
  it('can all stand at once', () => {
    for (const { id, conditions = [] } of STEPS)
      for (const one of conditions)
        for (const other of conditions) expect(standTogether(one, other), `${id}: ${one}, ${other}`).toBe(true);
  });
  it('leave every step minutes of its own', () => {
    for (const { id, minutes, conditions = [] } of STEPS) {
      const taken = conditions.reduce((sum, one) => sum + conditionOf(one).minutes, 0);
      expect(minutes - taken, id).toBeGreaterThan(0);
    }
  });
});

describe('what has to be done for conditions', () => {
  it('is in their order, with the key off before what is opened', () => {
    expect(toDo(['amp-outputs-off', 'tone-400', 'meter-on-ac'], [], ANY_BIKE)).toEqual({
      next: ['key-off', 'amp-outputs-off', 'tone-400', 'meter-on-ac'],
      stands: ['amp-outputs-off', 'tone-400', 'meter-on-ac'],
    });
  });
  it('is nothing where all of them stand', () => {
    const { stands } = toDo(['amp-outputs-off', 'tone-400', 'meter-on-ac'], [], ANY_BIKE);
    expect(toDo(['amp-outputs-off', 'tone-400', 'meter-on-ac'], stands, ANY_BIKE).next).toEqual([]);
  });
  it('ends the tone before a plug is opened, and keeps what was opened before', () => {
    const { next, stands } = toDo(['rear-plug-apart'], ['panel-off', 'tone-400'], ANY_BIKE);
    expect(next).toEqual(['key-off', 'rear-plug-apart']);
    expect(stands).toEqual(['panel-off', 'key-off', 'rear-plug-apart']);
  });
  it('turns the meter to another range', () => {
    expect(toDo(['meter-on-dc'], ['meter-on-ac'], ANY_BIKE).stands).toEqual(['meter-on-dc']);
  });
  it('leaves out what the bike does not have: speakers on an amplifier that is not there', () => {
    const rearPair = ALL_STEPS['rear-pair']?.conditions ?? [];
    const plain = toDo(rearPair, [], on({ amps: [], rearFedBy: 'unit' })).next;
    const amped = toDo(rearPair, [], on({ amps: [{ drives: 'both' }], rearFedBy: 'amp' })).next;
    expect(plain).toContain('rear-off-unit');
    expect(plain).not.toContain('amp-outputs-off');
    expect(amped).toContain('amp-outputs-off');
    expect(amped).not.toContain('rear-off-unit');
  });
  it('leaves line-level leads alone where speaker wires feed the amplifier', () => {
    const under = ALL_STEPS['supply-under-load']?.conditions ?? [];
    expect(toDo(under, [], ANY_BIKE).next).toContain('line-leads-out');
    expect(toDo(under, [], on({ amps: [{ drives: 'rear', input: 'speaker' }] })).next).not.toContain('line-leads-out');
  });
});
