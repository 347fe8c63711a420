import { against, reading } from '../dc-volts.ts';
import type { Say } from '../observer.ts';
import { byWire } from '../remote.ts';

export const sayRemoteVolts: Say = byWire(reading({ remoteV: against('amp-remote') }));
