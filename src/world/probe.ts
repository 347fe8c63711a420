import { perCorner } from '../rig/corner.ts';
import { ampOff, ampOutputs, ampWiring } from './bike/amp-side.ts';
import { shownRatio, type Wave } from './bike/clip.ts';
import { coilTop, MINUS, tab } from './bike/nodes.ts';
import type { Operating } from './bike/operate.ts';
import { solvePower } from './bike/power.ts';
import { NO_SHIFT, TEST_TONE_HZ } from './bike/stage.ts';
import { UNIT_OFF, unitOutputs, unitWiring } from './bike/unit-side.ts';
import { magnitude } from './complex.ts';
import { battery } from './elements/battery.ts';
import { voltmeter } from './elements/meter.ts';
import { resistor } from './elements/resistor.ts';
import { currentSource } from './elements/source.ts';
import { OVER_OHM } from './meter.ts';
import type { Moment } from './moment.ts';
import type { Element, Pair, Solved } from './network.ts';
import { oncePerKey } from './remembered.ts';
import type { World } from './state.ts';
import type { Spot, Where } from './test-points.ts';

/** What an exact meter reads between two probes, or why it cannot. */
export type Read =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly reason: 'powered' | 'apart' };
const is = (value: number): Read => ({ ok: true, value });

/** A bike at a moment, with what was worked out of it. */
export interface Look {
  readonly world: World;
  readonly moment: Moment;
  readonly now: Operating;
}

/** The network that both probes are in: ground is in each, an amplifier's screw and a battery post in none together. */
const sharedBy = (red: Spot, black: Spot): Where | null =>
  red.node === MINUS ? black.where : black.node === MINUS || red.where === black.where ? red.where : null;

/** A signal network of the bike, its outputs as they run or off and unpowered, with one more element in it. */
function withProbe(
  { world, moment, now }: Look,
  where: 'unit' | number,
  awake: boolean,
  frequencyHz: number,
  extra: Element,
): Solved {
  const grounds = awake ? now.grounds : NO_SHIFT;
  if (where === 'unit') {
    const outputs = unitOutputs(world, awake ? now.unit.stages : UNIT_OFF, grounds);
    return unitWiring(world, moment).solve([...outputs, extra], frequencyHz);
  }
  const stages = awake ? (now.amps[where]?.side.stages ?? {}) : ampOff(world, where);
  return ampWiring(world, moment, where).solve([...ampOutputs(world, where, stages, grounds), extra], frequencyHz);
}

/** The bike as it runs, with one more element in it. */
function resolve(look: Look, where: Where, frequencyHz: number, extra: Element): Solved {
  if (where !== 'power') return withProbe(look, where, true, frequencyHz, extra);
  const solution = solvePower(look.world, look.moment, look.now.state, extra);
  if (!solution.ok) throw new Error(`a meter stopped the supply: ${JSON.stringify(solution)}`);
  return solution;
}

const readings = oncePerKey<Operating, Read>();
/** A reading, taken once of each bike at each moment: however often it is asked for, it is the same. */
const readOnce = ({ now }: Look, what: string, red: Spot, black: Spot, read: () => Read): Read =>
  readings(now, `${what} ${red.where} ${red.node} ${red.corner} ${black.where} ${black.node}`, read);

/** DC volts with the meter's own 10 MΩ in the circuit. */
export const dcV = (look: Look, red: Spot, black: Spot): Read =>
  readOnce(look, 'DC', red, black, () => readDcV(look, red, black));

function readDcV(look: Look, red: Spot, black: Spot): Read {
  const where = sharedBy(red, black);
  if (where === null) return { ok: false, reason: 'apart' };
  if (red.node === black.node) return is(0);
  const loaded = resolve(look, where, 0, voltmeter('meter', [red.node, black.node]));
  return is(loaded.acrossV([red.node, black.node]).re);
}

const waveAt = ({ now }: Look, where: Where, { corner }: Spot): Pick<Wave, 'overdriveDb'> => {
  const waves = where === 'unit' ? now.unit.waves : where === 'power' ? null : now.amps[where]?.side.waves;
  return (corner && waves?.[corner]) || { overdriveDb: 0 };
};

/**
 * AC volts of the tone that plays. A clipped wave keeps its shape on the way (all that it meets is next to a
 * resistance), so a meter that averages shows what `compute/clipping.ts` says of it.
 */
export const acV = (look: Look, red: Spot, black: Spot, reads: 'average' | 'rms' = 'average'): Read =>
  readOnce(look, `AC ${reads}`, red, black, () => readAcV(look, red, black, reads));

function readAcV(look: Look, red: Spot, black: Spot, reads: 'average' | 'rms'): Read {
  const where = sharedBy(red, black);
  if (where === null) return { ok: false, reason: 'apart' };
  const { toneHz, engine } = look.moment;
  // On the supply there is no tone, only what the charging system leaves.
  if (where === 'power') return is(engine === 'off' ? 0 : look.world.supply.rippleV);
  if (red.node === black.node) return is(0);
  const between = [red.node, black.node] as const;
  const residueV = where === 'unit' ? residueAtV(look, between) : 0;
  if (toneHz === null) return is(residueV);
  const loaded = resolve(look, where, toneHz, voltmeter('meter', between));
  const toneV = magnitude(loaded.acrossV(between)) * shownRatio(waveAt(look, where, red), reads);
  return is(residueV === 0 ? toneV : Math.hypot(toneV, residueV));
}

/** What of the residue of the unit's outputs gets to two places: it goes the way of a tone, and adds to one by power. */
function residueAtV({ world, moment, now }: Look, between: Pair): number {
  const { residueV } = world.unit;
  if (residueV === 0) return 0;
  const stages = perCorner((corner) => {
    const state = now.unit.stages[corner] ?? 'off';
    return state === 'off' ? state : { ...state, toneV: residueV };
  });
  const outputs = unitOutputs(world, stages, now.grounds);
  const solution = unitWiring(world, moment).solve([...outputs, voltmeter('meter', between)], TEST_TONE_HZ);
  return magnitude(solution.acrossV(between));
}

const TEST_A = 1e-3;
/** Anything that can push this through 10 kΩ falsifies ohms. */
const DEAD_OHM = 10_000;
const DEAD_V = 5e-3;

/** Ohms between two probes. Only of what is dead: a meter that meets volts, or an output that is awake, says nothing. */
export const ohms = (look: Look, red: Spot, black: Spot): Read =>
  readOnce(look, 'ohms', red, black, () => readOhms(look, red, black));

function readOhms(look: Look, red: Spot, black: Spot): Read {
  const where = sharedBy(red, black);
  if (where === null || where === 'power') return { ok: false, reason: where === null ? 'apart' : 'powered' };
  if (red.node === black.node) return is(0);
  const between = [red.node, black.node] as const;
  const awake = where === 'unit' ? look.now.unitOn : look.now.amps[where]?.why === null;
  const live = [0, ...(look.moment.toneHz === null ? [] : [look.moment.toneHz])].some(
    (hz) => magnitude(resolve(look, where, hz, resistor('meter', between, DEAD_OHM)).acrossV(between)) > DEAD_V,
  );
  if (live || (awake && !look.moment.apart.includes('runs'))) return { ok: false, reason: 'powered' };
  const test = currentSource('meter', [black.node, red.node], TEST_A);
  const ohm = withProbe(look, where, false, 0, test).acrossV(between).re / TEST_A;
  return is(ohm > OVER_OHM ? Infinity : ohm);
}

/** A fresh 1.5 V cell, and what it loses inside. From memory. */
const CELL = { openV: 1.5, internalOhm: 0.3 };
/** A coil that gets this much moves its cone: a click. An estimate, a tenth of the cell. */
const CLICK_V = 0.15;

/** Whether a 1.5 V cell on two places makes the cone behind them move. Only on what is unplugged. */
export function cellMoves(look: Look, red: Spot, black: Spot): boolean {
  const where = sharedBy(red, black);
  const { corner } = red;
  if (where === null || where === 'power' || corner === null) return false;
  const cell = battery('cell', [red.node, black.node], CELL);
  const solution = withProbe(look, where, true, 0, cell);
  return Math.abs(solution.acrossV([coilTop(corner), tab(corner, '−')]).re) > CLICK_V;
}

/** DC amperes through an element of the power network, in the direction that it is drawn in. */
export const dcA = ({ now }: Look, element: string): Read => is(now.power.currentA(element).re);
