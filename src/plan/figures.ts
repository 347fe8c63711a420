import { powerRatio } from '../compute/decibel.ts';
import { boostClipsAtV, boostPowerRatio } from '../compute/headroom.ts';
import { BRIDGE_LOSS_LOADED_V, BRIDGE_LOSS_UNLOADED_V, cleanOutputV, powerW } from '../compute/level.ts';
import { formatQuantity, formatRange } from '../compute/quantity.ts';
import type { Unit } from '../compute/units.ts';
import { loweredV } from '../rig/levels.ts';
import { type Estimate, estimate } from '../rig/rig.ts';
import type { PlanCase } from './facts.ts';

/** What a profile does to the volts and watts of this bike, written out. A value nobody knows appears as its range. */
export interface Figures {
  /** The loudest clean sine of one channel with the engine running, at the full level, and what that is in a speaker. */
  readonly fullV: string;
  readonly fullW: string;
  /** What a channel of the head unit gives, and into what. */
  readonly unitW: string;
  /** The ohms that the watts belong to: those of the speaker, 4 Ω at least. */
  readonly speaker: string;
  readonly loweredV: string;
  readonly loweredW: string;
  readonly loweredDb: string;
  /** The share of the power that is left at the lowered level. */
  readonly shareLeft: string;
  readonly boostDb: string;
  /** How many times the power the boosted bass takes. */
  readonly bassTimes: string;
  /** The level of everything else at which the boosted bass clips. */
  readonly bassClipsAtV: string;
  /** By how much the bass moves when both change. */
  readonly bassMovesDb: string;
}

/** The least and the most that a formula gives over what its values can be. */
function span(values: readonly Estimate[], of: (...values: number[]) => number): readonly [number, number] {
  const corners = values.reduce<number[][]>(
    (before, { low, high }) => before.flatMap((corner) => [low, high].map((end) => corner.concat(end))),
    [[]],
  );
  const results = corners.map((corner) => of(...corner));
  return [Math.min(...results), Math.max(...results)];
}

/** A range is no finer than what it is worked out from: whole from 10 on. */
const written = ([low, high]: readonly [number, number], unit: Unit) =>
  low === high
    ? formatQuantity(low, unit)
    : high < 10
      ? formatRange(low, high, unit)
      : formatRange(Math.round(low), Math.round(high), unit);

const times = ([low, high]: readonly [number, number]) =>
  low === high ? `${Math.round(low)} times` : `${Math.round(low)} to ${Math.round(high)} times`;

/** No output of a head unit is made for less. Common practice, no published source. */
const UNIT_LEAST_OHM = 4;

/**
 * The figures for the front channels. At the full level the supply is the limit, and an amplifier's input, which takes
 * almost no current, gets a little more than a speaker. The lowered level never reaches that limit: it is the same into
 * either. Watts are those into what the channels are made for: below that nobody promises any.
 */
export function figuresOf({ findings, facts }: PlanCase): Figures {
  const { rig } = findings;
  // Each is worked out only where it is said: what it takes for granted is listed as assumed.
  const supply = () => estimate(rig, 'supplyRunningV');
  const lowered = () => estimate(rig, 'loweredByDb');
  const boost = () => estimate(rig, 'boostDb');
  const low = () => loweredV(rig);
  const loadOhm = () => Math.max(UNIT_LEAST_OHM, estimate(rig, 'frontRatedOhm').value);
  const lossV = facts.front === 'amp' ? BRIDGE_LOSS_UNLOADED_V : BRIDGE_LOSS_LOADED_V;
  const full = (supplyV: number) => cleanOutputV({ supplyV, lossV });
  const watts = (levelV: number) => powerW({ levelV, loadOhm: loadOhm() });
  const loaded = (supplyV: number) => watts(cleanOutputV({ supplyV, lossV: BRIDGE_LOSS_LOADED_V }));
  return {
    get fullV() {
      return written(span([supply()], full), 'V');
    },
    get fullW() {
      return written(
        span([supply()], (v) => watts(full(v))),
        'W',
      );
    },
    get unitW() {
      return `${written(span([supply()], loaded), 'W')} into ${formatQuantity(loadOhm(), 'Ω')} at the full level`;
    },
    get speaker() {
      return formatQuantity(loadOhm(), 'Ω');
    },
    get loweredV() {
      return written([low().low, low().high], 'V');
    },
    get loweredW() {
      return written([watts(low().low), watts(low().high)], 'W');
    },
    get loweredDb() {
      return written([lowered().low, lowered().high], 'dB');
    },
    get shareLeft() {
      return written(
        span([lowered()], (db) => Math.round(100 * powerRatio({ gainDb: -db }))),
        '%',
      );
    },
    get boostDb() {
      return written([boost().low, boost().high], 'dB');
    },
    get bassTimes() {
      return times(span([boost()], (boostDb) => boostPowerRatio({ boostDb })));
    },
    get bassClipsAtV() {
      return written(
        span([supply(), boost()], (v, boostDb) => boostClipsAtV({ cleanV: full(v), boostDb })),
        'V',
      );
    },
    get bassMovesDb() {
      return written(
        span([lowered(), boost()], (a, b) => a + b),
        'dB',
      );
    },
  };
}
