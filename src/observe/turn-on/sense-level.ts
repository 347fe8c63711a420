import { MUSIC_AVERAGE_RATIO } from '../../compute/amp-current.ts';
import { usable } from '../../steps/outcome.ts';
import { ORDINARY_VOLUME } from '../../world/moment.ts';
import { ampOf, cornersOfAmp } from '../bike.ts';
import { hold } from '../hand.ts';
import { CANNOT, happens, type Say } from '../observer.ts';
import { acAt, probesAt } from '../probes.ts';
import { VOLUME_STEPS } from '../volume.ts';

/** How many owners have the papers of their amplifier, with its threshold in them. An estimate. */
const HAS_PAPERS_SHARE = 0.3;

const THREE_QUARTERS_UP = VOLUME_STEPS[Math.round(0.75 * VOLUME_STEPS.length) - 1] ?? 1;

export const saySenseLevel: Say = ({ step, bike, situation, observer }) => {
  const i = ampOf(bike);
  const pairs = cornersOfAmp(bike).map((corner) => probesAt(bike, ['amp-in-plus', 'amp-in-minus'], corner));
  const volts = (volumeRatio: number) =>
    Math.max(
      0,
      ...pairs.map((pair) =>
        pair
          ? acAt(bike, { volumeRatio, averageRatio: MUSIC_AVERAGE_RATIO, apart: ['amp-outputs'] }, pair, observer.meter)
          : 0,
      ),
    );
  if (i === null || pairs.every((pair) => pair === null)) return CANNOT;
  const hand = hold(observer);
  const papersV = bike.world.amps[i]?.senseV ?? 0;
  const listens = bike.world.rig.amps[i]?.turnOn === 'signal';
  const papers = listens && happens(observer, HAS_PAPERS_SHARE) ? { papersV: `${papersV.toPrecision(2)} V` } : {};
  const answer = {
    readings: {
      usualV: hand.typed('ac', volts(ORDINARY_VOLUME)),
      loudV: hand.typed('ac', volts(THREE_QUARTERS_UP)),
      ...papers,
    },
  };
  return usable(step, answer, situation) ? answer : CANNOT;
};
