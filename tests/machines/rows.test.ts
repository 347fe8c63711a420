import { describe, expect, it } from 'vitest';
import { initialTransition, transition } from 'xstate';
import { ask, claim, conclude, decide, openingRows, rowsFlow } from '../../machines/rows.ts';
import { replayRows } from '../../src/case/replay-rows.ts';
import type { PlanVerdict } from '../../src/plan/verdict.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { outcomeNamed } from '../../src/steps/outcome.ts';
import type { Answer, Facts } from '../../src/steps/step.ts';
import { choice, measurement, rigQuestion } from '../../src/steps/step.ts';

const WORDS = { phone: 'P?', how: ['Look.'], why: 'Because.', tool: 'none', minutes: 1, observes: [] } as const;
/** A garden pump that does not start: small enough to see every way through it. */
const outlet = rigQuestion<'wall' | 'lead'>({
  ...WORDS,
  place: 'told',
  id: 'outlet',
  short: 'Outlet',
  ask: 'Where is it plugged in?',
  options: { wall: 'The wall', lead: 'A lead' },
  outcomes: { wall: 'the wall', lead: 'a lead' },
  known: ({ unitKind }) => (unitKind === undefined ? undefined : unitKind === 'factory' ? 'wall' : 'lead'),
  learn: (at, rig) => ({ ...rig, unitKind: at === 'wall' ? 'factory' : 'replaced' }),
});
const hum = choice<'hums' | 'silent'>({
  ...WORDS,
  place: 'told',
  id: 'hum',
  short: 'Hum',
  ask: 'Does it hum?',
  options: { hums: 'Yes', silent: 'No' },
  outcomes: { hums: 'hums', silent: 'silent' },
});
const volts = measurement<'live' | 'dead'>({
  ...WORDS,
  place: 'told',
  id: 'volts',
  short: 'Volts',
  ask: 'How many volts?',
  probes: { red: 'frame', black: 'battery-minus' },
  readings: { outletV: { label: 'Outlet', unit: 'V', possible: [0, 16], impossible: 'Really?' } },
  bands: () => null,
  judge: ({ outletV = 0 }) => (outletV >= 10 ? 'live' : 'dead'),
  formula: 'volts of the outlet = volts of the mains',
  healthy: () => 'Healthy is 10 V and more.',
  outcomes: { live: 'live', dead: 'dead' },
});
const readIn = (answer: Answer | undefined) => (answer && 'readings' in answer ? answer.readings['outletV'] : 'no');
const ends = (id: string): PlanVerdict => ({
  id,
  title: id,
  faults: [],
  evidence: [],
  mends: [],
  article: 'pumps',
  remedy: ({ rig, facts }) => ({
    what: `${id}, ${rig.unitKind ?? 'unknown'}, ${readIn(facts['volts'])} V`,
    certainty: 'likely',
    howSure: 'By looking.',
    numbers: [],
    fix: [],
    tools: 'None',
    minutes: 1,
    who: 'You',
    notBuy: [],
    acts: [],
    proofActs: [],
    cautions: [],
    proofCautions: [],
    proof: 'It runs.',
  }),
});

const onLead = claim('it hangs on a lead', (f) => outcomeNamed(f, 'outlet') === 'lead');
const pump = rowsFlow('pump', 'The pump does not start', {
  askOutlet: ask(outlet, { wall: 'listen', lead: 'listen', cannot: 'listen' }),
  listen: ask(hum, { hums: 'jammed', silent: 'measure', cannot: 'measure' }),
  measure: ask(volts, { live: 'broken', dead: [{ when: onLead, to: 'leadIsDead' }, { to: 'why' }], cannot: 'why' }),
  why: decide({ when: onLead, to: 'leadIsDead' }, { to: 'outletIsDead' }),
  jammed: conclude(ends('jammed')),
  broken: conclude(ends('broken')),
  leadIsDead: conclude(ends('lead-dead')),
  outletIsDead: conclude(ends('outlet-dead')),
});

const start = (rig: Rig = {}, facts: Facts = {}) => initialTransition(pump.machine, { rig, facts })[0];
type Snapshot = ReturnType<typeof start>;
const give = (snapshot: Snapshot, step: string, answer: Answer) =>
  transition(pump.machine, snapshot, { type: 'answer', step, answer })[0];
const outletV = (text: string): Answer => ({ readings: { outletV: text } });

describe('a flow', () => {
  it('begins at its first row and knows its steps by name', () => {
    expect(pump.first).toBe('askOutlet');
    expect([...pump.steps.keys()]).toEqual(['outlet', 'hum', 'volts']);
    expect(start().value).toBe('askOutlet');
  });
  it('shows the step of the state it stands in, and no answer that is not its own', () => {
    const snapshot = give(start(), 'outlet', { option: 'wall' });
    expect(Object.values(snapshot.getMeta())).toEqual([{ step: hum }]);
    expect(give(snapshot, 'volts', outletV('12')).value).toBe('listen');
    expect(give(snapshot, 'volts', outletV('12')).context.facts).not.toHaveProperty('volts');
  });
  it('skips a question that the bike answers', () => {
    expect(start({ unitKind: 'replaced' }).value).toBe('listen');
    expect(start({}).value).toBe('askOutlet');
  });
  it('stands at once where facts that are known lead', () => {
    const facts = { outlet: { option: 'lead' }, hum: { cannot: true }, volts: outletV('0') } as const;
    expect(start({}, facts).value).toBe('leadIsDead');
    expect(start({}, { outlet: { option: 'wall' }, hum: { option: 'silent' } }).value).toBe('measure');
  });
  it('learns about the bike from an answer and keeps it', () => {
    expect(give(start(), 'outlet', { option: 'lead' }).context.rig).toEqual({ unitKind: 'replaced' });
    expect(give(start(), 'outlet', { cannot: true }).context.rig).toEqual({});
  });
  it('goes on from “I can’t” as the row says', () => {
    const silent = give(give(start(), 'outlet', { cannot: true }), 'hum', { cannot: true });
    expect(give(silent, 'volts', { cannot: true }).value).toBe('outletIsDead');
  });
  it('takes the first branch whose claim holds, and the last one without a claim', () => {
    const dead = { hum: { option: 'silent' }, volts: outletV('3') } as const;
    expect(start({ unitKind: 'replaced' }, dead).value).toBe('leadIsDead');
    expect(start({ unitKind: 'factory' }, dead).value).toBe('outletIsDead');
  });
  it('stays where it is with an answer that cannot be used', () => {
    const at = give(give(start(), 'outlet', { option: 'wall' }), 'hum', { option: 'silent' });
    for (const answer of [outletV('80'), outletV('loud'), { option: 'live' }, { readings: {} }]) {
      expect(give(at, 'volts', answer).value).toBe('measure');
    }
    expect(give(at, 'volts', outletV('10')).value).toBe('broken');
    expect(give(at, 'volts', outletV('9.99')).value).toBe('outletIsDead');
  });
  it('ends with its verdict and the remedy for this bike and these readings', () => {
    const done = start({ unitKind: 'factory' }, { hum: { option: 'silent' }, volts: outletV('11.5') });
    expect(done.status).toBe('done');
    expect(done.output).toMatchObject({ verdict: 'broken', remedy: { what: 'broken, factory, 11.5 V' } });
    expect(Object.values(done.getMeta())).toEqual([
      { verdict: pump.states['broken'] && expect.objectContaining({ id: 'broken' }) },
    ]);
  });
  it('hears nothing more once it has ended', () => {
    const done = start({}, { outlet: { option: 'wall' }, hum: { option: 'hums' } });
    expect(give(done, 'volts', outletV('1')).value).toBe('jammed');
  });
  it('is not changed by being walked', () => {
    const before = start();
    give(before, 'outlet', { option: 'lead' });
    expect(before.context).toEqual({ rig: {}, facts: {} });
  });
});

describe('a flow of which only the opening has arrived', () => {
  const opening = openingRows({
    id: 'pump',
    title: 'The pump does not start',
    states: {
      askOutlet: ask(outlet, { wall: 'listen', lead: 'listen', cannot: 'listen' }),
      listen: ask(hum, {
        hums: 'jammed',
        silent: [{ when: onLead, to: 'measure' }, { to: 'askOutlet' }],
        cannot: 'measure',
      }),
    },
  });
  const at = (rig: Rig, facts: Facts) => initialTransition(opening.machine, { rig, facts })[0];
  it('asks the same questions as the whole, in the same order', () => {
    expect(at({}, {}).value).toBe('askOutlet');
    expect(at({}, { outlet: { option: 'wall' } }).value).toBe('listen');
    expect([...opening.steps.keys()]).toEqual(['outlet', 'hum']);
  });
  it('waits wherever a row leads out of it, by whatever branch', () => {
    for (const answer of [{ option: 'hums' }, { option: 'silent' }, { cannot: true }] as const)
      expect(at({ unitKind: 'replaced' }, { hum: answer }).value).toBe('waiting');
    const standing = replayRows(opening, {
      flow: 'pump',
      events: [
        { type: 'answer', step: 'outlet', answer: { option: 'lead' } },
        { type: 'answer', step: 'hum', answer: { option: 'hums' } },
      ],
    });
    expect(standing.open).toEqual({ kind: 'waiting' });
    expect(standing.terminals.map(({ step }) => step.id)).toEqual(['outlet', 'hum']);
  });
});

describe('a flow that is written wrong', () => {
  it('does not compile without a way on from each outcome and from “I can’t”', () => {
    // @ts-expect-error no way on from 'silent'
    ask(hum, { hums: 'jammed', cannot: 'jammed' });
    // @ts-expect-error no way on from 'cannot'
    ask(hum, { hums: 'jammed', silent: 'jammed' });
    // @ts-expect-error an outcome that the step has not
    ask(hum, { hums: 'jammed', silent: 'jammed', loud: 'jammed', cannot: 'jammed' });
  });
  it('names the state and the place that does not exist', () => {
    const wrong = {
      listen: ask(hum, { hums: 'jamed', silent: 'jammed', cannot: 'jammed' }),
      jammed: conclude(ends('jammed')),
    };
    expect(() => rowsFlow('pump', 'Pump', wrong)).toThrow(/jamed/);
  });
  it('must have a state to begin with', () => {
    expect(() => rowsFlow('pump', 'Pump', {})).toThrow(/^flow pump must have at least one state$/);
  });
});
