import { engineMoves, isMasked, isMoved, noiseComes, sagsAtIdle } from '../../world/symptoms/tone.ts';
import { happens, option, type Say } from '../observer.ts';

/** Tones that move by this much more than others change the tone, and not only the level. An estimate: 1 dB. */
const APART_RATIO = 1.12;
/** How often covered bass is taken for a change of tone, with the ear at the speaker. An estimate. */
const TAKEN_FOR_A_CHANGE_SHARE = 0.5;
/** How often sound that sags at idle when it is loud is called quieter. An estimate. */
const TAKEN_FOR_QUIETER_SHARE = 0.3;

export const sayEngineCompare: Say = ({ bike, observer }) => {
  const covers = happens(observer, TAKEN_FOR_A_CHANGE_SHARE);
  const quieter = happens(observer, TAKEN_FOR_QUIETER_SHARE);
  const ratios = engineMoves(bike).map(({ ratio }) => ratio);
  if (ratios.some(isMoved)) {
    const apart = Math.max(...ratios) / Math.max(1e-6, Math.min(...ratios));
    return option(apart > APART_RATIO ? 'bass' : 'louder');
  }
  if (isMasked(bike) && covers) return option('bass');
  if (noiseComes(bike)) return option('noise');
  return option(sagsAtIdle(bike) && quieter ? 'louder' : 'same');
};
