import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../machines/amp-wont-turn-on.ts';
import { flow } from '../../machines/kit.ts';
import type { Late, StagedFlow } from '../../machines/machine.ts';
import { answered, revised } from '../../src/case/change.ts';
import type { Case, CaseEvent } from '../../src/case/events.ts';
import { fromLink, toLink } from '../../src/case/link.ts';
import { replay } from '../../src/case/replay.ts';
import { CAUSES } from '../../src/causes/all.ts';
import { UNTHOUGHT_SOUND } from '../../src/inference/table.ts';
import { ampLight } from '../../src/steps/amplifier/amp-light.ts';
import { coilOhms } from '../../src/steps/runs/coil-ohms.ts';
import { runOhms } from '../../src/steps/runs/run-ohms.ts';
import { about, eachOf } from '../../src/steps/subject.ts';
import { toolsAtHand } from '../../src/steps/tools/tools-at-hand.ts';
import { type Answers, caseOn, give, openIn, toAnswer } from '../journey.ts';

/* A throw-away flow for a bike of which one speaker is silent, front or rear: each step is asked of both. */
const frontRuns = about(runOhms, 'front');
const frontCoil = about(coilOhms, 'front-left');
const corner = flow(
  { id: 'one-corner', title: 'One corner is silent', fitted: [], told: [] },
  {
    look: [toolsAtHand],
    measure: [runOhms, frontRuns, coilOhms, frontCoil],
    safe: [],
    causes: ['coil-open', 'speaker-wire-open'],
    handsOver: [],
  },
);
const row = (cause: string, shows: Readonly<Record<string, readonly number[]>>) => ({
  cause,
  weight: 10,
  looks: 100,
  shows: {
    'run-ohms': [1, 0],
    'run-ohms@front': [1, 0],
    'coil-ohms': [1, 0],
    'coil-ohms@front-left': [1, 0],
    ...shows,
  },
});
const late: Late = {
  table: {
    steps: Object.fromEntries([runOhms, frontRuns, coilOhms, frontCoil].map(({ id }) => [id, ['ok', 'open']])),
    rows: [
      row('coil-open', { 'run-ohms@front': [0, 1], 'coil-ohms@front-left': [0.1, 0.9] }),
      row('speaker-wire-open', { 'run-ohms@front': [0, 1] }),
      row('speaker-wire-open', { 'run-ohms': [0, 1] }),
      row(UNTHOUGHT_SOUND, {}),
    ],
  },
  causes: Object.fromEntries(CAUSES.filter(({ id }) => corner.causes.includes(id)).map((cause) => [cause.id, cause])),
};
const SOUND = { leadsOhm: '0.2', leftOhm: '3.8', rightOhm: '3.8' };
const ANSWERS: Answers = {
  'tools-at-hand': 'meter',
  'run-ohms': SOUND,
  'run-ohms@front': { ...SOUND, leftOhm: 'OL' },
  'coil-ohms': { leadsOhm: '0.2', coilOhm: '3.6' },
  'coil-ohms@front-left': { leadsOhm: '0.2', coilOhm: 'OL' },
};
const stand = (it: Case) => replay(corner, it, late);
const whole = give(caseOn(corner), ANSWERS);

describe('two subjects of one step', () => {
  it('are both answered in one case, each with an answer of its own', () => {
    const { terminals, findings } = stand(whole);
    expect(terminals.map(({ step, outcome }) => `${step.id}: ${outcome}`)).toEqual([
      'tools-at-hand: meter',
      'run-ohms: ok',
      'run-ohms@front: open',
      'coil-ohms: ok',
      'coil-ohms@front-left: open',
    ]);
    expect(findings.outcome('coil-ohms@front-left')).toBe('open');
    expect(findings.values('run-ohms@front')['leftOhm']).toBe(Infinity);
    expect(stand(whole).decided?.reckoning?.shares[0]?.cause).toBe('coil-open');
  });
  it('are asked one after the other: the answer about one is none about the other', () => {
    const rear = give(caseOn(corner), { 'tools-at-hand': 'meter', 'run-ohms': SOUND });
    expect(openIn(stand(rear))).toBe('run-ohms@front?');
    const front = answered(rear, 'run-ohms@front', toAnswer({ ...SOUND, leftOhm: 'OL' }));
    expect(openIn(stand(front))).toBe('coil-ohms@front-left?');
  });
  it('come to the same shares in whatever order they were answered', () => {
    const keys = Object.keys(ANSWERS);
    fc.assert(
      fc.property(fc.shuffledSubarray(keys, { minLength: 1 }), fc.shuffledSubarray(keys), (some, order) => {
        const sorted = [...some].toSorted((a, b) => order.indexOf(a) - order.indexOf(b));
        const sharesOf = (ids: readonly string[]) =>
          stand(give(caseOn(corner), Object.fromEntries(ids.map((id) => [id, ANSWERS[id] ?? null])))).decided?.reckoning
            ?.shares;
        expect(sharesOf(sorted)).toEqual(sharesOf(some));
      }),
      { numRuns: 60 },
    );
  });
  it('are changed one by one', () => {
    const changed = stand(revised(whole, 'coil-ohms@front-left', toAnswer({ leadsOhm: '0.2', coilOhm: '3.6' })));
    expect(changed.findings.outcome('coil-ohms@front-left')).toBe('ok');
    expect(changed.facts['coil-ohms']).toEqual(toAnswer(ANSWERS['coil-ohms'] ?? null));
    expect(changed.checked).toEqual(new Set(['coil-ohms@front-left']));
  });
  it('are in the link', async () => {
    const opened = await fromLink(await toLink(whole));
    expect(opened).toMatchObject({ ok: true, case: whole, refused: [] });
  });
});

/* A hand-over brings answers by the keys of the flow that asked. */
describe('an answer that another flow asked for', () => {
  const coil = (side: string, rest: readonly CaseEvent[] = []): Case => ({
    flow: 'one-corner',
    events: [
      { type: 'rig', rig: {} },
      { type: 'answer', step: 'which-silent', answer: { option: side } },
      { type: 'answer', step: 'coil-ohms@rear-left', answer: toAnswer({ leadsOhm: '0.2', coilOhm: 'OL' }) },
      { type: 'confirm', step: 'coil-ohms@rear-left' },
      ...rest,
      { type: 'handOver', flow: 'one-corner' },
    ],
  });
  it('about a speaker by its place is one about the silent speaker, where that is the one', () => {
    const { findings, checked, carried } = stand(coil('left'));
    expect(findings.outcome('coil-ohms')).toBe('open');
    expect(checked).toEqual(new Set(['coil-ohms']));
    expect(Object.keys(carried)).toEqual(['which-silent']);
  });
  it('about another speaker goes on as it is, and the silent one is still to be asked of', () => {
    const { findings, carried } = stand(coil('right'));
    expect(findings.outcome('coil-ohms')).toBeUndefined();
    expect(Object.keys(carried)).toContain('coil-ohms@rear-left');
    expect(stand(coil('both')).findings.outcome('coil-ohms')).toBeUndefined();
  });
  it('does not take the place of one that this flow has', () => {
    const own: CaseEvent = { type: 'answer', step: 'coil-ohms', answer: toAnswer({ leadsOhm: '0.2', coilOhm: '3.6' }) };
    expect(stand(coil('left', [own])).findings.outcome('coil-ohms')).toBe('ok');
  });
  it('about an amplifier by its name is one about the amplifier that is meant, and the other way round', () => {
    const brought = (flow: StagedFlow, pair: string, step: string) =>
      replay(flow, {
        flow: flow.id,
        events: [
          { type: 'answer', step: 'which-amp', answer: { option: pair } },
          { type: 'answer', step, answer: { option: 'fault' } },
          { type: 'handOver', flow: flow.id },
        ],
      }).facts;
    expect(brought(ampWontTurnOn, 'front', 'amp-light@front')).toHaveProperty('amp-light');
    expect(brought(ampWontTurnOn, 'front', 'amp-light@rear')).not.toHaveProperty('amp-light');
    const named = flow(
      { id: 'named', title: 'By name', fitted: [], told: [] },
      { look: eachOf(ampLight).slice(1), measure: [], safe: [], causes: [], handsOver: [] },
    );
    expect(brought(named, 'front', 'amp-light')).toHaveProperty('amp-light@front');
    expect(brought(named, 'rear', 'amp-light')).toHaveProperty('amp-light@rear');
  });
});
