import { ampInputPlugOff } from '../causes/amp-input/amp-input-plug-off.ts';
import { ampInputTooLow } from '../causes/amp-input/amp-input-too-low.ts';
import { channelModeWrong } from '../causes/amp-input/channel-mode-wrong.ts';
import { converterDead } from '../causes/amp-input/converter-dead.ts';
import { inputPinPushedBack } from '../causes/amp-input/input-pin-pushed-back.ts';
import { signalLeadOpen } from '../causes/amp-input/signal-lead-open.ts';
import { ampChannelDead } from '../causes/amplifier/amp-channel-dead.ts';
import { lidContactsDirty } from '../causes/plugs/lid-contacts-dirty.ts';
import { loomsUnjoined } from '../causes/plugs/looms-unjoined.ts';
import { rearPairsCrossed } from '../causes/plugs/rear-pairs-crossed.ts';
import { rearPlugOff } from '../causes/plugs/rear-plug-off.ts';
import { secondConnectorDirty } from '../causes/plugs/second-connector-dirty.ts';
import { unitPlugDirty } from '../causes/plugs/unit-plug-dirty.ts';
import { lidLeadBroken } from '../causes/runs/lid-lead-broken.ts';
import { speakerPairShorted } from '../causes/runs/speaker-pair-shorted.ts';
import { speakerWireOpen } from '../causes/runs/speaker-wire-open.ts';
import { speakerWireToFrame } from '../causes/runs/speaker-wire-to-frame.ts';
import { faderOrBalanceOff } from '../causes/settings/fader-or-balance-off.ts';
import { rearControlOff } from '../causes/settings/rear-control-off.ts';
import { coilOpen } from '../causes/speakers/coil-open.ts';
import { adapterWithoutRear } from '../causes/unit/adapter-without-rear.ts';
import { profileReverted } from '../causes/unit/profile-reverted.ts';
import { rearChannelsDisabled } from '../causes/unit/rear-channels-disabled.ts';
import { replacedUnitSetting } from '../causes/unit/replaced-unit-setting.ts';
import { lateOf } from './late.ts';
import table from './no-rear-sound.json' with { type: 'json' };

/** Made by `npm run likelihoods`. Do not edit: change the model, the steps or the flow, and make it anew. */
export const late = lateOf(table, [
  ampInputPlugOff,
  ampInputTooLow,
  channelModeWrong,
  converterDead,
  inputPinPushedBack,
  signalLeadOpen,
  ampChannelDead,
  lidContactsDirty,
  loomsUnjoined,
  rearPairsCrossed,
  rearPlugOff,
  secondConnectorDirty,
  unitPlugDirty,
  lidLeadBroken,
  speakerPairShorted,
  speakerWireOpen,
  speakerWireToFrame,
  faderOrBalanceOff,
  rearControlOff,
  coilOpen,
  adapterWithoutRear,
  profileReverted,
  rearChannelsDisabled,
  replacedUnitSetting,
]);
