import { upperFirst } from '../compute/first-letter.ts';
import type { KnownAmp } from '../rig/rig.ts';
import { ampMayBeFitted } from '../steps/fitted/amp-there.ts';
import { ampName, ampPair, theAmp } from '../steps/fitted/the-amp.ts';
import type { Findings } from '../steps/outcome.ts';

/** The amplifier that a case is about: what is known of it, and what it is called. */

export const ampOf = (f: Findings): KnownAmp => theAmp(f);

export const pairOf = (f: Findings): 'front' | 'rear' => ampPair(f);

/** Whether the bike has none: then nothing is said of one as if it were there. */
export const isWithoutAmp = (f: Findings): boolean => f.rig.amps?.length === 0 || !ampMayBeFitted(f);

export { ampName };

/** The same at the start of a sentence. */
export const AmpName = (f: Findings): string => upperFirst(ampName(f));
