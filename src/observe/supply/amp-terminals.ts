import { against, reading } from '../dc-volts.ts';
import type { Say } from '../observer.ts';

export const sayAmpTerminals: Say = reading({
  batteryV: against('battery-plus'),
  plusV: against('amp-plus'),
  groundV: against('amp-ground'),
});
