import { against, reading } from '../dc-volts.ts';
import type { Say } from '../observer.ts';

export const sayFuseSides: Say = reading({ inV: against('fuse-in'), outV: against('fuse-out') });
