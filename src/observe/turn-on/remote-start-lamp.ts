import type { Say } from '../observer.ts';
import { byWire, lit } from '../remote.ts';

export const sayRemoteStartLamp: Say = byWire(lit('remote-start'));
