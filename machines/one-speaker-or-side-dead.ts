import { inputSides } from '../src/steps/amplifier/input-sides.ts';
import { outputSides } from '../src/steps/amplifier/output-sides.ts';
import { swapSidesIn } from '../src/steps/amplifier/swap-sides-in.ts';
import { swapSidesOut } from '../src/steps/amplifier/swap-sides-out.ts';
import { endsCompare } from '../src/steps/ears/ends-compare.ts';
import { fourCorners } from '../src/steps/ears/four-corners.ts';
import { rearHiss } from '../src/steps/ears/rear-hiss.ts';
import { rearRating } from '../src/steps/fitted/rear-rating.ts';
import { is } from '../src/steps/outcome.ts';
import { contactsLook } from '../src/steps/plugs/contacts-look.ts';
import { lidCheck } from '../src/steps/plugs/lid-check.ts';
import { pinLook } from '../src/steps/plugs/pin-look.ts';
import { signalLeadOhms } from '../src/steps/plugs/signal-lead-ohms.ts';
import { signalLeadTug } from '../src/steps/plugs/signal-lead-tug.ts';
import { speakerPlug } from '../src/steps/plugs/speaker-plug.ts';
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
import { about } from '../src/steps/subject.ts';
import { howQuiet } from '../src/steps/told/how-quiet.ts';
import { metersDigit } from '../src/steps/tools/meter-digit.ts';
import { toolsAtHand } from '../src/steps/tools/tools-at-hand.ts';
import { adapterPairs } from '../src/steps/unit/adapter-pairs.ts';
import { unitReplug } from '../src/steps/unit/unit-replug.ts';
import { unitSides } from '../src/steps/unit/unit-sides.ts';
import { before, flow } from './kit.ts';
import { opening } from './one-speaker-or-side-dead.opening.ts';

/** What the opening begins with: which speaker it is. */
const whichCorner = opening.fitted.slice(0, 1);

/** The same step about the front: only one axle is asked about, the one that the silent speaker is on. */
const front = {
  corners: about(fourCorners, 'front'),
  pop: about(popRun, 'front'),
  ohms: about(runOhms, 'front'),
  toFrame: about(wireToFrame, 'front'),
  atUnit: about(unitSides, 'front'),
  in: about(inputSides, 'front'),
  out: about(outputSides, 'front'),
};

/** One speaker, or one side, is silent or much weaker than its partner, which plays. */
export const oneSpeakerOrSideDead = flow(opening, {
  look: [
    endsCompare,
    howQuiet,
    faderCentre,
    fourCorners,
    front.corners,
    rearHiss,
    lidCheck,
    contactsLook,
    speakerPlug,
    wiggle,
    secondLook,
    pinLook,
    signalLeadTug,
    unitReplug,
    adapterPairs,
    swapSidesIn,
    swapSidesOut,
    popRun,
    front.pop,
    popSpeaker,
    bulbToFrame,
    toolsAtHand,
  ],
  measure: [
    rearRating,
    runOhms,
    front.ohms,
    runSplit,
    coilOhms,
    wireToFrame,
    front.toFrame,
    metersDigit,
    unitSides,
    front.atUnit,
    inputSides,
    front.in,
    outputSides,
    front.out,
    signalLeadOhms,
  ],
  safe: [
    // The balance before all that it changes.
    before(fourCorners, faderCentre),
    before(front.corners, faderCentre),
    // Nothing is taken apart further than the look before it asks for.
    before(contactsLook, lidCheck),
    before(secondLook, lidCheck),
    // An ear at the grille is no use once its wire is off.
    before(popSpeaker, popRun, front.pop, howQuiet),
    before(runOhms, rearRating),
    before(runSplit, runOhms),
    before(coilOhms, runOhms, front.ohms),
    // A short on the run would take the good channel with it, and hides what an output gives.
    before(swapSidesOut, rearHiss, runOhms, front.ohms, wireToFrame, front.toFrame),
    before(unitSides, faderCentre, metersDigit, runOhms, wireToFrame),
    before(front.atUnit, faderCentre, metersDigit, front.ohms, front.toFrame),
    before(inputSides, faderCentre, metersDigit),
    before(front.in, faderCentre, metersDigit),
    before(outputSides, faderCentre, metersDigit),
    before(front.out, faderCentre, metersDigit),
  ],
  causes: [
    'fader-or-balance-off',
    'rear-plug-off',
    'front-plug-bad',
    'lid-contacts-dirty',
    'lid-lead-broken',
    'second-connector-dirty',
    'looms-unjoined',
    'speaker-wire-open',
    'speaker-wire-to-frame',
    'speaker-pair-shorted',
    'coil-open',
    'unit-plug-dirty',
    'adapter-without-one-pair',
    'unit-channel-dead',
    'amp-input-plug-off',
    'input-pin-pushed-back',
    'signal-lead-open',
    'amp-channel-dead',
    'polarity-swapped',
  ],
  handsOver: [
    {
      flow: 'no-rear-sound',
      title: 'Both rear speakers are silent',
      because: 'Both rear speakers are silent: a setting, a profile, a feed. That is looked for in the next part.',
      isIt: {
        when: (f) => is(f, 'which-corner', 'rear') || is(f, 'four-corners', 'no-rear', 'rear-weak'),
        by: whichCorner,
      },
      told: { 'which-silent': { option: 'both' } },
      causes: [],
    },
    {
      flow: 'amp-wont-turn-on',
      title: 'The amplifier is off, or protects itself',
      because:
        'More than one side is silent, and an amplifier drives it. Whether that is on is looked for in the next part.',
      isIt: { when: (f) => is(f, 'which-corner', 'front') && is(f, 'front-fed', 'amp'), by: whichCorner },
      causes: [],
    },
    {
      flow: 'no-sound-at-all',
      title: 'Nothing plays at all',
      because: 'Nothing plays anywhere: that is another complaint, and is looked for in the next part.',
      isIt: { when: (f) => is(f, 'which-corner', 'all'), by: whichCorner },
      causes: [],
    },
  ],
});
