import { centred, flat, turnedUp } from '../left.ts';
import type { Say } from '../observer.ts';
import { rearNextToFront } from '../rear-next-to-front.ts';

export const sayRearPairAgain: Say = (asked) => rearNextToFront(asked, turnedUp(flat(centred(asked.bike))));
