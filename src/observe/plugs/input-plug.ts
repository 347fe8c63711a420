import { perCorner } from '../../rig/corner.ts';
import { SOUND } from '../../world/healthy.ts';
import { ampIsOn, ampOf, changed, withAmp } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';

const SOUND_PLUG = perCorner(() => ({ plus: SOUND, minus: SOUND }));

export const sayInputPlug: Say = ({ bike }) => {
  if (ampOf(bike) === null) return CANNOT;
  const home = changed(bike, 'signal plug home', withAmp({ inputPlug: SOUND_PLUG }));
  return option(ampIsOn(home) && !ampIsOn(bike) ? 'cured' : 'no-change');
};
