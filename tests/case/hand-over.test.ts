import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { elsewhere } from '../../machines/elsewhere.ts';
import { type Late, type StagedFlow, toldBy } from '../../machines/machine.ts';
import { adopt } from '../../src/case/adopt.ts';
import {
  answered,
  back,
  canGoBack,
  confirmed,
  handedOver,
  learntHere,
  noted,
  repaired,
  revised,
} from '../../src/case/change.ts';
import type { Case } from '../../src/case/events.ts';
import { FAULT_FLOWS } from '../../src/case/flows.ts';
import { fromLink, toLink } from '../../src/case/link.ts';
import { replay } from '../../src/case/replay.ts';
import { withoutCauses } from '../../src/inference/table.ts';
import { type Answers, answersByOutcome, caseOn, give, openIn } from '../journey.ts';
import { mains, mainsLate, PUMP_LATE, pump, pumpLate } from '../machines/pump.ts';
import { anyRig } from '../rig/any-rig.ts';

/** A case that goes from one flow to another and back: nothing is asked twice, and nothing goes round in a circle. */

const PROVED = await Promise.all(FAULT_FLOWS.map(async ([, { load, late }]) => [await load(), await late()] as const));
const FLOWS: Readonly<Record<string, StagedFlow>> = Object.fromEntries(
  [pump, mains, ...PROVED.map(([flow]) => flow)].map((flow) => [flow.id, flow]),
);
const LATE: Readonly<Record<string, Late>> = {
  ...PUMP_LATE,
  ...Object.fromEntries(PROVED.map(([flow, late]) => [flow.id, late])),
};
const stand = (flow: StagedFlow, it: Case) => replay(flow, it, LATE[flow.id]);
const open = (flow: StagedFlow, it: Case) => openIn(stand(flow, it));

interface There {
  readonly flow: StagedFlow;
  readonly case: Case;
}
/** The case on the page of the flow that its end hands over to, or null where it does not. */
function onward(flow: StagedFlow, it: Case, late = LATE[flow.id]): There | null {
  const standing = replay(flow, it, late);
  if (standing.open.kind !== 'onward') return null;
  const { to } = standing.open;
  const next = FLOWS[to.flow] ?? expect.fail(`no flow ${to.flow}`);
  return { flow: next, case: adopt(next, handedOver(it, standing, next.id, toldBy(to, standing.findings))).case };
}
const gone = (there: There | null): There => there ?? expect.fail('no hand-over');

const NOTHING_ARRIVES: Answers = {
  outlet: 'wall',
  stood: 'used',
  hum: 'silent',
  float: 'no-change',
  'tools-at-hand': 'meter',
  volts: { pumpV: '0' },
  winding: { windingOhm: '5' },
};
const here = give(caseOn(pump, { batteryAh: 20 }), NOTHING_ARRIVES);

describe('a case that another flow is better at', () => {
  const there = gone(onward(pump, noted(here, 'it rained')));
  const events = there.case.events;

  it('goes on there with the bike that it stood on, and with what was learnt as answers', () => {
    expect(there.flow.id).toBe('mains');
    expect(events[0]).toEqual({ type: 'rig', rig: { batteryAh: 20 } });
    expect(events).toContainEqual({ type: 'answer', step: 'outlet', answer: { option: 'wall' } });
    expect(events.at(-1)).toEqual({ type: 'handOver', flow: 'mains', by: ['pump'] });
    expect(events.at(-2)).toEqual({ type: 'note', text: 'it rained' });
  });
  it('is not asked again what both flows ask, nor what the hand-over tells', () => {
    const standing = stand(mains, there.case);
    expect(standing.terminals.map(({ step, outcome }) => `${step.id}: ${outcome}`)).toEqual([
      'stood: used',
      'tools-at-hand: meter',
      'volts: dead',
      'breaker-look: off',
    ]);
    expect(openIn(standing)).toBe('outlet-dead');
  });
  it('survives a link with everything that the first flow will want back', async () => {
    const opened = await fromLink(await toLink(there.case));
    expect(opened.ok && adopt(mains, opened.case)).toEqual({ case: there.case, refused: [] });
  });
  it('does not step back behind the hand-over: the answers before it belong to the other page', () => {
    expect(canGoBack(there.case)).toBe(false);
    const further = give(there.case, { 'breaker-look': 'on' });
    expect(back(further)).toEqual(there.case);
  });
  it('brings what was looked at twice', () => {
    const checked = confirmed(here, 'volts');
    expect(stand(mains, gone(onward(pump, checked)).case).checked).toEqual(new Set(['volts']));
  });
  it('leaves behind what a repair made stale', () => {
    const mended = repaired(here, 'winding-open');
    const steps = handedOver(mended, stand(pump, mended), 'mains').events.flatMap((event) =>
      event.type === 'answer' ? [event.step] : [],
    );
    expect(steps).toEqual(Object.keys(NOTHING_ARRIVES).filter((id) => id !== 'hum' && id !== 'winding'));
  });
});

describe('what a hand-over brought', () => {
  const there = gone(onward(pump, here)).case;
  const carried = (it: Case) => Object.keys(stand(mains, it).carried);

  it('is carried along though this flow has no such step, and goes on with the case', () => {
    expect(carried(there)).toEqual(['outlet', 'hum', 'float', 'winding']);
    const on = handedOver(there, stand(mains, there), 'pump');
    expect(on.events).toContainEqual({ type: 'answer', step: 'winding', answer: { readings: { windingOhm: '5' } } });
  });
  it('is dropped by a repair: what the other flow saw may be otherwise now', () => {
    expect(carried(repaired(there, 'outlet-dead'))).toEqual([]);
  });
  it('is kept when an answer is changed that it was not given under', () => {
    expect(carried(revised(there, 'volts', { readings: { pumpV: '0' } }))).toEqual(carried(there));
  });
});

describe('what was seen and does not fit what is looked for next', () => {
  // It hums, and nobody thought of a pump that does.
  const seen = give(caseOn(pump), { ...NOTHING_ARRIVES, hum: 'hums' });
  const unthought: Late = { ...pumpLate, table: withoutCauses(pumpLate.table, ['jammed']) };
  const there = gone(onward(pump, seen, unthought)).case;
  const oddIn = (it: Case) => stand(mains, it).odd;

  it('is told with the hand-over, of what is not asked there', () => {
    expect(oddIn(there)).toEqual(['hum']);
    expect(oddIn(gone(onward(pump, here)).case)).toEqual([]);
  });
  it('survives a link', async () => {
    const opened = await fromLink(await toLink(there));
    expect(opened.ok && oddIn(opened.case)).toEqual(['hum']);
  });
  it('leaves nothing proved there', () => {
    const certainty = (it: Case) => stand(mains, it).decided?.reckoning?.certainty;
    const confirmedTwice = (it: Case) => confirmed(confirmed(it, 'volts'), 'breaker-look');
    expect(certainty(confirmedTwice(gone(onward(pump, here)).case))).toBe('proved');
    expect(certainty(confirmedTwice(there))).toBe('likely');
  });
  it('is forgotten with a repair that may have altered it', () => {
    expect(oddIn(repaired(there, 'outlet-dead'))).toEqual([]);
  });
});

describe('a case that has come to the end of what is known there', () => {
  const there = gone(onward(pump, here)).case;
  // It cannot think of the pump by itself.
  const alone: Late = { ...mainsLate, table: withoutCauses(mainsLate.table, [elsewhere('pump')]) };
  const openAlone = (it: Case) => replay(mains, it, alone).open;
  const settle = (it: Case): Case => {
    const asks = openAlone(it);
    return asks.kind === 'doubt' ? settle(confirmed(it, asks.step.id)) : it;
  };
  const isNot = (it: Case, times: number) =>
    settle(Array.from({ length: times }).reduce<Case>((so) => repaired(so, 'outlet-dead', 'not-it'), it));
  const spent = isNot(there, 3);

  it('goes back to where it began, and says why', () => {
    const end = openAlone(spent);
    expect(end.kind === 'onward' && end.to.flow).toBe('pump');
    expect(end.kind === 'onward' && end.to.because).toMatch(/where it began/);
  });
  it('is told there that it is none of those, and came through nobody', () => {
    const { events } = gone(onward(mains, spent, alone)).case;
    expect(events).toContainEqual({ type: 'repair', verdict: elsewhere('mains'), result: 'not-it' });
    expect(events.at(-1)).toMatchObject({ type: 'handOver', flow: 'pump' });
    expect(events.at(-1)).not.toHaveProperty('by');
  });
  it('stays where it is if nothing was tried, or if it began here', () => {
    expect(openAlone(settle(there)).kind).not.toBe('onward');
    const began = { ...spent, events: spent.events.filter(({ type }) => type !== 'handOver') };
    expect(openAlone(began).kind).not.toBe('onward');
  });
});

describe('a case that comes back', () => {
  const there = gone(onward(pump, here)).case;
  const live = revised(revised(there, 'volts', { readings: { pumpV: '12' } }), 'breaker-look', { option: 'on' });
  const again = gone(onward(mains, live));

  it('is asked nothing that was answered before it went', () => {
    expect(again.flow.id).toBe('pump');
    const { facts } = stand(pump, again.case);
    for (const id of Object.keys(NOTHING_ARRIVES)) expect(facts).toHaveProperty(id);
  });
  it('is not sent away again before anything new was learnt', () => {
    expect(learntHere(again.case)).toBe(false);
    const dead = gone(onward(pump, here));
    const still = handedOver(dead.case, stand(mains, dead.case), 'pump');
    expect(open(pump, still)).not.toMatch(/^to /);
  });
  it('ends in causes that can be acted on, also where the flow that it came from leads', () => {
    const dead = gone(onward(pump, here));
    const still = handedOver(dead.case, stand(mains, dead.case), 'pump');
    const { open: end } = stand(pump, still);
    expect(['list', 'doubt', 'step']).toContain(end.kind);
    if (end.kind === 'list') expect(end.causes).not.toEqual([]);
  });
});

describe('the flows of the site', () => {
  it('hand over only to flows that are proved, for causes that are looked for there, and say why', () => {
    for (const [flow] of PROVED)
      for (const { flow: to, causes, sensible, title, because } of flow.handsOver) {
        const other = FLOWS[to] ?? expect.fail(`${flow.id} hands over to ${to}, which is none`);
        expect(other.causes).toEqual(expect.arrayContaining([...causes]));
        // What both look for, one of them looks for on any one bike.
        if (!sensible) expect(causes.filter((cause) => flow.causes.includes(cause))).toEqual([]);
        expect(title).not.toBe('');
        if (typeof because === 'string') expect(because).toMatch(/\.$/);
      }
  });
  it('pass a case on few times, whatever is fitted and answered, ask nothing twice, and end in something', () => {
    const luck = fc.infiniteStream(fc.nat(1000));
    fc.assert(
      fc.property(anyRig, luck, fc.constantFrom(...PROVED.map(([flow]) => flow)), (rig, choices, first) => {
        let at: There = { flow: first, case: caseOn(first, rig) };
        const asked = new Set<string>();
        for (let handOvers = 0; ; handOvers++) {
          expect(handOvers).toBeLessThan(6);
          for (;;) {
            const standing = stand(at.flow, at.case);
            if (standing.open.kind === 'doubt') {
              const { step, because } = standing.open;
              const { id } = step;
              // Who said that its part is not there is asked to look again, once it is there after all.
              if (typeof because === 'object') asked.delete(because.deniedBy.id);
              expect(asked.has(`again ${id}`), `${id} a third time`).toBe(false);
              asked.add(`again ${id}`);
              at = { ...at, case: confirmed(at.case, id) };
              continue;
            }
            if (standing.open.kind !== 'step') {
              if (standing.open.kind === 'list') expect(standing.open.causes).not.toEqual([]);
              break;
            }
            const { step } = standing.open;
            expect(asked.has(step.id), `${step.id} a second time`).toBe(false);
            asked.add(step.id);
            const answers = [...answersByOutcome(step, standing).values()];
            const answer = answers[(choices.next().value ?? 0) % answers.length] ?? { cannot: true };
            at = { ...at, case: answered(at.case, step.id, answer) };
          }
          const next = onward(at.flow, at.case);
          if (!next) return;
          at = next;
        }
      }),
      { numRuns: 200, endOnFailure: true },
    );
  }, 120_000);
});
