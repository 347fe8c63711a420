import { hold } from '../hand.ts';
import { centred } from '../left.ts';
import { CANNOT, type Say } from '../observer.ts';
import { FRONT, TONE } from '../one-volume-step.ts';
import { acAt, probesAt } from '../probes.ts';

/** Nobody goes past it with a tone: half of the way of the knob, which is far less than half of the volts. */
const HALF_VOLUME_RATIO = 0.3;

export const sayUnitSends: Say = ({ bike: found, observer }) => {
  const bike = centred(found);
  const pairs = (['front-left', 'front-right'] as const).map((corner) => probesAt(bike, FRONT, corner));
  const readV = (toneHz: number | null) =>
    Math.max(
      ...pairs.map((pair) =>
        pair ? acAt(bike, { ...TONE, toneHz, volumeRatio: HALF_VOLUME_RATIO }, pair, observer.meter) : 0,
      ),
    );
  if (pairs.every((pair) => pair === null)) return CANNOT;
  const hand = hold(observer);
  return {
    readings: {
      residueV: hand.typed('ac', readV(null)),
      frontV: hand.typed('ac', readV(400)),
    },
  };
};
