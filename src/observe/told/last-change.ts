import { oneOf, option, type Say } from '../observer.ts';

export const sayLastChange: Say = ({ found, observer }) => {
  const { history } = found.world;
  return option(history === 'unknown' ? 'nothing' : oneOf(observer, history.lastChange));
};
