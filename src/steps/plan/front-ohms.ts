import type { RigStep } from '../step.ts';
import { type Ohms, ratedOhms } from './rated-ohms.ts';

export const frontOhms: RigStep<Ohms> = ratedOhms('front');
