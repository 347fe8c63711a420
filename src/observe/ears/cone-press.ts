import { happens, option, type Say } from '../observer.ts';
import { uglyAt } from '../ugly.ts';

/** How often a hand finds what is wrong with a cone or its frame. An estimate. */
const FOUND_SHARE = 0.9;
/** A gap that an eye or a hand finds. An estimate. */
const GAP_DB = 5;

export const sayConePress: Say = ({ bike, observer }) => {
  const found = happens(observer, FOUND_SHARE);
  const speakers = uglyAt(bike).map((corner) => bike.world.speakers[corner]);
  if (found && speakers.some(({ scrapes }) => scrapes !== 'never')) return option('scrapes');
  return option(found && speakers.some(({ leakDb }) => leakDb >= GAP_DB) ? 'loose' : 'smooth');
};
