import { frontFed } from '../src/steps/fitted/front-fed.ts';
import { rearDrive } from '../src/steps/fitted/rear-drive.ts';
import { rearInputs } from '../src/steps/fitted/rear-inputs.ts';
import { unitKind } from '../src/steps/fitted/unit-kind.ts';
import { lastChange } from '../src/steps/told/last-change.ts';
import { rearHistory } from '../src/steps/told/rear-history.ts';
import { triedAlready } from '../src/steps/told/tried-already.ts';
import { whenSilent } from '../src/steps/told/when-silent.ts';
import { whichCorner } from '../src/steps/told/which-corner.ts';
import type { Opening } from './opening.ts';

export const opening: Opening = {
  id: 'one-speaker-or-side-dead',
  title: 'One speaker or one side is dead',
  // Which one it is comes first: what is fitted is asked only about that.
  fitted: [whichCorner, unitKind, rearDrive, frontFed, rearInputs],
  told: [rearHistory, whenSilent, lastChange, triedAlready],
};
