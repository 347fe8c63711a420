import { ampDriving } from '../src/rig/rig.ts';
import { ampIn, ampOut, halfSupply, silencedByGain } from '../src/steps/amp-volts.ts';
import {
  deliveredWith,
  frontDrive,
  rearAmpInput,
  rearAmpTurnOn,
  rearDrive,
  rearInputs,
  rearRating,
  unitKind,
} from '../src/steps/build.ts';
import {
  ampLight,
  ampSwitches,
  contactsLook,
  faderCentre,
  fourCorners,
  lidCheck,
  rearControl,
  rearHiss,
  wakesWhenLoud,
  wiggle,
} from '../src/steps/by-ear.ts';
import { lastChange, rearHistory } from '../src/steps/history.ts';
import { metersDigit, toolsAtHand } from '../src/steps/meter.ts';
import { coilOhms, runOhms, runSplit, silencedByOhms, wireToFrame } from '../src/steps/ohms.ts';
import {
  fedFromRear,
  rearPair,
  rearPairAgain,
  rearPairFound,
  rearPairPlace,
  rearPairSilent,
} from '../src/steps/rear-volts.ts';
import { popRun, popSpeaker, swapInputs, swapOutputs } from '../src/steps/swaps.ts';
import {
  ampChannelDead,
  ampInputPlugOff,
  ampInputTooLow,
  ampOff,
  ampProtecting,
  channelModeWrong,
  inputLegWrong,
  senseNoHalfSupply,
  senseStarved,
  turnOnModeWrong,
} from '../src/verdicts/rear/amplifier.ts';
import {
  adapterGap,
  headUnitWorkedOn,
  profileReverted,
  rearChannelsDisabled,
  replacedUnitSetting,
} from '../src/verdicts/rear/profile.ts';
import {
  coilOpen,
  lidContactsDirty,
  lidLeadBroken,
  pairShorted,
  rearLoomOpen,
  rearPlugOff,
  speakerWireOpen,
  wireOnFrame,
} from '../src/verdicts/rear/run.ts';
import { faderOff, rearControlOff } from '../src/verdicts/rear/settings.ts';
import { allHealthy, nothingPlays, oneSideSilent, shortList } from '../src/verdicts/rear/unfinished.ts';
import { ask, claim, conclude, decide, flow } from './kit.ts';

const onAmplifier = claim('the rear is driven by an amplifier', (f) => f.outcome('rear-drive') === 'amp');
const fedFromFront = claim(
  'the amplifier takes everything from the front pair',
  (f) => onAmplifier.holds(f) && !fedFromRear(f),
);
const replaced = claim('the head unit was replaced', (f) => f.outcome('unit-kind') === 'replaced');
const replacedOnSpeakerWires = claim(
  'the replaced unit feeds the amplifier by speaker wires',
  (f) => replaced.holds(f) && f.outcome('rear-amp-input') !== 'line',
);
const meterHere = claim('a meter is at hand', (f) => f.outcome('tools-at-hand') === 'meter');
const frontPlaysOnIt = claim(
  'the same amplifier makes the front play',
  (f) => onAmplifier.holds(f) && f.outcome('front-drive') === 'same' && f.outcome('four-corners') !== 'cannot',
);
const ampIsOff = claim(
  'the amplifier’s lamp is off, and loud music does not wake it',
  (f) =>
    f.outcome('amp-light') === 'off' && f.outcome('wakes-when-loud') !== 'wakes-silent' && !frontPlaysOnIt.holds(f),
);
const ampProtects = claim('the amplifier shows its fault lamp', (f) => f.outcome('amp-light') === 'fault');
const ampIsAlive = claim(
  'the amplifier was heard or seen to be on',
  (f) =>
    f.outcome('rear-hiss') === 'hiss' ||
    f.outcome('amp-light') === 'normal' ||
    f.outcome('wakes-when-loud') === 'wakes-silent' ||
    frontPlaysOnIt.holds(f),
);
const listens = claim('the amplifier listens to its inputs', (f) => f.outcome('rear-amp-turn-on') !== 'wire');
const pushingCured = claim('pushing the plug home cured it', (f) => f.outcome('lid-check') === 'cured');
const playedBefore = claim('the rear played before', (f) => f.outcome('rear-history') === 'stopped');
const comesAndGoes = claim('the rear comes and goes', (f) => f.outcome('rear-history') === 'comes-and-goes');
const factoryAmp = claim(
  'it is the bike maker’s own amplifier, without knobs',
  (f) => ampDriving(f.rig, 'rear')?.kind === 'factory',
);
const workedOn = claim('somebody worked on the head unit or the bike', (f) => headUnitWorkedOn(f));
const rearPairIsSilent = claim('the rear pairs were read, and give nothing that an ear hears', rearPairSilent);
const measuredOnTheWay = claim(
  'the rear pairs were read at a plug on the way, not at the head unit',
  (f) => rearPairIsSilent.holds(f) && f.outcome('rear-pair-place') !== 'unit',
);
const loomSuspected = claim(
  'a joint before the measured point explains it better than a stored profile',
  (f) => measuredOnTheWay.holds(f) && (comesAndGoes.holds(f) || (playedBefore.holds(f) && !workedOn.holds(f))),
);
const everythingRead = claim(
  'signal and run were both read and are healthy',
  (f) => rearPairRead.holds(f) && f.outcome('run-ohms') !== undefined && f.outcome('run-ohms') !== 'cannot',
);
const mayBeShorted = claim(
  'the head unit drives the rear itself, and it was still plugged in when its pair was read',
  (f) =>
    !onAmplifier.holds(f) && meterHere.holds(f) && !['unit', 'on-the-way'].includes(f.outcome('rear-pair-place') ?? ''),
);
const rearPairRead = claim('a signal was read on both rear pairs', (f) =>
  ['ok', 'uneven'].includes(rearPairFound(f) ?? ''),
);
const oneRearPairRead = claim('a signal was read on one of the two rear pairs', (f) => rearPairFound(f) === 'one-only');
const oneCornerSilent = claim(
  'one rear corner is silent and the other plays',
  (f) => f.outcome('four-corners') === 'one-corner',
);
const silencedByContact = claim(
  'the ohms are enough to silence it, or it comes and goes',
  (f) => comesAndGoes.holds(f) || silencedByOhms(f.values('run-ohms'), f, oneCornerSilent.holds(f) ? 'one' : 'both'),
);
const listensForDc = claim('the amplifier waits for DC', (f) => f.outcome('rear-amp-turn-on') === 'dc');
const offAndListensForDc = claim(
  'the amplifier is off and waits for DC',
  (f) => ampIsOff.holds(f) && listensForDc.holds(f),
);
const mayHearNothing = claim(
  'it may be off because nothing reaches it',
  (f) => ampIsOff.holds(f) && listens.holds(f) && !ampInRead.holds(f),
);
const ampInRead = claim('the rear signal was read at the amplifier', (f) => f.outcome('amp-in') === 'ok');
const inputsNotSwapped = claim(
  'the front plugs can be tried in the rear inputs, and nobody did yet',
  (f) => onAmplifier.holds(f) && !fedFromFront.holds(f) && f.outcome('swap-inputs') === undefined,
);
const ampUnseen = claim(
  'nobody heard or saw whether the amplifier is on',
  (f) => onAmplifier.holds(f) && !ampIsAlive.holds(f),
);
const rangeIsWrong = claim(
  'the amplifier’s range or gain was seen to be wrong',
  (f) => f.outcome('amp-switches') === 'range',
);
const outputRead = claim('something was read at the amplifier’s rear outputs', (f) =>
  ['ok', 'low'].includes(f.outcome('amp-out') ?? ''),
);

/** No sound from the rear: the front plays, the rear speakers do not. */
export const noRearSound = flow('no-rear-sound', 'No sound from the rear', {
  // What is fitted, and what happened before.
  askUnit: ask(unitKind, { factory: 'askDrive', replaced: 'askDrive', cannot: 'askDrive' }),
  askDrive: ask(rearDrive, { unit: 'askHistory', amp: 'askHistory', cannot: 'askHistory' }),
  askHistory: ask(rearHistory, {
    never: 'askLastChange',
    stopped: 'askLastChange',
    'comes-and-goes': 'askLastChange',
    cannot: 'askLastChange',
  }),
  askLastChange: ask(lastChange, {
    nothing: 'centreFader',
    fitted: 'centreFader',
    workshop: 'centreFader',
    reflash: 'centreFader',
    unit: 'centreFader',
    opened: 'centreFader',
    battery: 'centreFader',
    cannot: 'centreFader',
  }),

  // Ears and eyes.
  centreFader: ask(faderCentre, {
    cured: 'faderWasOff',
    // It plays, and nobody moved anything: then it comes and goes, and a finger may find where.
    plays: 'wiggleWhilePlaying',
    'no-change': 'turnRearUp',
    cannot: 'turnRearUp',
  }),
  wiggleWhilePlaying: ask(wiggle, {
    'amp-input': 'inputPlugIsOff',
    'rear-run': 'lookAtContacts',
    'amp-supply': [{ when: onAmplifier, to: 'ampHasNoPower' }, { to: 'everythingIsHealthy' }],
    'no-effect': 'everythingIsHealthy',
    cannot: 'everythingIsHealthy',
  }),
  turnRearUp: ask(rearControl, {
    cured: 'controlWasOff',
    'no-change': 'listenAtCorners',
    none: 'listenAtCorners',
    cannot: 'listenAtCorners',
  }),
  listenAtCorners: ask(fourCorners, {
    all: [{ when: comesAndGoes, to: 'wiggleWhilePlaying' }, { to: 'faderWasOff' }],
    'no-rear': 'moveLids',
    'one-corner': 'moveLids',
    'one-side': 'oneSideIsSilent',
    none: 'nothingPlaysAtAll',
    cannot: 'moveLids',
  }),
  moveLids: ask(lidCheck, {
    cured: 'lookAtContacts',
    reacts: 'lookAtContacts',
    'no-effect': 'afterLids',
    'no-plug': 'afterLids',
    cannot: 'afterLids',
  }),
  lookAtContacts: ask(contactsLook, {
    apart: 'plugWasOff',
    film: 'contactsAreDirty',
    clean: [{ when: pushingCured, to: 'plugWasOff' }, { to: 'lidLeadIsBroken' }],
    // Cleaning harms nothing, and only the lead is left when it does not help.
    cannot: [{ when: pushingCured, to: 'plugWasOff' }, { to: 'contactsAreDirty' }],
  }),
  afterLids: decide({ when: onAmplifier, to: 'listenForHiss' }, { to: 'askTools' }),
  listenForHiss: ask(rearHiss, { hiss: 'selectors', silent: 'askFrontDrive', cannot: 'askFrontDrive' }),
  askFrontDrive: ask(frontDrive, {
    same: [{ when: frontPlaysOnIt, to: 'selectors' }, { to: 'lookAtLamp' }],
    unit: 'lookAtLamp',
    other: 'lookAtLamp',
    cannot: 'lookAtLamp',
  }),
  lookAtLamp: ask(ampLight, { normal: 'selectors', off: 'askTurnOn', fault: 'askTools', cannot: 'selectors' }),

  // An amplifier that stays off. One that waits for DC does not care how loud it is.
  askTurnOn: ask(rearAmpTurnOn, { wire: 'selectors', signal: 'turnUp', dc: 'selectors', cannot: 'turnUp' }),
  turnUp: ask(wakesWhenLoud, {
    wakes: 'ampIsStarved',
    'wakes-silent': 'selectors',
    'stays-off': 'selectors',
    cannot: 'selectors',
  }),

  selectors: decide({ when: factoryAmp, to: 'afterSelectors' }, { to: 'readSelectors' }),
  readSelectors: ask(ampSwitches, {
    right: 'afterSelectors',
    mode: [{ when: ampIsOff, to: 'afterSelectors' }, { to: 'selectorIsWrong' }],
    // A low gain makes it weak. Whether it is low enough for silence, a reading tells.
    range: 'afterSelectors',
    'turn-on': [{ when: ampIsOff, to: 'turnOnIsWrong' }, { to: 'afterSelectors' }],
    cannot: 'afterSelectors',
  }),
  // One that listens on silent rear wires sleeps for a good reason: the head unit is asked first.
  afterSelectors: decide(
    {
      when: claim('it is off and does not listen', (f) => ampIsOff.holds(f) && !listens.holds(f)),
      to: 'ampHasNoPower',
    },
    { when: offAndListensForDc, to: 'askInputForDc' },
    { to: 'askRearInputs' },
  ),
  // No DC ever comes over a line-level lead.
  askInputForDc: ask(rearAmpInput, { line: 'noDcReachesIt', speaker: 'askRearInputs', cannot: 'askRearInputs' }),
  // Where everything comes from the front pair, silent rear outputs are as they should be.
  askRearInputs: ask(rearInputs, { own: 'askTools', front: 'askTools', cannot: 'askTools' }),

  // Readings, from the middle of the chain outwards.
  askTools: ask(toolsAtHand, {
    meter: [{ when: ampProtects, to: 'measureToFrame' }, { to: 'askMeter' }],
    none: [
      { when: ampProtects, to: 'ampProtectsItself' },
      { when: mayHearNothing, to: 'shortListIsLeft' },
      { when: ampIsOff, to: 'ampHasNoPower' },
      { to: 'withoutMeter' },
    ],
    cannot: [
      { when: ampProtects, to: 'ampProtectsItself' },
      { when: mayHearNothing, to: 'shortListIsLeft' },
      { when: ampIsOff, to: 'ampHasNoPower' },
      { to: 'withoutMeter' },
    ],
  }),
  askMeter: ask(metersDigit, {
    '0.001': 'atTheUnit',
    '0.01': 'atTheUnit',
    '0.1': 'atTheUnit',
    cannot: 'atTheUnit',
  }),
  // Rear channels that nothing is plugged into may be off, and that says nothing.
  atTheUnit: decide({ when: fedFromFront, to: 'afterTheUnit' }, { to: 'measureRearPair' }),
  measureRearPair: ask(rearPair, {
    none: 'whyTheUnitIsSilent',
    uneven: 'measureRearPairAgain',
    'one-only': 'measureRearPairAgain',
    ok: 'afterTheUnit',
    cannot: 'afterTheUnit',
  }),
  // Weak, or one side only: a setting first. What is still weak then does not explain silence.
  measureRearPairAgain: ask(rearPairAgain, {
    none: 'whyTheUnitIsSilent',
    ok: 'faderWasOff',
    uneven: [{ when: rearPairIsSilent, to: 'whyTheUnitIsSilent' }, { to: 'afterTheUnit' }],
    'one-only': 'oneChannelOnly',
    cannot: [{ when: oneRearPairRead, to: 'oneChannelOnly' }, { to: 'afterTheUnit' }],
  }),
  // Behind an amplifier a channel without input looks like a dead output, so the missing one is mended first.
  oneChannelOnly: decide(
    { when: oneCornerSilent, to: 'oneSideIsSilent' },
    { when: onAmplifier, to: 'oneSideIsSilent' },
    { to: 'askRating' },
  ),
  afterTheUnit: decide(
    { when: offAndListensForDc, to: 'measureHalfSupply' },
    { when: onAmplifier, to: 'askAmpInput' },
    { to: 'askRating' },
  ),

  askAmpInput: ask(rearAmpInput, { speaker: 'measureAmpIn', line: 'measureAmpIn', cannot: 'measureAmpIn' }),

  measureAmpIn: ask(ampIn, {
    ok: [{ when: ampIsOff, to: 'ampHasNoPower' }, { to: 'measureAmpOut' }],
    low: 'whyNothingArrives',
    none: 'whyNothingArrives',
    cannot: [
      { when: mayHearNothing, to: 'shortListIsLeft' },
      { when: ampIsOff, to: 'ampHasNoPower' },
      { to: 'measureAmpOut' },
    ],
  }),
  // Only speaker wires carry half the supply: on a line-level lead no DC is healthy and says nothing.
  whyNothingArrives: decide(
    { when: fedFromFront, to: 'inputPlugIsOff' },
    { when: replacedOnSpeakerWires, to: 'measureHalfSupply' },
    { to: 'inputPlugIsOff' },
  ),
  measureHalfSupply: ask(halfSupply, {
    zero: [{ when: offAndListensForDc, to: 'noDcReachesIt' }, { to: 'adapterHasAGap' }],
    half: [{ when: offAndListensForDc, to: 'ampHasNoPower' }, { to: 'adapterHasAGap' }],
    'one-odd': 'inputLegIsWrong',
    unclear: [{ when: offAndListensForDc, to: 'shortListIsLeft' }, { to: 'inputPlugIsOff' }],
    cannot: [{ when: offAndListensForDc, to: 'ampHasNoPower' }, { to: 'inputPlugIsOff' }],
  }),
  measureAmpOut: ask(ampOut, {
    none: [{ when: ampIsAlive, to: 'ampChannelIsDead' }, { to: 'ampHasNoPower' }],
    low: [
      {
        when: claim(
          'so little is silence, or its range or gain was seen to be wrong',
          (f) => silencedByGain(f.values('amp-out'), f) || rangeIsWrong.holds(f),
        ),
        to: 'gainIsTooLow',
      },
      { to: 'askRating' },
    ],
    ok: 'askRating',
    cannot: 'askRating',
  }),

  askRating: ask(rearRating, { '2': 'measureRun', '4': 'measureRun', '8': 'measureRun', cannot: 'measureRun' }),
  measureRun: ask(runOhms, {
    open: 'measureCoil',
    // A few ohms too much make it quieter, never silent.
    high: [{ when: silencedByContact, to: 'contactsAreDirty' }, { to: 'runIsHealthy' }],
    low: 'pairIsShorted',
    unclear: 'runIsHealthy',
    ok: 'runIsHealthy',
    cannot: 'tryCellOnRun',
  }),
  measureCoil: ask(coilOhms, {
    open: 'coilIsOpen',
    low: 'pairIsShorted',
    ok: 'splitRun',
    unclear: 'splitRun',
    cannot: 'tryCellOnSpeaker',
  }),
  splitRun: ask(runSplit, {
    'lid-side': 'lidLeadIsBroken',
    contacts: 'contactsAreDirty',
    'bike-side': 'wireIsOpen',
    'no-plug': 'wireIsOpen',
    cannot: 'shortListIsLeft',
  }),
  runIsHealthy: decide(
    {
      when: claim(
        'it comes and goes, and no plug was moved yet',
        (f) => comesAndGoes.holds(f) && everythingRead.holds(f) && f.outcome('wiggle') === undefined,
      ),
      to: 'wiggleEverything',
    },
    { when: oneRearPairRead, to: 'oneSideIsSilent' },
    {
      when: claim(
        'the rear is on an amplifier whose outputs are healthy',
        (f) => onAmplifier.holds(f) && outputRead.holds(f),
      ),
      to: 'frameAtLast',
    },
    {
      when: claim('the signal was read at its inputs', (f) => onAmplifier.holds(f) && ampInRead.holds(f)),
      to: 'frameBeforeSwap',
    },
    { when: fedFromFront, to: 'shortListIsLeft' },
    { when: onAmplifier, to: 'swapInputPlugs' },
    {
      when: claim(
        'the replaced unit sends, the run is good, and yet it is silent',
        (f) => rearPairRead.holds(f) && replaced.holds(f),
      ),
      to: 'frameBeforeAdapter',
    },
    // The outputs were read without their run: a wire on the frame would silence them with it.
    { when: rearPairRead, to: 'frameAtLast' },
    { to: 'whyTheUnitIsSilent' },
  ),

  frameBeforeAdapter: ask(wireToFrame, {
    shorted: 'wireIsOnFrame',
    clear: 'adapterHasAGap',
    unclear: 'adapterHasAGap',
    cannot: 'adapterHasAGap',
  }),
  // A wire on the frame reads its coil all the same, and silences an amplifier only while it is plugged in.
  frameAtLast: ask(wireToFrame, {
    shorted: 'wireIsOnFrame',
    clear: 'everythingIsHealthy',
    unclear: 'everythingIsHealthy',
    cannot: 'everythingIsHealthy',
  }),
  // A short kills whatever output is swapped onto it.
  frameBeforeSwap: ask(wireToFrame, {
    shorted: 'wireIsOnFrame',
    clear: 'swapOutputPlugs',
    unclear: 'shortListIsLeft',
    cannot: 'shortListIsLeft',
  }),
  swapOutputPlugs: ask(swapOutputs, {
    plays: [
      { when: outputRead, to: 'gainIsTooLow' },
      { when: rangeIsWrong, to: 'gainIsTooLow' },
      { to: 'ampChannelIsDead' },
    ],
    silent: 'shortListIsLeft',
    cannot: 'shortListIsLeft',
  }),

  // The head unit lets nothing out: which of the reasons is decided by what is fitted and what happened before.
  // A short of the run silences the pair too, so it is ruled out where the run was still plugged in.
  whyTheUnitIsSilent: decide(
    { when: oneCornerSilent, to: 'oneSideIsSilent' },
    { when: fedFromFront, to: 'inputPlugIsOff' },
    { when: rearPairIsSilent, to: 'askPlace' },
    { to: 'whichUnit' },
  ),
  askPlace: ask(rearPairPlace, {
    unit: 'whichUnit',
    'on-the-way': 'whichUnit',
    loaded: 'whichUnit',
    cannot: 'whichUnit',
  }),
  whichUnit: decide({ when: replaced, to: 'afterReplacedUnit' }, { to: 'askDelivered' }),
  afterReplacedUnit: decide(
    { when: mayBeShorted, to: 'measureToFrame' },
    { when: loomSuspected, to: 'loomIsOpen' },
    { to: 'replacedUnitIsSet' },
  ),
  askDelivered: ask(deliveredWith, {
    two: 'afterDelivered',
    four: 'afterDelivered',
    cannot: 'afterDelivered',
  }),
  afterDelivered: decide(
    { when: mayBeShorted, to: 'measureToFrame' },
    { when: loomSuspected, to: 'loomIsOpen' },
    // A stored profile does not come and go.
    { when: comesAndGoes, to: 'shortListIsLeft' },
    { when: playedBefore, to: 'profileIsReverted' },
    { to: 'rearIsDisabled' },
  ),
  measureToFrame: ask(wireToFrame, {
    shorted: 'wireIsOnFrame',
    clear: 'askRatingForShort',
    unclear: 'askRatingForShort',
    cannot: 'askRatingForShort',
  }),
  askRatingForShort: ask(rearRating, {
    '2': 'measureRunForShort',
    '4': 'measureRunForShort',
    '8': 'measureRunForShort',
    cannot: 'measureRunForShort',
  }),
  measureRunForShort: ask(runOhms, {
    low: 'pairIsShorted',
    open: 'noShortFound',
    high: 'noShortFound',
    unclear: 'noShortFound',
    ok: 'noShortFound',
    cannot: 'noShortFound',
  }),
  noShortFound: decide(
    { when: ampProtects, to: 'ampProtectsItself' },
    { when: replaced, to: 'replacedUnitIsSet' },
    { when: loomSuspected, to: 'loomIsOpen' },
    // A stored profile does not come and go.
    { when: comesAndGoes, to: 'shortListIsLeft' },
    { when: playedBefore, to: 'profileIsReverted' },
    { to: 'rearIsDisabled' },
  ),

  // Ways round the meter.
  withoutMeter: decide(
    { when: fedFromFront, to: 'tryCellOnRun' },
    { when: ampUnseen, to: 'tryCellOnRun' },
    { when: onAmplifier, to: 'swapInputPlugs' },
    { to: 'tryCellOnRun' },
  ),
  swapInputPlugs: ask(swapInputs, {
    plays: 'wiggleBeforeAmp',
    // No output is swapped onto a run that nobody measured: a short would take the good one, too.
    silent: [{ when: meterHere, to: 'frameBeforeSwap' }, { to: 'tryCellOnRun' }],
    cannot: [{ when: meterHere, to: 'shortListIsLeft' }, { to: 'tryCellOnRun' }],
  }),
  wiggleBeforeAmp: ask(wiggle, {
    'amp-input': 'inputPlugIsOff',
    'rear-run': 'shortListIsLeft',
    'amp-supply': 'ampHasNoPower',
    'no-effect': 'whyTheUnitIsSilent',
    cannot: 'whyTheUnitIsSilent',
  }),
  tryCellOnRun: ask(popRun, {
    moves: [
      { when: inputsNotSwapped, to: 'swapInputPlugs' },
      { when: onAmplifier, to: 'wiggleEverything' },
      { when: rearPairRead, to: 'wiggleEverything' },
      { to: 'whyTheUnitIsSilent' },
    ],
    dead: 'tryCellOnSpeaker',
    cannot: 'wiggleEverything',
  }),
  tryCellOnSpeaker: ask(popSpeaker, { dead: 'coilIsOpen', moves: 'splitRunByEye', cannot: 'wiggleEverything' }),
  splitRunByEye: decide({ when: meterHere, to: 'splitRun' }, { to: 'wireIsOpen' }),
  wiggleEverything: ask(wiggle, {
    'amp-input': 'inputPlugIsOff',
    'rear-run': 'wireIsOpen',
    'amp-supply': [{ when: onAmplifier, to: 'ampHasNoPower' }, { to: 'shortListIsLeft' }],
    'no-effect': [{ when: everythingRead, to: 'runIsHealthy' }, { to: 'shortListIsLeft' }],
    cannot: [{ when: everythingRead, to: 'runIsHealthy' }, { to: 'shortListIsLeft' }],
  }),

  // Verdicts.
  faderWasOff: conclude(faderOff),
  controlWasOff: conclude(rearControlOff),
  rearIsDisabled: conclude(rearChannelsDisabled),
  profileIsReverted: conclude(profileReverted),
  loomIsOpen: conclude(rearLoomOpen),
  replacedUnitIsSet: conclude(replacedUnitSetting),
  adapterHasAGap: conclude(adapterGap),
  inputPlugIsOff: conclude(ampInputPlugOff),
  selectorIsWrong: conclude(channelModeWrong),
  turnOnIsWrong: conclude(turnOnModeWrong),
  noDcReachesIt: conclude(senseNoHalfSupply),
  inputLegIsWrong: conclude(inputLegWrong),
  ampIsStarved: conclude(senseStarved),
  ampHasNoPower: conclude(ampOff),
  ampProtectsItself: conclude(ampProtecting),
  gainIsTooLow: conclude(ampInputTooLow),
  ampChannelIsDead: conclude(ampChannelDead),
  plugWasOff: conclude(rearPlugOff),
  contactsAreDirty: conclude(lidContactsDirty),
  lidLeadIsBroken: conclude(lidLeadBroken),
  wireIsOpen: conclude(speakerWireOpen),
  coilIsOpen: conclude(coilOpen),
  wireIsOnFrame: conclude(wireOnFrame),
  pairIsShorted: conclude(pairShorted),
  everythingIsHealthy: conclude(allHealthy),
  nothingPlaysAtAll: conclude(nothingPlays),
  oneSideIsSilent: conclude(oneSideSilent),
  shortListIsLeft: conclude(shortList),
});
