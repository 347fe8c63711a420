import { axleOf, CORNERS, type Corner, type PerCorner, perCorner } from '../../rig/corner.ts';
import { ampInput, LINE_INPUT_OHM, SPEAKER_INPUT_OHM } from '../elements/amp-input.ts';
import { contact } from '../elements/contact.ts';
import { isolator } from '../elements/isolator.ts';
import { beside } from '../mirror.ts';
import type { Moment } from '../moment.ts';
import type { Element, Solved } from '../network.ts';
import { identityOf } from '../remembered.ts';
import { ohmNow, type RearPairs, type World } from '../state.ts';
import { driverOf, isFitted } from '../valued-rig.ts';
import { cleanIntoV, clip, type Wave } from './clip.ts';
import { unitWantedV } from './drive.ts';
import { ampIn, ampNodes, lineOut, loom, MINUS, SIGNS, type Sign, UNIT_GROUND, unitOut } from './nodes.ts';
import { runElements } from './run.ts';
import {
  type Grounds,
  givenBy,
  groundElements,
  legDcA,
  loadOhm,
  NO_SHIFT,
  type Stages,
  stageElements,
  TEST_TONE_HZ,
} from './stage.ts';
import { handlingOf, knownWirings, loadsOn, type Wiring, wiringOf } from './wiring.ts';

/** A line-level output hangs on the unit's pair through this much; its level is that of the pair. From memory. */
const LINE_SOURCE_OHM = 100;
/** The DC that a wire on ground draws before an output gives up, and the least load it works into. From memory. */
const TRIPS_AT_A = 3;
const LEAST_LOAD_OHM = 1;

const bridgeOf = (corner: Corner) => ({ plus: unitOut(corner, '+'), minus: unitOut(corner, '−'), ground: UNIT_GROUND });

/** From the wires of one unit pair to one input of one amplifier. */
function inputElements(world: World, moment: Moment, i: number, input: Corner, from: Corner): Element[] {
  const amp = world.amps[i];
  if (!amp) return [];
  const apart = moment.apart.includes('amp-inputs');
  const isolated = !amp.passesDc;
  const pair = [loom(from, '+'), loom(from, '−')] as const;
  const line = [lineOut(i, input, '+'), lineOut(i, input, '−')] as const;
  return [
    ...(isolated
      ? [
          isolator(`line ${i} ${input}`, pair, line, {
            gainRatio: amp.converter === 'dead' ? 0 : 1,
            sourceOhm: LINE_SOURCE_OHM,
          }),
        ]
      : pair.map((end, n) => contact(`line ${i} ${input} ${n}`, [end, line[n] ?? end], 1e-3))),
    ...SIGNS.map((sign, n) => {
      const plug = amp.inputPlug[input][n === 0 ? 'plus' : 'minus'];
      const ohm = apart ? Infinity : ohmNow(plug, 'amp-inputs', moment);
      return contact(`input plug ${i} ${input} ${sign}`, [lineOut(i, input, sign), ampIn(i, input, sign)], ohm);
    }),
    ampInput(
      `input ${i} ${input}`,
      { plus: ampIn(i, input, '+'), minus: ampIn(i, input, '−'), ground: ampNodes(i).ground },
      amp.level === 'line' ? LINE_INPUT_OHM : SPEAKER_INPUT_OHM,
    ),
  ];
}

/** The wire of the unit that a wire of the loom is joined to. */
function wireOf(rearPairs: RearPairs, corner: Corner, sign: Sign): string {
  if (axleOf(corner) === 'front') return unitOut(corner, sign);
  const other = beside(corner);
  switch (rearPairs) {
    case 'own':
      return unitOut(corner, sign);
    case 'sides-changed':
      return unitOut(other, sign);
    case 'minuses-changed':
      return unitOut(sign === '+' ? corner : other, sign);
    case 'like-with-like': {
      const both = corner === 'rear-left' ? '+' : '−';
      return unitOut(sign === '+' ? 'rear-left' : 'rear-right', both);
    }
  }
}

/** Everything that hangs on the head unit's four pairs. */
function unitLoom(world: World, moment: Moment): Element[] {
  const pairs = CORNERS.flatMap((corner) => [
    ...SIGNS.map((sign, n) => {
      const plug = world.unit.plug[corner][n === 0 ? 'plus' : 'minus'];
      const ohm = ohmNow(plug, 'unit-plug', moment);
      return contact(
        `unit plug ${corner} ${sign}`,
        [wireOf(world.unit.rearPairs, corner, sign), loom(corner, sign)],
        ohm,
      );
    }),
    contact(`grounded ${corner}`, [loom(corner, '−'), MINUS], ohmNow(world.unit.toGround[corner], 'unit-plug', moment)),
    ...(isFitted(world.rig, corner) && driverOf(world.rig, corner) === 'unit'
      ? runElements(world, corner, moment, (sign) => loom(corner, sign))
      : []),
  ]);
  const inputs = world.amps.flatMap((amp, i) =>
    CORNERS.flatMap((input) => {
      const from = amp.inputs[input];
      return from ? inputElements(world, moment, i, input, from) : [];
    }),
  );
  return [...pairs, ...inputs];
}

/** The same, worked out once for all bikes and moments in which it is the same. */
export function unitWiring(world: World, moment: Moment): Wiring {
  const { rig, unit, runs, speakers, amps } = world;
  const inputs = amps.map(
    (amp) => `${amp.level} ${amp.passesDc} ${amp.converter} ${identityOf(rig, amp.inputs, amp.inputPlug)}`,
  );
  const parts = identityOf(rig, unit.plug, unit.toGround, runs, speakers);
  return knownWirings(rig, `unit ${handlingOf(moment)} ${parts} ${unit.rearPairs} ${inputs}`, () =>
    wiringOf(unitLoom(world, moment)),
  );
}

/** The unit's own outputs, and the grounds that they and the amplifiers lie on. */
export const unitOutputs = (world: World, stages: Stages, grounds: Grounds): Element[] => [
  ...stageElements(stages, bridgeOf, 'unit'),
  ...groundElements(grounds, world.amps.length),
];

const every = (state: (corner: Corner) => Stages[Corner]): Stages =>
  Object.fromEntries(CORNERS.map((corner) => [corner, state(corner)])) as Stages;
export const UNIT_OFF: Stages = every(() => 'off');

/** What each of the unit's pairs sees. It depends on wires and plugs only. */
export const unitLoads = (world: World, moment: Moment): PerCorner<number> =>
  loadsOn(unitWiring(world, moment), () => {
    // Of two sides that are joined positive to positive nothing would flow, if both sent the same.
    const opposed = world.unit.rearPairs === 'like-with-like';
    const stages = every((corner) => ({ restV: 0, toneV: opposed && corner === 'rear-right' ? -1 : 1 }));
    const solution = unitWiring(world, moment).solve(unitOutputs(world, stages, NO_SHIFT), TEST_TONE_HZ);
    return perCorner((corner) => loadOhm(solution, 'unit', corner, bridgeOf(corner)));
  });

export interface UnitSide {
  readonly stages: Stages;
  readonly dc: Solved;
  /** Null while no tone plays. */
  readonly tone: Solved | null;
  readonly waves: PerCorner<Wave>;
  readonly protects: readonly Corner[];
}

/** The head unit's outputs on a supply: which protect themselves, where the rest stand, and what they play. */
export function unitSide(
  world: World,
  moment: Moment,
  loads: PerCorner<number>,
  supply: { on: boolean; volts: number; grounds: Grounds },
): UnitSide {
  const { on, volts, grounds } = supply;
  const { toneHz } = moment;
  const waves = perCorner((corner) =>
    on ? clip(unitWantedV(world, moment, corner), cleanIntoV({ supplyV: volts, loadOhm: loads[corner] })) : clip(0, 0),
  );
  const wiring = unitWiring(world, moment);
  const solveWith = (stages: Stages, hz: number) =>
    wiring.solveOnce(givenBy(stages, grounds, hz), () => unitOutputs(world, stages, grounds), hz);
  const { rearOn, restRatio, restsWhenOff, outputDcV } = world.unit;
  const awake = every((corner) =>
    on && (rearOn || restsWhenOff || axleOf(corner) === 'front')
      ? { restV: restRatio * volts, toneV: waves[corner].cleanV, offsetV: outputDcV[corner] }
      : 'off',
  );
  const first = solveWith(awake, 0);
  const hurt = CORNERS.filter(
    (corner) => on && (legDcA(first, 'unit', corner) > TRIPS_AT_A || loads[corner] < LEAST_LOAD_OHM),
  );
  // From memory: the two channels of an axle share one output chip, which mutes as a whole. Some mute one channel.
  const goesWith = (one: Corner, corner: Corner) =>
    world.unit.protectsAlone ? one === corner : axleOf(one) === axleOf(corner);
  const protects = CORNERS.filter((corner) => hurt.some((one) => goesWith(one, corner)));
  const stages = every((corner) => (protects.includes(corner) ? 'off' : awake[corner]));
  return {
    stages,
    dc: protects.length > 0 ? solveWith(stages, 0) : first,
    tone: toneHz === null ? null : solveWith(stages, toneHz),
    waves: perCorner((corner) => (protects.includes(corner) ? clip(0, 0) : waves[corner])),
    protects,
  };
}
