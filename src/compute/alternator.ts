import { requirePositive, requireWhole, requireWithin } from './require.ts';

/** Pulses of a six-diode rectifier in one cycle of its three phases. Source: Lessons In Electric Circuits, as below. */
export const PULSES_PER_CYCLE = 6;

/**
 * AC volts at the posts of a battery with the engine running: so much is usual, and above the second something is bad.
 * Common practice, no published source.
 */
export const RIPPLE_USUAL_V = 0.2;
export const RIPPLE_BAD_V = 0.5;

type Turning = { engineRpm: number; polePairs: number; driveRatio?: number };

/**
 * The frequency of one phase: pole pairs × revolutions a second.
 *
 * Source: Lessons In Electric Circuits, AC vol., "Introduction to AC motors". Valid: `driveRatio` is 1 on the
 * crankshaft, and the ratio of the drive elsewhere.
 * @throws {RangeError} if the revolutions or the ratio are not above 0, or the pole pairs are not whole, from 1 to 24.
 */
export function phaseHz({ engineRpm, polePairs, driveRatio = 1 }: Turning): number {
  requirePositive({ engineRpm, driveRatio });
  requireWhole({ polePairs }, 1, 24);
  return (polePairs * engineRpm * driveRatio) / 60;
}

/**
 * The ripple behind a healthy three-phase rectifier: six times the phase frequency. It is what whines.
 *
 * Source: Lessons In Electric Circuits, Semiconductors vol., "Rectifier circuits". Valid: as `phaseHz`. With a phase or a
 * diode lost, lines at once and twice the phase frequency come up.
 * @throws {RangeError} as `phaseHz`.
 */
export const rippleHz = (turning: Turning): number => PULSES_PER_CYCLE * phaseHz(turning);

/**
 * Sparks a second of a four-stroke engine: cylinders × revolutions a second / 2, twice that where each cylinder sparks at
 * every turn. Source: one power stroke every two turns, which is what four-stroke means.
 *
 * @throws {RangeError} if the revolutions are not above 0, or the cylinders are not whole, from 1 to 6.
 */
export function sparkHz({
  engineRpm,
  cylinders,
  everyTurn = false,
}: {
  engineRpm: number;
  cylinders: number;
  everyTurn?: boolean;
}): number {
  requirePositive({ engineRpm });
  requireWhole({ cylinders }, 1, 6);
  const perTurn = everyTurn ? cylinders : cylinders / 2;
  return (perTurn * engineRpm) / 60;
}

/**
 * The engine speed whose ripple has this pitch: the inverse of `rippleHz`, for a whine that was heard or measured.
 *
 * @throws {RangeError} if a value is not above 0, or the pole pairs are not whole, from 1 to 24.
 */
export function rippleEngineRpm({
  rippleHz: pitchHz,
  polePairs,
  driveRatio = 1,
}: Omit<Turning, 'engineRpm'> & { rippleHz: number }): number {
  requirePositive({ rippleHz: pitchHz });
  requireWithin({ pitchHz }, 0, 1e6);
  return pitchHz / rippleHz({ engineRpm: 1, polePairs, driveRatio });
}
