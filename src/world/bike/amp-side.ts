import { levelV } from '../../compute/level.ts';
import { axleOf, CORNERS, type Corner, inFrontOf, type PerCorner, perCorner } from '../../rig/corner.ts';
import { magnitude, multiply } from '../complex.ts';
import type { Moment } from '../moment.ts';
import type { Element, Solved } from '../network.ts';
import { identityOf } from '../remembered.ts';
import type { Amp, World } from '../state.ts';
import { driverOf, isFitted } from '../valued-rig.ts';
import { clip, shownRatio, type Wave } from './clip.ts';
import { ampGainRatio } from './drive.ts';
import { ampIn, ampNodes, ampOut } from './nodes.ts';
import { runElements } from './run.ts';
import {
  type Grounds,
  givenBy,
  groundElements,
  legDcA,
  loadOhm,
  NO_SHIFT,
  REST_RATIO,
  type Stages,
  stageElements,
  TEST_TONE_HZ,
} from './stage.ts';
import type { UnitSide } from './unit-side.ts';
import { handlingOf, knownWirings, loadsOn, type Wiring, wiringOf } from './wiring.ts';

/* Thresholds of protection, from memory of the trade. */
const TRIPS_AT_A = 5;
const SHORT_RATIO = 0.15;
const LOW_LOAD_RATIO = 0.45;
const MOST_CURRENT_RATIO = 1.5;
const DC_TRIPS_AT_V = 1.5;
/** What a hurt output stage does to a wave, as if that were cut off. From memory: a third of it is harmonics. */
const ROUGH_DB = 12;
/** DC between the wires of an input that the input stage takes for a fault. */
const INPUT_DC_TRIPS_AT_V = 1;

/** The corners that an amplifier drives on this bike. */
export const cornersOnAmp = ({ rig }: World, i: number): readonly Corner[] =>
  CORNERS.filter((corner) => isFitted(rig, corner) && driverOf(rig, corner) === i);

const bridgeOf = (i: number) => (corner: Corner) => ({
  plus: ampOut(corner, '+'),
  minus: ampOut(corner, '−'),
  ground: ampNodes(i).ground,
});

/** The runs that hang on the outputs of one amplifier. */
export function ampWiring(world: World, moment: Moment, i: number): Wiring {
  const runs = () => cornersOnAmp(world, i).flatMap((c) => runElements(world, c, moment, (sign) => ampOut(c, sign)));
  const parts = identityOf(world.rig, world.runs, world.speakers);
  return knownWirings(world.rig, `amp ${i} ${handlingOf(moment)} ${parts}`, () => wiringOf(runs()));
}

/** The outputs of one amplifier, and the grounds that they lie on. */
export const ampOutputs = (world: World, i: number, stages: Stages, grounds: Grounds): Element[] => [
  ...stageElements(stages, bridgeOf(i), `amp ${i}`),
  ...groundElements(grounds, world.amps.length),
];

const forCorners = (corners: readonly Corner[], state: (corner: Corner) => Stages[Corner]): Stages =>
  Object.fromEntries(corners.map((corner) => [corner, state(corner)])) as Stages;
export const ampOff = (world: World, i: number): Stages => forCorners(cornersOnAmp(world, i), () => 'off');

/** What each output of an amplifier sees; nothing, where it drives no corner. */
export const ampLoads = (world: World, moment: Moment, i: number): PerCorner<number> =>
  loadsOn(ampWiring(world, moment, i), () => {
    const corners = cornersOnAmp(world, i);
    const stages = forCorners(corners, () => ({ restV: 0, toneV: 1 }));
    const solution = ampWiring(world, moment, i).solve(ampOutputs(world, i, stages, NO_SHIFT), TEST_TONE_HZ);
    return perCorner((c) => (corners.includes(c) ? loadOhm(solution, `amp ${i}`, c, bridgeOf(i)(c)) : Infinity));
  });

/** The input terminal that feeds an output: its own, or the one of the front when the selector says two inputs. */
const inputOf = ({ inputMode }: Amp, corner: Corner): Corner =>
  inputMode === 'two' && axleOf(corner) === 'rear' ? inFrontOf(corner) : corner;

/** Volts of the tone at one input terminal; nothing where nothing is wired. */
export const inputV = (world: World, i: number, input: Corner, unit: UnitSide): number =>
  world.amps[i]?.inputs[input] && unit.tone
    ? magnitude(unit.tone.acrossV([ampIn(i, input, '+'), ampIn(i, input, '−')]))
    : 0;

/** The most DC between the two wires of an input. */
const inputDcV = ({ amps }: World, i: number, { dc }: UnitSide): number =>
  Math.max(
    0,
    ...CORNERS.filter((input) => amps[i]?.inputs[input]).map((input) =>
      Math.abs(dc.acrossV([ampIn(i, input, '+'), ampIn(i, input, '−')]).re),
    ),
  );

export type Protects = 'short' | 'load' | 'dc';
export interface AmpSide {
  readonly stages: Stages;
  readonly dc: Solved;
  readonly tone: Solved | null;
  readonly waves: PerCorner<Wave>;
  /** Whether the input stage cuts the wave off, before any gain. */
  readonly inputWaves: PerCorner<Wave>;
  readonly protects: Protects | null;
  /** Average watts that go to the speakers. */
  readonly outputW: number;
}

/** An amplifier that is awake: what its outputs play, or why it switched them off. */
export function ampSide(
  world: World,
  moment: Moment,
  i: number,
  given: { loads: PerCorner<number>; unit: UnitSide; supplyV: number; grounds: Grounds; awake: boolean },
): AmpSide {
  const amp = world.amps[i] as Amp;
  const { powerW, ratedOhm } = world.rig.amps[i] ?? { powerW: 0, ratedOhm: 4 };
  const { loads, unit, supplyV, grounds, awake } = given;
  const corners = cornersOnAmp(world, i);
  const limitV = levelV({ powerW, loadOhm: ratedOhm });
  const inputWaves = perCorner((corner) => {
    const input = inputOf(amp, corner);
    const from = amp.inputs[input];
    const own = clip(inputV(world, i, input, unit), amp.inputLimitV);
    return from && unit.waves[from].overdriveDb > own.overdriveDb
      ? { ...own, overdriveDb: unit.waves[from].overdriveDb }
      : own;
  });
  const waves = perCorner((corner): Wave => {
    if (!awake || moment.toneHz === null || amp.deadChannels.includes(corner)) return clip(0, 1);
    const input = inputWaves[corner];
    const out = clip(input.cleanV * ampGainRatio(amp, axleOf(corner), moment.toneHz), limitV);
    const ownDb = amp.roughChannels.includes(corner) ? ROUGH_DB : out.overdriveDb;
    return { ...out, overdriveDb: Math.max(ownDb, input.overdriveDb) };
  });
  // A channel that is dead rests nowhere and does not hiss: its output stage is off for good.
  const playing = forCorners(corners, (corner) =>
    awake && !amp.deadChannels.includes(corner)
      ? { restV: REST_RATIO * supplyV, toneV: waves[corner].cleanV, offsetV: amp.outputDcV }
      : 'off',
  );
  const wiring = ampWiring(world, moment, i);
  const solveWith = (stages: Stages, hz: number) =>
    wiring.solveOnce(givenBy(stages, grounds, hz), () => ampOutputs(world, i, stages, grounds), hz);
  const first = solveWith(playing, 0);

  const mostA = MOST_CURRENT_RATIO * Math.sqrt(powerW / ratedOhm);
  const shorted = corners.filter(
    (c) => awake && (legDcA(first, `amp ${i}`, c) > TRIPS_AT_A || loads[c] < SHORT_RATIO * ratedOhm),
  );
  const mute = amp.protectsAlone ? shorted : [];
  const protects: Protects | null = !awake
    ? null
    : shorted.length > mute.length
      ? 'short'
      : Math.abs(amp.outputDcV) > DC_TRIPS_AT_V || inputDcV(world, i, unit) > INPUT_DC_TRIPS_AT_V
        ? 'dc'
        : corners.some(
              (c) => !mute.includes(c) && loads[c] < LOW_LOAD_RATIO * ratedOhm && waves[c].cleanV / loads[c] > mostA,
            )
          ? 'load'
          : null;
  const stages = protects
    ? ampOff(world, i)
    : mute.length > 0
      ? { ...playing, ...forCorners(mute, () => 'off') }
      : playing;
  const { toneHz } = moment;
  const tone = toneHz === null ? null : solveWith(stages, toneHz);
  return {
    stages,
    dc: protects || mute.length > 0 ? solveWith(stages, 0) : first,
    tone,
    waves: protects
      ? perCorner(() => clip(0, 1))
      : perCorner((corner) => (mute.includes(corner) ? clip(0, 1) : waves[corner])),
    inputWaves,
    protects,
    // A wave that is cut off has more power than the sine that fits into its limit: up to twice as much.
    outputW:
      tone && !protects
        ? moment.averageRatio *
          corners.reduce((sum, c) => sum + shownRatio(waves[c], 'rms') ** 2 * outputW(tone, i, c), 0)
        : 0,
  };
}

/** Average power that one output gives away: the real part of U times I, conjugate. */
function outputW(tone: Solved, i: number, corner: Corner): number {
  const { plus, minus } = bridgeOf(i)(corner);
  const { re, im } = tone.currentA(`amp ${i} ${corner}`);
  return Math.max(0, -multiply(tone.acrossV([plus, minus]), { re, im: -im }).re);
}
