import { perCorner } from '../../../rig/corner.ts';
import { between, happens, type Observe, type Oddity } from '../oddity.ts';
import { cornerOf, pointsOf, readsTone, restsAtV } from './places.ts';
import { type ReadingGiven, retyped, saying, typed, unitOf } from './saying.ts';

/* Meters that show something else in volts, and people who read them so. */

/** An average-reading meter is marked for a sine: of what it rectifies by half it shows this times the mean. */
const MARKED_RATIO = (Math.PI / Math.SQRT2) as number;
/** Less DC than this on a wire comes from no output. */
const LIVE_V = 1;

/**
 * What a meter that rectifies by half and lets DC pass shows of a sine of these volts beside some DC: π/√2 times the
 * mean of its upper part. Source: the mean of a half-rectified sine with an offset, any table of integrals; without
 * offset it is the sine's own volts.
 */
export function halfWaveShownV(toneV: number, offsetV: number): number {
  const peakV = Math.SQRT2 * toneV;
  if (Math.abs(offsetV) >= peakV) return MARKED_RATIO * Math.max(0, offsetV);
  const k = offsetV / peakV;
  const meanV = (peakV * Math.sqrt(1 - k ** 2) + offsetV * (Math.PI / 2 + Math.asin(k))) / Math.PI;
  return MARKED_RATIO * meanV;
}

const ofTones = (reads: (value: number, name: string, given: ReadingGiven) => number | undefined) =>
  saying((given) =>
    retyped(given, (name, value, at) => {
      if (!readsTone(at.step) || name === 'papersV') return undefined;
      const volts = reads(value, name, at);
      return volts === undefined ? undefined : typed(volts, 'V', 3);
    }),
  );

const restsV = (name: string, { step, situation, bike }: ReadingGiven): number => {
  const points = pointsOf(step, name, situation);
  return points ? restsAtV(bike, points.red, cornerOf(bike.world, name)) : 0;
};

/** Less than this a meter with ranges shows in millivolts. */
const MILLIVOLTS_BELOW_V = 0.3;
const inMillivolts = (observe: Observe): Observe => {
  let onThatRange = false;
  return saying((given) =>
    retyped(given, (name, value, { step }) => {
      if (unitOf(step, name) !== 'V' || Math.abs(value) >= MILLIVOLTS_BELOW_V || value === 0) return undefined;
      onThatRange = onThatRange || Math.abs(value) > 0.001;
      return onThatRange ? (1000 * value).toFixed(0) : undefined;
    }),
  )(observe);
};

export const METER: readonly Oddity[] = [
  {
    id: 'half-wave-meter',
    says: 'a half-wave meter, and pairs whose wires rest some tenths of a volt apart',
    class: 'meter',
    fits: () => true,
    person: (observe, draw) => {
      const apartV = perCorner(() => between(draw, 0.05, 0.4) * (happens(draw, 0.5) ? 1 : -1));
      return ofTones((value, name, given) =>
        restsV(name, given) > LIVE_V ? halfWaveShownV(value, apartV[cornerOf(given.bike.world, name)]) : undefined,
      )(observe);
    },
  },
  {
    id: 'meter-passes-dc',
    says: 'a meter that shows DC on its AC range, one probe on the wire and one on the frame',
    class: 'meter',
    fits: () => true,
    person: ofTones((value, name, given) => halfWaveShownV(value / 2, restsV(name, given))),
  },
  {
    id: 'millivolts-for-volts',
    says: 'somebody who types millivolts as volts once the meter shows them',
    class: 'meter',
    fits: () => true,
    person: inMillivolts,
  },
  {
    id: 'meter-battery-weak',
    says: 'a meter whose own battery is weak: it reads a tenth to a quarter too high',
    class: 'meter',
    fits: () => true,
    person: (observe, draw) => {
      const tooHigh = between(draw, 1.1, 1.25);
      return saying((given) =>
        retyped(given, (name, value, { step }) => {
          const unit = unitOf(step, name);
          return unit && Number.isFinite(value) ? typed(tooHigh * value, unit, 3) : undefined;
        }),
      )(observe);
    },
  },
];
