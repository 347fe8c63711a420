import { centred } from '../left.ts';
import type { Say } from '../observer.ts';
import { curedBy } from './cured-by.ts';

export const sayFaderCentre: Say = (asked) => curedBy(asked, centred(asked.bike));
