import { ampDriving } from '../src/rig/rig.ts';
import { ampIn } from '../src/steps/amplifier/amp-in.ts';
import { ampLight } from '../src/steps/amplifier/amp-light.ts';
import { ampOut } from '../src/steps/amplifier/amp-out.ts';
import { ampSwitches } from '../src/steps/amplifier/amp-switches.ts';
import { halfSupply } from '../src/steps/amplifier/half-supply.ts';
import { silencedByGain } from '../src/steps/amplifier/silenced-by-gain.ts';
import { swapInputs } from '../src/steps/amplifier/swap-inputs.ts';
import { swapOutputs } from '../src/steps/amplifier/swap-outputs.ts';
import { fourCorners } from '../src/steps/ears/four-corners.ts';
import { rearHiss } from '../src/steps/ears/rear-hiss.ts';
import { deliveredWith } from '../src/steps/fitted/delivered-with.ts';
import { fedFromRear } from '../src/steps/fitted/fed-from.ts';
import { frontDrive } from '../src/steps/fitted/front-drive.ts';
import { rearAmpInput } from '../src/steps/fitted/rear-amp-input.ts';
import { rearAmpTurnOn } from '../src/steps/fitted/rear-amp-turn-on.ts';
import { rearDrive } from '../src/steps/fitted/rear-drive.ts';
import { rearInputs } from '../src/steps/fitted/rear-inputs.ts';
import { rearRating } from '../src/steps/fitted/rear-rating.ts';
import { unitKind } from '../src/steps/fitted/unit-kind.ts';
import type { StepId } from '../src/steps/ids.ts';
import { type Findings, is } from '../src/steps/outcome.ts';
import { contactsLook } from '../src/steps/plugs/contacts-look.ts';
import { lidCheck } from '../src/steps/plugs/lid-check.ts';
import { wiggle } from '../src/steps/plugs/wiggle.ts';
import { coilOhms } from '../src/steps/runs/coil-ohms.ts';
import { popRun } from '../src/steps/runs/pop-run.ts';
import { popSpeaker } from '../src/steps/runs/pop-speaker.ts';
import { runOhms } from '../src/steps/runs/run-ohms.ts';
import { runSplit } from '../src/steps/runs/run-split.ts';
import { silencedByOhms } from '../src/steps/runs/silenced-by-ohms.ts';
import { wireToFrame } from '../src/steps/runs/wire-to-frame.ts';
import { faderCentre } from '../src/steps/settings/fader-centre.ts';
import { rearControl } from '../src/steps/settings/rear-control.ts';
import { lastChange } from '../src/steps/told/last-change.ts';
import { rearHistory } from '../src/steps/told/rear-history.ts';
import { metersDigit } from '../src/steps/tools/meter-digit.ts';
import { toolsAtHand } from '../src/steps/tools/tools-at-hand.ts';
import { rearPair } from '../src/steps/unit/rear-pair.ts';
import { rearPairAgain } from '../src/steps/unit/rear-pair-again.ts';
import { rearPairFound, rearPairSilent } from '../src/steps/unit/rear-pair-found.ts';
import { rearPairPlace } from '../src/steps/unit/rear-pair-place.ts';
import {
  ampChannelDead,
  ampInputPlugOff,
  ampInputTooLow,
  ampOff,
  ampProtecting,
  channelModeWrong,
  inputLegWrong,
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

const asked = (f: Findings, step: StepId) => f.outcome(step) !== undefined;
const read = (f: Findings, step: StepId) => asked(f, step) && !is(f, step, 'cannot');

const isFactoryAmp = (f: Findings) => ampDriving(f.rig, 'rear')?.kind === 'factory';

const onAmplifier = claim('the rear is driven by an amplifier', (f) => is(f, 'rear-drive', 'amp'));
const fedFromFront = claim(
  'the amplifier takes everything from the front pair',
  (f) => onAmplifier.holds(f) && !fedFromRear(f),
);
const replaced = claim('the head unit was replaced', (f) => is(f, 'unit-kind', 'replaced'));
const speakerFed = claim('speaker wires feed the amplifier', (f) => !is(f, 'rear-amp-input', 'line'));
const meterHere = claim('a meter is at hand', (f) => is(f, 'tools-at-hand', 'meter'));
const frontPlaysOnIt = claim(
  'the same amplifier makes the front play',
  (f) => onAmplifier.holds(f) && is(f, 'front-drive', 'same'),
);
const ampIsOff = claim('the amplifier’s lamp is off', (f) => is(f, 'amp-light', 'off'));
const hisses = claim(
  'the amplifier is heard at a rear speaker',
  (f) => is(f, 'rear-hiss', 'hiss') || is(f, 'lid-check', 'hiss-now'),
);
const ampIsAlive = claim(
  'the amplifier was heard or seen to be on',
  (f) => hisses.holds(f) || is(f, 'amp-light', 'normal') || frontPlaysOnIt.holds(f),
);
const ampUnseen = claim(
  'nobody heard or saw whether the amplifier is on',
  (f) => onAmplifier.holds(f) && !ampIsAlive.holds(f) && !ampIsOff.holds(f),
);
// An amplifier that is on and not heard has lost its speakers, or its rear channels.
const onAndUnheard = claim(
  'the amplifier is on, and the rear speakers do not even hiss',
  (f) => onAmplifier.holds(f) && ampIsAlive.holds(f) && is(f, 'rear-hiss', 'silent') && !hisses.holds(f),
);
const faderNotTried = claim('nobody moved the fader yet', (f) => !asked(f, 'fader-centre'));
const lidsNotMoved = claim('nobody moved the lids yet', (f) => !asked(f, 'lid-check'));
const cornersNotHeard = claim('nobody listened at each corner yet', (f) => !asked(f, 'four-corners'));
const selectorsUnread = claim(
  'the amplifier has selectors that nobody read yet',
  (f) => onAmplifier.holds(f) && !isFactoryAmp(f) && !asked(f, 'amp-switches') && !ampIsOff.holds(f),
);
const pushingCured = claim('pushing the plug home cured it', (f) => is(f, 'lid-check', 'cured'));
const playedBefore = claim('the rear played before', (f) => is(f, 'rear-history', 'stopped'));
const comesAndGoes = claim(
  'the rear comes and goes, and no loose plug was found that explains it',
  (f) => is(f, 'rear-history', 'comes-and-goes') && !is(f, 'lid-check', 'hiss-now'),
);
const workedOn = claim('somebody worked on the head unit or the bike', (f) => headUnitWorkedOn(f));
const rearPairRead = claim('a signal was read on both rear pairs', (f) =>
  ['ok', 'uneven'].includes(rearPairFound(f) ?? ''),
);
const oneRearPairRead = claim('a signal was read on one of the two rear pairs', (f) => rearPairFound(f) === 'one-only');
const rearPairIsSilent = claim('the rear pairs were read, and give nothing that an ear hears', rearPairSilent);
const signalUnread = claim(
  'a meter is at hand, and no signal was measured yet',
  (f) => meterHere.holds(f) && !asked(f, 'rear-pair') && !asked(f, 'amp-in'),
);
const loomSuspected = claim(
  'a joint before the measured point explains it better than a stored profile',
  (f) =>
    rearPairIsSilent.holds(f) &&
    !is(f, 'rear-pair-place', 'unit') &&
    (comesAndGoes.holds(f) || (playedBefore.holds(f) && !workedOn.holds(f))),
);
const everythingRead = claim(
  'signal and run were both read and are healthy',
  (f) => rearPairRead.holds(f) && read(f, 'run-ohms'),
);
const runUntried = claim(
  'the run was neither measured nor tried',
  (f) => !asked(f, 'run-ohms') && !asked(f, 'pop-run'),
);
const runFirst = claim(
  'the run is the nearest thing that can be wrong',
  (f) => runUntried.holds(f) && (!onAmplifier.holds(f) || onAndUnheard.holds(f)),
);
const oneCornerSilent = claim('one rear corner is silent and the other plays', (f) =>
  is(f, 'four-corners', 'one-corner'),
);
const silencedByContact = claim(
  'the ohms are enough to silence it, or it comes and goes',
  (f) => comesAndGoes.holds(f) || silencedByOhms(f.values('run-ohms'), f),
);
const mayHearNothing = claim(
  'it may be off because nothing reaches it',
  (f) => ampIsOff.holds(f) && !is(f, 'amp-in', 'ok'),
);
const ampInRead = claim('the rear signal was read at the amplifier', (f) => is(f, 'amp-in', 'ok'));
const inputsNotSwapped = claim(
  'the front plugs can be tried in the rear inputs, and nobody did yet',
  (f) => onAmplifier.holds(f) && !fedFromFront.holds(f) && !asked(f, 'swap-inputs'),
);
const rangeIsWrong = claim('the amplifier’s range or gain was seen to be wrong', (f) => is(f, 'amp-switches', 'range'));
const outputRead = claim('something was read at the amplifier’s rear outputs', (f) => is(f, 'amp-out', 'ok', 'low'));
const outputIsLow = claim('little was read at the amplifier’s rear outputs', (f) => is(f, 'amp-out', 'low'));
const lidSideOpen = claim('it is open from the lid’s half of the plug', (f) => is(f, 'run-split', 'lid-side'));

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
    nothing: 'isThereAnAmplifier',
    fitted: 'isThereAnAmplifier',
    workshop: 'isThereAnAmplifier',
    reflash: 'isThereAnAmplifier',
    unit: 'isThereAnAmplifier',
    opened: 'isThereAnAmplifier',
    battery: 'isThereAnAmplifier',
    cannot: 'isThereAnAmplifier',
  }),
  isThereAnAmplifier: decide({ when: onAmplifier, to: 'askFrontDrive' }, { to: 'centreFader' }),

  // An amplifier first: on or off, heard or not, says on which side of it to look.
  askFrontDrive: ask(frontDrive, {
    same: 'listenForHiss',
    unit: 'lookAtLamp',
    other: 'lookAtLamp',
    cannot: 'lookAtLamp',
  }),
  lookAtLamp: ask(ampLight, {
    normal: 'listenForHiss',
    off: 'askTurnOn',
    fault: 'ampProtectsItself',
    cannot: 'listenForHiss',
  }),
  // One that listens on silent rear wires sleeps for a good reason: settings and head unit come first.
  askTurnOn: ask(rearAmpTurnOn, {
    wire: 'ampHasNoPower',
    dc: 'ampHasNoPower',
    signal: 'askRearInputs',
    cannot: 'askRearInputs',
  }),
  listenForHiss: ask(rearHiss, {
    hiss: 'askRearInputs',
    silent: [{ when: onAndUnheard, to: 'moveLids' }, { to: 'askRearInputs' }],
    cannot: 'askRearInputs',
  }),
  // Where everything comes from the front pair, the fader has no say, and silent rear outputs are as they should be.
  askRearInputs: ask(rearInputs, { own: 'settings', front: 'settings', cannot: 'settings' }),

  // Settings, where they can be it.
  settings: decide(
    {
      when: claim('it hisses, and the fader has no say', (f) => hisses.holds(f) && fedFromFront.holds(f)),
      to: 'afterSettings',
    },
    { to: 'centreFader' },
  ),
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
    'no-change': 'afterSettings',
    none: 'afterSettings',
    cannot: 'afterSettings',
  }),
  afterSettings: decide(
    {
      when: claim(
        'it hisses behind a replaced head unit, whose menu and adapter are likelier than a selector',
        (f) => hisses.holds(f) && replaced.holds(f) && !fedFromFront.holds(f),
      ),
      to: 'askTools',
    },
    { when: hisses, to: 'selectors' },
    { when: ampIsOff, to: 'askTools' },
    { when: claim('the run was tried', (f) => onAmplifier.holds(f) && !runUntried.holds(f)), to: 'askTools' },
    { when: lidsNotMoved, to: 'moveLids' },
    { to: 'afterLids' },
  ),

  // The plugs that are opened every week.
  moveLids: ask(lidCheck, {
    cured: 'lookAtContacts',
    reacts: 'lookAtContacts',
    'no-effect': 'afterLids',
    // The plug was off, and something before the amplifier is wrong as well.
    'hiss-now': 'askRearInputs',
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
  afterLids: decide({ when: runFirst, to: 'askTools' }, { to: 'selectors' }),

  selectors: decide({ when: selectorsUnread, to: 'readSelectors' }, { to: 'askTools' }),
  readSelectors: ask(ampSwitches, {
    right: 'askTools',
    mode: 'selectorIsWrong',
    // A low gain makes it weak. Whether it is low enough for silence, a reading tells.
    range: 'askTools',
    'turn-on': [{ when: ampUnseen, to: 'ampHasNoPower' }, { to: 'askTools' }],
    cannot: 'askTools',
  }),

  // Readings: the run first where it is nearest, then the chain from the head unit on.
  askTools: ask(toolsAtHand, {
    meter: [{ when: runFirst, to: 'askRating' }, { to: 'askMeter' }],
    none: 'withoutMeter',
    cannot: 'withoutMeter',
  }),
  askRating: ask(rearRating, { '2': 'measureRun', '4': 'measureRun', '8': 'measureRun', cannot: 'measureRun' }),
  measureRun: ask(runOhms, {
    open: 'splitRun',
    // A few ohms too much make it quieter, never silent.
    high: [{ when: silencedByContact, to: 'contactsAreDirty' }, { to: 'runIsHealthy' }],
    low: 'pairIsShorted',
    unclear: 'runIsHealthy',
    ok: 'runIsHealthy',
    cannot: 'tryCellOnRun',
  }),
  splitRun: ask(runSplit, {
    // A lead that breaks inside the lid would have reacted. The coil is measured before anything is bought.
    'lid-side': [
      { when: claim('moving the lid changed nothing', (f) => is(f, 'lid-check', 'no-effect')), to: 'coilIsOpen' },
      { to: 'measureCoil' },
    ],
    contacts: 'contactsAreDirty',
    'bike-side': 'wireIsOpen',
    'no-plug': 'measureCoil',
    cannot: 'measureCoil',
  }),
  measureCoil: ask(coilOhms, {
    open: 'coilIsOpen',
    low: 'pairIsShorted',
    ok: 'coilIsGood',
    unclear: 'coilIsGood',
    cannot: 'tryCellOnSpeaker',
  }),
  coilIsGood: decide(
    { when: lidSideOpen, to: 'lidLeadIsBroken' },
    { when: claim('the plug could not be measured', (f) => is(f, 'run-split', 'cannot')), to: 'shortListIsLeft' },
    { to: 'wireIsOpen' },
  ),
  runIsHealthy: decide(
    { when: claim('the head unit drives the rear itself', (f) => !onAmplifier.holds(f)), to: 'measureToFrame' },
    {
      when: claim(
        'the front outputs play, and nobody tried the rear on them',
        (f) => frontPlaysOnIt.holds(f) && signalUnread.holds(f),
      ),
      to: 'frameBeforeSwap',
    },
    { when: signalUnread, to: 'beforeReadings' },
    { to: 'afterReadings' },
  ),
  beforeReadings: decide({ when: faderNotTried, to: 'askRearInputs' }, { to: 'askTools' }),
  // A wire on the frame reads its coil all the same, and what drives it protects itself.
  measureToFrame: ask(wireToFrame, {
    shorted: 'wireIsOnFrame',
    clear: 'askMeter',
    unclear: 'askMeter',
    cannot: 'askMeter',
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
    // A channel without a signal looks like a dead output, so the missing one is mended first.
    'one-only': 'oneSideIsSilent',
    cannot: [{ when: oneRearPairRead, to: 'oneSideIsSilent' }, { to: 'afterTheUnit' }],
  }),
  afterTheUnit: decide(
    {
      when: claim(
        'the signal leaves the head unit, the amplifier hisses, and its range or gain was seen to be wrong',
        (f) => (rearPairRead.holds(f) || fedFromFront.holds(f)) && hisses.holds(f) && rangeIsWrong.holds(f),
      ),
      to: 'gainIsTooLow',
    },
    { when: onAmplifier, to: 'askAmpInput' },
    { to: 'afterReadings' },
  ),

  askAmpInput: ask(rearAmpInput, { speaker: 'measureAmpIn', line: 'measureAmpIn', cannot: 'measureAmpIn' }),
  measureAmpIn: ask(ampIn, {
    ok: [{ when: ampIsOff, to: 'ampHasNoPower' }, { to: 'beforeOutputs' }],
    // Half of it is what one wire of a pair alone brings.
    low: [{ when: speakerFed, to: 'measureHalfSupply' }, { to: 'inputPlugIsOff' }],
    none: 'inputPlugIsOff',
    cannot: [{ when: mayHearNothing, to: 'shortListIsLeft' }, { to: 'beforeOutputs' }],
  }),
  measureHalfSupply: ask(halfSupply, {
    'one-odd': 'inputLegIsWrong',
    zero: 'inputPlugIsOff',
    half: 'inputPlugIsOff',
    unclear: 'inputPlugIsOff',
    cannot: 'inputPlugIsOff',
  }),
  beforeOutputs: decide(
    {
      when: claim('it hisses, and nobody read its selectors', (f) => hisses.holds(f) && selectorsUnread.holds(f)),
      to: 'readSelectors',
    },
    { to: 'measureAmpOut' },
  ),
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
      { to: 'afterOutputs' },
    ],
    ok: 'afterOutputs',
    cannot: 'afterOutputs',
  }),
  // What hisses has a whole run.
  afterOutputs: decide(
    {
      when: claim('the run was not tried, and not heard', (f) => runUntried.holds(f) && !hisses.holds(f)),
      to: 'askRating',
    },
    { to: 'afterReadings' },
  ),

  // Signal and run are known, as far as they could be measured.
  afterReadings: decide(
    {
      when: claim(
        'it comes and goes, and no plug was pressed yet',
        (f) => comesAndGoes.holds(f) && everythingRead.holds(f) && !asked(f, 'wiggle'),
      ),
      to: 'wiggleEverything',
    },
    { when: oneRearPairRead, to: 'oneSideIsSilent' },
    {
      when: claim(
        'its outputs give something, and the rear speakers hiss',
        (f) => outputRead.holds(f) && hisses.holds(f),
      ),
      to: 'listenOnceMore',
    },
    { when: outputRead, to: 'frameAtLast' },
    {
      when: claim('the signal was read at its inputs', (f) => onAmplifier.holds(f) && ampInRead.holds(f)),
      to: 'frameBeforeSwap',
    },
    { when: fedFromFront, to: 'shortListIsLeft' },
    { when: onAmplifier, to: 'swapInputPlugs' },
    {
      when: claim('nobody could try the run', (f) => is(f, 'run-ohms', 'cannot') && is(f, 'pop-run', 'cannot')),
      to: 'shortListIsLeft',
    },
    {
      when: claim(
        'the replaced unit sends, the run is good, and yet it is silent',
        (f) => rearPairRead.holds(f) && replaced.holds(f),
      ),
      to: 'adapterHasAGap',
    },
    { when: rearPairRead, to: 'listenOnceMore' },
    { to: 'whyTheUnitIsSilent' },
  ),
  // A wire on the frame reads its coil all the same, and silences an output only while it is plugged in.
  frameAtLast: ask(wireToFrame, {
    shorted: 'wireIsOnFrame',
    clear: 'listenOnceMore',
    unclear: 'listenOnceMore',
    cannot: 'listenOnceMore',
  }),
  // A short kills whatever output is swapped onto it.
  frameBeforeSwap: ask(wireToFrame, {
    shorted: 'wireIsOnFrame',
    clear: 'swapOutputPlugs',
    unclear: 'afterNoSwap',
    cannot: 'afterNoSwap',
  }),
  swapOutputPlugs: ask(swapOutputs, {
    plays: [
      { when: outputRead, to: 'gainIsTooLow' },
      { when: rangeIsWrong, to: 'gainIsTooLow' },
      { to: 'ampChannelIsDead' },
    ],
    silent: 'afterNoSwap',
    cannot: 'afterNoSwap',
  }),
  afterNoSwap: decide({ when: signalUnread, to: 'beforeReadings' }, { to: 'shortListIsLeft' }),
  // Everything is healthy. Then perhaps the complaint is another one.
  listenOnceMore: ask(fourCorners, {
    all: [{ when: comesAndGoes, to: 'everythingIsHealthy' }, { to: 'faderWasOff' }],
    'no-rear': [{ when: outputIsLow, to: 'gainIsTooLow' }, { to: 'everythingIsHealthy' }],
    'one-corner': 'oneSideIsSilent',
    'one-side': 'oneSideIsSilent',
    none: 'nothingPlaysAtAll',
    cannot: [{ when: outputIsLow, to: 'gainIsTooLow' }, { to: 'everythingIsHealthy' }],
  }),

  // The head unit lets nothing out: which of the reasons is decided by what is fitted and what happened before.
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
  whichUnit: decide(
    {
      when: claim('a joint explains the replaced unit', (f) => replaced.holds(f) && loomSuspected.holds(f)),
      to: 'loomIsOpen',
    },
    { when: replaced, to: 'replacedUnitIsSet' },
    { to: 'askDelivered' },
  ),
  askDelivered: ask(deliveredWith, { two: 'whichProfile', four: 'whichProfile', cannot: 'whichProfile' }),
  whichProfile: decide(
    { when: loomSuspected, to: 'loomIsOpen' },
    // A stored profile does not come and go.
    { when: comesAndGoes, to: 'shortListIsLeft' },
    { when: playedBefore, to: 'profileIsReverted' },
    { to: 'rearIsDisabled' },
  ),

  // Ways round the meter: ears first, all of them.
  withoutMeter: decide(
    { when: ampIsOff, to: 'ampHasNoPower' },
    { when: faderNotTried, to: 'centreFader' },
    { when: lidsNotMoved, to: 'moveLids' },
    { when: selectorsUnread, to: 'readSelectors' },
    { when: cornersNotHeard, to: 'listenAtCorners' },
    { when: fedFromFront, to: 'tryCellOnRun' },
    { when: ampUnseen, to: 'tryCellOnRun' },
    { when: onAmplifier, to: 'swapInputPlugs' },
    { to: 'tryCellOnRun' },
  ),
  listenAtCorners: ask(fourCorners, {
    all: [{ when: comesAndGoes, to: 'wiggleWhilePlaying' }, { to: 'faderWasOff' }],
    'no-rear': 'withoutMeter',
    'one-corner': 'withoutMeter',
    'one-side': 'oneSideIsSilent',
    none: 'nothingPlaysAtAll',
    cannot: 'withoutMeter',
  }),
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
    'no-effect': 'whoSilencesTheInputs',
    cannot: 'whoSilencesTheInputs',
  }),
  whoSilencesTheInputs: decide({ when: rearPairRead, to: 'inputPlugIsOff' }, { to: 'whyTheUnitIsSilent' }),
  tryCellOnRun: ask(popRun, {
    moves: [
      { when: meterHere, to: 'runIsHealthy' },
      { when: inputsNotSwapped, to: 'swapInputPlugs' },
      { when: onAmplifier, to: 'wiggleEverything' },
      { to: 'whyTheUnitIsSilent' },
    ],
    dead: 'tryCellOnSpeaker',
    cannot: 'wiggleEverything',
  }),
  tryCellOnSpeaker: ask(popSpeaker, { dead: 'coilIsOpen', moves: 'splitRunByEye', cannot: 'wiggleEverything' }),
  splitRunByEye: decide(
    { when: lidSideOpen, to: 'lidLeadIsBroken' },
    {
      when: claim('the plug can be measured, and was not yet', (f) => meterHere.holds(f) && !asked(f, 'run-split')),
      to: 'splitRun',
    },
    { to: 'wireIsOpen' },
  ),
  wiggleEverything: ask(wiggle, {
    'amp-input': 'inputPlugIsOff',
    'rear-run': 'wireIsOpen',
    'amp-supply': [{ when: onAmplifier, to: 'ampHasNoPower' }, { to: 'shortListIsLeft' }],
    'no-effect': 'afterWiggling',
    cannot: 'afterWiggling',
  }),
  afterWiggling: decide(
    { when: signalUnread, to: 'runIsHealthy' },
    { when: everythingRead, to: 'afterReadings' },
    { to: 'shortListIsLeft' },
  ),

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
  inputLegIsWrong: conclude(inputLegWrong),
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
