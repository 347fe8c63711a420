import { clearsRunning, isUglyAtTop } from '../../world/symptoms/tone.ts';
import { option, type Say } from '../observer.ts';

export const sayLoudCompare: Say = ({ bike }) => {
  if (clearsRunning(bike)) return option('cleaner');
  return option(isUglyAtTop(bike, 'off') || isUglyAtTop(bike, 'idle') ? 'ugly' : 'clean');
};
