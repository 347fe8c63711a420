import { noiseWithEngine } from '../causes/plugs/noise-with-engine.ts';
import { bassMasked } from '../causes/settings/bass-masked.ts';
import { speedVolume } from '../causes/settings/speed-volume.ts';
import { amplifiedWrongOne } from '../causes/unit/amplified-wrong-one.ts';
import { eqByDesign } from '../causes/unit/eq-by-design.ts';
import { replacedCompensation } from '../causes/unit/replaced-compensation.ts';
import { unalteredWithAmp } from '../causes/unit/unaltered-with-amp.ts';
import table from './eq-changes-when-engine-starts.json' with { type: 'json' };
import { lateOf } from './late.ts';

/** Made by `npm run likelihoods`. Do not edit: change the model, the steps or the flow, and make it anew. */
export const late = lateOf(table, [
  noiseWithEngine,
  bassMasked,
  speedVolume,
  amplifiedWrongOne,
  eqByDesign,
  replacedCompensation,
  unalteredWithAmp,
]);
