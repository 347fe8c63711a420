import { EFFICIENCY_RATIO, LAMP_A } from '../../steps/supply/amp-feed.ts';
import { chargedBattery } from '../elements/charged-battery.ts';
import { charging } from '../elements/charging.ts';
import { contact } from '../elements/contact.ts';
import { type Filament, filament } from '../elements/filament.ts';
import { fuse } from '../elements/fuse.ts';
import { powerLoad } from '../elements/power-load.ts';
import { resistor } from '../elements/resistor.ts';
import { wire } from '../elements/wire.ts';
import { Equations } from '../equations.ts';
import { UNIT_AWAKE_A } from '../healthy.ts';
import type { Moment } from '../moment.ts';
import type { Element, Refusal } from '../network.ts';
import { type Converged, type Nonlinear, solveNonlinearChecked } from '../nonlinear.ts';
import { identityOf, oncePerKey } from '../remembered.ts';
import { noBattery } from '../rules/no-battery.ts';
import { refuse } from '../rules/refuse.ts';
import { type Amp, ohmNow, type World } from '../state.ts';
import type { ValuedRig } from '../valued-rig.ts';
import { batteryNow, drains } from './battery-now.ts';
import {
  ampNodes,
  BATTERY_PLUS,
  BIKE_PLUS,
  MINUS,
  SHARED_SCREW,
  UNIT_GROUND,
  UNIT_PLUS,
  UNIT_SWITCHED,
} from './nodes.ts';
import { handlingOf } from './wiring.ts';

/* Values without a source are from memory of the trade: common practice, no published source. */

/** Loads of the bike are lamps, pumps and coils: they take less when the volts fall. Their amperes are meant at this. */
const NOMINAL_V = 13.8;
const UNIT_ASLEEP_OHM = 5_000;
/** Between the terminals of an amplifier that is off. */
export const AMP_OFF_OHM = 12_000;
export const AMP_IDLE_A = 0.9;
export const REMOTE_INPUT_OHM = 2_200;
/** The shield of a line-level lead joins the amplifier's ground to the unit's. */
const SHIELD_OHM = 0.5;

/** A head lamp bulb: on the amplifier's terminals a load that is known, in the place of its fuse a guard. */
export const LAMP: Filament = { ratedV: 12, ratedA: LAMP_A };
/** What it has while it glows in full. */
export const LAMP_OHM = LAMP.ratedV / LAMP.ratedA;

/** What is switched on, and what it plays. */
export interface PowerState {
  readonly unitOn: boolean;
  /** A battery that has switched itself off. */
  readonly batteryOff: boolean;
  /** By amplifier: off, or the average watts that it gives to its speakers. */
  readonly amps: readonly ('off' | { readonly outputW: number })[];
}

function bikeElements({ supply, unit }: World, moment: Moment, unitOn: boolean): Element[] {
  const { key, engine } = moment;
  const closed = key === 'off' ? Infinity : ohmNow(unit.switched, 'unit-plug', moment);
  const sleepingA = supply.asleepA + (unit.neverSleeps && key === 'off' ? UNIT_AWAKE_A : 0);
  const baseA = key === 'on' ? supply.baseA[engine] : 0;
  return [
    contact('bike ring', [BATTERY_PLUS, BIKE_PLUS], ohmNow(supply.bikeRing, 'battery', moment)),
    resistor('bike loads', [BIKE_PLUS, MINUS], NOMINAL_V / (baseA + sleepingA)),
    contact('unit permanent', [BIKE_PLUS, UNIT_PLUS], ohmNow(unit.permanent, 'unit-plug', moment)),
    contact('unit switched', [BIKE_PLUS, UNIT_SWITCHED], closed),
    resistor('unit switched input', [UNIT_SWITCHED, UNIT_GROUND], REMOTE_INPUT_OHM),
    contact(
      'unit ground',
      [UNIT_GROUND, supply.sharedScrew ? SHARED_SCREW : MINUS],
      ohmNow(unit.ground, 'unit-plug', moment),
    ),
    ...(supply.sharedScrew
      ? [contact('shared screw', [SHARED_SCREW, MINUS], ohmNow(supply.sharedScrew.joint, 'amp-supply', moment))]
      : []),
    resistor('unit', [UNIT_PLUS, UNIT_GROUND], unitOn ? NOMINAL_V / UNIT_AWAKE_A : UNIT_ASLEEP_OHM),
  ];
}

function ampElements(amp: Amp, i: number, world: World, moment: Moment, unitOn: boolean): Element[] {
  const at = ampNodes(i);
  const live = amp.remoteSource === 'permanent' || (amp.remoteSource === 'switched' && unitOn);
  const shielded = amp.level === 'line' && !moment.apart.includes('amp-inputs');
  const remoteOhm = moment.apart.includes('remote') ? Infinity : ohmNow(amp.remoteWire, 'amp-supply', moment);
  return [
    contact(`ring ${i}`, [BATTERY_PLUS, at.fuseIn], ohmNow(amp.ring, 'battery', moment)),
    contact(`holder ${i}`, [at.fuseIn, at.holder], ohmNow(amp.holder, 'amp-supply', moment)),
    fuse(`fuse ${i}`, [at.holder, at.fuseOut], { ratedA: amp.fuseRatedA, open: amp.fuseOpen }),
    wire(`positive lead ${i}`, [at.fuseOut, at.plusEnd], amp.plusLead, ohmNow(amp.plusCopper, 'amp-supply', moment)),
    contact(`terminal ${i}`, [at.plusEnd, at.plus], ohmNow(amp.terminal, 'amp-supply', moment)),
    wire(`ground lead ${i}`, [at.ground, at.groundRing], amp.groundLead),
    contact(`ground ring ${i}`, [at.groundRing, at.minusRing], ohmNow(amp.groundRing, 'amp-supply', moment)),
    contact(
      `negative ring ${i}`,
      [at.minusRing, i === world.about && world.supply.sharedScrew?.holds === 'both' ? SHARED_SCREW : MINUS],
      ohmNow(amp.minusRing, 'battery', moment),
    ),
    contact(`chafed ${i}`, [at.plusEnd, MINUS], ohmNow(amp.leadToFrame, 'amp-supply', moment)),
    contact(`inside ${i}`, [at.plus, at.ground], ohmNow(amp.shortInside, 'amp-supply', moment)),
    contact(`remote source ${i}`, [BIKE_PLUS, at.remoteStart], live ? amp.remoteSourceOhm : Infinity),
    contact(`remote pin ${i}`, [at.remoteStart, at.remotePin], ohmNow(amp.remotePin, 'unit-plug', moment)),
    contact(`remote wire ${i}`, [at.remotePin, at.remote], remoteOhm),
    resistor(`remote input ${i}`, [at.remote, at.ground], REMOTE_INPUT_OHM),
    ...(moment.jumper ? [contact(`jumper ${i}`, [at.plus, at.remote], 0.1)] : []),
    ...(shielded ? [resistor(`shield ${i}`, [at.ground, UNIT_GROUND], SHIELD_OHM)] : []),
    resistor(`amp off ${i}`, [at.plus, at.ground], AMP_OFF_OHM),
  ];
}

/** A battery of no capacity is none. */
const hasBattery = ({ supply }: World): boolean => supply.internalOhm < Infinity && supply.openV > 0;

/** The linear part of a power network, and why no network of its kind can be. */
interface PowerWiring {
  readonly linear: Equations;
  readonly refusal: Refusal | null;
  readonly solved: Map<string, Converged>;
}

const limitA = ({ supply }: World, { engine }: Moment): number =>
  ({ off: 0, idle: supply.idleA, cruise: supply.cruiseA })[engine];

/** Battery, charging and the amplifiers that are on: what draws no straight line. */
function nonlinearParts(world: World, moment: Moment, { amps, batteryOff }: Omit<PowerState, 'unitOn'>): Nonlinear[] {
  const { supply, about } = world;
  const loads = amps.flatMap((state, i) => {
    const { plus, ground } = ampNodes(i);
    if (state === 'off') return [];
    const load = { idleA: AMP_IDLE_A, powerW: state.outputW / EFFICIENCY_RATIO };
    return [powerLoad(`amp ${i}`, [plus, ground], load)];
  });
  const made = { setV: supply.regulatorV, limitA: limitA(world, moment) };
  return [
    ...(hasBattery(world)
      ? [chargedBattery('battery', [BATTERY_PLUS, MINUS], batteryNow(supply, moment, batteryOff))]
      : []),
    ...loads,
    ...(moment.lamp && about !== null
      ? [filament(`lamp ${about}`, [ampNodes(about).plus, ampNodes(about).ground], LAMP)]
      : []),
    ...(made.limitA === 0 ? [] : [charging('charging', [BIKE_PLUS, MINUS], made)]),
  ];
}

const wirings = oncePerKey<ValuedRig, PowerWiring>();
/** Worked out once for all bikes of a build, and all moments, in which it is the same. */
function powerWiring(world: World, moment: Moment, { unitOn, amps }: PowerState): PowerWiring {
  const { supply, unit } = world;
  const { key, engine, jumper, lamp } = moment;
  const parts = identityOf(world.rig, supply, unit.switched, unit.permanent, unit.ground, ...world.amps);
  const done = `${handlingOf(moment)} ${key} ${engine} ${jumper} ${lamp && world.about}`;
  return wirings(world.rig, `${done} ${parts} ${unit.neverSleeps} ${unitOn}`, () => {
    const elements = [
      ...bikeElements(world, moment, unitOn),
      ...world.amps.flatMap((amp, i) => ampElements(amp, i, world, moment, unitOn)),
    ];
    const allOn = amps.map(() => ({ outputW: 0 }));
    const first = nonlinearParts(world, moment, { amps: allOn, batteryOff: false }).map((part) => part.first);
    const network = { elements, reference: MINUS, frequencyHz: 0 };
    const refusal = noBattery({ elements: first }) ?? refuse({ ...network, elements: [...elements, ...first] });
    return { linear: new Equations(network), refusal, solved: new Map() };
  });
}

/**
 * The power network of a bike: battery, charging, the bike's own loads, head unit, and amplifiers on their leads, with
 * `meter` in it. The same network in the same state is solved once.
 */
export function solvePower(world: World, moment: Moment, state: PowerState, meter?: Element): Converged {
  const { linear, refusal, solved } = powerWiring(world, moment, state);
  if (refusal) return { ok: false, ...refusal, steps: 0 };
  const solveNow = () => {
    const parts = nonlinearParts(world, moment, state);
    return solveNonlinearChecked(meter ? linear.with([meter]) : linear, parts);
  };
  if (meter) return solveNow();
  const key = `${state.batteryOff} ${drains(moment)} ${state.amps.map((one) => (one === 'off' ? one : one.outputW))}`;
  const solution = solved.get(key) ?? solveNow();
  solved.set(key, solution);
  return solution;
}
