import { centred } from '../left.ts';
import type { Say } from '../observer.ts';
import { rearNextToFront } from '../rear-next-to-front.ts';

export const sayRearPair: Say = (asked) => rearNextToFront(asked, centred(asked.bike));
