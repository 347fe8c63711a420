import type { Ridden } from '../../world/symptoms/index.ts';
import { changed } from '../bike.ts';
import { happens, option, type Say } from '../observer.ts';
import { uglyAt } from '../ugly.ts';

/** How often a hand finds what buzzes, and how often a loose speaker is taken for the lid that it sits in. Estimates. */
const FOUND_SHARE = 0.85;
const TAKEN_FOR_A_LID_SHARE = 0.25;
/** A frame that is heard to buzz. An estimate. */
const LOOSE_DB = 5;

/** The bike while a hand lies on whatever buzzes along. */
const heldStill = (bike: Ridden): Ridden =>
  changed(bike, 'trim held', (world) => (world.trimRattles.length > 0 ? { ...world, trimRattles: [] } : world));

export const sayPanelPress: Say = ({ bike, observer }) => {
  const [found, forALid] = [happens(observer, FOUND_SHARE), happens(observer, TAKEN_FOR_A_LID_SHARE)];
  const ugly = uglyAt(bike);
  if (!found || ugly.length === 0) return option('no-effect');
  if (uglyAt(bike, heldStill(bike)).length === 0) return option('panel');
  const loose = ugly.some((corner) => bike.world.speakers[corner].leakDb >= LOOSE_DB);
  return option(loose ? (forALid ? 'panel' : 'speaker') : 'no-effect');
};
