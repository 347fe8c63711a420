import { withLamp } from '../dc-volts.ts';
import type { Say } from '../observer.ts';

export const sayJointDrop: Say = withLamp({
  plusJointV: ['plus-copper', 'amp-plus'],
  groundJointV: ['amp-ground', 'ground-copper'],
});
