import { describe, expect, it } from 'vitest';
import { createActor, createMachine, initialTransition, transition } from 'xstate';
import { type Decision, offersOf } from '../../machines/decision.ts';
import { before, flow } from '../../machines/kit.ts';
import {
  decisionOf,
  type FlowContext,
  type FlowEvent,
  type FlowMachine,
  type Late,
  type StagedFlow,
} from '../../machines/machine.ts';
import { openingFlow } from '../../machines/opening.ts';
import { confirmed, repaired, revised } from '../../src/case/change.ts';
import type { Case } from '../../src/case/events.ts';
import { replay } from '../../src/case/replay.ts';
import { type Findings, outcomeNamed } from '../../src/steps/outcome.ts';
import type { Facts, Step } from '../../src/steps/step.ts';
import { type Answers, caseOn, give, openIn, toAnswer } from '../journey.ts';
import { float, hum, leadLook, pump, pumpLate, pumpOpening, pumpPlan, volts, winding } from './pump.ts';

const LIVE = { pumpV: '12.1' };
const DEAD = { pumpV: '0' };
const OPEN = { windingOhm: 'OL' };
const WHOLE = { windingOhm: '5' };
/** Each step with the ways in which it can be answered, and not at all. */
const ANSWERS: Readonly<Record<string, Answers[string][]>> = {
  outlet: ['wall', 'lead'],
  stood: ['winter', 'used'],
  hum: ['hums', 'silent'],
  float: ['cured', 'no-change', null],
  'lead-look': ['whole', 'cut'],
  'tools-at-hand': ['meter', 'none'],
  volts: [LIVE, DEAD],
  winding: [OPEN, WHOLE],
};
/** Every set of answers there is, in whatever order they were given. */
const EVERY_FACTS: readonly Facts[] = Object.entries(ANSWERS).reduce<readonly Facts[]>(
  (sets, [step, shorts]) =>
    sets.flatMap((facts) => [facts, ...shorts.map((short) => ({ ...facts, [step]: toAnswer(short) }))]),
  [{}],
);

/** The same before anything was asked for again, and when nothing is any more. */
const EVERY_CONTEXT: readonly FlowContext[] = EVERY_FACTS.flatMap((facts) =>
  [0, 2].map((askedAgain) => ({ rig: {}, facts, askedAgain, late: pumpLate })),
);

const nameOf = (value: unknown): string =>
  typeof value === 'string'
    ? value
    : Object.entries(value as Record<string, string>)
        .flat()
        .join('.');
const startOf = (machine: FlowMachine, context: FlowContext) => initialTransition(machine, context)[0];
const stateOf = (machine: FlowMachine, context: FlowContext): string => nameOf(startOf(machine, context).value);

const standing = (answers: Answers, late: Late | undefined = pumpLate) =>
  replay(pump, give(caseOn(pump), answers), late);
const open = (answers: Answers) => openIn(standing(answers));

/** The state that stands for a decision, written down once more: what the guards are judged by. */
function meant({ spec: { stages } }: StagedFlow, decision: Decision): string {
  switch (decision.kind) {
    case 'ask':
      return Object.entries(stages).flatMap(([stage, steps]) =>
        (steps as readonly Step[]).includes(decision.step) ? [`${stage}.${decision.step.id}`] : [],
      )[0] as string;
    case 'confirm':
      return 'doubt';
    case 'wait':
      return 'waiting';
    case 'hand over':
      return `onward to ${decision.to.flow}`;
    case 'conclude':
      return decision.cause;
    case 'list':
      return 'short list';
  }
}

describe('the stages of a flow', () => {
  it('are asked in order: what is fitted, what is told, and then what is worth most', () => {
    expect(open({})).toBe('outlet?');
    expect(open({ outlet: 'lead' })).toBe('stood?');
    const then = standing({ outlet: 'lead', stood: 'used' });
    expect(openIn(then)).toBe(`${then.decided?.reckoning?.next[0]?.step}?`);
    expect(pump.asked.map(({ id }) => `${id}?`)).toContain(openIn(then));
  });
  it('are gone back to for what was passed over, whatever came in between', () => {
    expect(open({ hum: 'silent', float: 'no-change' })).toBe('outlet?');
    expect(open({ outlet: 'wall', hum: 'silent' })).toBe('stood?');
  });
  it('skip what the bike answers', () => {
    const it_ = { flow: 'pump', events: [{ type: 'rig', rig: { unitKind: 'factory' } }] } as const;
    expect(openIn(replay(pump, it_, pumpLate))).toBe('stood?');
  });
  it('are one list of steps, each in one stage', () => {
    const { fitted, told, look, measure } = pump.spec.stages;
    expect([...pump.steps.values()]).toEqual([...fitted, ...told, ...look, ...measure]);
  });
});

describe('the opening of a flow', () => {
  const opening = openingFlow(pumpOpening);
  it('asks what the whole flow asks first, and waits where that goes on', () => {
    const ways: readonly Answers[] = [{}, { outlet: 'lead' }, { outlet: 'wall', stood: 'used' }, { stood: 'used' }];
    for (const answers of ways) {
      const it_ = give(caseOn(pump), answers);
      const [first, whole] = [replay(opening, it_), replay(pump, it_, pumpLate)];
      expect(first.rig).toEqual(whole.rig);
      expect(openIn(first)).toBe(pump.inOrder.some(({ id }) => openIn(whole) === `${id}?`) ? openIn(whole) : 'waiting');
    }
  });
  it('waits also when everything has come but the rest of the flow', () => {
    expect(openIn(replay(opening, give(caseOn(pump), { outlet: 'wall', stood: 'used' }), pumpLate))).toBe('waiting');
  });
});

describe('what may be asked', () => {
  it('is never what makes no sense: no lead is looked at where there is none', () => {
    const asked = (outlet: string) =>
      EVERY_FACTS.filter((facts) => JSON.stringify(facts['outlet']) === JSON.stringify(toAnswer(outlet))).map((facts) =>
        stateOf(pump.machine, { rig: {}, facts, late: pumpLate }),
      );
    expect(asked('wall')).not.toContain('look.lead-look');
    expect(asked('lead')).toContain('look.lead-look');
  });
  it('is safe: what has to come first is asked first, however much the other would tell', () => {
    const before = { outlet: 'wall', stood: 'used', hum: 'silent', float: 'no-change', 'tools-at-hand': 'meter' };
    expect(open(before)).toBe('volts?');
    expect(open({ ...before, volts: LIVE })).toBe('winding?');
    const reckless = flow(pumpOpening, { ...pumpPlan, safe: [] });
    expect(openIn(replay(reckless, give(caseOn(pump), before), pumpLate))).toBe('winding?');
    for (const facts of EVERY_FACTS)
      if (!facts[volts.id] && stateOf(pump.machine, { rig: {}, facts, late: pumpLate }) === `measure.${winding.id}`)
        expect.fail(`winding before volts after ${JSON.stringify(facts)}`);
  });
  it('is no measurement without a meter, and the meter is asked for before the first one', () => {
    const before = { outlet: 'wall', stood: 'used', hum: 'silent', float: 'no-change' };
    expect(open(before)).toBe('tools-at-hand?');
    for (const facts of EVERY_FACTS)
      if (!('option' in (facts['tools-at-hand'] ?? {})) || JSON.stringify(facts['tools-at-hand']).includes('none'))
        expect(stateOf(pump.machine, { rig: {}, facts, late: pumpLate })).not.toMatch(/^measure/);
  });
  it('is nothing twice: “I can’t” is an answer', () => {
    expect(open({ outlet: null, stood: null, hum: null, float: null })).toBe('tools-at-hand?');
  });
});

describe('the end of a flow', () => {
  it('is a cause with its remedy, worked out for this bike', () => {
    const { open: end, state } = standing({ outlet: 'wall', stood: 'winter', hum: 'hums' });
    expect(state).toBe('jammed');
    expect(end).toMatchObject({ kind: 'cause', cause: 'jammed', certainty: 'proved' });
    expect(end).toMatchObject({ remedy: { what: 'jammed, on factory outlet' } });
  });
  it('is a list of who is left of its own causes, the likeliest first, where nobody leads', () => {
    const { open: end, state } = standing({
      outlet: null,
      stood: null,
      hum: null,
      float: null,
      'tools-at-hand': 'none',
    });
    expect(state).toBe('short list');
    expect(end).toEqual({ kind: 'list', causes: ['jammed', 'float-stuck', 'winding-open', 'lead-cut'] });
  });
  it('is never an empty list: where another flow’s cause is likely that may not be handed over, it names its own', () => {
    const answers = { outlet: 'wall', stood: 'used', hum: 'silent', float: 'no-change', 'tools-at-hand': 'meter' };
    const given = Object.entries({ ...answers, volts: DEAD, winding: WHOLE });
    const facts = Object.fromEntries(given.map(([step, short]) => [step, toAnswer(short)]));
    const context = { rig: {}, facts, late: pumpLate, askedAgain: 2 };
    expect(decisionOf(pump, context).decision.kind).toBe('hand over');
    const { decision } = decisionOf(pump, { ...context, mayHandOver: false });
    const causes = decision.kind === 'list' ? decision.causes : expect.fail(decision.kind);
    expect(causes.length).toBeGreaterThan(0);
    expect(causes.filter((cause) => !pump.causes.includes(cause))).toEqual([]);
  });
  it('is the flow that goes on, where what it looks for leads', () => {
    const it_ = { outlet: 'wall', stood: 'used', hum: 'silent', float: 'no-change', 'tools-at-hand': 'meter' };
    const { open: end, state } = standing({ ...it_, volts: DEAD, winding: WHOLE });
    expect(state).toBe('onward to mains');
    expect(end).toEqual({ kind: 'onward', to: pump.handsOver[0] });
  });
  it('is not there before what is fetched late has come', () => {
    const it_ = give(caseOn(pump), { outlet: 'wall', stood: 'winter', hum: 'hums' });
    expect(replay(pump, it_)).toMatchObject({ state: 'waiting', open: { kind: 'waiting' } });
    expect(openIn(replay(pump, give(caseOn(pump), { outlet: 'wall' })))).toBe('stood?');
    expect(openIn(replay(pump, it_, pumpLate))).toBe('jammed');
  });
});

describe('a complaint that is another flow’s after all', () => {
  const [to] = pumpPlan.handsOver;
  const isOn = { when: (f: Findings) => outcomeNamed(f, 'hum') === 'hums', by: [hum as Step] };
  const other = flow(pumpOpening, { ...pumpPlan, handsOver: to ? [{ ...to, isIt: isOn }] : [] });
  const heard = give(caseOn(other), { outlet: 'wall', stood: 'winter', hum: 'hums' });
  it('is handed over as soon as the answer that says so was given twice', () => {
    expect(openIn(replay(other, heard, pumpLate))).toBe('again hum?');
    expect(openIn(replay(other, confirmed(heard, 'hum'), pumpLate))).toBe('to mains');
  });
  it('stays where another answer takes its place', () => {
    expect(openIn(replay(other, revised(heard, 'hum', toAnswer('silent')), pumpLate))).toBe('float?');
  });
});

describe('a reading that another one completes', () => {
  const heard = { outlet: 'wall', stood: 'winter', hum: 'hums' };
  const byHum = { ...float, completes: (f: Findings) => outcomeNamed(f, 'hum') === 'hums' };
  const finished = flow(pumpOpening, { ...pumpPlan, look: pumpPlan.look.map((one) => (one === float ? byHum : one)) });
  it('is no end before that', () => {
    expect(open(heard)).toBe('jammed');
    expect(openIn(replay(finished, give(caseOn(finished), heard), pumpLate))).toBe('float?');
    expect(openIn(replay(finished, give(caseOn(finished), { ...heard, float: 'no-change' }), pumpLate))).toBe('jammed');
  });
  it('is one where that cannot be taken', () => {
    expect(openIn(replay(finished, give(caseOn(finished), { ...heard, float: null }), pumpLate))).toBe('jammed');
  });
});

describe('a step that waits for others', () => {
  const waits = flow(pumpOpening, { ...pumpPlan, safe: [before(winding, leadLook, volts)] });
  const opensOf = (outletAt: string) => {
    const given = { outlet: outletAt, stood: 'used', hum: 'silent', float: 'no-change', 'tools-at-hand': 'meter' };
    const { findings } = replay(waits, give(caseOn(waits), given), pumpLate);
    const offers = offersOf(waits, findings, ({ id }) => (id === 'volts' ? 'live' : undefined));
    return Object.fromEntries(offers.map(({ step, opens = [] }) => [step, opens.map((behind) => behind.step)]));
  };
  it('is credited to each of them', () => {
    expect(opensOf('lead')).toEqual({ 'lead-look': ['winding'], volts: ['winding'] });
  });
  it('does not wait for one that makes no sense on this bike, and is credited to the others', () => {
    expect(opensOf('wall')).toEqual({ volts: ['winding'] });
  });
});

describe('a doubted answer', () => {
  const told = { outlet: 'wall', stood: 'used', hum: 'hums', float: 'cured' };
  const lifted = give(caseOn(pump), told);

  it('is given once more before anything is concluded', () => {
    expect(replay(pump, lifted, pumpLate)).toMatchObject({
      state: 'doubt',
      open: { kind: 'doubt', step: { id: 'float' }, because: 'pivotal' },
    });
  });
  it('is not asked a third time', () => {
    const again = replay(pump, confirmed(lifted, 'float'), pumpLate);
    expect(again.open.kind === 'doubt' && again.open.step.id).not.toBe('float');
    let it_ = lifted;
    const asked: string[] = [];
    for (
      let { open: at } = replay(pump, it_, pumpLate);
      at.kind === 'doubt';
      { open: at } = replay(pump, it_, pumpLate)
    ) {
      asked.push(at.step.id);
      it_ = confirmed(it_, at.step.id);
    }
    expect(asked).toEqual([...new Set(asked)]);
    expect(asked.length).toBeLessThanOrEqual(2);
    expect(openIn(replay(pump, it_, pumpLate))).toBe('float-stuck');
  });
  it('is never one from before a cure: the pump that hummed runs now', () => {
    expect(openIn(replay(pump, confirmed(lifted, 'float'), pumpLate))).toBe('float-stuck');
  });
  it('may turn out to be another one', () => {
    const it_ = revised(lifted, 'float', toAnswer('no-change'));
    const at = replay(pump, it_, pumpLate);
    expect(at.open.kind === 'doubt' && at.open.step.id).not.toBe('float');
    let rest = give(it_, { 'tools-at-hand': 'none' });
    for (
      let { open: end } = replay(pump, rest, pumpLate);
      end.kind === 'doubt';
      { open: end } = replay(pump, rest, pumpLate)
    )
      rest = confirmed(rest, end.step.id);
    expect(openIn(replay(pump, rest, pumpLate))).toBe('jammed');
  });
  it('is asked for anew after a repair that may have altered it', () => {
    const mended = repaired(confirmed(lifted, 'float'), 'float-stuck');
    expect(replay(pump, mended, pumpLate).checked.has('float')).toBe(false);
  });
});

describe('the machine', () => {
  it('stands where the inference says, whatever is known', () => {
    expect(EVERY_FACTS.length).toBeGreaterThan(5000);
    const kinds = new Set<string>();
    for (const context of EVERY_CONTEXT) {
      const snapshot = startOf(pump.machine, context);
      const { decision } = decisionOf(pump, snapshot.context);
      kinds.add(decision.kind);
      expect(nameOf(snapshot.value)).toBe(meant(pump, decision));
      expect(snapshot.status).toBe(['ask', 'confirm', 'wait'].includes(decision.kind) ? 'active' : 'done');
    }
    expect([...kinds].toSorted()).toEqual(['ask', 'conclude', 'confirm', 'hand over', 'list']);
  });

  const { always = [] } = pump.machine.config.states?.['deciding'] ?? {};
  const branches = always as readonly { readonly target: string; readonly guard?: unknown }[];
  /** Whether a machine with these ways out of "deciding" stands anywhere but where the inference says. */
  function standsElsewhere(ways: typeof branches): boolean {
    const { config } = pump.machine;
    const states = { ...config.states, deciding: { ...config.states?.['deciding'], always: ways } };
    const machine = createMachine({ ...config, states } as unknown as Parameters<typeof createMachine>[0]);
    return EVERY_CONTEXT.some((context) => {
      const snapshot = startOf(machine as unknown as FlowMachine, context);
      return nameOf(snapshot.value) !== meant(pump, decisionOf(pump, snapshot.context).decision);
    });
  }
  it('leaves “deciding” by a guard for each step, doubt, wait, hand-over and cause, and else for the list', () => {
    expect(branches.map(({ target }) => target)).toEqual([
      ...Object.entries(pump.spec.stages).flatMap(([stage, steps]) =>
        (steps as readonly Step[]).map(({ id }) => `${stage}.${id}`),
      ),
      'doubt',
      'waiting',
      'onward to mains',
      ...pump.causes,
      'short list',
    ]);
    expect(branches.slice(0, -1).every(({ guard }) => guard !== undefined)).toBe(true);
    expect(branches.at(-1)?.guard).toBeUndefined();
  });
  it.each(branches.slice(0, -1).map(({ target }, i) => [target, i] as const))(
    'stands elsewhere as soon as the guard before “%s” is taken away',
    (_, at) => {
      expect(standsElsewhere(branches.map((branch, i) => (i === at ? { target: branch.target } : branch)))).toBe(true);
    },
  );
  it('stands where it should while all guards are there', () => expect(standsElsewhere(branches)).toBe(false));

  it('asks the inference once for each set of facts, however many guards want to know', () => {
    let reads = 0;
    const late: Late = {
      causes: pumpLate.causes,
      get table() {
        reads++;
        return pumpLate.table;
      },
    };
    startOf(pump.machine, { rig: {}, facts: { outlet: toAnswer('wall'), stood: toAnswer('winter') }, late });
    expect(reads).toBe(1);
  });
  it('hears nothing more once it has ended', () => {
    const facts = { outlet: toAnswer('wall'), stood: toAnswer('winter'), hum: toAnswer('hums') };
    const done = startOf(pump.machine, { rig: {}, facts, late: pumpLate });
    expect(transition(pump.machine, done, { type: 'answer', step: 'hum', answer: toAnswer('silent') })[0]).toBe(done);
  });
  it('runs as an actor of its own', () => {
    const actor = createActor(pump.machine, { input: { rig: {}, facts: {}, late: pumpLate } }).start();
    for (const [step, short] of [
      ['outlet', 'wall'],
      ['stood', 'winter'],
      ['hum', 'hums'],
    ] as const)
      actor.send({ type: 'answer', step, answer: toAnswer(short) });
    expect(actor.getSnapshot()).toMatchObject({ status: 'done', value: 'jammed', output: { cause: 'jammed' } });
  });
});

describe('the machine, driven by events', () => {
  /** Answers of one rider to whatever he is asked, and what he says the second time. */
  interface Rider {
    readonly first: Answers;
    readonly again?: Answers;
  }
  const PUMPS: Readonly<Record<string, Rider>> = {
    'a jam': { first: { outlet: 'wall', stood: 'winter', hum: 'hums' } },
    'a cut lead': { first: { outlet: 'lead', stood: 'used', hum: 'silent', float: 'no-change', 'lead-look': 'cut' } },
    'an open winding': {
      first: {
        outlet: 'wall',
        stood: 'used',
        hum: 'silent',
        float: 'no-change',
        'tools-at-hand': 'meter',
        volts: LIVE,
        winding: OPEN,
      },
    },
    'a dead outlet': {
      first: {
        outlet: 'wall',
        stood: 'used',
        hum: 'silent',
        float: 'no-change',
        'tools-at-hand': 'meter',
        volts: DEAD,
        winding: WHOLE,
      },
    },
    'a float, confirmed': { first: { outlet: 'wall', stood: 'used', hum: 'hums', float: 'cured' } },
    'a float that was none': {
      first: { outlet: 'wall', stood: 'used', hum: 'hums', float: 'cured', 'tools-at-hand': 'none' },
      again: { float: 'no-change' },
    },
    'nobody who can do anything': {
      first: { outlet: null, stood: null, hum: null, float: null, 'lead-look': null, 'tools-at-hand': 'none' },
    },
  };

  it.each(Object.entries(PUMPS))('stands at each answer where replaying stands: %s', (_, { first, again = {} }) => {
    let it_: Case = caseOn(pump);
    let snapshot = startOf(pump.machine, { rig: {}, facts: {}, late: pumpLate });
    const tell = (event: FlowEvent) => {
      [snapshot] = transition(pump.machine, snapshot, event);
    };
    for (let n = 0; snapshot.status === 'active'; n++) {
      expect(n).toBeLessThan(20);
      const at = replay(pump, it_, pumpLate);
      expect(nameOf(snapshot.value)).toBe(at.state);
      if (at.open.kind === 'step') {
        const { id } = at.open.step;
        const answer = toAnswer(first[id] ?? null);
        it_ = give(it_, { [id]: first[id] ?? null });
        tell({ type: 'answer', step: id, answer });
      } else if (at.open.kind === 'doubt') {
        const { id } = at.open.step;
        const other = again[id];
        it_ = other === undefined ? confirmed(it_, id) : revised(it_, id, toAnswer(other));
        tell(
          other === undefined ? { type: 'confirm', step: id } : { type: 'answer', step: id, answer: toAnswer(other) },
        );
      }
    }
    const end = replay(pump, it_, pumpLate);
    expect(nameOf(snapshot.value)).toBe(end.state);
    expect(snapshot.context.facts).toEqual(end.facts);
    expect(snapshot.context.confirmed ?? []).toEqual([...end.checked]);
  });
});
