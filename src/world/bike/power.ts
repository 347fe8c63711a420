import { EFFICIENCY_RATIO, LAMP_A } from '../../steps/amp-feed.ts';
import { chargedBattery } from '../elements/charged-battery.ts';
import { charging } from '../elements/charging.ts';
import { contact } from '../elements/contact.ts';
import { fuse } from '../elements/fuse.ts';
import { powerLoad } from '../elements/power-load.ts';
import { resistor } from '../elements/resistor.ts';
import { wire } from '../elements/wire.ts';
import { UNIT_AWAKE_A } from '../healthy.ts';
import type { Moment } from '../moment.ts';
import type { Element } from '../network.ts';
import { type Converged, type Nonlinear, solveNonlinear } from '../nonlinear.ts';
import { noBattery } from '../rules/no-battery.ts';
import { type Amp, ohmNow, type World } from '../state.ts';
import { mainAmp } from '../valued-rig.ts';
import { ampNodes, BATTERY_PLUS, BIKE_PLUS, MINUS, UNIT_GROUND, UNIT_PLUS, UNIT_SWITCHED } from './nodes.ts';

/* Values without a source are from memory of the trade: common practice, no published source. */

/** Loads of the bike are lamps, pumps and coils: they take less when the volts fall. Their amperes are meant at this. */
const NOMINAL_V = 13.8;
const UNIT_ASLEEP_OHM = 5_000;
const AMP_OFF_OHM = 12_000;
export const AMP_IDLE_A = 0.9;
export const REMOTE_INPUT_OHM = 2_200;
/** The shield of a line-level lead joins the amplifier's ground to the unit's. */
const SHIELD_OHM = 0.5;

/** A head lamp bulb that glows: on the amplifier's terminals a load that is known, in the place of its fuse a guard. */
export const LAMP_OHM = 12 / LAMP_A;

/** What is switched on, and what it plays. */
export interface PowerState {
  readonly unitOn: boolean;
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
    contact('unit ground', [UNIT_GROUND, MINUS], ohmNow(unit.ground, 'unit-plug', moment)),
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
    fuse(`fuse ${i}`, [at.holder, at.fuseOut], { ratedA: world.rig.amps[i]?.mainFuseA ?? 0, open: amp.fuseOpen }),
    wire(`plus lead ${i}`, [at.fuseOut, at.plus], amp.plusLead),
    wire(`ground lead ${i}`, [at.ground, at.groundRing], amp.groundLead),
    contact(`ground ring ${i}`, [at.groundRing, at.minusRing], ohmNow(amp.groundRing, 'amp-supply', moment)),
    contact(`minus ring ${i}`, [at.minusRing, MINUS], ohmNow(amp.minusRing, 'battery', moment)),
    contact(`chafed ${i}`, [at.plus, MINUS], ohmNow(amp.leadToFrame, 'amp-supply', moment)),
    contact(`inside ${i}`, [at.plus, at.ground], ohmNow(amp.shortInside, 'amp-supply', moment)),
    contact(`remote source ${i}`, [BIKE_PLUS, at.remoteStart], live ? amp.remoteSourceOhm : Infinity),
    contact(`remote pin ${i}`, [at.remoteStart, at.remotePin], ohmNow(amp.remotePin, 'unit-plug', moment)),
    contact(`remote wire ${i}`, [at.remotePin, at.remote], remoteOhm),
    resistor(`remote input ${i}`, [at.remote, at.ground], REMOTE_INPUT_OHM),
    ...(moment.jumper ? [contact(`jumper ${i}`, [at.plus, at.remote], 0.1)] : []),
    ...(moment.lamp && i === mainAmp(world.rig) ? [resistor(`lamp ${i}`, [at.plus, at.ground], LAMP_OHM)] : []),
    ...(shielded ? [resistor(`shield ${i}`, [at.ground, UNIT_GROUND], SHIELD_OHM)] : []),
    resistor(`amp off ${i}`, [at.plus, at.ground], AMP_OFF_OHM),
  ];
}

/** A battery of no capacity is none. */
const hasBattery = ({ supply }: World): boolean => supply.internalOhm < Infinity && supply.openV > 0;

/** The power network of a bike: battery, charging, the bike's own loads, head unit, and amplifiers on their leads. */
export function powerNetwork(world: World, moment: Moment, { unitOn, amps }: PowerState) {
  const elements = [
    ...bikeElements(world, moment, unitOn),
    ...world.amps.flatMap((amp, i) => ampElements(amp, i, world, moment, unitOn)),
  ];
  const { regulatorV, idleA, cruiseA } = world.supply;
  const limitA = { off: 0, idle: idleA, cruise: cruiseA }[moment.engine];
  const parts: Nonlinear[] = hasBattery(world) ? [chargedBattery('battery', [BATTERY_PLUS, MINUS], world.supply)] : [];
  const loads = amps.flatMap((state, i) => {
    const { plus, ground } = ampNodes(i);
    if (state === 'off') return [];
    const load = { idleA: AMP_IDLE_A, powerW: state.outputW / EFFICIENCY_RATIO };
    return [powerLoad(`amp ${i}`, [plus, ground], load)];
  });
  parts.push(...loads);
  if (limitA !== 0) parts.push(charging('charging', [BIKE_PLUS, MINUS], { setV: regulatorV, limitA }));
  return { elements, parts };
}

export function solvePower(world: World, moment: Moment, state: PowerState, extra: readonly Element[] = []): Converged {
  const { elements, parts } = powerNetwork(world, moment, state);
  const missing = noBattery({ elements: parts.map(({ first }) => first) });
  if (missing) return { ok: false, ...missing, steps: 0 };
  return solveNonlinear({ elements: [...elements, ...extra], reference: MINUS, frequencyHz: 0 }, parts);
}
