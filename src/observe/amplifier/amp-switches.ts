import { gainIsLowest, wrongSelectors } from '../../world/sights.ts';
import { ampOf } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';

export const sayAmpSwitches: Say = ({ bike }) => {
  const i = ampOf(bike);
  if (i === null) return CANNOT;
  const wrong = wrongSelectors(bike.world, i);
  if (wrong.includes('turn-on')) return option('turn-on');
  if (wrong.includes('mode')) return option('mode');
  if (wrong.includes('filter') && bike.world.amps[i]?.highpassHz !== null) return option('filter');
  return option(wrong.includes('range') || gainIsLowest(bike.world, i) ? 'range' : 'right');
};
