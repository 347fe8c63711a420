import { having } from '../bike.ts';
import { option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';
import { uglyAt } from '../ugly.ts';

const HIGHPASS_HZ = 80;
/** What stands between these is a high-pass for small speakers. From memory. */
const RIGHT_HZ = [60, 130] as const;

export const sayHighpassTry: Say = ofItsAmp((_, { highpassHz, bassBoostDb }, { bike }) => {
  const stood = highpassHz !== null && highpassHz >= RIGHT_HZ[0] && highpassHz <= RIGHT_HZ[1] && bassBoostDb === 0;
  if (stood) return option('already');
  const tried = having(bike, 'high-pass on', { highpassHz: HIGHPASS_HZ, bassBoostDb: 0 });
  return option(uglyAt(bike, tried).length === 0 ? 'cured' : 'no-change');
});
