import { against, reading } from '../dc-volts.ts';
import type { Say } from '../observer.ts';
import { byWire } from '../remote.ts';

export const sayRemoteKeyOff: Say = byWire(reading({ remoteV: against('amp-remote') }, { key: 'off', toneHz: null }));
