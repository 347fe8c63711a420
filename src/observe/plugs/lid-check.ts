import { offered } from '../../steps/outcome.ts';
import { contactsLook } from '../../world/sights.ts';
import { REAR, rearHisses, rearPlays } from '../bike.ts';
import { pushedHome } from '../left.ts';
import { happens, option, type Say } from '../observer.ts';

/** A film is wiped by pushing the plug home, and comes back as the lid moves: which of the two is told is chance. */
const WIPED_SHARE = 0.5;

export const sayLidCheck: Say = ({ bike, step, situation, observer }) => {
  const home = pushedHome(bike);
  const filmed = REAR.some((corner) => contactsLook(home.world, corner) === 'film');
  const moved = rearPlays(home, { moves: ['lid'] });
  if (rearPlays(bike)) return option(moved ? 'no-effect' : 'reacts');
  if (rearPlays(home)) return option('cured');
  if (!moved) {
    const canTell = offered(step, situation).some(([name]) => name === 'hiss-now');
    return option(canTell && !rearHisses(bike) && rearHisses(home) ? 'hiss-now' : 'no-effect');
  }
  return option(filmed && happens(observer, WIPED_SHARE) ? 'cured' : 'reacts');
};
