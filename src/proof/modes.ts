import { type Draw, drawFrom, pick } from '../observe/draw.ts';
import { type Observer, observe } from '../observe/index.ts';
import type { Rig } from '../rig/rig.ts';
import type { Facts } from '../steps/step.ts';
import { BASIC_METER, GOOD_METER } from '../world/meter.ts';
import { oncePer, oncePerKey } from '../world/remembered.ts';
import { COMPLAINTS, type Ridden } from '../world/symptoms/index.ts';
import { believedRig } from './believed-rig.ts';
import type { Present } from './bikes.ts';
import type { Observe } from './observe.ts';
import { type Played, play, type Ride, type Stages } from './play.ts';
import { falseAnswers, unableTo, withoutMeter } from './rider.ts';
import { rightFor, steady } from './riders.ts';
import { leftOut } from './stages.ts';
import { strangeTrials } from './strange-mode.ts';
import { nameOf, type Subject } from './subjects.ts';

/** One case to play, and what was made hard about it. */
export interface Trial {
  readonly faults: readonly Present[];
  readonly ride: Ride;
  readonly hardship?: string;
  /** What it is counted under besides its mode: oddities by class. */
  readonly classes?: readonly string[];
}

/** What a mode is played with. */
export interface Table {
  readonly flow: string;
  readonly stages: Stages;
  /** Of a mode that tries each step of a case in turn, how many are drawn; Infinity for all. */
  readonly turns: number;
}

export interface Mode {
  readonly id: string;
  readonly says: string;
  trials(table: Table, subject: Subject): readonly Trial[];
}

const seeing =
  (observer: Observer): Observe =>
  (step, bike, situation) =>
    observe(step, bike, situation, observer);

const ids = (mode: string, { name }: Subject, faults: readonly Present[]) => [mode, name, nameOf(faults)] as const;

export function rideOf(
  { flow, stages }: Table,
  { bikes, complaint }: Subject,
  faults: readonly Present[],
  believed: Rig,
  sees: Observe,
): Ride {
  return {
    stages,
    start: flow,
    believed,
    bike: bikes.with(faults),
    complains: (bike: Ridden) => COMPLAINTS[complaint](bike) === 'yes',
    right: rightFor(stages, faults),
    rightByIds: faults.length > 1 || faults.some(({ fault }) => fault.byDesign),
    ...(faults.every(({ fault }) => fault.byDesign) && { byDesign: true }),
    observe: sees,
  };
}

const rides = oncePerKey<Subject, Ride>();
/** Somebody with an exact meter who errs nowhere, on a bike of which everything is known: the same for all modes. */
const careful = (table: Table, subject: Subject, present: Present): Ride =>
  rides(subject, nameOf([present]), () =>
    rideOf(table, subject, [present], subject.paper, steady(ids('exact', subject, [present]))),
  );
/** A ride comes out the same however often it is played. */
const playedOnce = oncePer(play);

const single = (
  id: string,
  says: string,
  rider: (subject: Subject, draw: Draw, seeds: readonly string[]) => { believed: Rig; sees: Observe },
): Mode => ({
  id,
  says,
  trials: (table, subject) =>
    subject.faults.map((present) => {
      const seeds = ids(id, subject, [present]);
      const { believed, sees } = rider(subject, drawFrom(...seeds), seeds);
      return { faults: [present], ride: rideOf(table, subject, [present], believed, sees) };
    }),
});

const drawn = <T>(draw: Draw, from: readonly T[], most: number): readonly T[] => {
  const left = [...from];
  const taken: T[] = [];
  while (left.length > 0 && taken.length < most) taken.push(left.splice(Math.floor(draw() * left.length), 1)[0] as T);
  return taken;
};

/** Each step of a careful rider's way in turn, or so many of them. */
const inTurn = (id: string, says: string, hard: (step: string, sees: Observe, draw: Draw) => Observe): Mode => ({
  id,
  says,
  trials: (table, subject) =>
    subject.faults.flatMap((present) => {
      const draw = drawFrom(...ids(id, subject, [present]));
      const ride = careful(table, subject, present);
      const way = [...new Set(playedOnce(ride).asked.filter((step) => !step.startsWith('again ')))];
      return drawn(draw, way, table.turns).map((step) => ({
        faults: [present],
        ride: { ...ride, observe: hard(step, ride.observe, draw) },
        hardship: `${id} ${step}`,
      }));
    }),
});

/** Somebody who errs once at one step, and sees it right when he looks again. */
export function errsOnce(stepId: string, sees: Observe, draw: Draw): Observe {
  let erred = false;
  return (step, bike, situation) => {
    const truth = sees(step, bike, situation);
    if (step.id !== stepId || erred) return truth;
    erred = true;
    const wrong = falseAnswers(step, truth, situation);
    return wrong.length > 0 ? pick(draw, wrong) : truth;
  };
}

/** Somebody who errs at one step, and repeats it. */
export function errsAlways(stepId: string, sees: Observe, draw: Draw): Observe {
  const said = new Map<string, Facts[string]>();
  return (step, bike, situation) => {
    if (step.id !== stepId) return sees(step, bike, situation);
    const before = said.get(step.id);
    if (before) return before;
    const truth = sees(step, bike, situation);
    const wrong = falseAnswers(step, truth, situation);
    const answer = wrong.length > 0 ? pick(draw, wrong) : truth;
    said.set(step.id, answer);
    return answer;
  };
}

const twoFaults: Mode = {
  id: 'two',
  says: 'two faults, each of which causes the complaint',
  trials: (table, subject) => {
    const [first, ...others] = subject.faults;
    const second =
      first && others.find(({ fault }) => fault.id !== first.fault.id && fault.fits(subject.bikes.with([first]).world));
    if (!first || !second) return [];
    const faults = [first, second];
    const right = rightFor(table.stages, faults);
    if (right.size < 2) return [];
    return [{ faults, ride: rideOf(table, subject, faults, subject.paper, steady(ids('two', subject, faults))) }];
  },
};

/** What all answers of a mode allow together: the flow, which asks for few of them, is held against it. */
const boundOf = ({ id, trials }: Mode): Mode => ({
  id: `${id}-all`,
  says: 'the same, and every step answered: the bound of the mode above',
  trials: (table, subject) =>
    trials(table, subject).map((trial) => ({ ...trial, ride: { ...trial.ride, answersAll: true } })),
});

const leftOutMode: Mode = {
  id: 'left-out',
  says: 'the cause is one that nobody thought of',
  trials: (table, subject) =>
    subject.faults.map((present) => {
      const ride = rideOf(table, subject, [present], subject.paper, steady(ids('left-out', subject, [present])));
      return { faults: [present], ride: { ...ride, stages: leftOut(table.stages, [...ride.right]) } };
    }),
};

const exact: Mode = {
  id: 'exact',
  says: 'exact meter, everything about the bike known',
  trials: (table, subject) =>
    subject.faults.map((present) => ({ faults: [present], ride: careful(table, subject, present) })),
};
const noMeter = single('no-meter', 'no meter', ({ paper }, _, seeds) => ({
  believed: paper,
  sees: withoutMeter(steady(seeds)),
}));
const strange: Mode = { id: 'strange', says: 'people and bikes outside the model’s habits', trials: strangeTrials };

/** The ways a case is made hard. */
export const MODES: readonly Mode[] = [
  exact,
  boundOf(exact),
  single('real', 'a real meter: its accuracy, its digits, its frequencies', ({ paper }, draw) => ({
    believed: paper,
    sees: seeing({ meter: pick(draw, [BASIC_METER, GOOD_METER]), draw }),
  })),
  single('believed', 'the bike as its owner describes it: guesses and gaps', ({ paper }, draw, seeds) => ({
    believed: believedRig(draw, paper),
    sees: steady(seeds),
  })),
  noMeter,
  boundOf(noMeter),
  inTurn('cannot', 'one step that cannot be done, each in turn', (step, sees) => unableTo(step, sees)),
  inTurn('false', 'one false answer, each in turn, put right when asked again', errsOnce),
  inTurn('false-kept', 'one false answer, each in turn, and kept', errsAlways),
  twoFaults,
  leftOutMode,
  strange,
  boundOf(strange),
];

export const playTrial = ({ ride }: Trial): Played => playedOnce(ride);
