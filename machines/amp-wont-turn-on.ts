import { ampGoesOff, ampHistory, ampSigns, keyPositions, supplyWiggle, whatElse } from '../src/steps/amp-history.ts';
import { rearAmpTurnOn, unitKind } from '../src/steps/build.ts';
import { ampLight, ampSwitches, wakesWhenLoud } from '../src/steps/by-ear.ts';
import { bodyFuse, fuseLamp, fuseLook, leadOffAmp, ringsLook, spareFuse, temporaryLeads } from '../src/steps/fuse.ts';
import { lastChange } from '../src/steps/history.ts';
import { metersDigit, toolsAtHand } from '../src/steps/meter.ts';
import { type Findings, is } from '../src/steps/outcome.ts';
import { ampDc, ampRuns, ampWiresToFrame, oneByOne, recover, speakersUnplugged } from '../src/steps/protection.ts';
import { rearPair } from '../src/steps/rear-volts.ts';
import { ampTerminals, fuseSides, plusPath, supplyUnderLoad } from '../src/steps/supply.ts';
import {
  adapterLook,
  betweenLook,
  inputPlug,
  remoteJumper,
  remoteKeyOff,
  remoteLamp,
  remoteSource,
  remoteStartLamp,
  remoteVolts,
  senseDc,
  senseLevel,
} from '../src/steps/turn-on.ts';
import { ampPair, frontAmpTurnOn, theAmp, whichAmp } from '../src/steps/which-amp.ts';
import { batteryLow, regulatorHigh } from '../src/verdicts/amp/battery.ts';
import {
  ampBodyFuseOpen,
  ampShortedInside,
  fuseOpensAgain,
  mainFuseOpen,
  wireChafed,
} from '../src/verdicts/amp/fuse.ts';
import { ampDead } from '../src/verdicts/amp/itself.ts';
import {
  ampGroundOpen,
  ampGroundResistive,
  batteryLugLoose,
  fuseHolderResistive,
  plusLeadTooThin,
} from '../src/verdicts/amp/leads.ts';
import {
  inputPlugOff,
  nothingToHear,
  senseNoHalfSupply,
  senseStarved,
  sleepsInQuiet,
  turnOnModeWrong,
} from '../src/verdicts/amp/listening.ts';
import { loadTooLow, outputDc, pairShorted, runTrips, tooHot, wireOnFrame } from '../src/verdicts/amp/protects.ts';
import {
  adapterWithoutRemote,
  remoteOnPermanent,
  remoteSourceDead,
  remoteVoltsLow,
  remoteWireOpen,
} from '../src/verdicts/amp/remote.ts';
import { ampIsOn, headUnitDark, shortList } from '../src/verdicts/amp/unfinished.ts';
import { ask, claim, conclude, decide, flow } from './kit.ts';

const turnOn = (f: Findings) => f.outcome(ampPair(f) === 'front' ? 'front-amp-turn-on' : 'rear-amp-turn-on');

const onFront = claim('it is the front amplifier', (f) => ampPair(f) === 'front');
const byWire = claim('a wire switches it', (f) => turnOn(f) === 'wire');
const byDc = claim('it waits for DC', (f) => turnOn(f) === 'dc');
const mayHear = claim('it wakes by sound, or nobody knows', (f) => !byWire.holds(f) && !byDc.holds(f));
const lineFed = claim('a line-level lead feeds it', (f) => theAmp(f).input === 'line');
const meterHere = claim('a meter is at hand', (f) => f.outcome('tools-at-hand') === 'meter');
const comesAndGoes = claim('it comes and goes', (f) => f.outcome('amp-history') === 'comes-and-goes');
const onNow = claim(
  'it is on right now',
  (f) =>
    f.outcome('amp-light') === 'normal' ||
    f.outcome('amp-signs') === 'alive' ||
    f.outcome('wakes-when-loud') === 'awake',
);
const protects = claim('it shows its fault lamp', (f) => f.outcome('amp-light') === 'fault');
const dips = claim(
  'it goes off for moments when it has to work',
  (f) => f.outcome('recover') === 'at-once' || f.outcome('amp-goes-off') === 'loud',
);
const loadIsOff = claim('the fault lamp stays without speakers', (f) => f.outcome('speakers-unplugged') === 'stays');
const fuseIsOpen = claim(
  'no volts come out of the fuse',
  (f) => f.outcome('fuse-sides') === 'open' || f.outcome('fuse-look') === 'blown',
);
const readOpen = claim('volts come in and none come out', (f) => f.outcome('fuse-sides') === 'open');
const jumperProtects = claim('a jumper brings up its fault lamp', (f) => f.outcome('remote-jumper') === 'protects');
const jumperWakes = claim('a jumper wakes it', (f) => f.outcome('remote-jumper') === 'wakes');
const wasAsked = claim(
  'what should wake it was read, or bypassed in vain',
  (f) =>
    is(f, 'remote-jumper', 'dead') ||
    is(f, 'remote-volts', 'ok', 'unclear') ||
    is(f, 'sense-level', 'ok', 'unclear') ||
    is(f, 'sense-dc', 'half', 'unclear'),
);

/** The amplifier stays off: its lamp is dark or shows a fault, though the head unit plays. */
export const ampWontTurnOn = flow('amp-wont-turn-on', 'The amplifier stays off', {
  // Which one, how it is switched, and what happened before.
  askWhich: ask(whichAmp, { rear: 'howSwitched', front: 'howSwitched', cannot: 'howSwitched' }),
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

  // Eyes and ears.
  lookAtLamp: ask(ampLight, {
    normal: 'askWhenItGoesOff',
    off: 'askWhatElse',
    fault: 'waitForIt',
    cannot: 'lookForSigns',
  }),
  lookForSigns: ask(ampSigns, { alive: 'askWhenItGoesOff', dead: 'askWhatElse', cannot: 'askWhatElse' }),
  askWhenItGoesOff: ask(ampGoesOff, {
    'stays-on': 'isOn',
    bumps: 'pressLeads',
    loud: 'askTools',
    hot: 'isTooHot',
    quiet: [{ when: mayHear, to: 'sleepsInQuietPassages' }, { to: 'pressLeads' }],
    cannot: 'isOn',
  }),
  askWhatElse: ask(whatElse, {
    unit: 'unitIsDark',
    nothing: 'whatWakesIt',
    accessories: 'whatWakesIt',
    bike: 'whatWakesIt',
    cannot: 'whatWakesIt',
  }),
  // One that waits for DC does not care how loud it is.
  whatWakesIt: decide({ when: byWire, to: 'turnKey' }, { when: byDc, to: 'afterEars' }, { to: 'turnUp' }),
  turnKey: ask(keyPositions, { some: 'sourceIsDead', none: 'afterEars', cannot: 'afterEars' }),
  turnUp: ask(wakesWhenLoud, {
    // It slept while its lamp was looked at, and something was set right since.
    awake: 'askWhenItGoesOff',
    wakes: 'isStarved',
    'wakes-silent': 'isStarved',
    'stays-off': 'afterEars',
    cannot: 'afterEars',
  }),
  afterEars: decide({ when: comesAndGoes, to: 'pressLeads' }, { to: 'askTools' }),
  pressLeads: ask(supplyWiggle, {
    battery: 'lugIsLoose',
    holder: 'holderIsBad',
    ground: 'groundIsBad',
    remote: [{ when: byWire, to: 'remoteWireIsOpen' }, { to: 'askTools' }],
    input: [{ when: byWire, to: 'askTools' }, { to: 'signalIsLost' }],
    'no-effect': 'askTools',
    cannot: 'askTools',
  }),

  // The fault lamp: what does it protect itself from?
  waitForIt: ask(recover, {
    'at-once': 'askTools',
    'after-minutes': 'isTooHot',
    'key-cycle': 'unplugSpeakers',
    stays: 'unplugSpeakers',
    cannot: 'unplugSpeakers',
  }),
  unplugSpeakers: ask(speakersUnplugged, { clears: 'askToolsForRuns', stays: 'askTools', cannot: 'askTools' }),
  askToolsForRuns: ask(toolsAtHand, { meter: 'measureToFrame', none: 'plugOneByOne', cannot: 'plugOneByOne' }),
  measureToFrame: ask(ampWiresToFrame, {
    shorted: 'wireTouchesFrame',
    clear: 'measureRuns',
    unclear: 'measureRuns',
    cannot: 'measureRuns',
  }),
  measureRuns: ask(ampRuns, {
    low: 'runIsShorted',
    heavy: 'loadIsTooHeavy',
    ok: [{ when: jumperProtects, to: 'measureOutputsAfterRuns' }, { to: 'plugOneByOne' }],
    cannot: 'plugOneByOne',
  }),
  // Asked to start, it protects itself, and no run is to blame: its output, or its supply that gives way.
  measureOutputsAfterRuns: ask(ampDc, {
    offset: 'outputIsDamaged',
    ok: 'loadSupplyAfterRuns',
    unclear: 'loadSupplyAfterRuns',
    cannot: 'loadSupplyAfterRuns',
  }),
  loadSupplyAfterRuns: ask(supplyUnderLoad, {
    'battery-sags': 'batteryIsLow',
    'plus-drop': 'splitPlusWay',
    'ground-drop': 'groundIsBad',
    ok: 'outputIsDamaged',
    unclear: 'outputIsDamaged',
    cannot: 'severalAreLeft',
  }),
  plugOneByOne: ask(oneByOne, {
    one: 'oneRunTrips',
    together: 'loadIsTooHeavy',
    none: 'severalAreLeft',
    cannot: 'severalAreLeft',
  }),

  // Readings, at the amplifier first.
  askTools: ask(toolsAtHand, { meter: 'measureTerminals', none: 'pressAll', cannot: 'pressAll' }),
  measureTerminals: ask(ampTerminals, {
    'battery-low': [{ when: byWire, to: 'measureRemoteKeyOff' }, { to: 'batteryIsLow' }],
    'battery-high': 'chargingIsTooHigh',
    'plus-open': 'measureFuse',
    'ground-open': 'lookAtRings',
    ok: 'afterTerminals',
    unclear: 'loadSupplyFirst',
    cannot: 'pressAll',
  }),
  // Volts that are lost without a load are a contact that hardly is one.
  loadSupplyFirst: ask(supplyUnderLoad, {
    'battery-sags': 'batteryIsLow',
    'plus-drop': 'splitPlusWay',
    'ground-drop': 'groundIsBad',
    ok: 'afterTerminals',
    unclear: 'afterTerminals',
    cannot: 'afterTerminals',
  }),
  measureRemoteKeyOff: ask(remoteKeyOff, { live: 'remoteNeverGoesOff', dead: 'batteryIsLow', cannot: 'batteryIsLow' }),
  lookAtRings: ask(ringsLook, {
    battery: 'lugIsLoose',
    ground: 'groundIsOpen',
    tight: 'groundIsOpen',
    cannot: 'groundIsOpen',
  }),
  afterTerminals: decide(
    {
      when: claim('it protects itself, and not from a dip', (f) => protects.holds(f) && !dips.holds(f)),
      to: 'measureOutputs',
    },
    { when: claim('it is on, or dips', (f) => onNow.holds(f) || dips.holds(f)), to: 'loadSupply' },
    { when: byWire, to: 'measureRemote' },
    { to: 'joinPlusToRemote' },
  ),
  measureOutputs: ask(ampDc, {
    offset: 'outputIsDamaged',
    ok: 'loadSupply',
    unclear: 'loadSupply',
    cannot: 'loadSupply',
  }),

  // Its main fuse, and what opened it.
  measureFuse: ask(fuseSides, {
    whole: 'leadIsBad',
    open: 'lookAtFuse',
    'no-feed': 'lugIsLoose',
    cannot: 'lookAtFuse',
  }),
  lookAtFuse: ask(fuseLook, {
    blown: 'lampForFuse',
    whole: [{ when: readOpen, to: 'holderIsBad' }, { to: 'trySpareFuse' }],
    cannot: [{ when: readOpen, to: 'lampForFuse' }, { to: 'joinPlusToRemote' }],
  }),
  lampForFuse: ask(fuseLamp, { dark: 'fuseIsOpen', bright: 'takeLeadOff', cannot: 'trySpareFuse' }),
  takeLeadOff: ask(leadOffAmp, { bright: 'leadIsBad', dark: 'ampIsShorted', cannot: 'somethingIsShorted' }),
  trySpareFuse: ask(spareFuse, {
    wakes: 'fuseIsOpen',
    holds: 'joinPlusToRemote',
    opens: 'somethingIsShorted',
    cannot: [{ when: fuseIsOpen, to: 'fuseIsOpen' }, { to: 'joinPlusToRemote' }],
  }),

  // What a wire tells it.
  measureRemote: ask(remoteVolts, {
    none: 'measureSource',
    low: 'remoteIsLow',
    ok: 'readSelectors',
    unclear: 'joinPlusToRemote',
    cannot: 'joinPlusToRemote',
  }),
  measureSource: ask(remoteSource, {
    live: 'whoseAdapter',
    low: 'remoteIsLow',
    dead: 'sourceIsDead',
    cannot: 'whoseAdapter',
  }),
  whoseAdapter: ask(unitKind, { replaced: 'lookAtAdapter', factory: 'remoteWireIsOpen', cannot: 'remoteWireIsOpen' }),
  lookAtAdapter: ask(adapterLook, { gap: 'adapterHasAGap', through: 'remoteWireIsOpen', cannot: 'remoteWireIsOpen' }),

  // Everything before its turn-on proved in one go, or not.
  joinPlusToRemote: ask(remoteJumper, {
    wakes: 'afterItWoke',
    protects: 'askToolsForRuns',
    dead: 'readSelectors',
    'no-terminal': 'withoutJumper',
    cannot: 'withoutJumper',
  }),
  afterItWoke: decide(
    {
      when: claim('few volts were read on its wire', (f) => f.outcome('remote-volts') === 'unclear'),
      to: 'remoteIsLow',
    },
    { when: byWire, to: 'lampOnRemote' },
    { to: 'pushInputPlug' },
  ),
  withoutJumper: decide(
    {
      when: claim('its remote terminal was read', (f) => f.outcome('remote-volts') === 'unclear'),
      to: 'readSelectors',
    },
    { when: byWire, to: 'lampOnRemote' },
    { to: 'pushInputPlug' },
  ),
  lampOnRemote: ask(remoteLamp, {
    lit: 'readSelectors',
    dark: 'lampOnStart',
    cannot: [{ when: jumperWakes, to: 'severalAreLeft' }, { to: 'readSelectors' }],
  }),
  lampOnStart: ask(remoteStartLamp, { lit: 'whoseAdapter', dark: 'sourceIsDead', cannot: 'whoseAdapter' }),

  // What it listens to.
  pushInputPlug: ask(inputPlug, {
    cured: 'signalIsLost',
    'no-change': 'readSelectorsFirst',
    cannot: 'readSelectorsFirst',
  }),
  readSelectorsFirst: ask(ampSwitches, {
    'turn-on': 'selectorIsWrong',
    right: 'whatItHears',
    mode: 'whatItHears',
    range: 'whatItHears',
    cannot: 'whatItHears',
  }),
  whatItHears: decide(
    {
      when: claim('it waits for DC, and a meter is at hand', (f) => byDc.holds(f) && meterHere.holds(f)),
      to: 'measureDc',
    },
    { when: byDc, to: 'lookBetween' },
    { when: meterHere, to: 'askMeter' },
    { to: 'afterSelectors' },
  ),
  measureDc: ask(senseDc, {
    zero: [{ when: lineFed, to: 'noDcComes' }, { to: 'lookBetween' }],
    'one-odd': 'signalIsLost',
    half: 'afterSelectors',
    unclear: [{ when: jumperWakes, to: 'noDcComes' }, { to: 'lookAtBodyFuse' }],
    cannot: 'lookBetween',
  }),
  lookBetween: ask(betweenLook, {
    box: 'noDcComes',
    direct: [
      { when: claim('no DC was read', (f) => f.outcome('sense-dc') === 'zero'), to: 'whoIsSilent' },
      { to: 'lookAtBodyFuse' },
    ],
    cannot: [
      { when: claim('no DC was read', (f) => f.outcome('sense-dc') === 'zero'), to: 'noDcComes' },
      { to: 'lookAtBodyFuse' },
    ],
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
    none: 'whoIsSilent',
    ok: 'afterSelectors',
    unclear: [{ when: jumperWakes, to: 'isStarved' }, { to: 'lookAtBodyFuse' }],
    cannot: [{ when: jumperWakes, to: 'severalAreLeft' }, { to: 'lookAtBodyFuse' }],
  }),
  measureRearPair: ask(rearPair, {
    none: 'unitSendsNothing',
    ok: 'signalIsLost',
    uneven: 'signalIsLost',
    'one-only': 'signalIsLost',
    cannot: 'signalIsLost',
  }),

  // Itself, last: its selector, its own fuses, and its supply with a load on it.
  readSelectors: ask(ampSwitches, {
    'turn-on': 'selectorIsWrong',
    right: 'afterSelectors',
    mode: 'afterSelectors',
    range: 'afterSelectors',
    cannot: 'afterSelectors',
  }),
  // What a jumper wakes has no open fuse of its own. Whether its supply holds when it plays is another matter.
  afterSelectors: decide({ when: jumperWakes, to: 'proveSupply' }, { to: 'lookAtBodyFuse' }),
  lookAtBodyFuse: ask(bodyFuse, {
    blown: 'bodyFuseIsOpen',
    whole: 'proveSupply',
    none: 'proveSupply',
    cannot: 'proveSupply',
  }),
  proveSupply: decide({ when: meterHere, to: 'loadSupply' }, { to: 'layTemporaryLeads' }),
  loadSupply: ask(supplyUnderLoad, {
    'battery-sags': 'batteryIsLow',
    'plus-drop': 'splitPlusWay',
    'ground-drop': 'groundIsBad',
    ok: 'supplyIsGood',
    unclear: 'supplyIsGood',
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
    neither: 'supplyIsGood',
    cannot: 'severalAreLeft',
  }),
  supplyIsGood: decide(
    { when: claim('it is on, or dips', (f) => onNow.holds(f) || dips.holds(f)), to: 'severalAreLeft' },
    {
      when: claim('its fault lamp stays without speakers', (f) => protects.holds(f) && loadIsOff.holds(f)),
      to: 'outputIsDamaged',
    },
    { when: protects, to: 'severalAreLeft' },
    {
      when: claim('a jumper wakes it, its wire does not', (f) => jumperWakes.holds(f) && byWire.holds(f)),
      to: 'remoteIsLow',
    },
    {
      when: claim('nobody sees its lamp', (f) => f.outcome('amp-light') === 'cannot' && !jumperWakes.holds(f)),
      to: 'unplugUnseen',
    },
    { when: wasAsked, to: 'ampIsDead' },
    { to: 'severalAreLeft' },
  ),
  // A fault lamp that nobody sees looks like one that is dark. Without speakers an amplifier that protects itself starts.
  unplugUnseen: ask(speakersUnplugged, { clears: 'askToolsForRuns', stays: 'afterUnseen', cannot: 'afterUnseen' }),
  afterUnseen: decide({ when: wasAsked, to: 'ampIsDead' }, { to: 'severalAreLeft' }),

  // Without a meter: a finger on every joint, then the fuse, then what bypasses the rest.
  pressAll: ask(supplyWiggle, {
    battery: 'lugIsLoose',
    holder: 'holderIsBad',
    ground: 'groundIsBad',
    remote: [{ when: byWire, to: 'remoteWireIsOpen' }, { to: 'afterPressing' }],
    input: [{ when: byWire, to: 'afterPressing' }, { to: 'signalIsLost' }],
    'no-effect': 'afterPressing',
    cannot: 'afterPressing',
  }),
  afterPressing: decide(
    {
      when: claim('it has its supply, at least for moments', (f) => protects.holds(f) || onNow.holds(f)),
      to: 'proveSupply',
    },
    { when: claim('the whole bike is weak', (f) => f.outcome('what-else') === 'bike'), to: 'batteryIsLow' },
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
