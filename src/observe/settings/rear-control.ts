import { turnedUp } from '../left.ts';
import { happens, option, type Say } from '../observer.ts';
import { curedBy } from './cured-by.ts';

/** How many bikes have a control for the passenger. An estimate. */
const HAS_REAR_CONTROL_SHARE = 0.5;

export const sayRearControl: Say = (asked) => {
  const up = turnedUp(asked.bike);
  if (up === asked.bike && !happens(asked.observer, HAS_REAR_CONTROL_SHARE)) return option('none');
  return curedBy(asked, up);
};
