import { whenAmpGoesOff } from '../../world/symptoms/index.ts';
import { CANNOT, oneOf, option, type Say } from '../observer.ts';
import { ofAmp } from '../of-amp.ts';

export const sayAmpHistory: Say = ofAmp(({ found, observer }) => {
  const { history } = found.world;
  if (whenAmpGoesOff(found).length > 0) return option('comes-and-goes');
  return history === 'unknown' ? CANNOT : option(oneOf(observer, history.before));
});
