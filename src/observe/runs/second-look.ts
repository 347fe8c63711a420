import type { Run } from '../../world/state.ts';
import { bestOf, isOpen, ofConcern, REAR } from '../bike.ts';
import { secondHome } from '../left.ts';
import { CANNOT, happens, option, type Say } from '../observer.ts';

/** How many looms have a connector on the way, and how often one that is there is found. Estimates. */
const THERE_SHARE = 0.4;
const FOUND_SHARE = 0.85;
/** How often pushing a filmed connector home brings the sound back, and is told before its looks. An estimate. */
const WIPED_SHARE = 0.3;
/** How often a lead is hurt where it can be followed, and the hurt is seen. An estimate. */
const SEEN_HURT_SHARE = 0.3;

/** A wire that is torn, that touches the frame, or both wires of a run that touch each other. */
const isHurt = ({ joint, toFrame, acrossPair }: Run): boolean =>
  isOpen(joint.plus) || isOpen(joint.minus) || !isOpen(toFrame) || !isOpen(acrossPair);

export const saySecondLook: Say = ({ found: before, bike, observer }) => {
  const { world } = bike;
  if (world.rig.rearFitted === 'no') return CANNOT;
  const [there, found] = [happens(observer, THERE_SHARE), happens(observer, FOUND_SHARE)];
  const hurt = happens(observer, SEEN_HURT_SHARE);
  const seconds = REAR.map((corner) => world.runs[corner].second);
  const wrong = seconds.find(({ wants }) => wants !== undefined);
  if (hurt && REAR.some((corner) => isHurt(world.runs[corner]))) return option('damaged');
  if (!found || !(wrong || there)) return option('none');
  if (!wrong) return option('clean');
  // A film is wiped as the halves are pushed together, or it is not.
  const home = secondHome(bike);
  const corners = ofConcern(before);
  const helps = bestOf(bike, corners) !== 'plays' && bestOf(home, corners) === 'plays';
  if (helps && wrong.wants === 'cleaning' && happens(observer, WIPED_SHARE)) return option('plays');
  return option(isOpen(wrong) && wrong.wants !== 'cleaning' ? 'apart' : 'dirty');
};
