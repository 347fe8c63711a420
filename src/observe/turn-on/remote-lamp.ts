import type { Say } from '../observer.ts';
import { byWire, lit } from '../remote.ts';

export const sayRemoteLamp: Say = byWire(lit('amp-remote'));
