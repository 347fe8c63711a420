import { frontDrive } from '../src/steps/fitted/front-drive.ts';
import { rearAmpTurnOn } from '../src/steps/fitted/rear-amp-turn-on.ts';
import { rearDrive } from '../src/steps/fitted/rear-drive.ts';
import { rearInputs } from '../src/steps/fitted/rear-inputs.ts';
import { unitKind } from '../src/steps/fitted/unit-kind.ts';
import { lastChange } from '../src/steps/told/last-change.ts';
import { rearHistory } from '../src/steps/told/rear-history.ts';
import { triedAlready } from '../src/steps/told/tried-already.ts';
import { whenSilent } from '../src/steps/told/when-silent.ts';
import { whichSilent } from '../src/steps/told/which-silent.ts';
import type { Opening } from './opening.ts';

export const opening: Opening = {
  id: 'no-rear-sound',
  title: 'No sound from the rear',
  fitted: [unitKind, rearDrive, frontDrive, rearInputs, rearAmpTurnOn],
  told: [whichSilent, rearHistory, whenSilent, lastChange, triedAlready],
};
