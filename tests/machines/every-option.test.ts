import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../machines/amp-wont-turn-on.ts';
import type { StagedFlow } from '../../machines/machine.ts';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import { canBeAsked } from '../../machines/sense.ts';
import { answered, confirmed, repaired } from '../../src/case/change.ts';
import type { Case } from '../../src/case/events.ts';
import type { Standing } from '../../src/case/standing.ts';
import { drawFrom, pick } from '../../src/observe/draw.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { outcomeOf } from '../../src/steps/outcome.ts';
import type { Facts, Step } from '../../src/steps/step.ts';
import { answersByOutcome, caseOn, stand, toAnswer } from '../journey.ts';

/*
 * Whatever is answered to whichever step, somebody stays suspected and the flow goes on to something. No answer may empty
 * the list, however odd it is beside the others.
 */

const RIGS: Readonly<Record<string, Rig>> = { 'an unknown bike': {}, ...EXAMPLE_RIGS };
const METER = { 'tools-at-hand': toAnswer('meter'), 'meter-digit': toAnswer('0.01') };
/** Answers under which a step offers what it offers nobody else. */
const BEFORE: readonly Facts[] = [
  METER,
  { ...METER, 'meter-digit': toAnswer('0.001') },
  { ...METER, 'meter-digit': toAnswer('0.1') },
  {
    ...METER,
    'rear-hiss': { cannot: true },
    'amp-light': toAnswer('fault'),
    'supply-under-load': toAnswer({ batteryV: '12.2', ampV: '9.2', plusDropV: '3', groundDropV: '0.01' }),
  },
];

/** What is wrong with a standing: nothing, if everybody is still possible and there is a way on. */
function faultsOf(flow: StagedFlow, { decided, open, state, findings }: Standing): readonly string[] {
  const { shares = [], believed } = decided?.reckoning ?? {};
  const total = shares.reduce((sum, { shareRatio }) => sum + shareRatio, 0);
  const ids = new Set([...flow.causes, ...flow.handsOver.map((to) => `elsewhere: ${to.flow}`)]);
  const tooEarly = open.kind === 'step' && flow.asked.includes(open.step) ? flow.before(open.step.id) : [];
  return [
    ...tooEarly
      .filter((id) => flow.asked.some((step) => step.id === id && canBeAsked(step, findings)))
      .map((id) => `${id} has to come first`),
    ...shares.filter(({ shareRatio }) => !(shareRatio > 0)).map(({ cause }) => `${cause} is impossible`),
    ...(shares.length > 0 && Math.abs(total - 1) > 1e-9 ? [`shares add up to ${total}`] : []),
    ...(believed && !(believed.evidence > 0) ? ['the answers are impossible'] : []),
    ...(open.kind === 'list' && open.causes.length === 0 ? ['the list is empty'] : []),
    ...(open.kind === 'list' && open.causes.length > 4 ? ['the list is long'] : []),
    ...(open.kind === 'list' && open.causes.some((cause) => !ids.has(cause)) ? [`who is in ${open.causes}?`] : []),
    ...(open.kind === 'cause' && !flow.causes.includes(open.cause) ? [`${open.cause} is no cause of it`] : []),
    ...(open.kind === 'cause' && open.remedy.what === '' ? ['a remedy that says nothing'] : []),
    ...(open.kind === 'verdict' || open.kind === 'waiting' ? [`${open.kind} in ${state}`] : []),
  ];
}

/** What comes first is answered with "I can't", where nothing else is said, so that the inference has its say. */
const begun = (flow: StagedFlow, rig: Rig, given: Facts): Case =>
  Object.entries({
    ...Object.fromEntries(
      flow.inOrder
        .filter((step) => outcomeOf(step, { rig, facts: {} }) === undefined)
        .map(({ id }) => [id, { cannot: true } as const]),
    ),
    ...given,
  }).reduce((it_, [step, answer]) => answered(it_, step, answer), caseOn(flow, rig));

const FLOWS = [noRearSound, ampWontTurnOn].map((flow) => [flow.id, flow] as const);

describe.each(FLOWS)('every option and outcome of %s', (_, flow) => {
  const steps = [...flow.steps.values()];
  /** One answer for each outcome of a step, with those that it takes before it. */
  const answersTo = (step: Step): ReadonlyMap<string, Facts> =>
    new Map(
      Object.values(RIGS).flatMap((rig) =>
        BEFORE.flatMap((facts) =>
          [...answersByOutcome(step, { rig, facts })].map(
            ([outcome, answer]) => [outcome, { ...facts, [step.id]: answer }] as const,
          ),
        ),
      ),
    );

  it('is found by trying typical answers: none is missed here', () => {
    for (const step of steps)
      expect([...answersTo(step).keys()].toSorted(), step.id).toEqual(
        ['cannot', ...Object.keys(step.outcomes)].toSorted(),
      );
  });
  it.each(Object.entries(RIGS))('leaves everybody possible and leads on, on %s', (__, rig) => {
    for (const step of steps)
      for (const [outcome, given] of answersTo(step)) {
        const standing = stand(flow, begun(flow, rig, given));
        expect(faultsOf(flow, standing), `${step.id}: ${outcome}`).toEqual([]);
        expect(standing.decided, `${step.id}: ${outcome}`).toBeDefined();
      }
  });
  it('does so beside every answer to another step, of pairs that are drawn', () => {
    const draw = drawFrom('pairs', flow.id);
    for (let i = 0; i < 600; i++) {
      const rig = pick(draw, Object.values(RIGS));
      const given = [0, 1].map(() => {
        const step = pick(draw, steps);
        return pick(draw, [...answersTo(step).values()]);
      });
      const standing = stand(flow, begun(flow, rig, Object.assign({}, ...given)));
      expect(faultsOf(flow, standing), JSON.stringify(given)).toEqual([]);
    }
  });
  it('does so along any way to an end, and after repairs that did not help', () => {
    for (let walk = 0; walk < 25; walk++) {
      const draw = drawFrom('walk', flow.id, walk);
      let it_ = caseOn(flow, pick(draw, Object.values(RIGS)));
      const way: string[] = [];
      for (let repairs = 0; repairs < 4; ) {
        const standing = stand(flow, it_);
        const { open } = standing;
        expect(faultsOf(flow, standing), way.join(' ')).toEqual([]);
        expect(way.length).toBeLessThan(200);
        if (open.kind === 'step') {
          const [outcome, answer] = pick(draw, [...answersByOutcome(open.step, standing)]);
          way.push(`${open.step.id}=${outcome}`);
          it_ = answered(it_, open.step.id, answer);
        } else if (open.kind === 'doubt') {
          way.push(`again ${open.step.id}`);
          it_ = confirmed(it_, open.step.id);
        } else if (open.kind === 'cause' || open.kind === 'list') {
          const named =
            open.kind === 'cause' ? open.cause : (open.causes.find((one) => flow.causes.includes(one)) ?? '');
          way.push(`mended ${named}`);
          it_ = repaired(it_, named, repairs % 2 === 1 ? 'better' : undefined);
          repairs++;
        } else break;
      }
    }
  }, 30_000);
});
