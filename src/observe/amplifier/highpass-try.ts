import { having } from '../bike.ts';
import { happens, option } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';
import { cleanAfter } from '../ugly.ts';

const HIGHPASS_HZ = 80;
/** What stands between these is a high-pass for small speakers. From memory. */
const RIGHT_HZ = [60, 130] as const;
/** How often somebody whose filter stood right moves a knob all the same, and says that it was changed. An estimate. */
const MOVED_ALL_THE_SAME_SHARE = 0.4;

export const sayHighpassTry = ofItsAmp((_, { highpassHz, bassBoostDb }, { bike, observer }) => {
  const stood = highpassHz !== null && highpassHz >= RIGHT_HZ[0] && highpassHz <= RIGHT_HZ[1] && bassBoostDb === 0;
  const moves = happens(observer, MOVED_ALL_THE_SAME_SHARE);
  if (stood) return option(moves ? 'no-change' : 'already');
  const tried = having(bike, 'high-pass on', { highpassHz: HIGHPASS_HZ, bassBoostDb: 0 });
  return option(cleanAfter(bike, tried) ? 'cured' : 'no-change');
});
