import { ampInputPlugOff } from '../causes/amp-input/amp-input-plug-off.ts';
import { inputPinPushedBack } from '../causes/amp-input/input-pin-pushed-back.ts';
import { signalLeadOpen } from '../causes/amp-input/signal-lead-open.ts';
import { ampChannelDead } from '../causes/amplifier/amp-channel-dead.ts';
import { frontPlugBad } from '../causes/plugs/front-plug-bad.ts';
import { lidContactsDirty } from '../causes/plugs/lid-contacts-dirty.ts';
import { loomsUnjoined } from '../causes/plugs/looms-unjoined.ts';
import { rearPlugOff } from '../causes/plugs/rear-plug-off.ts';
import { secondConnectorDirty } from '../causes/plugs/second-connector-dirty.ts';
import { unitPlugDirty } from '../causes/plugs/unit-plug-dirty.ts';
import { lidLeadBroken } from '../causes/runs/lid-lead-broken.ts';
import { polaritySwapped } from '../causes/runs/polarity-swapped.ts';
import { speakerPairShorted } from '../causes/runs/speaker-pair-shorted.ts';
import { speakerWireOpen } from '../causes/runs/speaker-wire-open.ts';
import { speakerWireToFrame } from '../causes/runs/speaker-wire-to-frame.ts';
import { faderOrBalanceOff } from '../causes/settings/fader-or-balance-off.ts';
import { coilOpen } from '../causes/speakers/coil-open.ts';
import { adapterWithoutOnePair } from '../causes/unit/adapter-without-one-pair.ts';
import { unitChannelDead } from '../causes/unit/unit-channel-dead.ts';
import { lateOf } from './late.ts';
import table from './one-speaker-or-side-dead.json' with { type: 'json' };

/** Made by `npm run likelihoods`. Do not edit: change the model, the steps or the flow, and make it anew. */
export const late = lateOf(table, [
  ampInputPlugOff,
  inputPinPushedBack,
  signalLeadOpen,
  ampChannelDead,
  frontPlugBad,
  lidContactsDirty,
  loomsUnjoined,
  rearPlugOff,
  secondConnectorDirty,
  unitPlugDirty,
  lidLeadBroken,
  polaritySwapped,
  speakerPairShorted,
  speakerWireOpen,
  speakerWireToFrame,
  faderOrBalanceOff,
  coilOpen,
  adapterWithoutOnePair,
  unitChannelDead,
]);
