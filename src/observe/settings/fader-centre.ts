import { rearPlays } from '../bike.ts';
import { centred } from '../left.ts';
import type { Say } from '../observer.ts';
import { curedBy } from './cured-by.ts';

export const sayFaderCentre: Say = ({ bike }) => curedBy(rearPlays(centred(bike)));
