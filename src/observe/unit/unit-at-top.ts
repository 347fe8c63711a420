import { hold } from '../hand.ts';
import { CANNOT, type Say } from '../observer.ts';
import { frontV } from '../tones.ts';

/** At the step at which it is ugly, everything set as it is then. */
export const sayUnitAtTop: Say = (asked) => {
  const { bike, observer } = asked;
  const { topVolumeRatio: volumeRatio } = bike.world.settings;
  const at = (toneHz: number) => frontV(asked, bike, { toneHz, volumeRatio, apart: ['amp-outputs'] });
  const [v80V, v400V] = [at(80), at(400)];
  if (Math.max(v80V, v400V) <= 0) return CANNOT;
  const hand = hold(observer);
  return { readings: { v80V: hand.typed('ac', v80V), v400V: hand.typed('ac', v400V) } };
};
