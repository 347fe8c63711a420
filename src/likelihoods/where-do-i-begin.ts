import { lateOf } from './late.ts';
import table from './where-do-i-begin.json' with { type: 'json' };

/** Made by `npm run likelihoods`. Do not edit: change the model, the steps or the flow, and make it anew. */
export const late = lateOf(table, []);
