import { CORNERS } from '../../rig/corner.ts';
import { inputNotHome } from '../bike.ts';
import { happens, option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

/** How often a pin that is pushed back is seen, or slides when its wire is pulled. An estimate. */
const SEEN_SHARE = 0.85;
/** How often a plug that is not home is seen to be so before it is pulled. An estimate. */
const SEEN_OUT_SHARE = 0.75;

export const sayPinLook: Say = ofItsAmp((_, { inputs, inputPlug }, { bike, observer }) => {
  if (inputNotHome(bike) && happens(observer, SEEN_OUT_SHARE)) return option('out');
  const back = CORNERS.filter((corner) => inputs[corner]).some((corner) =>
    Object.values(inputPlug[corner]).some(({ wants }) => wants === 'pin'),
  );
  return option(back && happens(observer, SEEN_SHARE) ? 'back' : 'level');
});
