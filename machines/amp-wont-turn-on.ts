import { ampDc } from '../src/steps/amplifier/amp-dc.ts';
import { ampLight } from '../src/steps/amplifier/amp-light.ts';
import { ampSigns } from '../src/steps/amplifier/amp-signs.ts';
import { ampSwitches } from '../src/steps/amplifier/amp-switches.ts';
import { oneByOne } from '../src/steps/amplifier/one-by-one.ts';
import { recover } from '../src/steps/amplifier/recover.ts';
import { speakersUnplugged } from '../src/steps/amplifier/speakers-unplugged.ts';
import { ampHearsRear } from '../src/steps/fitted/fed-from.ts';
import { frontAmpTurnOn } from '../src/steps/fitted/front-amp-turn-on.ts';
import { rearAmpTurnOn } from '../src/steps/fitted/rear-amp-turn-on.ts';
import { ampPair, theAmp } from '../src/steps/fitted/the-amp.ts';
import { unitKind } from '../src/steps/fitted/unit-kind.ts';
import { whichAmp } from '../src/steps/fitted/which-amp.ts';
import { type Findings, is } from '../src/steps/outcome.ts';
import { inputPlug } from '../src/steps/plugs/input-plug.ts';
import { ampRuns } from '../src/steps/runs/amp-runs.ts';
import { ampWiresToFrame } from '../src/steps/runs/amp-wires-to-frame.ts';
import { ampTerminals } from '../src/steps/supply/amp-terminals.ts';
import { bodyFuse } from '../src/steps/supply/body-fuse.ts';
import { fuseLamp } from '../src/steps/supply/fuse-lamp.ts';
import { fuseLook } from '../src/steps/supply/fuse-look.ts';
import { fuseSides } from '../src/steps/supply/fuse-sides.ts';
import { leadOffAmp } from '../src/steps/supply/lead-off-amp.ts';
import { plusPath } from '../src/steps/supply/plus-path.ts';
import { ringsLook } from '../src/steps/supply/rings-look.ts';
import { spareFuse } from '../src/steps/supply/spare-fuse.ts';
import { supplyUnderLoad } from '../src/steps/supply/supply-under-load.ts';
import { supplyWiggle } from '../src/steps/supply/supply-wiggle.ts';
import { temporaryLeads } from '../src/steps/supply/temporary-leads.ts';
import { weakestPart } from '../src/steps/supply/weakest-part.ts';
import { ampGoesOff } from '../src/steps/told/amp-goes-off.ts';
import { ampHistory } from '../src/steps/told/amp-history.ts';
import { lastChange } from '../src/steps/told/last-change.ts';
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
import { batteryLow, regulatorHigh } from '../src/verdicts/amp/battery.ts';
import {
  ampBodyFuseOpen,
  ampShortedInside,
  fuseOpensAgain,
  mainFuseOpen,
  wireChafed,
} from '../src/verdicts/amp/fuse.ts';
import { inputPlugOff, nothingToHear, senseNoHalfSupply } from '../src/verdicts/amp/hears-nothing.ts';
import { ampDead } from '../src/verdicts/amp/itself.ts';
import {
  ampGroundOpen,
  ampGroundResistive,
  batteryLugLoose,
  fuseHolderResistive,
  plusLeadTooThin,
} from '../src/verdicts/amp/leads.ts';
import { senseStarved, sleepsInQuiet, turnOnModeWrong } from '../src/verdicts/amp/listening.ts';
import { loadTooLow, outputDc, pairShorted, runTrips, tooHot, wireOnFrame } from '../src/verdicts/amp/protects.ts';
import {
  adapterWithoutRemote,
  remoteOnPermanent,
  remoteSourceDead,
  remoteVoltsLow,
  remoteWireOpen,
} from '../src/verdicts/amp/remote.ts';
import { ampIsOn, headUnitDark, shortList } from '../src/verdicts/amp/unfinished.ts';
import { ask, claim, conclude, decide, flow } from './rows.ts';

/** Of two amplifiers that nobody tells apart, the dark one is taken for one with a wire until no wire is found on it. */
function turnOn(f: Findings): string | undefined {
  if (is(f, 'which-amp', 'cannot')) return is(f, 'remote-volts', 'cannot') ? undefined : 'wire';
  return f.outcome(ampPair(f) === 'front' ? 'front-amp-turn-on' : 'rear-amp-turn-on');
}

const onFront = claim('it is the front amplifier', (f) => ampPair(f) === 'front');
const byWire = claim('a wire switches it', (f) => turnOn(f) === 'wire');
const surelyByWire = claim(
  'a wire switches it, and it is known which one it is',
  (f) => byWire.holds(f) && !is(f, 'which-amp', 'cannot'),
);
const byDc = claim('it waits for DC', (f) => turnOn(f) === 'dc');
const mayHear = claim('it wakes by sound, or nobody knows', (f) => !byWire.holds(f) && !byDc.holds(f));
const lineFed = claim('a line-level lead feeds it', (f) => theAmp(f).input === 'line');
const onShields = claim(
  'a wire switches it, and a line-level lead feeds it',
  (f) => surelyByWire.holds(f) && lineFed.holds(f),
);
const takesAny = claim('it takes any level', (f) => theAmp(f).needs === 'any');
const meterHere = claim('a meter is at hand', (f) => is(f, 'tools-at-hand', 'meter'));
const onNow = claim('it is on right now', (f) => is(f, 'amp-light', 'normal') || is(f, 'amp-signs', 'alive'));
const jumperWakes = claim('a jumper wakes it', (f) => is(f, 'remote-jumper', 'wakes'));
const protects = claim(
  'it shows its fault lamp, by itself or woken for a moment',
  (f) => is(f, 'amp-light', 'fault') || is(f, 'remote-jumper', 'fault') || is(f, 'wakes-when-loud', 'fault'),
);
const whoKnowsWhen = claim(
  'it comes and goes, and nobody knows when',
  (f) => onNow.holds(f) && is(f, 'amp-history', 'comes-and-goes') && is(f, 'amp-goes-off', 'cannot'),
);
const dips = claim(
  'it goes off for moments when it has to work, or may',
  (f) =>
    whoKnowsWhen.holds(f) ||
    is(f, 'recover', 'at-once') ||
    is(f, 'speakers-unplugged', 'dark') ||
    (is(f, 'amp-goes-off', 'loud') && !protects.holds(f)),
);
const onBumps = claim('it goes off on bumps, or may', (f) => is(f, 'amp-goes-off', 'bumps') || whoKnowsWhen.holds(f));
const onOrDips = claim('it is on, or dips', (f) => onNow.holds(f) || dips.holds(f));
const protectsItself = claim('it protects itself, and not from a dip', (f) => protects.holds(f) && !dips.holds(f));
const noPlus = claim('no plus was read at the amplifier', (f) => is(f, 'amp-terminals', 'plus-open'));
const fuseIsOpen = claim(
  'no volts come out of the fuse',
  (f) => is(f, 'fuse-sides', 'open') || is(f, 'fuse-look', 'blown'),
);
const looksWhole = claim('its strip looks whole', (f) => is(f, 'fuse-look', 'whole'));
const wasRead = claim('its plus and ground were read', (f) => is(f, 'amp-terminals', 'ok', 'unclear'));
const remoteRead = claim('its remote terminal was read', (f) => is(f, 'remote-volts', 'ok', 'unclear'));
const wasAsked = claim(
  'what should wake it was read, or bypassed in vain',
  (f) =>
    is(f, 'remote-jumper', 'dead') ||
    remoteRead.holds(f) ||
    is(f, 'sense-level', 'ok', 'unclear') ||
    is(f, 'sense-dc', 'half', 'unclear'),
);
const hearsTheRear = claim('it listens to the rear pairs', ampHearsRear);
const nothingArrives = claim(
  'a jumper wakes it, nothing on its inputs does, and their plug is home',
  (f) =>
    jumperWakes.holds(f) &&
    !byWire.holds(f) &&
    is(f, 'input-plug', 'no-change') &&
    (byDc.holds(f) ? is(f, 'between-look', 'direct') : is(f, 'wakes-when-loud', 'stays-off')) &&
    !is(f, 'sense-level', 'ok', 'unclear', 'low') &&
    !is(f, 'sense-dc', 'half', 'unclear'),
);

/** The amplifier stays off: its lamp is dark or shows a fault, though the head unit plays. */
export const ampWontTurnOn = flow('amp-wont-turn-on', 'The amplifier stays off', {
  // Which one, how it is switched, and what happened before.
  askWhich: ask(whichAmp, { rear: 'howSwitched', front: 'howSwitched', cannot: 'askUnit' }),
  howSwitched: decide({ when: onFront, to: 'askFrontTurnOn' }, { to: 'askTurnOn' }),
  askTurnOn: ask(rearAmpTurnOn, { wire: 'askHistory', signal: 'askUnit', dc: 'askUnit', cannot: 'askUnit' }),
  askFrontTurnOn: ask(frontAmpTurnOn, { wire: 'askHistory', signal: 'askUnit', dc: 'askUnit', cannot: 'askUnit' }),
  // What an amplifier hears depends on the head unit. A wire does not care which one pulls it.
  askUnit: ask(unitKind, { factory: 'askHistory', replaced: 'askHistory', cannot: 'askHistory' }),
  askHistory: ask(ampHistory, {
    never: 'askLastChange',
    stopped: 'askLastChange',
    'comes-and-goes': 'askLastChange',
    cannot: 'askLastChange',
  }),
  askLastChange: ask(lastChange, {
    nothing: 'lookAtLamp',
    fitted: 'lookAtLamp',
    workshop: 'lookAtLamp',
    reflash: 'lookAtLamp',
    unit: 'lookAtLamp',
    opened: 'lookAtLamp',
    battery: 'lookAtLamp',
    cannot: 'lookAtLamp',
  }),

  // Its lamp parts those that protect themselves from those that are not woken or not fed.
  lookAtLamp: ask(ampLight, {
    normal: 'askWhenItGoesOff',
    off: 'askTools',
    fault: 'askWhenItTrips',
    cannot: 'lookForSigns',
  }),
  lookForSigns: ask(ampSigns, { alive: 'askWhenItGoesOff', dead: 'askTools', cannot: 'askTools' }),
  askWhenItGoesOff: ask(ampGoesOff, {
    'stays-on': 'isOn',
    always: 'isOn',
    bumps: 'pressLeads',
    running: 'chargingIsTooHigh',
    loud: 'askTools',
    hot: 'isTooHot',
    quiet: [
      { when: surelyByWire, to: 'readSelectorsInQuiet' },
      { when: byDc, to: 'pressLeads' },
      { to: 'sleepsInQuietPassages' },
    ],
    cannot: [{ when: whoKnowsWhen, to: 'pressLeads' }, { to: 'isOn' }],
  }),
  askWhenItTrips: ask(ampGoesOff, {
    always: 'askTools',
    bumps: 'pressLeads',
    running: 'chargingIsTooHigh',
    loud: 'askTools',
    hot: 'isTooHot',
    quiet: 'askTools',
    'stays-on': 'askTools',
    cannot: 'waitForIt',
  }),
  waitForIt: ask(recover, {
    'at-once': 'askTools',
    'after-minutes': 'isTooHot',
    'key-cycle': 'askTools',
    stays: 'askTools',
    cannot: 'askTools',
  }),
  // One with a wire that goes off for want of sound looks at the wrong thing.
  readSelectorsInQuiet: ask(ampSwitches, {
    'turn-on': 'selectorIsWrong',
    right: 'pressLeads',
    mode: 'pressLeads',
    range: 'pressLeads',
    cannot: 'pressLeads',
  }),
  pressLeads: ask(supplyWiggle, {
    battery: 'lugIsLoose',
    holder: 'holderIsBad',
    ground: 'groundIsBad',
    remote: [{ when: byWire, to: 'remoteWireIsOpen' }, { to: 'askWhatElseFails' }],
    // Current in the shields of a line-level lead: its own ground is lost.
    input: [
      { when: onShields, to: 'groundIsBad' },
      { when: surelyByWire, to: 'askWhatElseFails' },
      { to: 'signalIsLost' },
    ],
    'no-effect': 'askWhatElseFails',
    cannot: 'askWhatElseFails',
  }),
  // What fails together on a bump hangs on one contact: the head unit’s, a feed that the remote wire shares, the posts.
  askWhatElseFails: ask(whatElse, {
    unit: 'unitIsDark',
    accessories: [{ when: surelyByWire, to: 'sourceIsDead' }, { to: 'askTools' }],
    nothing: 'askTools',
    bike: [
      { when: claim('it goes off on bumps', (f) => is(f, 'amp-goes-off', 'bumps')), to: 'lugIsLoose' },
      { to: 'askTools' },
    ],
    cannot: 'askTools',
  }),

  askTools: ask(toolsAtHand, { meter: 'withMeter', none: 'withoutMeter', cannot: 'withoutMeter' }),
  // The remote terminal is read first: it costs the least, and where nothing comes the supply was not asked yet.
  withMeter: decide(
    { when: protectsItself, to: 'measureToFrame' },
    { when: onBumps, to: 'measureToFrameMoved' },
    { when: onOrDips, to: 'measureTerminals' },
    { when: byWire, to: 'measureRemote' },
    { to: 'measureTerminals' },
  ),
  withoutMeter: decide(
    { when: protectsItself, to: 'unplugSpeakers' },
    { when: onOrDips, to: 'pressAll' },
    { to: 'askWhatElse' },
  ),

  // The fault lamp: what does it protect itself from? Ohms before anything is started again.
  measureToFrame: ask(ampWiresToFrame, {
    shorted: 'wireTouchesFrame',
    clear: 'unplugSpeakers',
    unclear: 'unplugSpeakers',
    cannot: 'unplugSpeakers',
  }),
  unplugSpeakers: ask(speakersUnplugged, {
    clears: 'whichRun',
    stays: 'afterLoad',
    dark: 'afterLoad',
    cannot: 'afterLoad',
  }),
  // Clear of the frame, and well without speakers: which run reads too few ohms is the first check of the fix.
  // One that trips only now and then, when loud or on bumps, has no run that is simply shorted: ohms tell first.
  whichRun: decide(
    {
      when: claim(
        'its wires are clear of the frame, and it trips whatever it plays',
        (f) => is(f, 'amp-wires-to-frame', 'clear') && !is(f, 'amp-goes-off', 'loud', 'bumps'),
      ),
      to: 'runIsShorted',
    },
    { when: meterHere, to: 'measureRuns' },
    { to: 'plugOneByOne' },
  ),
  afterLoad: decide({ when: meterHere, to: 'measureTerminals' }, { to: 'pressAll' }),
  measureRuns: ask(ampRuns, {
    low: 'runIsShorted',
    heavy: 'loadIsTooHeavy',
    ok: 'plugOneByOne',
    cannot: 'plugOneByOne',
  }),
  plugOneByOne: ask(oneByOne, {
    one: 'oneRunTrips',
    together: [
      { when: claim('no run read too few ohms', (f) => is(f, 'amp-runs', 'ok')), to: 'loadSupplyLast' },
      { to: 'loadIsTooHeavy' },
    ],
    none: 'afterRuns',
    cannot: 'afterRuns',
  }),
  // All of them together draw what one does not: then its supply may give way.
  afterRuns: decide({ when: meterHere, to: 'loadSupplyLast' }, { to: 'severalAreLeft' }),
  loadSupplyLast: ask(supplyUnderLoad, {
    'battery-sags': 'batteryIsLow',
    'plus-drop': 'splitPlusWay',
    'ground-drop': 'groundIsBad',
    ok: 'severalAreLeft',
    unclear: 'severalAreLeft',
    cannot: 'severalAreLeft',
  }),

  // It goes off on bumps, and no lead of its supply reacts: a speaker wire that touches metal when something moves.
  measureToFrameMoved: ask(ampWiresToFrame, {
    shorted: 'wireTouchesFrame',
    clear: 'measureTerminals',
    unclear: 'measureTerminals',
    cannot: 'measureTerminals',
  }),

  // What a wire tells it.
  measureRemote: ask(remoteVolts, {
    none: 'askWhatElseDied',
    low: 'remoteIsLow',
    ok: 'measureTerminals',
    unclear: 'measureTerminals',
    cannot: 'measureTerminals',
  }),
  askWhatElseDied: ask(whatElse, {
    unit: 'unitIsDark',
    accessories: 'sourceIsDead',
    nothing: 'measureSource',
    bike: 'measureSource',
    cannot: 'measureSource',
  }),
  measureSource: ask(remoteSource, {
    live: 'whoseAdapter',
    low: 'remoteIsLow',
    dead: 'sourceIsDead',
    cannot: 'whoseAdapter',
  }),
  whoseAdapter: ask(unitKind, { replaced: 'lookAtAdapter', factory: 'remoteWireIsOpen', cannot: 'remoteWireIsOpen' }),
  lookAtAdapter: ask(adapterLook, { gap: 'adapterHasAGap', through: 'remoteWireIsOpen', cannot: 'remoteWireIsOpen' }),

  // What feeds it, at the amplifier first.
  measureTerminals: ask(ampTerminals, {
    'battery-low': [{ when: byWire, to: 'measureRemoteKeyOff' }, { to: 'batteryIsLow' }],
    'battery-high': 'chargingIsTooHigh',
    'plus-open': 'lookAtFuse',
    'ground-open': 'groundIsOpen',
    ok: 'afterTerminals',
    unclear: 'loadSupplyFirst',
    cannot: 'pressAll',
  }),
  measureRemoteKeyOff: ask(remoteKeyOff, { live: 'remoteNeverGoesOff', dead: 'batteryIsLow', cannot: 'batteryIsLow' }),
  // Volts that are lost without a load are a contact that hardly is one.
  loadSupplyFirst: ask(supplyUnderLoad, {
    'battery-sags': 'batteryIsLow',
    'plus-drop': 'splitPlusWay',
    'ground-drop': 'groundIsBad',
    ok: 'afterTerminals',
    unclear: 'afterTerminals',
    cannot: 'afterTerminals',
  }),
  // A stage that is shut down shows no DC: with all speakers off and the fault lamp on, a reading adds nothing.
  afterTerminals: decide(
    {
      when: claim(
        'it protects itself with all speakers off',
        (f) => protectsItself.holds(f) && is(f, 'speakers-unplugged', 'stays'),
      ),
      to: 'outputIsDamaged',
    },
    { when: protectsItself, to: 'measureOutputs' },
    { when: onOrDips, to: 'loadSupply' },
    { when: claim('its remote terminal carries enough', (f) => is(f, 'remote-volts', 'ok')), to: 'turnUpWired' },
    { to: 'joinPlusToRemote' },
  ),
  // One that has its wire and wakes by sound has its selector on sensing.
  turnUpWired: ask(wakesWhenLoud, {
    wakes: 'selectorIsWrong',
    'wakes-silent': 'selectorIsWrong',
    awake: 'isOn',
    fault: 'whatTripsIt',
    'stays-off': 'lookAtBodyFuse',
    cannot: 'joinPlusToRemote',
  }),
  measureOutputs: ask(ampDc, {
    offset: 'outputIsDamaged',
    ok: 'outputIsDamaged',
    unclear: 'outputIsDamaged',
    cannot: 'outputIsDamaged',
  }),

  // Its main fuse, and what opened it.
  lookAtFuse: ask(fuseLook, {
    blown: 'lampForFuse',
    whole: [{ when: noPlus, to: 'measureFuse' }, { to: 'trySpareFuse' }],
    cannot: [{ when: noPlus, to: 'measureFuse' }, { to: 'joinPlusToRemote' }],
  }),
  measureFuse: ask(fuseSides, {
    whole: 'leadIsBad',
    open: [{ when: looksWhole, to: 'holderIsBad' }, { to: 'lampForFuse' }],
    'no-feed': 'lugIsLoose',
    cannot: [{ when: looksWhole, to: 'trySpareFuse' }, { to: 'joinPlusToRemote' }],
  }),
  lampForFuse: ask(fuseLamp, { dark: 'fuseIsOpen', bright: 'takeLeadOff', cannot: 'trySpareFuse' }),
  takeLeadOff: ask(leadOffAmp, { bright: 'leadIsBad', dark: 'ampIsShorted', cannot: 'somethingIsShorted' }),
  trySpareFuse: ask(spareFuse, {
    wakes: 'fuseIsOpen',
    holds: 'joinPlusToRemote',
    opens: 'somethingIsShorted',
    cannot: [{ when: fuseIsOpen, to: 'fuseIsOpen' }, { to: 'joinPlusToRemote' }],
  }),

  // Everything before its turn-on proved in one go, or not.
  joinPlusToRemote: ask(remoteJumper, {
    wakes: 'afterItWoke',
    dead: 'lookAtBodyFuse',
    fault: 'whatTripsIt',
    'no-terminal': 'withoutJumper',
    cannot: 'withoutJumper',
  }),
  // At its usual volume, without a jumper, it stays dark whatever hangs on its outputs: only ohms tell what trips it.
  whatTripsIt: decide({ when: meterHere, to: 'measureToFrameWoken' }, { to: 'outputIsDamaged' }),
  measureToFrameWoken: ask(ampWiresToFrame, {
    shorted: 'wireTouchesFrame',
    clear: 'measureRunsWoken',
    unclear: 'measureRunsWoken',
    cannot: 'measureRunsWoken',
  }),
  measureRunsWoken: ask(ampRuns, {
    low: 'runIsShorted',
    heavy: 'loadIsTooHeavy',
    ok: 'outputIsDamaged',
    cannot: 'outputIsDamaged',
  }),
  afterItWoke: decide(
    {
      when: claim('few volts were read on its wire', (f) => is(f, 'remote-volts', 'unclear')),
      to: 'remoteIsLow',
    },
    { when: remoteRead, to: 'readSelectors' },
    { when: byWire, to: 'lampOnRemote' },
    { to: 'whatWakesIt' },
  ),
  withoutJumper: decide(
    { when: remoteRead, to: 'readSelectors' },
    { when: byWire, to: 'lampOnRemote' },
    { to: 'whatWakesIt' },
  ),
  lampOnRemote: ask(remoteLamp, { lit: 'readSelectors', dark: 'lampOnStart', cannot: 'turnKey' }),
  lampOnStart: ask(remoteStartLamp, { lit: 'whoseAdapter', dark: 'sourceIsDead', cannot: 'whoseAdapter' }),
  turnKey: ask(keyPositions, {
    some: 'sourceIsDead',
    none: [{ when: jumperWakes, to: 'severalAreLeft' }, { to: 'readSelectors' }],
    cannot: [{ when: jumperWakes, to: 'severalAreLeft' }, { to: 'readSelectors' }],
  }),
  readSelectors: ask(ampSwitches, {
    'turn-on': 'selectorIsWrong',
    right: 'afterSelectors',
    mode: 'afterSelectors',
    range: 'afterSelectors',
    cannot: 'afterSelectors',
  }),

  // What it listens to. One that waits for DC does not care how loud it is.
  // One that takes any level is rarely starved: for it the plug comes first.
  whatWakesIt: decide({ when: byDc, to: 'pushInputPlug' }, { when: takesAny, to: 'pushInputPlug' }, { to: 'turnUp' }),
  turnUp: ask(wakesWhenLoud, {
    wakes: 'isStarved',
    'wakes-silent': 'isStarved',
    awake: 'isOn',
    fault: 'whatTripsIt',
    'stays-off': 'pushInputPlug',
    cannot: 'pushInputPlug',
  }),
  pushInputPlug: ask(inputPlug, {
    cured: 'signalIsLost',
    'no-change': 'afterInputPlug',
    cannot: 'afterInputPlug',
  }),
  afterInputPlug: decide({ when: byDc, to: 'lookBetween' }, { to: 'readSelectorsFirst' }),
  lookBetween: ask(betweenLook, {
    box: 'noDcComes',
    direct: 'readSelectorsFirst',
    cannot: 'readSelectorsFirst',
  }),
  readSelectorsFirst: ask(ampSwitches, {
    'turn-on': 'selectorIsWrong',
    right: 'wasTurnedUp',
    mode: 'wasTurnedUp',
    range: 'wasTurnedUp',
    cannot: 'wasTurnedUp',
  }),
  wasTurnedUp: decide({ when: byDc, to: 'whatItHears' }, { to: 'turnUpLast' }),
  turnUpLast: ask(wakesWhenLoud, {
    wakes: 'isStarved',
    'wakes-silent': 'isStarved',
    awake: 'isOn',
    fault: 'whatTripsIt',
    'stays-off': 'whatItHears',
    cannot: 'whatItHears',
  }),
  whatItHears: decide(
    {
      when: claim('it waits for DC, and a meter is at hand', (f) => byDc.holds(f) && meterHere.holds(f)),
      to: 'measureDc',
    },
    { when: byDc, to: 'afterSelectors' },
    { when: meterHere, to: 'askMeter' },
    { to: 'afterSelectors' },
  ),
  // A dark head unit sends nothing either.
  askWhatElseSleeps: ask(whatElse, {
    unit: 'unitIsDark',
    accessories: 'unitSendsNothing',
    nothing: 'unitSendsNothing',
    bike: 'unitSendsNothing',
    cannot: 'unitSendsNothing',
  }),
  measureDc: ask(senseDc, {
    zero: [
      {
        when: claim(
          'a line-level lead feeds it, or nobody saw what does',
          (f) => lineFed.holds(f) || !is(f, 'between-look', 'direct'),
        ),
        to: 'noDcComes',
      },
      { to: 'whoIsSilent' },
    ],
    'one-odd': 'signalIsLost',
    half: 'afterSelectors',
    unclear: [{ when: jumperWakes, to: 'noDcComes' }, { to: 'lookAtBodyFuse' }],
    cannot: 'afterSelectors',
  }),
  whoIsSilent: decide({ when: onFront, to: 'signalIsLost' }, { to: 'askMeterForPair' }),
  askMeterForPair: ask(metersDigit, {
    '0.001': 'measureRearPair',
    '0.01': 'measureRearPair',
    '0.1': 'measureRearPair',
    cannot: 'measureRearPair',
  }),
  askMeter: ask(metersDigit, {
    '0.001': 'measureLevel',
    '0.01': 'measureLevel',
    '0.1': 'measureLevel',
    cannot: 'measureLevel',
  }),
  measureLevel: ask(senseLevel, {
    low: 'isStarved',
    none: [{ when: hearsTheRear, to: 'askWhatElseSleeps' }, { to: 'whoIsSilent' }],
    ok: 'afterSelectors',
    unclear: [{ when: jumperWakes, to: 'isStarved' }, { to: 'lookAtBodyFuse' }],
    cannot: 'afterSelectors',
  }),
  measureRearPair: ask(rearPair, {
    none: 'unitSendsNothing',
    ok: 'signalIsLost',
    uneven: 'signalIsLost',
    'one-only': 'signalIsLost',
    cannot: 'signalIsLost',
  }),

  // Itself, last: its own fuses. What a jumper wakes has none that is open. If its wire does not wake it with music on, a
  // contact that gives way under load looks the same.
  afterSelectors: decide(
    {
      when: claim(
        'a jumper wakes it, and its wire does not or nothing arrives',
        (f) => jumperWakes.holds(f) && (byWire.holds(f) || nothingArrives.holds(f)),
      ),
      to: 'proveSupply',
    },
    { when: jumperWakes, to: 'isSupplyProved' },
    { to: 'lookAtBodyFuse' },
  ),
  lookAtBodyFuse: ask(bodyFuse, {
    blown: 'bodyFuseIsOpen',
    whole: 'isSupplyProved',
    none: 'isSupplyProved',
    cannot: 'isSupplyProved',
  }),
  // Plus and ground were read: whether they hold under load is the first check of the fix.
  isSupplyProved: decide({ when: wasRead, to: 'whatIsLeft' }, { to: 'proveSupply' }),
  proveSupply: decide({ when: meterHere, to: 'loadSupply' }, { to: 'layTemporaryLeads' }),
  loadSupply: ask(supplyUnderLoad, {
    'battery-sags': 'batteryIsLow',
    'plus-drop': 'splitPlusWay',
    'ground-drop': 'groundIsBad',
    ok: 'whatIsLeft',
    unclear: 'whatIsLeft',
    cannot: 'layTemporaryLeads',
  }),
  splitPlusWay: ask(plusPath, {
    ring: 'lugIsLoose',
    holder: 'holderIsBad',
    lead: 'leadIsTooThin',
    cannot: 'holderIsBad',
  }),
  layTemporaryLeads: ask(temporaryLeads, {
    plus: 'holderIsBad',
    ground: 'groundIsBad',
    neither: 'whatIsLeft',
    cannot: 'lookAtRings',
  }),
  lookAtRings: ask(ringsLook, {
    battery: 'lugIsLoose',
    ground: 'groundIsBad',
    tight: 'afterRings',
    cannot: 'afterRings',
  }),
  afterRings: decide({ when: protects, to: 'outputIsDamaged' }, { to: 'severalAreLeft' }),
  whatIsLeft: decide(
    { when: dips, to: 'whatDips' },
    { when: onOrDips, to: 'severalAreLeft' },
    { when: protects, to: 'outputIsDamaged' },
    {
      when: claim(
        'a jumper wakes it, its wire does not, and nobody read that it carries enough',
        (f) => jumperWakes.holds(f) && byWire.holds(f) && !is(f, 'remote-volts', 'ok'),
      ),
      to: 'remoteIsLow',
    },
    {
      when: claim('nobody sees its lamp', (f) => is(f, 'amp-light', 'cannot') && !jumperWakes.holds(f)),
      to: 'unplugUnseen',
    },
    {
      when: claim(
        'it listens to the rear pairs, and nothing arrives',
        (f) => nothingArrives.holds(f) && hearsTheRear.holds(f),
      ),
      to: 'unitSendsNothing',
    },
    { when: nothingArrives, to: 'signalIsLost' },
    { when: wasAsked, to: 'ampIsDead' },
    { to: 'severalAreLeft' },
  ),
  // It goes off when it has to work, and its leads do not give way by themselves: too few volts on its wire, too few ohms
  // on a channel, or a lead that is worn and one more thing beside it.
  whatDips: decide(
    {
      when: claim('a wire switches it, and a meter is at hand', (f) => byWire.holds(f) && meterHere.holds(f)),
      to: 'measureRemoteOfOneThatDips',
    },
    { when: meterHere, to: 'measureRunsOfOneThatDips' },
    { to: 'severalAreLeft' },
  ),
  measureRemoteOfOneThatDips: ask(remoteVolts, {
    // It is on without any: it was the wrong terminal, or its selector stands elsewhere.
    none: 'measureRunsOfOneThatDips',
    low: 'remoteIsLow',
    ok: 'measureRunsOfOneThatDips',
    unclear: 'measureRunsOfOneThatDips',
    cannot: 'measureRunsOfOneThatDips',
  }),
  measureRunsOfOneThatDips: ask(ampRuns, {
    low: 'runIsShorted',
    heavy: 'loadIsTooHeavy',
    ok: 'whatIsWeakest',
    cannot: 'whatIsWeakest',
  }),
  whatIsWeakest: decide(
    { when: claim('the battery loses the most', (f) => weakestPart(f) === 'battery'), to: 'batteryIsLow' },
    { when: claim('the plus way loses the most', (f) => weakestPart(f) === 'plus'), to: 'splitWornPlusWay' },
    { when: claim('the ground way loses the most', (f) => weakestPart(f) === 'ground'), to: 'groundIsBad' },
    { to: 'severalAreLeft' },
  ),
  splitWornPlusWay: ask(plusPath, {
    ring: 'lugIsLoose',
    holder: 'holderIsBad',
    lead: 'leadIsTooThin',
    cannot: 'holderIsBad',
  }),
  // A fault lamp that nobody sees looks like one that is dark. Without speakers an amplifier that protects itself starts.
  unplugUnseen: ask(speakersUnplugged, {
    clears: 'measureUnseen',
    stays: 'afterUnseen',
    dark: 'afterUnseen',
    cannot: 'afterUnseen',
  }),
  measureUnseen: decide({ when: meterHere, to: 'measureToFrameUnseen' }, { to: 'plugOneByOne' }),
  measureToFrameUnseen: ask(ampWiresToFrame, {
    shorted: 'wireTouchesFrame',
    clear: 'measureRuns',
    unclear: 'measureRuns',
    cannot: 'measureRuns',
  }),
  afterUnseen: decide({ when: wasAsked, to: 'ampIsDead' }, { to: 'severalAreLeft' }),

  // Without a meter: ears, a finger on every joint, then the fuse, then what bypasses the rest.
  askWhatElse: ask(whatElse, {
    unit: 'unitIsDark',
    nothing: 'mayItHear',
    accessories: [{ when: byWire, to: 'sourceIsDead' }, { to: 'mayItHear' }],
    bike: 'mayItHear',
    cannot: 'mayItHear',
  }),
  mayItHear: decide({ when: mayHear, to: 'turnUpFirst' }, { to: 'pressAll' }),
  turnUpFirst: ask(wakesWhenLoud, {
    wakes: 'isStarved',
    'wakes-silent': 'isStarved',
    awake: 'isOn',
    fault: 'whatTripsIt',
    'stays-off': 'pressAll',
    cannot: 'pressAll',
  }),
  pressAll: ask(supplyWiggle, {
    battery: 'lugIsLoose',
    holder: 'holderIsBad',
    ground: 'groundIsBad',
    remote: [{ when: byWire, to: 'remoteWireIsOpen' }, { to: 'afterPressing' }],
    input: [{ when: surelyByWire, to: 'afterPressing' }, { to: 'signalIsLost' }],
    'no-effect': 'afterPressing',
    cannot: 'afterPressing',
  }),
  afterPressing: decide(
    {
      when: claim('it has its supply, at least for moments', (f) => protects.holds(f) || onNow.holds(f)),
      to: 'proveSupply',
    },
    { when: claim('the whole bike is weak', (f) => is(f, 'what-else', 'bike')), to: 'batteryIsLow' },
    { to: 'lookAtFuse' },
  ),

  unitIsDark: conclude(headUnitDark),
  isOn: conclude(ampIsOn),
  isTooHot: conclude(tooHot),
  sleepsInQuietPassages: conclude(sleepsInQuiet),
  isStarved: conclude(senseStarved),
  noDcComes: conclude(senseNoHalfSupply),
  unitSendsNothing: conclude(nothingToHear),
  signalIsLost: conclude(inputPlugOff),
  selectorIsWrong: conclude(turnOnModeWrong),
  remoteWireIsOpen: conclude(remoteWireOpen),
  sourceIsDead: conclude(remoteSourceDead),
  remoteIsLow: conclude(remoteVoltsLow),
  adapterHasAGap: conclude(adapterWithoutRemote),
  remoteNeverGoesOff: conclude(remoteOnPermanent),
  fuseIsOpen: conclude(mainFuseOpen),
  leadIsBad: conclude(wireChafed),
  ampIsShorted: conclude(ampShortedInside),
  somethingIsShorted: conclude(fuseOpensAgain),
  bodyFuseIsOpen: conclude(ampBodyFuseOpen),
  lugIsLoose: conclude(batteryLugLoose),
  holderIsBad: conclude(fuseHolderResistive),
  leadIsTooThin: conclude(plusLeadTooThin),
  groundIsOpen: conclude(ampGroundOpen),
  groundIsBad: conclude(ampGroundResistive),
  batteryIsLow: conclude(batteryLow),
  chargingIsTooHigh: conclude(regulatorHigh),
  wireTouchesFrame: conclude(wireOnFrame),
  runIsShorted: conclude(pairShorted),
  oneRunTrips: conclude(runTrips),
  loadIsTooHeavy: conclude(loadTooLow),
  outputIsDamaged: conclude(outputDc),
  ampIsDead: conclude(ampDead),
  severalAreLeft: conclude(shortList),
});
