import { axleOf } from '../../rig/corner.ts';
import { isOpen, ofConcern, playing } from '../bike.ts';
import { CANNOT, happens, option, type Say } from '../observer.ts';

/** How many front speakers have a tweeter of their own beside the coil: it plays on when that is gone. An estimate. */
const WITH_A_TWEETER_SHARE = 0.15;

export const sayHowQuiet: Say = ({ found, bike, observer }) => {
  const [corner] = ofConcern(found);
  if (!corner) return CANNOT;
  const tweeter = axleOf(corner) === 'front' && happens(observer, WITH_A_TWEETER_SHARE);
  if (tweeter && isOpen(found.world.speakers[corner].braid)) return option('highs');
  return option(playing(bike, corner) === 'silent' ? 'dead' : 'faint');
};
