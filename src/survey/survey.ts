import { drawFrom, pick } from '../observe/draw.ts';
import { observe } from '../observe/index.ts';
import type { Rig } from '../rig/rig.ts';
import { findingsOver, learnedRig, outcomeOf } from '../steps/outcome.ts';
import type { Answer, Facts, Situation, Step } from '../steps/step.ts';
import { type Fault, keyOf, severityAt, weightOf } from '../world/faults/index.ts';
import { healthyWorld } from '../world/healthy.ts';
import { BASIC_METER, GOOD_METER } from '../world/meter.ts';
import type { World } from '../world/state.ts';
import { COMPLAINTS, type ComplaintId, type Ridden, ridden } from '../world/symptoms/index.ts';

/** What to make a table of: the steps of a flow, and the complaints that it takes on, each with its share of callers. */
export interface Survey {
  readonly steps: readonly Step[];
  readonly complaints: Readonly<Partial<Record<ComplaintId, number>>>;
  readonly faults: readonly Fault[];
  readonly rigs: readonly Rig[];
  /** Steps whose outcome splits bikes into kinds of build, which are kept apart. */
  readonly kindSteps: readonly string[];
  /** The cause that stands for a fault, or undefined where none does. */
  causeOf(fault: Fault): string | undefined;
}

/** By step, how often each outcome was given. */
export type Counts = Map<string, Map<string, number>>;

/** What a fault shows on the bikes of one kind. */
export interface Seen {
  readonly cause: string;
  readonly fault: string;
  readonly kind: string;
  readonly weight: number;
  /** Bikes and severities that it was looked at on. */
  readonly looks: number;
  readonly counts: Counts;
}

/** How many people look at each bike, where chance has a say in what they find. */
const LOOKS = 8;
/** Mild, middling and bad. */
const SEVERITY_SHARES = [0.05, 0.5, 0.95];
/** What has to be known before anything is read: what is fitted, and the meter. */
const KNOWN_FIRST = new Set(['tools-at-hand', 'meter-digit']);

/** What is asked only of whoever could not do another step: it is looked at as if that had been so. */
const INSTEAD_OF: Readonly<Record<string, string>> = { 'amp-signs': 'amp-light', 'spare-fuse': 'fuse-lamp' };
/** What ends the asking of others: these were asked before it, and they are looked at as of then. */
const ENDS_ASKING: readonly string[] = ['fuse-lamp', 'spare-fuse'];
const CANNOT: Answer = { cannot: true };

const add = (counts: Counts, step: string, outcome: string, times: number): void => {
  const own = counts.get(step) ?? new Map<string, number>();
  own.set(outcome, (own.get(outcome) ?? 0) + times);
  counts.set(step, own);
};

/** One look of one person at every step of a bike: raw answers, and whether chance had a say. */
function answerAll(steps: readonly Step[], bike: Ridden, rig: Rig, look: number) {
  const seed = bike.world.rig.batteryAh;
  const meter = pick(drawFrom('meter', seed), [GOOD_METER, BASIC_METER]);
  const chancy = new Set<string>();
  const say = (step: Step, situation: Situation): Answer => {
    const draw = drawFrom('look', look, step.id, seed);
    const counted = () => {
      chancy.add(step.id);
      return draw();
    };
    return observe(step, bike, situation, { meter, draw: counted });
  };
  let facts: Facts = {};
  for (const step of steps)
    if (step.kind === 'rig' || KNOWN_FIRST.has(step.id)) facts = { ...facts, [step.id]: say(step, { rig, facts }) };
  const base: Situation = { rig: learnedRig(rig, steps, facts), facts };
  return { base, chancy, say: (step: Step) => facts[step.id] ?? say(step, base) };
}

/**
 * Tells whether anybody is asked a step on this bike. What stands in for a reading makes no sense once that is known: a
 * step that needs no meter is asked as well of whoever has none, or has not read it yet.
 */
function askedOn(steps: readonly Step[], { rig, facts }: Situation): (step: Step) => boolean {
  const given = findingsOver(new Map(steps.map((step) => [step.id, step])));
  const readings = steps.filter(({ tool }) => tool === 'meter').map(({ id }) => [id, CANNOT] as const);
  const before = { ...facts, ...Object.fromEntries(readings) };
  const stillAsking = (from: Facts): Facts =>
    Object.fromEntries(Object.entries(from).filter(([id]) => !ENDS_ASKING.includes(id)));
  const [all, unread] = [facts, before].map((from) => [from, stillAsking(from)].map((so) => given({ rig, facts: so })));
  return (step) => {
    const { tool, sensible, id } = step;
    if (!sensible || all?.some(sensible) || (tool !== 'meter' && unread?.some(sensible))) return true;
    const other = INSTEAD_OF[id];
    return other !== undefined && sensible(given({ rig, facts: { ...before, [other]: CANNOT } }));
  };
}

/** Looks at every step of one bike, and counts what was found where it makes sense to ask. */
function lookAt({ steps }: Survey, bike: Ridden, rig: Rig, counts: Counts): void {
  for (let look = 0; look < LOOKS; look++) {
    const { base, chancy, say } = answerAll(steps, bike, rig, look);
    const answers = new Map(steps.map((step) => [step, say(step)]));
    const facts = { ...base.facts, ...Object.fromEntries([...answers].map(([step, answer]) => [step.id, answer])) };
    const isAsked = askedOn(steps, { rig: base.rig, facts });
    for (const step of steps) {
      // What chance has no say in is the same for everybody.
      const times = chancy.has(step.id) && step.kind === 'choice' ? 1 : look === 0 ? LOOKS : 0;
      if (times === 0 || KNOWN_FIRST.has(step.id) || !isAsked(step)) continue;
      // Where a step is judged by what another one read, that was read before.
      const outcome = outcomeOf(step, { ...base, facts });
      if (outcome !== undefined && outcome !== 'cannot') add(counts, step.id, outcome, times);
    }
  }
}

/** The amplifier that is meant: on a bike with two, either may be. */
const ABOUT_AN_AMP: readonly ComplaintId[] = ['amp-wont-turn-on', 'amp-goes-off'];
function worldsOf(rig: Rig, complaint: ComplaintId): readonly World[] {
  const sound = healthyWorld(rig);
  const { amps } = sound.rig;
  if (!ABOUT_AN_AMP.includes(complaint) || amps.length < 2) return [sound];
  return amps.map((_, about) => ({ ...sound, about }));
}

const kindOf = ({ kindSteps }: Survey, counts: Counts): string =>
  kindSteps.map((step) => [...(counts.get(step)?.keys() ?? [])].join('/')).join(' ');

/** Who has it mostly complains of something else, and a case may still come here from another flow. An estimate. */
const SELDOM_WEIGHT = 0.5;

const merge = (a: Counts, b: Counts): Counts => {
  for (const [step, own] of b) for (const [outcome, n] of own) add(a, step, outcome, n);
  return a;
};

/** What one fault shows on one bike, at one severity. Plain data, so that several cores can look at a share of the bikes. */
export interface Found {
  readonly complaint: ComplaintId;
  readonly cause: string;
  readonly fault: string;
  readonly kind: string;
  readonly counts: Counts;
}

/** Looks at every fault on every bike, wherever it causes one of the complaints. */
export function lookOver(what: Survey): readonly Found[] {
  const found: Found[] = [];
  for (const complaint of Object.keys(what.complaints) as ComplaintId[])
    for (const rig of what.rigs)
      for (const healthy of worldsOf(rig, complaint)) {
        if (COMPLAINTS[complaint](ridden(healthy)) !== 'no') continue;
        for (const fault of what.faults) {
          const cause = what.causeOf(fault);
          if (cause === undefined || !fault.fits(healthy)) continue;
          for (const share of fault.severity ? SEVERITY_SHARES : [0]) {
            const bike = ridden(fault.apply(healthy, severityAt(fault, share)));
            if (COMPLAINTS[complaint](bike) !== 'yes') continue;
            const counts: Counts = new Map();
            lookAt(what, bike, rig, counts);
            found.push({ complaint, cause, fault: keyOf(fault), kind: kindOf(what, counts), counts });
          }
        }
      }
  return found;
}

/** The same by fault and kind of build. The weight of a fault among callers is spread evenly over the bikes that show it. */
export function gathered(what: Survey, found: readonly Found[]): readonly Seen[] {
  const seen = new Map<string, Seen>();
  const faults = new Map(what.faults.map((fault) => [keyOf(fault), fault]));
  for (const [complaint, own] of Map.groupBy(found, (one) => one.complaint)) {
    const weightFor = (key: string) => {
      const fault = faults.get(key);
      return (fault && weightOf(fault, complaint)) ?? SELDOM_WEIGHT;
    };
    const byFault = Map.groupBy(own, (one) => one.fault);
    const total = [...byFault.keys()].reduce((sum, key) => sum + weightFor(key), 0);
    const callers = what.complaints[complaint] ?? 0;
    for (const [key, looks] of byFault) {
      const weight = (callers * weightFor(key)) / total / looks.length;
      for (const { cause, counts, kind } of looks) {
        const name = `${key} ${complaint} ${kind}`;
        const before = seen.get(name);
        seen.set(name, {
          cause,
          fault: key,
          kind,
          weight: (before?.weight ?? 0) + weight,
          looks: (before?.looks ?? 0) + 1,
          counts: before ? merge(before.counts, counts) : counts,
        });
      }
    }
  }
  return [...seen.values()];
}
