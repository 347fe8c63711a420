import { axleOf, type Corner } from '../../rig/corner.ts';
import { CANNOT, option, type Say } from '../observer.ts';
import { isUgly, uglyAt } from '../ugly.ts';

/** By fader and balance: one speaker, one pair, or everywhere. */
function nameOf(ugly: readonly Corner[], fitted: readonly Corner[]): 'all' | 'front' | 'rear' | Corner {
  const [first] = ugly;
  if (ugly.length === 1 && first) return first;
  const axles = new Set(ugly.map(axleOf));
  return first && axles.size === 1 && ugly.length < fitted.length ? axleOf(first) : 'all';
}

export const sayWhereHarsh: Say = ({ bike }) => (isUgly(bike) ? option(nameOf(uglyAt(bike), bike.fitted)) : CANNOT);
