import { bestOf, isOpen, ofConcern, REAR } from '../bike.ts';
import { secondHome } from '../left.ts';
import { CANNOT, happens, option, type Say } from '../observer.ts';

/** How many looms have a connector on the way, and how often one that is there is found. Estimates. */
const THERE_SHARE = 0.4;
const FOUND_SHARE = 0.85;
/** How often pushing a filmed connector home brings the sound back, and is told before its looks. An estimate. */
const WIPED_SHARE = 0.3;

export const saySecondLook: Say = ({ found: before, bike, observer }) => {
  const { world } = bike;
  if (world.rig.rearFitted === 'no') return CANNOT;
  const [there, found] = [happens(observer, THERE_SHARE), happens(observer, FOUND_SHARE)];
  const seconds = REAR.map((corner) => world.runs[corner].second);
  const wrong = seconds.find(({ wants }) => wants !== undefined);
  if (!found || !(wrong || there)) return option('none');
  if (!wrong) return option('clean');
  // A film is wiped as the halves are pushed together, or it is not.
  const home = secondHome(bike);
  const corners = ofConcern(before);
  const helps = bestOf(bike, corners) !== 'plays' && bestOf(home, corners) === 'plays';
  if (helps && wrong.wants === 'cleaning' && happens(observer, WIPED_SHARE)) return option('plays');
  return option(isOpen(wrong) && wrong.wants !== 'cleaning' ? 'apart' : 'dirty');
};
