import { MUSIC_AVERAGE_RATIO } from '../../compute/amp-current.ts';
import { LOUD_VOLUME, ORDINARY_VOLUME } from '../../world/moment.ts';
import { ampOf, lampOf } from '../bike.ts';
import { whenToLook } from '../left.ts';
import { CANNOT, option, type Say } from '../observer.ts';

export const sayWakesWhenLoud: Say = ({ bike }) => {
  if (ampOf(bike) === null) return CANNOT;
  const when = whenToLook(bike);
  const usual = lampOf(bike, when);
  // One that shows its fault all the time does not wake: nothing comes on.
  if (usual !== 'off') return option(usual === 'normal' ? 'awake' : 'stays-off');
  const withMusic = (volumeRatio: number) => lampOf(bike, { ...when, volumeRatio, averageRatio: MUSIC_AVERAGE_RATIO });
  // One that music at the usual volume lets be, and a steady tone does not, is not woken by more of it: it dips.
  if (withMusic(ORDINARY_VOLUME) === 'normal') return option('stays-off');
  // Whoever comes up step by step stops at the first one that lights its lamp.
  const lamp = [1 / 4, 1 / 2, 1].map((share) => withMusic(share * LOUD_VOLUME)).find((one) => one !== 'off');
  if (lamp === undefined) return option('stays-off');
  return option(lamp === 'normal' ? 'wakes' : lamp);
};
