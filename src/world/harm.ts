import type { Harm } from './harm/harm.ts';
import { LEAD_HARMS } from './harm/leads.ts';
import { LEVEL_HARMS } from './harm/levels.ts';
import { LOAD_HARMS } from './harm/loads.ts';
import { SWITCH_HARMS } from './harm/switches.ts';
import type { World } from './state.ts';

export type { Harm } from './harm/harm.ts';

/** Every way to do harm that the model can see. What makes them harmful: common practice, no published source. */
export const HARMS: readonly Harm[] = [...LEAD_HARMS, ...LOAD_HARMS, ...LEVEL_HARMS, ...SWITCH_HARMS];

/** What repairs did to a bike that must never be done to one. Empty where they harm nothing. */
export const harmsOf = (before: World, after: World): readonly Harm[] =>
  HARMS.filter((harm) => harm.does(before, after));
