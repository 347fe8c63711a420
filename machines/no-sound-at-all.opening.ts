import { ampsDrive } from '../src/steps/fitted/amps-drive.ts';
import { rearAmpTurnOn } from '../src/steps/fitted/rear-amp-turn-on.ts';
import { unitKind } from '../src/steps/fitted/unit-kind.ts';
import { lastChange } from '../src/steps/told/last-change.ts';
import { triedAlready } from '../src/steps/told/tried-already.ts';
import type { Opening } from './opening.ts';

export const opening: Opening = {
  id: 'no-sound-at-all',
  title: 'No sound at all',
  fitted: [unitKind, ampsDrive, rearAmpTurnOn],
  told: [lastChange, triedAlready],
};
