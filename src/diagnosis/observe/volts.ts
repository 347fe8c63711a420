import type { Corner } from '../../rig/corner.ts';
import { ampIn, ampOut, halfSupply } from '../../steps/amp-volts.ts';
import { usable } from '../../steps/outcome.ts';
import { fedFromRear, leastReferenceV, rearPair, rearPairAgain } from '../../steps/rear-volts.ts';
import type { Answer } from '../../steps/step.ts';
import { BATTERY_PLUS } from '../../world/bike/nodes.ts';
import type { Moment } from '../../world/moment.ts';
import { ground, powerSpot } from '../../world/test-points.ts';
import { lookAt, rearAmp } from './bike.ts';
import { hold } from './hand.ts';
import { centred, flat, turnedUp } from './left.ts';
import { type Asked, CANNOT, type Says } from './observer.ts';
import { acAt, dcAt, type Probes, probesAt } from './probes.ts';
import { stepsFrom } from './volume.ts';

/* Readings in volts, each in the condition that its step asks for. */

const FRONT = ['unit-front-plus', 'unit-front-minus'] as const;
const UNIT_REAR = ['unit-rear-plus', 'unit-rear-minus'] as const;
const INPUT = ['amp-in-plus', 'amp-in-minus'] as const;
const OUTPUT = ['amp-out-plus', 'amp-out-minus'] as const;

/** A little above the least that this meter can use, as the step asks for. */
const ABOVE_LEAST_RATIO = 1.2;
const TONE = { toneHz: 400, apart: ['amp-outputs'] } as const satisfies Partial<Moment>;

/** The rear pairs of the head unit are read with nothing on them: a short of the run cannot hide a live output. */
const REAR_UNPLUGGED = { toneHz: 400, apart: ['runs'] } as const satisfies Partial<Moment>;

/** Of two pairs the one that reads more: nobody takes a dead one for a reference. */
const stronger = (pairs: readonly (Probes | null)[], volts: (pair: Probes) => number): Probes | null =>
  pairs.reduce((best, pair) => (pair && (!best || volts(pair) > volts(best)) ? pair : best), null);

/**
 * Several AC readings at one volume step: the reference, then the rest. The volume is turned up until the readings can
 * be used; where they never can, it is as if there were no meter.
 */
function atOneStep(
  { step, situation, observer }: Asked,
  bike: Asked['bike'],
  reference: readonly [name: string, pairs: readonly (Probes | null)[]],
  rest: Readonly<Record<string, Probes | null>>,
  before: Readonly<Record<string, string>> = {},
  tone: Partial<Moment> = TONE,
): Answer {
  const { meter } = observer;
  const readV = (pair: Probes, volumeRatio?: number) =>
    acAt(bike, volumeRatio === undefined ? tone : { ...tone, volumeRatio }, pair, meter);
  const [name, pairs] = reference;
  const pair = stronger(pairs, readV);
  const missing = Object.values(rest).some((other) => other === null);
  if (!pair || missing) return CANNOT;
  const hand = hold(observer);
  for (const volumeRatio of stepsFrom(ABOVE_LEAST_RATIO * leastReferenceV(situation), (v) => readV(pair, v))) {
    const typed = (at: Probes | null) => hand.typed('ac', at ? readV(at, volumeRatio) : 0);
    const others = Object.entries(rest).map(([reading, at]) => [reading, typed(at)]);
    const answer = { readings: { ...before, [name]: typed(pair), ...Object.fromEntries(others) } };
    if (usable(step, answer, situation)) return answer;
  }
  return CANNOT;
}

const sides = (make: (corner: Corner) => Probes | null) => [make('rear-left'), make('rear-right')] as const;

function rearNextToFront(asked: Asked, bike: Asked['bike']): Answer {
  const fronts = sides((corner) => probesAt(bike, FRONT, corner));
  const [leftV, rightV] = sides((corner) => probesAt(bike, UNIT_REAR, corner));
  return atOneStep(asked, bike, ['frontV', fronts], { leftV, rightV }, {}, REAR_UNPLUGGED);
}

export const VOLTS: Says = {
  [rearPair.id]: (asked) => rearNextToFront(asked, centred(asked.bike)),
  [rearPairAgain.id]: (asked) => rearNextToFront(asked, turnedUp(flat(centred(asked.bike)))),
  [ampIn.id]: (asked) => {
    const { bike } = asked;
    const sent = sides((corner) => probesAt(bike, fedFromRear(asked.situation) ? UNIT_REAR : FRONT, corner));
    const [leftV, rightV] = sides((corner) => probesAt(bike, INPUT, corner));
    return atOneStep(asked, bike, ['sentV', sent], { leftV, rightV });
  },
  [ampOut.id]: (asked) => {
    const { bike, observer } = asked;
    const inputs = sides((corner) => probesAt(bike, INPUT, corner));
    const [leftV, rightV] = sides((corner) => probesAt(bike, OUTPUT, corner));
    if (!leftV) return CANNOT;
    const residueV = acAt(bike, { ...TONE, toneHz: null }, leftV, observer.meter);
    const before = { residueV: hold(observer).typed('ac', residueV) };
    return atOneStep(asked, bike, ['inV', inputs], { leftV, rightV }, before);
  },
  [halfSupply.id]: ({ bike, observer }) => {
    const look = lookAt(bike, { toneHz: null });
    const pair = rearAmp(bike) === null ? null : probesAt(bike, INPUT, 'rear-left', 'loom');
    if (!look || !pair) return CANNOT;
    const hand = hold(observer);
    const [plusV, minusV] = pair.map((spot) => dcAt(look, [spot, ground(spot.where)]) ?? 0);
    const batteryV = dcAt(look, [powerSpot(BATTERY_PLUS), ground('power')]) ?? 0;
    return {
      readings: {
        batteryV: hand.typed('dc', batteryV),
        plusV: hand.typed('dc', plusV ?? 0),
        minusV: hand.typed('dc', minusV ?? 0),
      },
    };
  },
};
