import { CANNOT, oneOf, option, type Say } from '../observer.ts';

export const sayHarshHistory: Say = ({ found, observer }) => {
  const { history } = found.world;
  return history === 'unknown' ? CANNOT : option(oneOf(observer, history.before));
};
