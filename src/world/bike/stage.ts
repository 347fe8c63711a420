import { HALF_SUPPLY_HIGHEST_RATIO, HALF_SUPPLY_LOWEST_RATIO } from '../../compute/half-supply.ts';
import { CORNERS, type Corner } from '../../rig/corner.ts';
import { magnitude, real } from '../complex.ts';
import { type Bridge, bridgeOff, bridgeOutput } from '../elements/bridge-output.ts';
import { voltageSource } from '../elements/source.ts';
import type { Element, Solved } from '../network.ts';
import { ampNodes, MINUS, UNIT_GROUND } from './nodes.ts';

/** Where a healthy output rests: the middle of its band, over its supply. */
export const REST_RATIO = (HALF_SUPPLY_LOWEST_RATIO + HALF_SUPPLY_HIGHEST_RATIO) / 2;
/** Resistance of each half of an output, below clipping. From memory: feedback makes it small. */
const LEG_OHM = 0.01;

/** What an output is doing: off, or on with its wires at rest, apart by `offsetV`, and a tone between them. */
export type StageState = 'off' | { readonly restV: number; readonly toneV: number; readonly offsetV?: number };
export type Stages = Readonly<Partial<Record<Corner, StageState>>>;

/** The outputs of one device, each between its own two nodes. */
export const stageElements = (stages: Stages, nodesOf: (corner: Corner) => Bridge, name: string): Element[] =>
  CORNERS.flatMap((corner) => {
    const state = stages[corner];
    if (!state) return [];
    const id = `${name} ${corner}`;
    if (state === 'off') return [bridgeOff(id, nodesOf(corner))];
    const { restV, toneV, offsetV = 0 } = state;
    return [bridgeOutput(id, nodesOf(corner), { restV, toneV: real(toneV), legOhm: LEG_OHM, offsetV })];
  });

/** DC volts of the grounds of unit and amplifiers against the battery negative post, from the power network. */
export interface Grounds {
  readonly unitV: number;
  readonly ampsV: readonly number[];
}
export const NO_SHIFT: Grounds = { unitV: 0, ampsV: [] };

/** Grounds as they lie in the power network: dictated at 0 Hz, at rest to a tone. */
export const groundElements = ({ unitV, ampsV }: Grounds, amps: number): Element[] => [
  voltageSource('unit ground', [UNIT_GROUND, MINUS], unitV, 0),
  ...Array.from({ length: amps }, (_, i) =>
    voltageSource(`amp ground ${i}`, [ampNodes(i).ground, MINUS], ampsV[i] ?? 0, 0),
  ),
];

/**
 * What outputs give at a frequency, as a text. To a tone only what they play counts: where they rest, and where the
 * grounds lie, is nothing to it. At 0 Hz it is the other way round.
 */
export function givenBy(stages: Stages, { unitV, ampsV }: Grounds, frequencyHz: number): string {
  const gives = CORNERS.map((corner) => {
    const state = stages[corner];
    if (state === undefined || state === 'off') return state;
    return frequencyHz === 0 ? `${state.restV} ${state.offsetV}` : state.toneV;
  });
  return `${frequencyHz} ${gives} ${frequencyHz === 0 ? [unitV, ampsV] : ''}`;
}

/** What an output sees between its two wires, when it sends a test tone. */
export function loadOhm(solution: Solved, name: string, corner: Corner, { plus, minus }: Bridge): number {
  const currentA = magnitude(solution.currentA(`${name} ${corner}`));
  return currentA === 0 ? Infinity : magnitude(solution.acrossV([plus, minus])) / currentA;
}
/** The larger DC of the two halves of an output: what a wire that touches ground draws. */
export const legDcA = (solution: Solved, name: string, corner: Corner): number =>
  Math.max(...solution.flows(`${name} ${corner}`).map(({ currentA }) => magnitude(currentA)));

export const TEST_TONE_HZ = 400;
