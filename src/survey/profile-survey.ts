import type { Row, Table } from '../inference/table.ts';
import { type Draw, drawFrom, happens, pick } from '../observe/draw.ts';
import { observe } from '../observe/index.ts';
import { oneOf } from '../observe/observer.ts';
import { gotWorse } from '../observe/plan/worse-how.ts';
import { outcomeOf } from '../steps/outcome.ts';
import { tonesOff } from '../steps/profile/tones-off.ts';
import { tonesRunning } from '../steps/profile/tones-running.ts';
import { topStep } from '../steps/profile/top-step.ts';
import type { Answer, Facts, Step } from '../steps/step.ts';
import { metersDigit } from '../steps/tools/meter-digit.ts';
import { rearPair } from '../steps/unit/rear-pair.ts';
import { healthyWorld } from '../world/healthy.ts';
import { BASIC_METER, GOOD_METER, type Meter } from '../world/meter.ts';
import type { World } from '../world/state.ts';
import {
  deliveredOdds,
  isLowered,
  SELECTED_LATER,
  STORED,
  type Stored,
  withGainsSet,
  withStored,
} from '../world/stored-profiles.ts';
import { type Ridden, ridden } from '../world/symptoms/index.ts';
import { asBuilt, randomRig } from './random-rig.ts';

/* What people find on bikes with each profile stored, and what they tell of the past: the table of the stored profiles. */

/** Estimates of how bikes come to what they have, and how well their owners know it. */
const SHARES = {
  ampFromNew: 0.15,
  reflashed: 0.4,
  /** Who has the bike from new, and who then says that nobody ever changed it, truly or wrongly. */
  fromNew: 0.6,
  saysNever: 0.8,
  saysNeverWrongly: 0.02,
  /** The same of a bike that was bought used: he cannot know, and some say it all the same. */
  usedSaysNever: 0.08,
  /** A paper that is older than the last work, or of another head unit. */
  paperWrong: 0.05,
  saysAfterReflash: 0.25,
  saysAfterReflashWrongly: 0.01,
  /** Hears something else than what a model of the bike plays. */
  hearsOther: 0.15,
  /** A bass control that was not flat. */
  bassLeft: 0.03,
} as const;

/** Meters that people have. Some of the cheap ones read 400 Hz far too low: 0.6 of it with a band that ends at 140 Hz. */
const METERS: readonly Meter[] = [
  GOOD_METER,
  { ...BASIC_METER, acDigitV: 0.01 },
  BASIC_METER,
  { ...BASIC_METER, statement: { ...BASIC_METER.statement, ac: [0.02, 1] } },
  { ...BASIC_METER, statement: { ...BASIC_METER.statement, ac: [0.02, 1] }, bandHz: [40, 140] },
];

const MEASURED = [metersDigit, tonesOff, rearPair, topStep, tonesRunning] as unknown as readonly Step[];
const PAPER = {
  'paper-rear': (stored: Stored) => stored !== 'unaltered',
  'paper-lowered': isLowered,
  'paper-boosted': (stored: Stored) => !isLowered(stored),
  'paper-same-eq': (stored: Stored) => stored === 'amplified-same',
} as const;

interface Life {
  readonly world: World;
  readonly delivered: Stored;
  readonly stored: Stored;
  /** What was stored before the last work; what it has now, where there was none. */
  readonly before: Stored;
}

function lifeOf(draw: Draw): Life {
  const rig = {
    ...asBuilt(draw, randomRig(draw)),
    unitKind: 'factory' as const,
    deliveredAmp: happens(draw, SHARES.ampFromNew) ? ('yes' as const) : ('no' as const),
  };
  const world = healthyWorld(rig);
  const delivered = oneOf({ draw }, deliveredOdds(world.rig));
  const later = oneOf<Stored>({ draw }, { ...SELECTED_LATER, [delivered]: 1 });
  const reflashed = happens(draw, SHARES.reflashed) && later !== delivered;
  const stored = reflashed ? later : delivered;
  return { world, delivered, stored, before: delivered };
}

/** What its rider calls it that got worse, or nothing. */
function worseIn(draw: Draw, was: World, is: World): string {
  const heard = gotWorse(ridden(withGainsSet(was)), ridden({ ...withGainsSet(was), unit: is.unit }));
  return happens(draw, SHARES.hearsOther)
    ? pick(draw, ['other', 'quiet-thin', 'harsh', 'rear-silent', 'bass-with-engine'])
    : (heard[0] ?? 'other');
}

function readAll(bike: Ridden, draw: Draw): Facts {
  const meter = pick(draw, METERS);
  const facts: Record<string, Answer> = {};
  for (const step of MEASURED) facts[step.id] = observe(step, bike, { rig: {}, facts }, { meter, draw });
  return facts;
}

/** What one bike shows and its owner tells, by step. */
function lookAt(life: Life, draw: Draw): Readonly<Record<string, string>> {
  const { world, delivered, stored, before } = life;
  const changed = stored !== delivered;
  const it = withStored(world, stored);
  const left = happens(draw, SHARES.bassLeft) ? pick(draw, [-6, 6]) : 0;
  // Whoever leaves a control where it is does not see that it is there.
  const bike = ridden(
    left === 0
      ? it
      : { ...it, unit: { ...it.unit, profile: { ...it.unit.profile, boostDb: it.unit.profile.boostDb + left } } },
  );
  const facts = readAll(bike, draw);
  const read = MEASURED.slice(1).flatMap((step) => {
    const outcome = outcomeOf(step, { rig: {}, facts });
    return outcome === undefined || outcome === 'cannot' ? [] : [[step.id, outcome] as const];
  });
  const never = happens(draw, SHARES.fromNew)
    ? happens(draw, changed ? SHARES.saysNeverWrongly : SHARES.saysNever)
    : happens(draw, SHARES.usedSaysNever);
  const papers = Object.entries(PAPER).map(([id, does]) => {
    const of = happens(draw, SHARES.paperWrong) ? pick(draw, STORED) : stored;
    return [id, does(of) ? 'yes' : 'no'] as const;
  });
  const others = STORED.filter((other) => other !== stored);
  return {
    ...Object.fromEntries(read),
    ...Object.fromEntries(papers),
    'delivered-with': world.rig.deliveredWith,
    'delivered-amp': world.rig.deliveredAmp,
    'profile-source': never ? 'never' : 'unknown',
    'planned-change': happens(draw, changed ? SHARES.saysAfterReflash : SHARES.saysAfterReflashWrongly)
      ? 'after-reflash'
      : 'nothing',
    'worse-how': worseIn(draw, withStored(world, changed ? before : pick(draw, others)), it),
  };
}

/** The table of the stored profiles: a row for each on each kind of bike as delivered. */
export function profileTable(bikes: number): Table {
  const rows = new Map<string, { cause: string; looks: number; counts: Map<string, Map<string, number>> }>();
  const steps = new Map<string, Set<string>>();
  for (let i = 0; i < bikes; i++) {
    const draw = drawFrom('stored profile', i);
    const life = lifeOf(draw);
    const { deliveredWith, deliveredAmp } = life.world.rig;
    const key = `${life.stored} ${deliveredWith} ${deliveredAmp}`;
    const row = rows.get(key) ?? { cause: life.stored, looks: 0, counts: new Map() };
    rows.set(key, row);
    row.looks += 1;
    for (const [step, outcome] of Object.entries(lookAt(life, draw))) {
      steps.set(step, (steps.get(step) ?? new Set()).add(outcome));
      const counts = row.counts.get(step) ?? new Map<string, number>();
      row.counts.set(step, counts.set(outcome, (counts.get(outcome) ?? 0) + 1));
    }
  }
  const names = Object.fromEntries([...steps].map(([step, outcomes]) => [step, [...outcomes].toSorted()] as const));
  const sharesIn = (counts: ReadonlyMap<string, number>, step: string): readonly number[] => {
    const total = [...counts.values()].reduce((sum, n) => sum + n, 0);
    return (names[step] ?? []).map((outcome) => (counts.get(outcome) ?? 0) / total);
  };
  return {
    steps: names,
    rows: [...rows.entries()]
      .toSorted(([a], [b]) => a.localeCompare(b))
      .map(
        ([, { cause, looks, counts }]): Row => ({
          cause,
          weight: (100 * looks) / bikes,
          looks,
          shows: Object.fromEntries([...counts].map(([step, own]) => [step, sharesIn(own, step)])),
        }),
      ),
  };
}
