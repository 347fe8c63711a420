import { CANNOT, oneOf, option, type Say } from './observer.ts';

/** What the rider knows of the time before, where he knows anything of it. */
export const asRemembered: Say = ({ found, observer }) => {
  const { history } = found.world;
  return history === 'unknown' ? CANNOT : option(oneOf(observer, history.before));
};
