import { ampsDrive } from '../src/steps/fitted/amps-drive.ts';
import { unitKind } from '../src/steps/fitted/unit-kind.ts';
import { lastChange } from '../src/steps/told/last-change.ts';
import { toneHistory } from '../src/steps/told/tone-history.ts';
import { wasReflashed } from '../src/steps/told/was-reflashed.ts';
import type { Opening } from './opening.ts';

export const opening: Opening = {
  id: 'eq-changes-when-engine-starts',
  title: 'The tone changes with the engine',
  fitted: [unitKind, ampsDrive],
  told: [toneHistory, wasReflashed, lastChange],
};
