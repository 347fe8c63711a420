import { ofTheRearAmp } from '../as-fitted.ts';
import type { Say } from '../observer.ts';

export const sayRearInputs: Say = ofTheRearAmp;
