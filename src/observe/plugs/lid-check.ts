import { offered } from '../../steps/outcome.ts';
import { contactsLook } from '../../world/sights.ts';
import { bestOf, hisses, ofConcern, type Playing, REAR } from '../bike.ts';
import { pushedHome } from '../left.ts';
import { happens, option, type Say } from '../observer.ts';

/** A film is wiped by pushing the plug home, and comes back as the lid moves: which of the two is told is chance. */
const WIPED_SHARE = 0.5;

const better = (one: Playing, other: Playing) => one !== other && (one === 'plays' || other === 'silent');

export const sayLidCheck: Say = ({ found, bike, step, situation, observer }) => {
  const corners = ofConcern(found);
  const home = pushedHome(bike);
  const [was, now, moved] = [bestOf(bike, corners), bestOf(home, corners), bestOf(home, corners, { moves: ['lid'] })];
  if (now === 'plays' && was !== 'plays') return option('cured');
  if (moved !== now) {
    const filmed = REAR.some((corner) => contactsLook(home.world, corner) === 'film');
    return option(better(moved, now) && filmed && happens(observer, WIPED_SHARE) ? 'cured' : 'reacts');
  }
  if (bike.world.rig.rearPlug === 'no') return option('no-plug');
  if (now !== 'silent') return option(now);
  const canTell = offered(step, situation).some(([name]) => name === 'hiss-now');
  return option(canTell && !hisses(bike, corners) && hisses(home, corners) ? 'hiss-now' : 'no-effect');
};
