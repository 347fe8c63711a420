import { ampIn } from '../src/steps/amplifier/amp-in.ts';
import { ampLight } from '../src/steps/amplifier/amp-light.ts';
import { ampOut } from '../src/steps/amplifier/amp-out.ts';
import { ampSwitches } from '../src/steps/amplifier/amp-switches.ts';
import { halfSupply } from '../src/steps/amplifier/half-supply.ts';
import { swapInputs } from '../src/steps/amplifier/swap-inputs.ts';
import { swapOutputs } from '../src/steps/amplifier/swap-outputs.ts';
import { fourCorners } from '../src/steps/ears/four-corners.ts';
import { frontPlays } from '../src/steps/ears/front-plays.ts';
import { rearHiss } from '../src/steps/ears/rear-hiss.ts';
import { ampMayBeFitted } from '../src/steps/fitted/amp-there.ts';
import { deliveredWith } from '../src/steps/fitted/delivered-with.ts';
import { rearAmpInput } from '../src/steps/fitted/rear-amp-input.ts';
import { rearRating } from '../src/steps/fitted/rear-rating.ts';
import { type Findings, is } from '../src/steps/outcome.ts';
import { contactsLook } from '../src/steps/plugs/contacts-look.ts';
import { inputPlug } from '../src/steps/plugs/input-plug.ts';
import { lidCheck } from '../src/steps/plugs/lid-check.ts';
import { pinLook } from '../src/steps/plugs/pin-look.ts';
import { signalLeadOhms } from '../src/steps/plugs/signal-lead-ohms.ts';
import { signalLeadTug } from '../src/steps/plugs/signal-lead-tug.ts';
import { wiggle } from '../src/steps/plugs/wiggle.ts';
import { bulbToFrame } from '../src/steps/runs/bulb-to-frame.ts';
import { coilOhms } from '../src/steps/runs/coil-ohms.ts';
import { popRun } from '../src/steps/runs/pop-run.ts';
import { popSpeaker } from '../src/steps/runs/pop-speaker.ts';
import { runOhms } from '../src/steps/runs/run-ohms.ts';
import { runSplit } from '../src/steps/runs/run-split.ts';
import { secondLook } from '../src/steps/runs/second-look.ts';
import { wireToFrame } from '../src/steps/runs/wire-to-frame.ts';
import { faderCentre } from '../src/steps/settings/fader-centre.ts';
import { rearControl } from '../src/steps/settings/rear-control.ts';
import { toldSilentSide } from '../src/steps/told/silent-side.ts';
import { metersDigit } from '../src/steps/tools/meter-digit.ts';
import { toolsAtHand } from '../src/steps/tools/tools-at-hand.ts';
import { adapterLook } from '../src/steps/unit/adapter-look.ts';
import { rearPair } from '../src/steps/unit/rear-pair.ts';
import { rearPairAgain } from '../src/steps/unit/rear-pair-again.ts';
import { unitPlugLook } from '../src/steps/unit/unit-plug-look.ts';
import { unitReplug } from '../src/steps/unit/unit-replug.ts';
import { before, flow } from './kit.ts';
import { opening } from './no-rear-sound.opening.ts';
import { REAR_NOT_SENT, SUPPLY_CAUSES } from './shared-causes.ts';

/** What the opening asks of the past first: which of them are silent. */
const whichSilent = opening.told.slice(0, 1);

/** Whoever says so was sent here by an amplifier that is on now, or has begun at the wrong complaint. */
const isSilentThroughout = (f: Findings): boolean =>
  is(f, 'which-silent', 'front-too') && !is(f, 'front-plays', 'plays', 'weak', 'one-side');

/** No sound from the rear: the front plays, the rear speakers do not. */
export const noRearSound = flow(opening, {
  look: [
    frontPlays,
    ampLight,
    rearHiss,
    faderCentre,
    rearControl,
    fourCorners,
    lidCheck,
    contactsLook,
    ampSwitches,
    adapterLook,
    wiggle,
    inputPlug,
    pinLook,
    signalLeadTug,
    secondLook,
    unitPlugLook,
    unitReplug,
    bulbToFrame,
    swapInputs,
    popRun,
    popSpeaker,
    deliveredWith,
    toolsAtHand,
  ],
  measure: [
    rearRating,
    runOhms,
    runSplit,
    coilOhms,
    wireToFrame,
    metersDigit,
    rearPair,
    rearPairAgain,
    rearAmpInput,
    ampIn,
    signalLeadOhms,
    halfSupply,
    ampOut,
    swapOutputs,
  ],
  safe: [
    // Settings before readings that they change; the chain is followed from where the sound begins.
    before(fourCorners, faderCentre),
    before(rearPair, faderCentre, metersDigit),
    before(ampIn, faderCentre, metersDigit, rearAmpInput),
    before(ampOut, faderCentre, metersDigit, ampIn),
    before(halfSupply, rearAmpInput),
    // Nothing is taken apart further than the reading before it asks for.
    before(contactsLook, lidCheck),
    before(runOhms, rearRating),
    before(coilOhms, runOhms),
    // Where a push brings it back, nothing is taken apart to be read.
    before(runSplit, runOhms, lidCheck),
    before(popSpeaker, popRun),
    before(secondLook, lidCheck),
    // A short on the run would take the good output with it.
    before(swapOutputs, rearHiss, runOhms, wireToFrame),
  ],
  causes: [
    ...REAR_NOT_SENT,
    'amp-input-plug-off',
    'input-pin-pushed-back',
    'signal-lead-open',
    'converter-dead',
    'channel-mode-wrong',
    'amp-input-too-low',
    'amp-channel-dead',
    'rear-plug-off',
    'lid-contacts-dirty',
    'unit-plug-dirty',
    'second-connector-dirty',
    'looms-unjoined',
    'rear-pairs-crossed',
    'lid-lead-broken',
    'speaker-wire-open',
    'speaker-wire-to-frame',
    'speaker-pair-shorted',
    'coil-open',
  ],
  handsOver: [
    {
      flow: 'one-speaker-or-side-dead',
      title: 'One rear speaker only',
      because: 'Only one of the rear speakers is silent. The next part holds it against its partner.',
      isIt: { when: (f) => is(f, 'which-silent', 'left', 'right'), by: whichSilent },
      told: ({ facts }) => ({ 'which-corner': { option: `rear-${toldSilentSide(facts)}` } }),
      causes: [],
    },
    {
      flow: 'no-sound-at-all',
      title: 'No speaker plays at all',
      because: 'The front is silent as well. What silences everything at once is looked for in the next part.',
      isIt: { when: isSilentThroughout, by: [...whichSilent, frontPlays] },
      causes: [],
    },
    {
      flow: 'amp-wont-turn-on',
      title: 'The amplifier is off, or protects itself',
      because: 'The amplifier itself is off or protects itself. What keeps it so is looked for in the next part.',
      sensible: ampMayBeFitted,
      causes: [
        ...SUPPLY_CAUSES,
        'remote-wire-open',
        'remote-source-dead',
        'remote-volts-low',
        'adapter-without-remote',
        'turn-on-mode-wrong',
        'sense-starved',
        'sense-no-half-supply',
        'input-dc',
        'amp-body-fuse-open',
        'amp-dead',
        'amp-shorted-inside',
        'amp-output-dc',
        'amp-too-hot',
        'water-inside',
        'unit-feed-missing',
        'battery-undercharged',
        'battery-worn',
        'battery-cuts-off',
        'charging-too-low',
        'charging-too-high',
      ],
    },
  ],
});
