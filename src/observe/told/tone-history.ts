import { CANNOT, oneOf, option, type Say } from '../observer.ts';

export const sayToneHistory: Say = ({ found, observer }) => {
  const { history } = found.world;
  return history === 'unknown' ? CANNOT : option(oneOf(observer, history.before));
};
