import { frontAmpTurnOn } from '../src/steps/fitted/front-amp-turn-on.ts';
import { rearAmpTurnOn } from '../src/steps/fitted/rear-amp-turn-on.ts';
import { unitKind } from '../src/steps/fitted/unit-kind.ts';
import { whichAmp } from '../src/steps/fitted/which-amp.ts';
import { ampHistory } from '../src/steps/told/amp-history.ts';
import { fusesBlown } from '../src/steps/told/fuses-blown.ts';
import { lastChange } from '../src/steps/told/last-change.ts';
import { triedAlready } from '../src/steps/told/tried-already.ts';
import type { Opening } from './opening.ts';

export const opening: Opening = {
  id: 'amp-wont-turn-on',
  title: 'The amplifier stays off',
  fitted: [whichAmp, rearAmpTurnOn, frontAmpTurnOn, unitKind],
  told: [ampHistory, lastChange, fusesBlown, triedAlready],
};
