import { CORNERS, type PerCorner, perCorner } from '../../rig/corner.ts';
import { magnitude } from '../complex.ts';
import { type Moment, ORDINARY_VOLUME } from '../moment.ts';
import type { Element, Refusal, Solved } from '../network.ts';
import { oncePerKey } from '../remembered.ts';
import type { Amp, World } from '../state.ts';
import { driverOf } from '../valued-rig.ts';
import { type AmpSide, ampLoads, ampOff, ampOutputs, ampSide, ampWiring, inputV, type Protects } from './amp-side.ts';
import { ampIn, ampNodes, BATTERY_PLUS, MINUS, UNIT_GROUND, UNIT_PLUS, UNIT_SWITCHED } from './nodes.ts';
import { isOverloaded } from './overloaded.ts';
import { type PowerState, solvePower } from './power.ts';
import { type Grounds, NO_SHIFT } from './stage.ts';
import { UNIT_OFF, type UnitSide, unitLoads, unitOutputs, unitSide, unitWiring } from './unit-side.ts';
import type { Wiring } from './wiring.ts';

/* Thresholds, from memory of the trade: common practice, no published source. */
const UNIT_LEAST_V = 9;
const REMOTE_ON_V = 8;
const SENSE_DC_V = 4;
/** An amplifier goes off below this at its own terminals, and above the other. */
export const AMP_LEAST_V = 10.2;
const AMP_MOST_V = 16.5;

export type Asleep = 'no-supply' | 'undervoltage' | 'overvoltage' | 'no-turn-on' | 'dead' | 'heat' | 'wet';
export interface AmpNow {
  /** What its lamp shows. */
  readonly lamp: 'off' | 'normal' | 'fault' | 'blinks';
  readonly why: Asleep | Protects | null;
  readonly supplyV: number;
  readonly side: AmpSide;
}
export interface Operating {
  readonly ok: true;
  readonly unitOn: boolean;
  readonly unitV: number;
  readonly power: Solved;
  readonly state: PowerState;
  readonly grounds: Grounds;
  readonly unit: UnitSide;
  readonly amps: readonly AmpNow[];
  /** What the output that drives each corner sees. */
  readonly loadsOhm: PerCorner<number>;
  readonly passes: number;
}
export type Operated = Operating | { readonly ok: false; readonly refusal: Refusal };

export const MOST_PASSES = 44;
/**
 * Where a battery neither gives nor takes much, a watt more moves the volts so far that full steps go to and fro around
 * the point. So the first few are full, and after every ten passes they are half as long as before.
 */
const FULL_STEPS = 4;
const stepShare = (pass: number): number => (pass < FULL_STEPS ? 1 : 2 ** -(1 + Math.floor((pass - FULL_STEPS) / 10)));
/**
 * A load of constant power just above what charging gives can have two points, the battery giving and the regulator
 * holding, and hunts between them: two of 13 500 loud healthy bikes do. What it plays then is known to a tenth.
 */
export const HUNTS_WITHIN_RATIO = 0.1;
/** Watts that may still move between two passes: they move no volt by more than a few microvolts. */
export const SETTLED_W = 0.02;

const groundsOf = (power: Solved, amps: number): Grounds => ({
  unitV: power.voltageV(UNIT_GROUND).re,
  ampsV: Array.from({ length: amps }, (_, i) => power.voltageV(ampNodes(i).ground).re),
});

/** Whether what an amplifier listens to says "on". */
function isTurnedOn(world: World, moment: Moment, i: number, power: Solved, unit: UnitSide): boolean {
  const amp = world.amps[i] as Amp;
  const at = ampNodes(i);
  if (moment.jumper || amp.turnOn === 'wire') {
    const remote = power.acrossV([at.remote, at.ground]).re >= REMOTE_ON_V;
    if (remote || amp.turnOn === 'wire') return remote;
  }
  const wired = CORNERS.filter((input) => amp.inputs[input]);
  if (amp.turnOn === 'dc') {
    return wired.some((input) => unit.dc.acrossV([ampIn(i, input, '+'), at.ground]).re >= SENSE_DC_V);
  }
  if (amp.sleepsInQuiet && moment.volumeRatio < ORDINARY_VOLUME) return false;
  return wired.some((input) => inputV(world, i, input, unit) >= amp.senseV);
}

/** Why an amplifier cannot be on, before it is asked to play. */
function keptOff(world: World, moment: Moment, i: number, power: Solved, unit: UnitSide): Asleep | null {
  const amp = world.amps[i] as Amp;
  const supplyV = power.acrossV([ampNodes(i).plus, ampNodes(i).ground]).re;
  if (supplyV < AMP_LEAST_V) return 'no-supply';
  if (!amp.alive || amp.bodyFuseOpen || amp.wet === 'dark') return 'dead';
  if (!isTurnedOn(world, moment, i, power, unit)) return 'no-turn-on';
  if (amp.wet === 'fault') return 'wet';
  if (supplyV > AMP_MOST_V) return 'overvoltage';
  return moment.hot && (amp.coolsBadly || isOverloaded(world, i)) ? 'heat' : null;
}

/** With less than this at its terminals no lamp of an amplifier shows anything. From memory. */
const LAMP_LEAST_V = 6;
const FAULTS_SHOWN: readonly AmpNow['why'][] = ['short', 'load', 'dc', 'heat', 'wet', 'overvoltage'];
/** What the lamp shows; `isTold` says whether it is told to be on. */
function lampOf({ lampBelow }: Amp, why: AmpNow['why'], supplyV: number, isTold: () => boolean): AmpNow['lamp'] {
  if (why === null) return 'normal';
  if (why === 'undervoltage') return lampBelow;
  if (why === 'no-supply' && lampBelow !== 'off' && supplyV >= LAMP_LEAST_V && isTold()) return lampBelow;
  return FAULTS_SHOWN.includes(why) ? 'fault' : 'off';
}

const soundness = oncePerKey<Wiring, Refusal | null>();
/** The first of the signal networks of this bike that cannot be, by the name of what is to blame. */
function unsound(world: World, moment: Moment): Refusal | null {
  const grounds = world.amps.length;
  const unit = unitWiring(world, moment);
  const refused = (wiring: Wiring, outputs: () => Element[]) =>
    soundness(wiring, `${grounds} grounds`, () => wiring.refusal(outputs()));
  return (
    refused(unit, () => unitOutputs(world, UNIT_OFF, NO_SHIFT)) ??
    world.amps.reduce<Refusal | null>(
      (found, _, i) =>
        found ?? refused(ampWiring(world, moment, i), () => ampOutputs(world, i, ampOff(world, i), NO_SHIFT)),
      null,
    )
  );
}

/**
 * The bike at a moment: who is awake, where every supply lies, and what every output plays. Supply and signal depend on
 * each other (loud music lowers the volts that limit it), so both are worked out in turn until they agree. What its own
 * current pulls down (an amplifier below its least volts, a unit behind a bad contact) stays off for the moment; a real
 * one would come back and fall again.
 *
 * A bike that cannot be, or whose power network cannot be solved, is a refusal by name, and not an exception.
 */
export function operate(world: World, moment: Moment): Operated {
  const amps = world.amps.map((_, i) => i);
  const refusal = unsound(world, moment);
  if (refusal) return { ok: false, refusal };
  const loads = unitLoads(world, moment);
  const outputLoads: readonly PerCorner<number>[] = amps.map((i) => ampLoads(world, moment, i));
  const loadsOhm = perCorner((corner) => {
    const driver = driverOf(world.rig, corner);
    return (driver === 'unit' ? loads : outputLoads[driver])?.[corner] ?? Infinity;
  });
  const fallen = new Map<number, Asleep>();
  const { alive, hung, fuseOpen } = world.unit;
  const { cutOffV } = world.supply;
  let wantsOn = moment.key !== 'off' && alive && !hung && !fuseOpen;
  let state: PowerState = { unitOn: wantsOn, batteryOff: false, amps: amps.map(() => 'off' as const) };
  for (let pass = 1; pass <= MOST_PASSES; pass++) {
    const power = solvePower(world, moment, state);
    if (!power.ok) {
      const loaded = power.reason === 'no-operating-point' ? Number(power.element.replace('amp ', '')) : Number.NaN;
      if (!amps.includes(loaded) || fallen.has(loaded)) return { ok: false, refusal: power };
      fallen.set(loaded, 'undervoltage');
      const without = state.amps.map((one, i) => (i === loaded ? 'off' : one));
      state = { ...state, batteryOff: state.batteryOff || cutOffV !== null, amps: without };
      continue;
    }
    // Once it has switched itself off it stays off: that takes a charger, or the key.
    const batteryOff = state.batteryOff || (cutOffV !== null && power.voltageV(BATTERY_PLUS).re < cutOffV);
    const unitV = power.acrossV([UNIT_PLUS, UNIT_GROUND]).re;
    const unitOn = wantsOn && unitV >= UNIT_LEAST_V && power.acrossV([UNIT_SWITCHED, UNIT_GROUND]).re >= UNIT_LEAST_V;
    wantsOn = unitOn;
    const grounds = groundsOf(power, amps.length);
    const unit = unitSide(world, moment, loads, { on: unitOn, volts: Math.max(0, unitV), grounds });
    const now = amps.map((i): AmpNow => {
      const supplyV = power.acrossV([ampNodes(i).plus, ampNodes(i).ground]).re;
      const off = fallen.get(i) ?? keptOff(world, moment, i, power, unit);
      if (off && state.amps[i] !== 'off' && !fallen.has(i)) fallen.set(i, off === 'no-supply' ? 'undervoltage' : off);
      const given = {
        loads: outputLoads[i] ?? loads,
        unit,
        supplyV: Math.max(0, supplyV),
        grounds,
        awake: off === null,
      };
      const side = ampSide(world, moment, i, given);
      const why = fallen.get(i) ?? off ?? side.protects;
      const lamp = lampOf(world.amps[i] as Amp, why, supplyV, () => isTurnedOn(world, moment, i, power, unit));
      return { lamp, why, supplyV, side };
    });
    const next: PowerState = {
      unitOn,
      batteryOff,
      amps: now.map(({ why, side }) => (why === null ? { outputW: side.outputW } : 'off')),
    };
    if (isSame(state, next, pass === MOST_PASSES ? HUNTS_WITHIN_RATIO : 0)) {
      return { ok: true, unitOn, unitV, power, state, grounds, unit, amps: now, loadsOhm, passes: pass };
    }
    state = towards(state, next, stepShare(pass));
  }
  return { ok: false, refusal: { reason: 'no-operating-point', element: 'bike' } };
}

/** Part of the way from one state to the next. Who is on and who is off goes all the way. */
const towards = (from: PowerState, to: PowerState, share: number): PowerState => ({
  ...to,
  amps: to.amps.map((next, i) => {
    const now = from.amps[i];
    if (next === 'off' || now === undefined || now === 'off') return next;
    return { outputW: now.outputW + share * (next.outputW - now.outputW) };
  }),
});

const isSame = (a: PowerState, b: PowerState, withinRatio: number): boolean =>
  a.unitOn === b.unitOn &&
  a.batteryOff === b.batteryOff &&
  a.amps.every((one, i) => {
    const other = b.amps[i];
    if (one === 'off' || other === undefined || other === 'off') return one === other;
    return Math.abs(one.outputW - other.outputW) <= SETTLED_W + withinRatio * one.outputW;
  });

/** Volts between two nodes of the power network. */
export const powerV = ({ power }: Operating, from: string, to: string = MINUS): number => power.acrossV([from, to]).re;
export const toneV = (solution: Solved | null, from: string, to: string): number =>
  solution ? magnitude(solution.acrossV([from, to])) : 0;
