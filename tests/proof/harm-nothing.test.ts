import { describe, expect, it } from 'vitest';
import { FAULT_FLOWS } from '../../src/case/flows.ts';
import type { Cause } from '../../src/causes/cause.ts';
import type { ReadFirst } from '../../src/causes/read-first.ts';
import { type Draw, drawFrom } from '../../src/observe/draw.ts';
import { believedRig } from '../../src/proof/believed-rig.ts';
import type { Present } from '../../src/proof/bikes.ts';
import { withRead } from '../../src/proof/read-off.ts';
import { steady } from '../../src/proof/riders.ts';
import { loadStages } from '../../src/proof/stages.ts';
import { oddBike, oddities } from '../../src/proof/strange/index.ts';
import { type Subject, subjectOf } from '../../src/proof/subjects.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { type Findings, findingsOver, learnedRig, usable } from '../../src/steps/outcome.ts';
import type { Answer, Step } from '../../src/steps/step.ts';
import { causeOfFault } from '../../src/survey/survey-of.ts';
import { harmsOf } from '../../src/world/harm.ts';
import { withRepairs } from '../../src/world/repair.ts';
import type { World } from '../../src/world/state.ts';
import { COMPLAINTS, type Ridden, ridden } from '../../src/world/symptoms/index.ts';

/*
 * Whatever is wrong with a bike, and whichever fix is done to it, right or not: nothing that was sound is hurt by it. The
 * inference has no say here, so no better or worse guess can hide a fix that harms.
 */

const BIKES = 8;
const SEED = 5150;
const stages = await loadStages();

interface Case {
  readonly name: string;
  readonly bike: Ridden;
  readonly believed: Rig;
  readonly faults: readonly Present[];
}

const exact = ({ name, bikes, paper, faults }: Subject): readonly Case[] =>
  faults.map((one) => ({ name, bike: bikes.with([one]), believed: paper, faults: [one] }));
const believed = (subject: Subject, draw: Draw): readonly Case[] =>
  exact(subject).map((one) => ({ ...one, believed: believedRig(draw, subject.paper) }));
const strange = (subject: Subject, draw: Draw): readonly Case[] =>
  exact(subject).map((one) => {
    const chosen = oddities(draw, one.bike.world);
    const says = chosen.reduce<Rig>(
      (rig, odd) => (odd.believed?.(rig as never) as Rig | undefined) ?? rig,
      one.believed,
    );
    return { ...one, bike: ridden(oddBike(one.bike.world, chosen, subject.name)), believed: says };
  });
const two = ({ name, bikes, paper, faults }: Subject): readonly Case[] =>
  faults.length < 2 ? [] : [{ name, bike: bikes.with(faults), believed: paper, faults }];
const RIDERS = { exact, believed, strange, two };

/** What a careful person finds at the bike, at some of the steps of a flow. */
function findingsOf(
  steps: ReadonlyMap<string, Step>,
  { bike, believed: rig, name }: Case,
  only: (step: Step) => boolean,
) {
  const observe = steady([name]);
  const facts: Record<string, Answer> = {};
  for (const step of steps.values()) {
    if (!only(step)) continue;
    const answer = observe(step, bike, { rig, facts });
    if (usable(step, answer, { rig, facts: { ...facts, [step.id]: answer } })) facts[step.id] = answer;
  }
  return findingsOver(steps)({ rig: learnedRig(rig, [...steps.values()], facts), facts });
}
const isTold = ({ kind, id }: Step): boolean => kind === 'rig' || id === 'which-amp';

/** The bike after a fix, done by somebody who first reads off it what the fix asks him to read. */
const fixed = (cause: Cause, f: Findings, world: World): World =>
  withRepairs(world, cause.remedy(withRead(f, world, cause.remedy(f).readFirst)).repair);

const casesOf = (riders: keyof typeof RIDERS) =>
  FAULT_FLOWS.flatMap(([id, { complaints }]) =>
    Array.from({ length: BIKES }, (_, i) => {
      const subject = subjectOf({ complaints, seed: SEED, faultsPerBike: 2 }, i);
      return subject ? RIDERS[riders](subject, drawFrom(riders, subject.name)).map((it) => ({ id, it, subject })) : [];
    }).flat(),
  );

describe('the fix of any cause', () => {
  it.each(Object.keys(RIDERS) as (keyof typeof RIDERS)[])('harms no bike, whatever is wrong with it: %s', (riders) => {
    const cases = casesOf(riders);
    expect(cases.length).toBeGreaterThan(BIKES);
    const harms = cases.flatMap(({ id, it }) => {
      const { flow, late } = stages[id] ?? expect.fail(`no flow ${id}`);
      return [isTold, () => true].flatMap((only) => {
        const f = findingsOf(flow.steps, it, only);
        return Object.values(late.causes).flatMap((cause) =>
          harmsOf(it.bike.world, fixed(cause, f, it.bike.world)).map((harm) => `${it.name} ${cause.id}: ${harm.id}`),
        );
      });
    });
    expect(harms).toEqual([]);
  });
  it.each(['exact', 'believed', 'strange'] as const)(
    'of the cause that it is takes the complaint away: %s',
    (riders) => {
      const left = casesOf(riders).flatMap(({ id, it, subject }) => {
        const { flow, late } = stages[id] ?? expect.fail(`no flow ${id}`);
        const complains = (bike: Ridden) => COMPLAINTS[subject.complaint](bike) === 'yes';
        const [present] = it.faults;
        const cause = present && causeOfFault(Object.values(late.causes), present.fault);
        // What a bike does by design is no fault: nothing that is done to it takes it away.
        if (!cause || present.fault.byDesign || !complains(it.bike)) return [];
        const f = findingsOf(flow.steps, it, () => true);
        return complains(ridden(fixed(cause, f, it.bike.world))) ? [`${it.name} ${cause.id}`] : [];
      });
      expect(left).toEqual([]);
    },
  );
});

describe('what a fix asks to be read first', () => {
  /** The words that ask for it. */
  const ASKS: Readonly<Record<ReadFirst, RegExp>> = {
    'plus-lead': /section (off|on) the (jacket|\w+ lead’s jacket)/,
    rating: /watts/,
    'made-for': /papers.*made for the unaltered output/,
    'turn-on': /what is wired/,
  };
  it('is asked in its words, and never only in its data', () => {
    const silent = casesOf('believed').flatMap(({ id, it }) => {
      const { flow, late } = stages[id] ?? expect.fail(`no flow ${id}`);
      const f = findingsOf(flow.steps, it, isTold);
      return Object.values(late.causes).flatMap((cause) => {
        const { readFirst = [], fix } = cause.remedy(f);
        return readFirst
          .filter((read) => !fix.some((line) => ASKS[read].test(line)))
          .map((read) => `${cause.id}: ${read}`);
      });
    });
    expect([...new Set(silent)]).toEqual([]);
  });
  /** Looked at whatever was said of it: a fuse goes on it, or nothing wakes the amplifier any more. */
  const ALWAYS: ReadonlySet<ReadFirst> = new Set(['plus-lead', 'turn-on']);
  it('leaves nothing to read once it was read, but for what is looked at whatever was said', () => {
    const again = casesOf('believed').flatMap(({ id, it }) => {
      if (it.bike.world.about === null) return [];
      const { flow, late } = stages[id] ?? expect.fail(`no flow ${id}`);
      const f = findingsOf(flow.steps, it, isTold);
      return Object.values(late.causes).flatMap((cause) => {
        const first = cause.remedy(f).readFirst ?? [];
        const then = cause.remedy(withRead(f, it.bike.world, first)).readFirst ?? [];
        return then.filter((read) => !ALWAYS.has(read)).map((read) => `${it.name} ${cause.id}: ${read}`);
      });
    });
    expect(again).toEqual([]);
  });
});
