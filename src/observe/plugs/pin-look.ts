import { CORNERS } from '../../rig/corner.ts';
import { happens, option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

/** How often a pin that is pushed back is seen, or slides when its wire is pulled. An estimate. */
const SEEN_SHARE = 0.85;

export const sayPinLook: Say = ofItsAmp((_, { inputs, inputPlug }, { observer }) => {
  const back = CORNERS.filter((corner) => inputs[corner]).some((corner) =>
    Object.values(inputPlug[corner]).some(({ wants }) => wants === 'pin'),
  );
  return option(back && happens(observer, SEEN_SHARE) ? 'back' : 'level');
});
