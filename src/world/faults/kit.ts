import { type Axle, type Corner, cornersOf } from '../../rig/corner.ts';
import { theAmp } from '../change.ts';
import type { World } from '../state.ts';
import type { FlowId } from '../symptoms/symptom.ts';
import { driverOf } from '../valued-rig.ts';

export * from '../change.ts';

/** How bad a fault can be. Resistances and the like are spread evenly over their powers of ten, the rest as they are. */
export interface Severity {
  /** Name with unit, as of any number. */
  readonly name: string;
  readonly low: number;
  readonly high: number;
  readonly spread: 'even' | 'decades';
}

/** One thing wrong, as a change to the bike. */
export interface Fault {
  readonly id: string;
  /** The same fault in another place or degree, where that changes what it does. */
  readonly variant?: string;
  readonly title: string;
  /** Of a fault that is as often on the left as on the right, which of the two it is. */
  readonly side?: 'left' | 'right';
  readonly severity: Severity | null;
  /** How often it is the cause among callers, by complaint. Estimates of the trade, for ranking only. */
  readonly weights: Readonly<Partial<Record<FlowId | 'rear-weak' | 'one-side-weak' | 'bass-cancels', number>>>;
  /** Nothing is broken: a sound bike of this build does it, and nothing is there to be mended. Who knows it is helped. */
  readonly byDesign?: true;
  /** Whether this bike can have it at all. */
  fits(world: World): boolean;
  /** The bike with it. `severity` lies in its range; it is not looked at where there is none. */
  apply(world: World, severity: number): World;
}

export const even = (name: string, low: number, high: number): Severity => ({ name, low, high, spread: 'even' });
export const decades = (name: string, low: number, high: number): Severity => ({ name, low, high, spread: 'decades' });
export const always = (): boolean => true;

/** A severity at a share of its range, from 0, the mildest, to 1. */
export const severityAt = ({ severity }: Fault, share: number): number =>
  severity === null
    ? 0
    : severity.spread === 'even'
      ? severity.low + share * (severity.high - severity.low)
      : severity.low * (severity.high / severity.low) ** share;

export const keyOf = ({ id, variant }: Pick<Fault, 'id' | 'variant'>): string => (variant ? `${id}@${variant}` : id);

export const hasAmp = (world: World): boolean => theAmp(world) !== null;
export const hasRear = ({ rig }: World): boolean => rig.rearFitted === 'yes';
/** Whether the lead of the rear speakers comes apart at the lid or case. */
export const hasRearPlug = (world: World): boolean => hasRear(world) && world.rig.rearPlug === 'yes';
export const noAmp = (world: World): boolean => !hasAmp(world);
export const isFactory = ({ rig }: World): boolean => rig.unitKind === 'factory';
export const isReplaced = ({ rig }: World): boolean => rig.unitKind === 'replaced';
export const both =
  (...all: readonly ((world: World) => boolean)[]) =>
  (world: World) =>
    all.every((one) => one(world));
/** How the amplifier of the rig is switched on. */
export const turnsOnBy =
  (...ways: readonly string[]) =>
  (world: World): boolean => {
    const at = theAmp(world);
    return at !== null && ways.includes(world.rig.amps[at]?.turnOn ?? '');
  };
export const driven = (axle: Axle, by: 'amp' | 'unit') => (world: World) =>
  (axle === 'front' || hasRear(world)) &&
  (by === 'unit') === (driverOf(world.rig, axle === 'front' ? 'front-left' : 'rear-left') === 'unit');

export const REAR = cornersOf('rear');
export const REAR_LEFT: readonly Corner[] = ['rear-left'];
