import { type Draw, drawFrom, pick } from '../observe/draw.ts';
import { type Observer, observe } from '../observe/index.ts';
import type { Rig } from '../rig/rig.ts';
import { BASIC_METER, EXACT_METER, GOOD_METER } from '../world/meter.ts';
import { advise } from './advise.ts';
import { believedRig } from './believed-rig.ts';
import type { Present } from './bikes.ts';
import type { ProvedFlow } from './flows.ts';
import { type Advise, type Observe, type Played, play, type Ride, type Round } from './play.ts';
import { falseAnswers, unableTo, withoutMeter } from './rider.ts';
import { nameOf, type Subject } from './subjects.ts';

/** One case to play: how a rider who may err or lack something rides it, and whether that went well. */
export interface Trial {
  readonly subject: Subject;
  readonly faults: readonly Present[];
  readonly believed: Rig;
  readonly observe: Observe;
  readonly advise?: Advise;
  /** What was made hard, in words, for the report. */
  readonly hardship?: string;
  /** The step with the false answer. */
  readonly falseStep?: string;
}

export interface Mode {
  readonly id: string;
  readonly says: string;
  /** The least share of cases that must go well. */
  readonly target: number;
  trials(proved: ProvedFlow, subject: Subject): readonly Trial[];
  /** Why a case did not go well, or null. */
  judge(played: Played, trial: Trial): string | null;
}

const seeing =
  (observer: Observer): Observe =>
  (step, bike, situation) =>
    observe(step, bike, situation, observer);
/** Right readings, and chance only where people and bikes differ: what they remember, what a finger happens to move. */
const careful = (draw: Draw): Observe => seeing({ meter: EXACT_METER, draw });

const chance = (mode: string, { name }: Subject, faults: readonly Present[]): Draw =>
  drawFrom(mode, name, nameOf(faults));
const singles = (subject: Subject): readonly (readonly Present[])[] => subject.faults.map((present) => [present]);

const firstVerdict = ({ rounds }: Played): Round | undefined => rounds.find(({ met }) => met !== 'hand-over');
const ways = (round: Round): string => `${round.flow}: ${round.verdict}`;

/** The first verdict must name the fault, by its own fix or by a check of its list, and the cure must hold. */
function judgeFirst(played: Played): string | null {
  const round = firstVerdict(played);
  if (!round) return 'no verdict';
  if (round.met !== 'fix' && round.met !== 'check') return `${ways(round)} does not name it`;
  if (round.useless) return `${ways(round)} names it ${round.useless}`;
  return played.cured ? null : `${ways(round)} does not cure it`;
}

/** The faults must be found one after the other, without a fix in vain between them. */
function judgeEach({ rounds, cured }: Played): string | null {
  const vain = rounds.find(({ met }) => met === 'miss' || met === 'next');
  if (vain) return `${ways(vain)} names none that is left`;
  return cured ? null : 'not cured';
}

function judgeFalse({ rounds, cured }: Played, { falseStep }: Trial): string | null {
  const noticed = rounds.some(({ rechecked }) => rechecked.includes(falseStep ?? ''));
  return noticed || cured ? null : `not noticed: ${rounds.map(ways).join(', ')}`;
}

const single = (
  id: string,
  says: string,
  target: number,
  rider: (subject: Subject, draw: Draw) => Pick<Trial, 'observe' | 'believed'>,
): Mode => ({
  id,
  says,
  target,
  trials: (_, subject) =>
    singles(subject).map((faults) => ({ subject, faults, ...rider(subject, chance(id, subject, faults)) })),
  judge: judgeFirst,
});

const rideOf = (proved: ProvedFlow, { subject, faults, believed, observe: sees, advise: by }: Trial): Ride => ({
  proved,
  bikes: subject.bikes,
  believed,
  faults,
  observe: sees,
  ...(by && { advise: by }),
});
export const playTrial = (proved: ProvedFlow, trial: Trial): Played => play(rideOf(proved, trial));

/** The way of a careful rider, which shows the steps at which something can be made hard. */
const wayOf = (proved: ProvedFlow, trial: Trial) => playTrial(proved, trial).rounds[0]?.asked ?? [];

/** The same step gives the same chances however often the flow comes by. */
const steady = (mode: string, subject: Subject, faults: readonly Present[]): Observe => {
  const riders = new Map<string, Observe>();
  return (step, bike, situation) => {
    const own = riders.get(step.id) ?? careful(drawFrom(mode, subject.name, nameOf(faults), step.id));
    riders.set(step.id, own);
    return own(step, bike, situation);
  };
};

const oneCannot: Mode = {
  id: 'cannot',
  says: 'one step that cannot be done, each in turn',
  target: 1,
  trials: (proved, subject) =>
    singles(subject).flatMap((faults) => {
      const trial: Trial = { subject, faults, believed: subject.paper, observe: steady('cannot', subject, faults) };
      const draw = chance('cannot', subject, faults);
      const way = wayOf(proved, trial).filter(({ outcome }) => outcome !== 'cannot');
      if (way.length === 0) return [];
      const { step } = pick(draw, way);
      return [{ ...trial, observe: unableTo(step.id, trial.observe), hardship: `cannot ${step.id}` }];
    }),
  judge: judgeFirst,
};

const oneFalse: Mode = {
  id: 'false',
  says: 'one false answer, and the site’s advice followed',
  target: 0.9,
  trials: (proved, subject) =>
    singles(subject).flatMap((faults) => {
      const trial: Trial = { subject, faults, believed: subject.paper, observe: steady('false', subject, faults) };
      const draw = chance('false', subject, faults);
      const way = wayOf(proved, trial).filter(({ outcome }) => outcome !== 'cannot');
      if (way.length === 0) return [];
      const { step: falseStep } = pick(draw, way);
      let told = false;
      const errs: Observe = (step, bike, situation) => {
        const truth = trial.observe(step, bike, situation);
        if (step.id !== falseStep.id || told) return truth;
        told = true;
        const wrong = falseAnswers(step, truth, situation);
        return wrong.length > 0 ? pick(draw, wrong) : truth;
      };
      return [{ ...trial, observe: errs, advise, falseStep: falseStep.id, hardship: `false ${falseStep.id}` }];
    }),
  judge: judgeFalse,
};

const twoFaults: Mode = {
  id: 'two',
  says: 'two faults, each of which causes the complaint',
  target: 0.98,
  trials: (_, subject) => {
    const [first, ...others] = subject.faults;
    if (!first) return [];
    const pairs = others
      .filter(({ fault }) => fault.id !== first.fault.id && fault.fits(subject.bikes.with([first]).world))
      .map((second) => [first, second]);
    return pairs.map((faults) => ({
      subject,
      faults,
      believed: subject.paper,
      observe: steady('two', subject, faults),
    }));
  },
  judge: judgeEach,
};

/** The ways a case is made hard, each with its target. */
export const MODES: readonly Mode[] = [
  single('exact', 'exact meter, everything about the bike known', 1, (subject, draw) => ({
    believed: subject.paper,
    observe: careful(draw),
  })),
  single('real', 'a real meter: its accuracy, its digits, its frequencies', 0.99, (subject, draw) => ({
    believed: subject.paper,
    observe: seeing({ meter: pick(draw, [BASIC_METER, GOOD_METER]), draw }),
  })),
  single('believed', 'the bike as its owner describes it: guesses and gaps', 0.99, (subject, draw) => ({
    believed: believedRig(draw, subject.paper),
    observe: careful(draw),
  })),
  single('no-meter', 'no meter', 1, (subject, draw) => ({
    believed: subject.paper,
    observe: withoutMeter(careful(draw)),
  })),
  oneCannot,
  twoFaults,
  oneFalse,
];
