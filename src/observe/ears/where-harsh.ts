import { axleOf, type Corner } from '../../rig/corner.ts';
import { uglyCorners } from '../../world/symptoms/tone.ts';
import { CANNOT, option, type Say } from '../observer.ts';
import { isUgly, startingTrials } from '../ugly.ts';

/** By fader and balance: one speaker, one pair, or everywhere. */
function nameOf(ugly: readonly Corner[], fitted: readonly Corner[]): 'all' | 'front' | 'rear' | Corner {
  const [first] = ugly;
  if (ugly.length === 1 && first) return first;
  const axles = new Set(ugly.map(axleOf));
  return first && axles.size === 1 && ugly.length < fitted.length ? axleOf(first) : 'all';
}

/** Where it starts: further up a second one may join in, or a supply that gives way takes everything along. */
export const sayWhereHarsh: Say = ({ bike }) => {
  if (!isUgly(bike)) return CANNOT;
  const ugly = startingTrials(bike).flatMap((trial) => uglyCorners(bike, trial));
  return option(
    nameOf(
      bike.fitted.filter((corner) => ugly.includes(corner)),
      bike.fitted,
    ),
  );
};
