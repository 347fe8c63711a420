import { CANNOT, option, type Say } from '../observer.ts';
import { uglyAt } from '../ugly.ts';

/** What is wrong with a speaker stays with it. */
export const saySidesSwapped: Say = ({ bike }) => {
  const [only, ...others] = uglyAt(bike);
  if (!only || others.length > 0) return CANNOT;
  const { scrapes, leakDb } = bike.world.speakers[only];
  return option(scrapes !== 'never' || leakDb > 0 ? 'stays' : 'moves');
};
