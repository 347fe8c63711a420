import { drawFrom, pick } from '../observe/draw.ts';
import { observe } from '../observe/index.ts';
import type { Rig } from '../rig/rig.ts';
import { findingsOver, learnedRig, outcomeOf } from '../steps/outcome.ts';
import type { Answer, Facts, Situation, Step } from '../steps/step.ts';
import { type Fault, keyOf, severityAt, weightOf } from '../world/faults/index.ts';
import { healthyWorld } from '../world/healthy.ts';
import { BASIC_METER, GOOD_METER } from '../world/meter.ts';
import type { World } from '../world/state.ts';
import { ABOUT_AN_AMP, COMPLAINTS, type ComplaintId, type Ridden, ridden } from '../world/symptoms/index.ts';

/** What to make a table of: the steps of a flow, and the complaints that it takes on, each with its share of callers. */
export interface Survey {
  readonly steps: readonly Step[];
  readonly complaints: Readonly<Partial<Record<ComplaintId, number>>>;
  readonly faults: readonly Fault[];
  readonly rigs: readonly Rig[];
  /** Steps whose outcome splits bikes into kinds of build, which are kept apart. */
  readonly kindSteps: readonly string[];
  /** The cause that stands for a fault under a complaint on a bike, or undefined where none does. */
  causeOf(fault: Fault, complaint: ComplaintId, rig: Rig): string | undefined;
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

/** What the others are worded by, and ask about. */
const ASKED_FIRST = new Set(['which-corner']);

/** What is asked only of whoever could not do another step: it is looked at as if that had been so. */
const INSTEAD_OF: Readonly<Record<string, string>> = {
  'amp-signs': 'amp-light',
  'spare-fuse': 'fuse-lamp',
  'headset-hears': 'audio-target',
  'play-signs': 'source-plays',
};
/** What ends the asking of others: these were asked before it, and they are looked at as of then. */
const ENDS_ASKING: readonly string[] = ['fuse-lamp', 'spare-fuse'];
const CANNOT: Answer = { cannot: true };

/**
 * What happened before it failed. Of a past that is not known “nothing I know of” is all that is ever said: counted, an honest
 * “nothing” would speak for whatever nobody thought of and for nothing else.
 */
const HAPPENED_BEFORE = new Set(['last-change']);

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
    if (step.kind === 'rig' || KNOWN_FIRST.has(step.id) || ASKED_FIRST.has(step.id))
      facts = { ...facts, [step.id]: say(step, { rig, facts }) };
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

/**
 * Looks at every step of one bike, and counts what was found where it makes sense to ask. The first person looks at
 * everything; the others only where chance has a say, since all else is the same for everybody.
 */
function lookAt({ steps }: Survey, bike: Ridden, rig: Rig): Counts {
  const counts: Counts = new Map();
  const first = answerAll(steps, bike, rig, 0);
  const toAll = steps.map((step) => [step, first.say(step)] as const);
  const chosen = steps.filter((step) => step.kind === 'choice' && first.chancy.has(step.id));
  const seenByAll = { ...first.base.facts, ...Object.fromEntries(toAll.map(([step, answer]) => [step.id, answer])) };
  const count = (of: readonly Step[], facts: Facts, times: number): void => {
    const isAsked = askedOn(steps, { rig: first.base.rig, facts });
    for (const step of of) {
      if (KNOWN_FIRST.has(step.id) || !isAsked(step)) continue;
      if (bike.world.history === 'unknown' && HAPPENED_BEFORE.has(step.id)) continue;
      // Where a step is judged by what another one read, that was read before.
      const outcome = outcomeOf(step, { ...first.base, facts });
      if (outcome !== undefined && outcome !== 'cannot') add(counts, step.id, outcome, times);
    }
  };
  count(
    steps.filter((step) => !chosen.includes(step)),
    seenByAll,
    LOOKS,
  );
  for (let look = 0; look < LOOKS; look++) {
    const { say } = look === 0 ? first : answerAll(steps, bike, rig, look);
    const facts = { ...seenByAll, ...Object.fromEntries(chosen.map((step) => [step.id, say(step)])) };
    count(chosen, facts, 1);
  }
  return counts;
}

/** The amplifier that is meant: on a bike with two, either may be. */
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
  /** Which bike it is, and on one with two amplifiers which of them is meant. */
  readonly bike: string;
  readonly cause: string;
  readonly fault: string;
  readonly kind: string;
  readonly counts: Counts;
}

interface Open {
  readonly complaint: ComplaintId;
  /** A sound bike of the build does it: only what is by design is complained of there. */
  readonly byDesign: boolean;
}

/** A bike of a build, sound, and what may be complained of there: with two amplifiers either may be meant. */
function soundBikes(what: Survey, rig: Rig): readonly (readonly [World, readonly Open[]])[] {
  const complaints = Object.keys(what.complaints) as ComplaintId[];
  const byWorld = Map.groupBy(
    complaints.flatMap((complaint) => worldsOf(rig, complaint).map((world) => ({ complaint, world }))),
    ({ world }) => world.about,
  );
  return [...byWorld.values()].flatMap((own) => {
    const [first] = own;
    if (!first) return [];
    const bike = ridden(first.world);
    const open = own.map(({ complaint }) => ({ complaint, byDesign: COMPLAINTS[complaint](bike) !== 'no' }));
    return [[first.world, open] as const];
  });
}

const SIDES = 2;

/** Left and right are alike: every other bike has what is wrong with one side on the right, and the rest on the left. */
const isOnTheSide = ({ side }: Fault, nth: number): boolean =>
  side === undefined || (side === 'left') === (nth % 2 === 0);

/** Looks at every fault on every bike, wherever it causes one of the complaints. `first` is the number of the first bike. */
export function lookOver(what: Survey, first = 0): readonly Found[] {
  const found: Found[] = [];
  for (const [nth, rig] of what.rigs.entries())
    for (const [healthy, complaints] of soundBikes(what, rig))
      for (const fault of what.faults) {
        if (!isOnTheSide(fault, first + nth) || !fault.fits(healthy)) continue;
        const meant = complaints.flatMap(({ complaint, byDesign }) => {
          const cause = what.causeOf(fault, complaint, rig);
          return cause === undefined || byDesign !== (fault.byDesign ?? false) ? [] : [{ complaint, cause }];
        });
        if (meant.length === 0) continue;
        for (const share of fault.severity ? SEVERITY_SHARES : [0]) {
          const bike = ridden(fault.apply(healthy, severityAt(fault, share)));
          // What is found on it hangs on no complaint.
          let counts: Counts | undefined;
          for (const { complaint, cause } of meant) {
            if (COMPLAINTS[complaint](bike) !== 'yes') continue;
            counts ??= lookAt(what, bike, rig);
            const name = `${first + nth} ${healthy.about}`;
            found.push({ complaint, bike: name, cause, fault: keyOf(fault), kind: kindOf(what, counts), counts });
          }
        }
      }
  return found;
}

/**
 * The same by fault and kind of build. A bike comes first, then what is wrong with it: of the callers of a bike each fault
 * that it can have has a share by its weight, a mild and a bad degree alike.
 */
export function gathered(what: Survey, found: readonly Found[]): readonly Seen[] {
  const seen = new Map<string, Seen>();
  const faults = new Map(what.faults.map((fault) => [keyOf(fault), fault]));
  for (const [complaint, own] of Map.groupBy(found, (one) => one.complaint)) {
    const weightOfLook = ({ fault: key }: Found) => {
      const fault = faults.get(key);
      const degrees = fault?.severity ? SEVERITY_SHARES.length : 1;
      const weight = (fault && weightOf(fault, complaint)) ?? SELDOM_WEIGHT;
      // What is on one side is looked at on every other bike: it stands for both.
      return (fault?.side === undefined ? weight : SIDES * weight) / degrees;
    };
    const byBike = Map.groupBy(own, ({ bike }) => bike);
    const callers = (what.complaints[complaint] ?? 0) / byBike.size;
    for (const looks of byBike.values()) {
      const total = looks.reduce((sum, look) => sum + weightOfLook(look), 0);
      for (const look of looks) {
        const { cause, counts, kind, fault } = look;
        const name = `${fault} ${complaint} ${kind}`;
        const before = seen.get(name);
        seen.set(name, {
          cause,
          fault,
          kind,
          weight: (before?.weight ?? 0) + (total > 0 ? (callers * weightOfLook(look)) / total : 0),
          looks: (before?.looks ?? 0) + 1,
          counts: merge(before?.counts ?? new Map(), counts),
        });
      }
    }
  }
  return [...seen.values()];
}
