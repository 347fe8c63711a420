import { against, reading } from '../dc-volts.ts';
import type { Say } from '../observer.ts';
import { byWire } from '../remote.ts';

export const sayRemoteSource: Say = byWire(reading({ startV: against('remote-start') }));
