import { describe, expect, it } from 'vitest';
import { chanceOf } from '../../src/diagnosis/signs.ts';
import { twinClasses } from '../../src/diagnosis/twins.ts';
import { drawFrom, pick } from '../../src/observe/draw.ts';
import { observe } from '../../src/observe/index.ts';
import type { Present } from '../../src/proof/bikes.ts';
import { PROVED_FLOWS, type ProvedFlow } from '../../src/proof/flows.ts';
import { HISTORY_STEPS, surveyOf, verdictOf } from '../../src/proof/made.ts';
import { nameOf, type Subject, subjectOf } from '../../src/proof/subjects.ts';
import { learnedRig, outcomeOf } from '../../src/steps/outcome.ts';
import type { Facts } from '../../src/steps/step.ts';
import { FAULTS, type Fault, keyOf, severityAt, weightOf } from '../../src/world/faults/index.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import { BASIC_METER, EXACT_METER, GOOD_METER } from '../../src/world/meter.ts';
import { COMPLAINTS, ridden } from '../../src/world/symptoms/index.ts';
import { TWENTY_RIGS } from '../observe/rigs.ts';

/*
 * The table of suspects is made from the circuit over fixed bikes. Other bikes, which it was not made from, are held
 * against it: what they show must be in it, and what it says must be what they show.
 */

const BIKES = 30;
const FAULTS_PER_BIKE = 3;
/** What fewer bikes than this show, a table made from a hundred may not know. */
const RARE_SHARE = 0.03;

/** Everything that a bike with a fault shows, as one person with one meter finds it, by step. */
function shownBy(proved: ProvedFlow, { paper, bikes, name }: Subject, present: Present): ReadonlyMap<string, string> {
  const { makesSense } = surveyOf(proved, 0);
  const steps = [...proved.flow.steps.values()];
  const bike = bikes.with([present]);
  const draw = drawFrom('made', name, nameOf([present]));
  const meter = pick(draw, [EXACT_METER, GOOD_METER, BASIC_METER]);
  const early = steps.filter(({ kind, id }) => kind === 'rig' || id === 'tools-at-hand' || id === 'meter-digit');
  let facts: Facts = {};
  for (const step of early)
    facts = { ...facts, [step.id]: observe(step, bike, { rig: paper, facts }, { meter, draw }) };
  const base = { rig: learnedRig(paper, steps, facts), facts };
  const outcomes = new Map<string, string>();
  for (const step of [...early, ...steps.filter((one) => !early.includes(one))]) {
    const answer = facts[step.id] ?? observe(step, bike, base, { meter, draw });
    const outcome = outcomeOf(step, { ...base, facts: { ...facts, [step.id]: answer } });
    if (outcome !== undefined && outcome !== 'cannot' && outcome !== 'unclear') outcomes.set(step.id, outcome);
  }
  // No flow asks for the rear pairs of a bike that has no rear.
  const asksRear = paper.rearFitted === 'yes';
  const shown = steps.filter(
    (step) =>
      (asksRear || !step.id.startsWith('rear-pair')) &&
      !HISTORY_STEPS.includes(step.id) &&
      makesSense(step, (id) => outcomes.get(id)),
  );
  return new Map(shown.flatMap(({ id }) => (outcomes.has(id) ? [[id, outcomes.get(id) ?? ''] as const] : [])));
}

describe.each(PROVED_FLOWS.map((proved) => [proved.id, proved] as const))('the made table of %s', (_, proved) => {
  const found = Array.from({ length: BIKES }, (__, i) =>
    subjectOf({ complaint: proved.id, seed: 77, faultsPerBike: FAULTS_PER_BIKE }, i),
  ).flatMap((subject) =>
    (subject?.faults ?? []).flatMap((present) => {
      const verdict = verdictOf(proved, present.fault);
      if (!subject || !verdict || !weightOf(present.fault, proved.id)) return [];
      const bike = `${subject.name} with ${nameOf([present])}`;
      return [{ bike, verdict: verdict.id, shown: shownBy(proved, subject, present) }];
    }),
  );

  it('has a suspect for each bike with a fault that shows all that the bike shows', () => {
    expect(found.length).toBeGreaterThan(BIKES);
    const strangers = found.flatMap(({ bike, verdict, shown }) => {
      const own = proved.signs.suspects.filter((suspect) => suspect.verdict === verdict);
      const odd = own.map((suspect) => [...shown].filter(([step, outcome]) => chanceOf(suspect, step, outcome) === 0));
      const [least = []] = odd.toSorted((a, b) => a.length - b.length);
      return odd.some((list) => list.length === 0) ? [] : [`${bike}: ${least.map((one) => one.join('=')).join(' ')}`];
    });
    expect(strangers.length, strangers.join('\n')).toBeLessThanOrEqual(RARE_SHARE * found.length);
  });
  it('names steps of the flow and outcomes that they have, with shares that sum to one', () => {
    const steps = new Set(proved.signs.suspects.flatMap(({ shows }) => Object.keys(shows)));
    for (const step of steps) expect([...proved.flow.steps.keys()]).toContain(step);
    for (const { shows } of proved.signs.suspects)
      for (const [step, chances] of Object.entries(shows)) {
        expect(Object.keys(proved.flow.steps.get(step)?.outcomes ?? {})).toEqual(
          expect.arrayContaining(Object.keys(chances)),
        );
        expect(Object.values(chances).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 1);
      }
  });
  it('has a suspect for each fault that callers of this complaint have', () => {
    const suspected = new Set(proved.signs.suspects.map(({ verdict }) => verdict));
    // What callers with a wider complaint have may never do this: a sound that cuts out need not be the amplifier.
    const causes = (fault: Fault) =>
      Object.values(TWENTY_RIGS).some((rig) => {
        const healthy = healthyWorld(rig);
        const bike = (share: number) => ridden(fault.apply(healthy, severityAt(fault, share)));
        return fault.fits(healthy) && [0.5, 0.99, 0.01].some((share) => COMPLAINTS[proved.id](bike(share)) === 'yes');
      });
    const missing = FAULTS.filter((fault) => weightOf(fault, proved.id) && causes(fault)).flatMap((fault) => {
      const verdict = verdictOf(proved, fault);
      return verdict && !suspected.has(verdict.id) ? [`${keyOf(fault)}: ${verdict.id}`] : [];
    });
    expect(missing).toEqual([]);
  });
  it('leaves no more than three verdicts that no step of the flow tells apart, history included', () => {
    const classes = twinClasses(proved.tableFor({ rig: {}, facts: {} }).evidence, [...proved.flow.steps.keys()]);
    for (const twins of classes) expect(new Set(twins.map(({ verdict }) => verdict)).size).toBeLessThanOrEqual(3);
    expect(classes.length).toBeGreaterThan(10);
  });
});
