import { referenceToneV } from '../../steps/profile/tones.ts';
import type { Say } from '../observer.ts';
import { at400V, firstUsable, prepared, tonesAt } from '../tones.ts';
import { stepsNear } from '../volume.ts';

export const sayTonesOff: Say = (asked) => {
  const bike = prepared(asked.bike);
  const volumes = stepsNear(referenceToneV(asked.situation), at400V(asked, bike));
  return firstUsable(asked, volumes, (volumeRatio) => tonesAt(asked, bike, { volumeRatio }));
};
