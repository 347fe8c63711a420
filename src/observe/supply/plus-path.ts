import { withLamp } from '../dc-volts.ts';
import type { Say } from '../observer.ts';

export const sayPlusPath: Say = withLamp({ ringV: ['battery-plus', 'fuse-in'], holderV: ['fuse-in', 'fuse-out'] });
