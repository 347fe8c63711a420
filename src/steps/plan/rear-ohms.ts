import type { RigStep } from '../step.ts';
import { type Ohms, ratedOhms } from './rated-ohms.ts';

export const rearOhms: RigStep<Ohms> = ratedOhms('rear');
