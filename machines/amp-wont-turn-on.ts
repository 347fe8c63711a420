import { ampDc } from '../src/steps/amplifier/amp-dc.ts';
import { ampLight } from '../src/steps/amplifier/amp-light.ts';
import { ampSigns } from '../src/steps/amplifier/amp-signs.ts';
import { ampSwitches } from '../src/steps/amplifier/amp-switches.ts';
import { gainDown } from '../src/steps/amplifier/gain-down.ts';
import { oneByOne } from '../src/steps/amplifier/one-by-one.ts';
import { recover } from '../src/steps/amplifier/recover.ts';
import { signalPlugOut } from '../src/steps/amplifier/signal-plug-out.ts';
import { speakersUnplugged } from '../src/steps/amplifier/speakers-unplugged.ts';
import { waterLook } from '../src/steps/amplifier/water-look.ts';
import { inputPlug } from '../src/steps/plugs/input-plug.ts';
import { pinLook } from '../src/steps/plugs/pin-look.ts';
import { signalLeadOhms } from '../src/steps/plugs/signal-lead-ohms.ts';
import { signalLeadTug } from '../src/steps/plugs/signal-lead-tug.ts';
import { ampRuns } from '../src/steps/runs/amp-runs.ts';
import { ampWiresToFrame } from '../src/steps/runs/amp-wires-to-frame.ts';
import { bulbToFrame } from '../src/steps/runs/bulb-to-frame.ts';
import { ampTerminals } from '../src/steps/supply/amp-terminals.ts';
import { fuseLook } from '../src/steps/supply/fuse-look.ts';
import { ampGoesOff } from '../src/steps/told/amp-goes-off.ts';
import { starterTurns } from '../src/steps/told/starter-turns.ts';
import { whatElse } from '../src/steps/told/what-else.ts';
import { metersDigit } from '../src/steps/tools/meter-digit.ts';
import { toolsAtHand } from '../src/steps/tools/tools-at-hand.ts';
import { betweenLook } from '../src/steps/turn-on/between-look.ts';
import { keyPositions } from '../src/steps/turn-on/key-positions.ts';
import { remoteJumper } from '../src/steps/turn-on/remote-jumper.ts';
import { remoteKeyOff } from '../src/steps/turn-on/remote-key-off.ts';
import { remoteLamp } from '../src/steps/turn-on/remote-lamp.ts';
import { remoteSource } from '../src/steps/turn-on/remote-source.ts';
import { remoteStartLamp } from '../src/steps/turn-on/remote-start-lamp.ts';
import { remoteVolts } from '../src/steps/turn-on/remote-volts.ts';
import { senseDc } from '../src/steps/turn-on/sense-dc.ts';
import { senseLevel } from '../src/steps/turn-on/sense-level.ts';
import { wakesWhenLoud } from '../src/steps/turn-on/wakes-when-loud.ts';
import { adapterLook } from '../src/steps/unit/adapter-look.ts';
import { rearPair } from '../src/steps/unit/rear-pair.ts';
import { unitScreen } from '../src/steps/unit/unit-screen.ts';
import { AMP_HANDS_OVER } from './amp-hands-over.ts';
import { opening } from './amp-wont-turn-on.opening.ts';
import { before, flow } from './kit.ts';
import { SUPPLY_CAUSES } from './shared-causes.ts';
import { SUPPLY_LOOK, SUPPLY_MEASURE, SUPPLY_SAFE, SUPPLY_TRIALS } from './supply-steps.ts';

/** The amplifier stays off, or goes off at times: its lamp is dark or shows a fault, though the head unit plays. */
export const ampWontTurnOn = flow(opening, {
  look: [
    ampLight,
    ampGoesOff,
    ampSigns,
    unitScreen,
    whatElse,
    starterTurns,
    recover,
    ampSwitches,
    wakesWhenLoud,
    gainDown,
    inputPlug,
    pinLook,
    signalLeadTug,
    signalPlugOut,
    waterLook,
    adapterLook,
    betweenLook,
    keyPositions,
    ...SUPPLY_LOOK,
    speakersUnplugged,
    bulbToFrame,
    oneByOne,
    remoteJumper,
    remoteLamp,
    remoteStartLamp,
    ...SUPPLY_TRIALS,
    toolsAtHand,
  ],
  measure: [
    remoteVolts,
    remoteSource,
    remoteKeyOff,
    ...SUPPLY_MEASURE,
    senseLevel,
    senseDc,
    ampWiresToFrame,
    ampRuns,
    ampDc,
    metersDigit,
    rearPair,
    signalLeadOhms,
  ],
  safe: [
    ...SUPPLY_SAFE,
    ...[ampGoesOff, ampSigns, recover, wakesWhenLoud, speakersUnplugged, signalPlugOut].map((step) =>
      before(step, ampLight),
    ),
    // With an open ground the current of a jumper or of a lamp goes through the shield of a line-level lead.
    // And its lead is clipped on with the fuse out: who holds that in his hand looks at it.
    before(remoteJumper, ampTerminals, fuseLook),
    before(gainDown, ampGoesOff),
    before(bulbToFrame, speakersUnplugged),
    // Whoever starts into a short may lose the output: where it can be measured, it is.
    before(oneByOne, speakersUnplugged, ampWiresToFrame, ampRuns),
    before(rearPair, metersDigit),
  ],
  causes: [
    ...SUPPLY_CAUSES,
    'remote-wire-open',
    'remote-source-dead',
    'remote-volts-low',
    'remote-on-permanent',
    'adapter-without-remote',
    'turn-on-mode-wrong',
    'sense-starved',
    'sense-no-half-supply',
    'sleeps-in-quiet',
    'amp-input-plug-off',
    'input-pin-pushed-back',
    'signal-lead-open',
    'converter-dead',
    'input-dc',
    'amp-body-fuse-open',
    'amp-dead',
    'amp-shorted-inside',
    'amp-output-dc',
    'amp-too-hot',
    'gain-too-high',
    'water-inside',
    'unit-feed-missing',
    'speaker-wire-to-frame',
    'speaker-pair-shorted',
    'load-too-low',
    'unit-output-grounded',
    'battery-undercharged',
    'battery-worn',
    'battery-cuts-off',
    'charging-too-low',
    'charging-too-high',
  ],
  handsOver: AMP_HANDS_OVER,
});
