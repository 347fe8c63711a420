import { phoneFlat } from '../left.ts';
import { happens, option, type Say } from '../observer.ts';
import { cleanAfter } from '../ugly.ts';
import { isWellUp, UP_ALL_THE_SAME_SHARE } from './well-up.ts';

export const sayPhoneFlat: Say = ({ bike, observer }) => {
  const upAllTheSame = happens(observer, UP_ALL_THE_SAME_SHARE);
  if (cleanAfter(bike, phoneFlat(bike))) return option('cured');
  return option(isWellUp(bike.world.phone) || upAllTheSame ? 'was-up' : 'no-change');
};
