import type { Corner } from '../../rig/corner.ts';

/** The battery negative post: 0 V for the whole bike. The frame is bolted to it. */
export const MINUS = 'battery −';
export const BATTERY_PLUS = 'battery +';
/** After the ring of the bike's own loom. */
export const BIKE_PLUS = 'bike +';
export const UNIT_PLUS = 'unit +';
export const UNIT_SWITCHED = 'unit switched';
export const UNIT_GROUND = 'unit ground';
/** A screw that holds the grounds of head unit and amplifier both, where there is one. */
export const SHARED_SCREW = 'shared screw';

export type Sign = '+' | '−';
export const SIGNS = ['+', '−'] as const;

export const ampNodes = (amp: number) => ({
  fuseIn: `amp ${amp} fuse in`,
  holder: `amp ${amp} holder`,
  fuseOut: `amp ${amp} fuse out`,
  /** The bare copper of the positive lead, and the metal of the terminal that it is in. */
  plusEnd: `amp ${amp} lead end`,
  plus: `amp ${amp} +`,
  ground: `amp ${amp} ground`,
  groundRing: `amp ${amp} ground ring`,
  minusRing: `amp ${amp} negative ring`,
  remote: `amp ${amp} remote`,
  remoteStart: `amp ${amp} remote start`,
  remotePin: `amp ${amp} remote pin`,
});

/** A wire of a pair of the unit, before and after its plug. */
export const unitOut = (corner: Corner, sign: Sign) => `unit ${corner} ${sign}`;
export const loom = (corner: Corner, sign: Sign) => `loom ${corner} ${sign}`;
/** A wire of an input of an amplifier, at the end of its loom and behind its plug. */
export const lineOut = (amp: number, input: Corner, sign: Sign) => `line ${amp} ${input} ${sign}`;
export const ampIn = (amp: number, input: Corner, sign: Sign) => `amp ${amp} in ${input} ${sign}`;
export const ampOut = (corner: Corner, sign: Sign) => `amp out ${corner} ${sign}`;
/** A run from its driver's plug to the tabs of the speaker. */
export const runStart = (corner: Corner, sign: Sign) => `run ${corner} ${sign}`;
export const runEnd = (corner: Corner, sign: Sign) => `run end ${corner} ${sign}`;
export const dockBike = (corner: Corner, sign: Sign) => `dock bike ${corner} ${sign}`;
export const dockLid = (corner: Corner, sign: Sign) => `dock lid ${corner} ${sign}`;
export const tab = (corner: Corner, sign: Sign) => `tab ${corner} ${sign}`;
export const coilTop = (corner: Corner) => `coil ${corner}`;
