import { repaired } from '../../world/repair.ts';
import { isUglyAtTop } from '../../world/symptoms/tone.ts';
import { changed } from '../bike.ts';
import { option, type Say } from '../observer.ts';

/** Loud at idle, then with the revs up, then at idle with whatever was plugged in switched off. */
export const sayRevsCompare: Say = ({ bike }) => {
  if (!isUglyAtTop(bike, 'idle')) return option('clean');
  const gearOff = changed(bike, 'gear off', (world) => repaired(world, { do: 'take-off-load' }));
  if (!isUglyAtTop(gearOff, 'idle')) return option('gear');
  return option(isUglyAtTop(bike, 'cruise') ? 'same' : 'revs');
};
