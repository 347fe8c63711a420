import { ampLight } from '../src/steps/amplifier/amp-light.ts';
import { halfSupply } from '../src/steps/amplifier/half-supply.ts';
import { otherSource } from '../src/steps/ears/other-source.ts';
import { ampMayBeFitted } from '../src/steps/fitted/amp-there.ts';
import { rearAmpInput } from '../src/steps/fitted/rear-amp-input.ts';
import { onlyAmp } from '../src/steps/fitted/which-amp.ts';
import { pinLook } from '../src/steps/plugs/pin-look.ts';
import { signalLeadOhms } from '../src/steps/plugs/signal-lead-ohms.ts';
import { signalLeadTug } from '../src/steps/plugs/signal-lead-tug.ts';
import { wireToFrame } from '../src/steps/runs/wire-to-frame.ts';
import { audioTarget } from '../src/steps/settings/audio-target.ts';
import { headsetHears } from '../src/steps/settings/headset-hears.ts';
import { playSigns } from '../src/steps/settings/play-signs.ts';
import { sourcePlays } from '../src/steps/settings/source-plays.ts';
import { metersDigit } from '../src/steps/tools/meter-digit.ts';
import { toolsAtHand } from '../src/steps/tools/tools-at-hand.ts';
import { bikeLights } from '../src/steps/unit/bike-lights.ts';
import { muteWire } from '../src/steps/unit/mute-wire.ts';
import { rearOffUnit } from '../src/steps/unit/rear-off-unit.ts';
import { unitFeeds } from '../src/steps/unit/unit-feeds.ts';
import { unitFuseOhms } from '../src/steps/unit/unit-fuse-ohms.ts';
import { unitFuseSwap } from '../src/steps/unit/unit-fuse-swap.ts';
import { unitFuses } from '../src/steps/unit/unit-fuses.ts';
import { unitPins } from '../src/steps/unit/unit-pins.ts';
import { unitRestart } from '../src/steps/unit/unit-restart.ts';
import { unitScreen } from '../src/steps/unit/unit-screen.ts';
import { unitSends } from '../src/steps/unit/unit-sends.ts';
import { unitWiresToFrame } from '../src/steps/unit/unit-wires-to-frame.ts';
import { before, flow } from './kit.ts';
import { opening } from './no-sound-at-all.opening.ts';

/** No sound at all: no speaker plays, front or rear. */
export const noSoundAtAll = flow(opening, {
  look: [
    unitScreen,
    bikeLights,
    sourcePlays,
    playSigns,
    audioTarget,
    headsetHears,
    otherSource,
    ampLight,
    unitRestart,
    unitFuses,
    unitFuseSwap,
    unitPins,
    pinLook,
    signalLeadTug,
    rearOffUnit,
    muteWire,
    toolsAtHand,
  ],
  measure: [
    unitFeeds,
    unitFuseOhms,
    wireToFrame,
    unitWiresToFrame,
    metersDigit,
    unitSends,
    rearAmpInput,
    halfSupply,
    signalLeadOhms,
  ],
  safe: [
    // What a finger on a button can cure comes before anything is taken apart.
    before(ampLight, unitScreen),
    before(unitRestart, unitScreen),
    before(unitFuses, unitScreen),
    before(bikeLights, unitScreen),
    before(unitFuseOhms, unitFuses),
    before(unitFuseSwap, unitFuses),
    before(playSigns, unitScreen, sourcePlays),
    before(headsetHears, unitScreen, audioTarget),
    before(unitPins, unitScreen),
    before(unitFeeds, unitScreen),
    before(pinLook, unitScreen, sourcePlays),
    before(rearOffUnit, sourcePlays),
    before(muteWire, unitScreen, sourcePlays),
    // What a wire on the frame has switched off gives no signal, and a tone is no help against it.
    before(unitSends, metersDigit, unitScreen, sourcePlays, audioTarget, unitWiresToFrame),
    before(halfSupply, rearAmpInput),
  ],
  causes: [
    'paused-or-muted',
    'routed-to-headset',
    'mute-line-grounded',
    'unit-hung',
    'unit-dead',
    'unit-outputs-dead',
    'unit-feed-missing',
    'unit-output-grounded',
    'speaker-wire-to-frame',
    'amp-input-plug-off',
    'signal-lead-open',
    'converter-dead',
    'battery-cuts-off',
  ],
  handsOver: [
    {
      flow: 'amp-wont-turn-on',
      title: 'The amplifier is off, or protects itself',
      because: 'The amplifier itself is off or protects itself. What keeps it so is looked for in the next part.',
      sensible: ampMayBeFitted,
      told: onlyAmp,
      causes: [
        'main-fuse-open',
        'remote-wire-open',
        'adapter-without-remote',
        'sense-starved',
        'fuse-holder-bad',
        'plus-lead-broken',
        'amp-ground-open',
        'amp-body-fuse-open',
        'amp-dead',
        'remote-source-dead',
        'shared-ground-screw',
      ],
    },
  ],
});
