import { against, withLamp } from '../dc-volts.ts';
import type { Say } from '../observer.ts';

export const saySupplyUnderLoad: Say = withLamp({
  batteryV: against('battery-plus'),
  ampV: ['amp-plus', 'amp-ground'],
  plusDropV: ['battery-plus', 'amp-plus'],
  groundDropV: against('amp-ground'),
});
