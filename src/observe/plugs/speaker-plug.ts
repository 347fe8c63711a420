import { cornersOf } from '../../rig/corner.ts';
import { axleOfConcern, bestOf, ofConcern } from '../bike.ts';
import { frontHome } from '../left.ts';
import { CANNOT, happens, option, type Say } from '../observer.ts';

/** How many front speakers have no plug at all. An estimate. */
const SOLDERED_SHARE = 0.1;
/** How often pushing a filmed plug home brings the sound back, and is told before its looks. An estimate. */
const WIPED_SHARE = 0.3;

export const saySpeakerPlug: Say = ({ found, bike, observer }) => {
  if (axleOfConcern(found) !== 'front') return CANNOT;
  const corners = ofConcern(found);
  const home = frontHome(bike);
  if (bestOf(home, corners) === 'plays' && bestOf(bike, corners) !== 'plays') return option('cured');
  const filmed = cornersOf('front').some((corner) => found.world.runs[corner].dock.wants === 'cleaning');
  if (filmed) return option(happens(observer, WIPED_SHARE) ? 'cured' : 'dirty');
  const plugged = cornersOf('front').every((corner) => bike.world.runs[corner].dock.ohm < 1);
  return option(plugged && happens(observer, SOLDERED_SHARE) ? 'none' : 'clean');
};
