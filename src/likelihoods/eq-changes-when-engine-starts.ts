import { batteryUndercharged } from '../causes/battery/battery-undercharged.ts';
import { batteryWorn } from '../causes/battery/battery-worn.ts';
import { chargingRipples } from '../causes/battery/charging-ripples.ts';
import { chargingTooLow } from '../causes/battery/charging-too-low.ts';
import { noiseWithEngine } from '../causes/plugs/noise-with-engine.ts';
import { bassMasked } from '../causes/settings/bass-masked.ts';
import { speedVolume } from '../causes/settings/speed-volume.ts';
import { ampGroundResistive } from '../causes/supply/amp-ground-resistive.ts';
import { amplifiedWrongOne } from '../causes/unit/amplified-wrong-one.ts';
import { eqByDesign } from '../causes/unit/eq-by-design.ts';
import { replacedCompensation } from '../causes/unit/replaced-compensation.ts';
import { unalteredWithAmp } from '../causes/unit/unaltered-with-amp.ts';
import table from './eq-changes-when-engine-starts.json' with { type: 'json' };
import { lateOf } from './late.ts';

/** Made by `npm run likelihoods`. Do not edit: change the model, the steps or the flow, and make it anew. */
export const late = lateOf(table, [
  batteryUndercharged,
  batteryWorn,
  chargingRipples,
  chargingTooLow,
  noiseWithEngine,
  bassMasked,
  speedVolume,
  ampGroundResistive,
  amplifiedWrongOne,
  eqByDesign,
  replacedCompensation,
  unalteredWithAmp,
]);
