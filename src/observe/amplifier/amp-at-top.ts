import { cornersOfAmp } from '../bike.ts';
import { hold } from '../hand.ts';
import { CANNOT } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';
import { OUTPUT } from '../one-volume-step.ts';
import { acAt, probesAt } from '../probes.ts';

/** The output that gives most, at the step at which it is ugly: nobody takes a dead one. */
export const sayAmpAtTop = ofItsAmp((_, __, { bike, observer }) => {
  const { topVolumeRatio: volumeRatio } = bike.world.settings;
  const pairs = cornersOfAmp(bike).flatMap((corner) => probesAt(bike, OUTPUT, corner) ?? []);
  const at = (toneHz: number) =>
    Math.max(
      0,
      ...cornersOfAmp(bike).map((corner) => {
        const pair = probesAt(bike, OUTPUT, corner);
        return pair ? acAt(bike, { toneHz, volumeRatio, apart: ['amp-outputs'] }, pair, observer.meter) : 0;
      }),
    );
  const [v80V, v400V] = [at(80), at(400)];
  if (pairs.length === 0 || Math.max(v80V, v400V) <= 0) return CANNOT;
  const hand = hold(observer);
  return { readings: { v80V: hand.typed('ac', v80V), v400V: hand.typed('ac', v400V) } };
});
