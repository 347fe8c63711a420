import { FUSE_RATINGS_A, largestFuseA } from '../compute/fuse.ts';
import { COIL_HIGHEST_RATIO, COIL_LOWEST_RATIO } from '../compute/impedance.ts';
import { between, type Draw, happens, pick } from '../observe/draw.ts';
import { AMP_FIELDS, type AmpValues, BIKE_FIELDS, type BikeValues, type NumberField } from '../rig/fields.ts';
import type { Rig } from '../rig/rig.ts';

/** A bike with every value there. */
export type WholeRig = BikeValues & { readonly amps: readonly AmpValues[] } & Rig;

/** Where amplifiers are: none, one for everything, one for one pair, one for each. */
const AMPS_DRIVE: readonly (readonly AmpValues['drives'][])[] = [[], ['both'], ['rear'], ['front'], ['front', 'rear']];
/** Rated ohms of one speaker, how many hang on a channel, and how: none of them is less than 2 Ω together. */
const REAR_SPEAKERS = [
  { rearRatedOhm: 4, rearPerChannel: 1, rearWiring: 'single' },
  { rearRatedOhm: 2, rearPerChannel: 1, rearWiring: 'single' },
  { rearRatedOhm: 4, rearPerChannel: 2, rearWiring: 'parallel' },
  { rearRatedOhm: 2, rearPerChannel: 2, rearWiring: 'series' },
] as const;

const togetherOhm = ({ rearRatedOhm, rearPerChannel, rearWiring }: (typeof REAR_SPEAKERS)[number]): number =>
  rearWiring === 'parallel' ? rearRatedOhm / rearPerChannel : rearRatedOhm * rearPerChannel;

const within = (draw: Draw, { usual: [low, high] }: NumberField): number => between(draw, low, high);

/** A fuse that the lead can stand, and the amplifier's current needs. */
function fuseFor(draw: Draw, plusLeadM2: number): number {
  const [leastA, mostA] = [AMP_FIELDS.mainFuseA.usual[0], largestFuseA({ sectionM2: plusLeadM2 })];
  return pick(
    draw,
    FUSE_RATINGS_A.filter((ratingA) => ratingA >= leastA && ratingA <= mostA),
  );
}

interface Around {
  readonly unitKind: BikeValues['unitKind'];
  readonly drives: AmpValues['drives'];
  readonly loadsOhm: readonly number[];
}

/** An amplifier as people fit it: its load no less than it is rated for, its turn-on of a kind that its input can give. */
function randomAmp(draw: Draw, { unitKind, drives, loadsOhm }: Around): AmpValues {
  const kind = unitKind === 'factory' && happens(draw, 0.15) ? 'factory' : 'add-on';
  const input = pick(draw, ['speaker', 'speaker', 'line'] as const);
  // A line-level lead carries no DC to sense, and a factory amplifier is switched by the bike.
  const turnOn = kind === 'factory' ? 'wire' : pick(draw, ['wire', 'signal', ...(input === 'speaker' ? ['dc'] : [])]);
  // Made for the unaltered output: such an amplifier listens to the full speaker wires of the unit it was made for.
  const forUnaltered = unitKind === 'factory' && turnOn === 'signal' && input === 'speaker' && happens(draw, 0.4);
  const plusLeadM2 = within(draw, AMP_FIELDS.plusLeadM2);
  const leastOhm = Math.min(...loadsOhm);
  return {
    kind,
    drives,
    fedFrom: drives !== 'front' && happens(draw, 0.15) ? 'front' : 'own',
    input,
    turnOn: turnOn as AmpValues['turnOn'],
    needs: forUnaltered ? 'unaltered' : 'any',
    channels: drives === 'both' ? 4 : pick(draw, [2, 2, 4]),
    powerW: within(draw, AMP_FIELDS.powerW),
    ratedOhm: leastOhm >= 4 && happens(draw, 0.7) ? 4 : 2,
    plusLeadM: within(draw, AMP_FIELDS.plusLeadM),
    plusLeadM2,
    mainFuseA: fuseFor(draw, plusLeadM2),
  };
}

/** Any bike that a workshop may see, each value within what builds are found to have, and all of them fitting together. */
export function randomRig(draw: Draw): WholeRig {
  const unitKind = happens(draw, 0.8) ? 'factory' : 'replaced';
  const rearFitted = happens(draw, 0.9) ? 'yes' : 'no';
  const speakers = pick(draw, REAR_SPEAKERS);
  const frontRatedOhm = pick(draw, [2, 4]);
  const drives = pick(
    draw,
    AMPS_DRIVE.filter((list) => rearFitted === 'yes' || list.every((pair) => pair === 'front')),
  );
  const drivenBy = (pair: 'front' | 'rear') => (drives.some((it) => it === pair || it === 'both') ? 'amp' : 'unit');
  const loadsOf = (pair: AmpValues['drives']) => [
    ...(pair === 'rear' ? [] : [frontRatedOhm]),
    ...(pair === 'front' ? [] : [togetherOhm(speakers)]),
  ];
  const amps = drives.map((pair) => randomAmp(draw, { unitKind, drives: pair, loadsOhm: loadsOf(pair) }));
  return {
    unitKind,
    deliveredWith: pick(draw, ['two', 'four']),
    supplyRunningV: within(draw, BIKE_FIELDS.supplyRunningV),
    supplyOffV: within(draw, BIKE_FIELDS.supplyOffV),
    loweredByDb: within(draw, BIKE_FIELDS.loweredByDb),
    boostDb: within(draw, BIKE_FIELDS.boostDb),
    frontRatedOhm,
    frontFedBy: drivenBy('front'),
    rearFitted,
    rearFedBy: rearFitted === 'yes' ? drivenBy('rear') : 'unit',
    ...speakers,
    rearRunM: within(draw, BIKE_FIELDS.rearRunM),
    rearRunM2: within(draw, BIKE_FIELDS.rearRunM2),
    batteryKind: happens(draw, 0.15) ? 'lithium' : 'lead',
    batteryAh: within(draw, BIKE_FIELDS.batteryAh),
    chargingIdleA: within(draw, BIKE_FIELDS.chargingIdleA),
    chargingCruiseA: within(draw, BIKE_FIELDS.chargingCruiseA),
    deliveredAmp: amps.some(({ kind }) => kind === 'factory') ? 'yes' : 'no',
    amps,
    // Drawn last: what else is drawn of a bike does not hang on it.
    rearPlug: happens(draw, 0.12) ? 'no' : 'yes',
  };
}

/** The middle of the band of healthy coils, which the model of a sound bike takes. */
const COIL_MIDDLE_RATIO = (COIL_LOWEST_RATIO + COIL_HIGHEST_RATIO) / 2;

/** The bike as it really is when its papers say `rig`: a coil lies anywhere in the band that its rating allows. */
export function asBuilt(draw: Draw, rig: WholeRig): WholeRig {
  const coilRatio = () => between(draw, COIL_LOWEST_RATIO, COIL_HIGHEST_RATIO) / COIL_MIDDLE_RATIO;
  return { ...rig, frontRatedOhm: rig.frontRatedOhm * coilRatio(), rearRatedOhm: rig.rearRatedOhm * coilRatio() };
}
