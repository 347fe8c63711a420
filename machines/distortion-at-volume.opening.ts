import { ampsDrive } from '../src/steps/fitted/amps-drive.ts';
import { unitKind } from '../src/steps/fitted/unit-kind.ts';
import { harshHistory } from '../src/steps/told/harsh-history.ts';
import { lastChange } from '../src/steps/told/last-change.ts';
import type { Opening } from './opening.ts';

export const opening: Opening = {
  id: 'distortion-at-volume',
  title: 'It distorts when it is loud',
  fitted: [unitKind, ampsDrive],
  told: [harshHistory, lastChange],
};
