import { ampOhms } from '../src/steps/amplifier/amp-ohms.ts';
import { ampChannels } from '../src/steps/fitted/amp-channels.ts';
import { batteryKind } from '../src/steps/fitted/battery-kind.ts';
import { ampTerminals } from '../src/steps/supply/amp-terminals.ts';
import { bodyFuse } from '../src/steps/supply/body-fuse.ts';
import { breakerLook } from '../src/steps/supply/breaker-look.ts';
import { chargingVolts } from '../src/steps/supply/charging-volts.ts';
import { copperLook } from '../src/steps/supply/copper-look.ts';
import { fuseLamp } from '../src/steps/supply/fuse-lamp.ts';
import { fuseLook } from '../src/steps/supply/fuse-look.ts';
import { fuseOhms } from '../src/steps/supply/fuse-ohms.ts';
import { fuseSides } from '../src/steps/supply/fuse-sides.ts';
import { jointDrop } from '../src/steps/supply/joint-drop.ts';
import { leadOffAmp } from '../src/steps/supply/lead-off-amp.ts';
import { lowestVolts } from '../src/steps/supply/lowest-volts.ts';
import { plusPath } from '../src/steps/supply/plus-path.ts';
import { ringsLook } from '../src/steps/supply/rings-look.ts';
import { sharedScrew } from '../src/steps/supply/shared-screw.ts';
import { spareFuse } from '../src/steps/supply/spare-fuse.ts';
import { supplyUnderLoad } from '../src/steps/supply/supply-under-load.ts';
import { supplyWiggle } from '../src/steps/supply/supply-wiggle.ts';
import { temporaryLeads } from '../src/steps/supply/temporary-leads.ts';
import { before } from './kit.ts';

/* How the supply of an amplifier is followed: by eye and hand, with a lamp and leads, and with a meter. */

export const SUPPLY_LOOK = [
  supplyWiggle,
  ringsLook,
  sharedScrew,
  copperLook,
  batteryKind,
  breakerLook,
  fuseLook,
  bodyFuse,
];

export const SUPPLY_TRIALS = [fuseLamp, leadOffAmp, spareFuse, temporaryLeads];

export const SUPPLY_MEASURE = [
  ampTerminals,
  fuseSides,
  fuseOhms,
  ampOhms,
  ampChannels,
  supplyUnderLoad,
  plusPath,
  jointDrop,
  lowestVolts,
  chargingVolts,
];

/** Nothing is loaded or led past before it was read as it is. */
export const SUPPLY_SAFE = [
  before(supplyUnderLoad, ampTerminals, ampChannels),
  before(jointDrop, supplyUnderLoad),
  before(copperLook, supplyUnderLoad),
  before(lowestVolts, ampTerminals),
  before(sharedScrew, ringsLook),
  before(temporaryLeads, ampTerminals),
  before(plusPath, supplyUnderLoad),
  // A lamp in the place of the fuse comes before any new fuse.
  before(fuseLamp, fuseLook),
  before(leadOffAmp, fuseLamp),
  before(spareFuse, fuseLamp),
];
