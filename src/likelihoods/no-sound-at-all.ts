import { ampInputPlugOff } from '../causes/amp-input/amp-input-plug-off.ts';
import { converterDead } from '../causes/amp-input/converter-dead.ts';
import { signalLeadOpen } from '../causes/amp-input/signal-lead-open.ts';
import { batteryCutsOff } from '../causes/battery/battery-cuts-off.ts';
import { speakerWireToFrame } from '../causes/runs/speaker-wire-to-frame.ts';
import { pausedOrMuted } from '../causes/settings/paused-or-muted.ts';
import { routedToHeadset } from '../causes/settings/routed-to-headset.ts';
import { unitFeedMissing } from '../causes/turn-on/unit-feed-missing.ts';
import { muteLineGrounded } from '../causes/unit/mute-line-grounded.ts';
import { unitDead } from '../causes/unit/unit-dead.ts';
import { unitHung } from '../causes/unit/unit-hung.ts';
import { unitOutputGrounded } from '../causes/unit/unit-output-grounded.ts';
import { unitOutputsDead } from '../causes/unit/unit-outputs-dead.ts';
import { lateOf } from './late.ts';
import table from './no-sound-at-all.json' with { type: 'json' };

/** Made by `npm run likelihoods`. Do not edit: change the model, the steps or the flow, and make it anew. */
export const late = lateOf(table, [
  ampInputPlugOff,
  converterDead,
  signalLeadOpen,
  batteryCutsOff,
  speakerWireToFrame,
  pausedOrMuted,
  routedToHeadset,
  unitFeedMissing,
  muteLineGrounded,
  unitDead,
  unitHung,
  unitOutputGrounded,
  unitOutputsDead,
]);
