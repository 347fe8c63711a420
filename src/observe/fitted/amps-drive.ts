import { asFitted } from '../as-fitted.ts';
import type { Say } from '../observer.ts';

export const sayAmpsDrive: Say = asFitted;
