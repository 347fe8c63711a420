import { FUSE_RATINGS_A, largestFuseA } from '../../compute/fuse.ts';
import { AMP_FIELDS, type AmpValues, BIKE_FIELDS, type BikeValues, type NumberField } from '../../rig/fields.ts';
import { type Fault, severityAt } from '../../world/faults/index.ts';
import { type ValuedRig, valuedRig } from '../../world/valued-rig.ts';
import { type Draw, happens, pick } from './oddity.ts';

/* Bikes and degrees of faults, drawn from other distributions than those that tables are made from. */

const MILD_SHARE = 0.65;
/** A degree near one end of a fault's range, more often the mild one: what is hardly there is hardest to find. */
export function strangeSeverity(draw: Draw, fault: Fault): number {
  const offEnd = draw() ** 3;
  return severityAt(fault, happens(draw, MILD_SHARE) ? offEnd : 1 - offEnd);
}

/** Now and then a value lies half as far again from the typical one as builds are found to. */
const BEYOND_USUAL = 1.5;
/** Near the typical value as a rule. The form's limits hold. */
function around(draw: Draw, { typical, usual, allowed }: NumberField): number {
  const off = BEYOND_USUAL * (draw() + draw() - 1);
  const value = typical + off * (off < 0 ? typical - usual[0] : usual[1] - typical);
  return Math.min(allowed[1], Math.max(allowed[0], value));
}
const aroundAll = <F extends string>(draw: Draw, fields: Readonly<Record<F, NumberField>>) =>
  Object.fromEntries((Object.keys(fields) as F[]).map((id) => [id, around(draw, fields[id])])) as Record<F, number>;

/** Where amplifiers are. One for the rear alone is the commonest here. */
const DRIVES: readonly (readonly AmpValues['drives'][])[] = [[], ['rear'], ['rear'], ['both'], ['rear', 'front']];
/** Ratings that are sold, the odd ones among them. */
const RATED_OHM = [2, 3, 4, 4, 6, 8];
const LEAST_OHM = 2;

interface Fitted {
  readonly unitKind: BikeValues['unitKind'];
  readonly drives: AmpValues['drives'];
  readonly leastOhm: number;
}

function strangeAmp(draw: Draw, { unitKind, drives, leastOhm }: Fitted): Partial<AmpValues> {
  const { powerW, plusLeadM, plusLeadM2 } = AMP_FIELDS;
  const made = aroundAll(draw, { powerW, plusLeadM, plusLeadM2 });
  const input = pick(draw, ['speaker', 'line'] as const);
  const turnOn = pick(draw, input === 'speaker' ? (['wire', 'signal', 'dc'] as const) : (['wire', 'signal'] as const));
  const mostA = largestFuseA({ sectionM2: made.plusLeadM2 });
  return {
    ...made,
    drives,
    input,
    turnOn,
    kind: 'add-on',
    fedFrom: drives === 'both' && happens(draw, 0.3) ? 'front' : 'own',
    needs:
      unitKind === 'factory' && input === 'speaker' && turnOn === 'signal' ? pick(draw, ['any', 'unaltered']) : 'any',
    ratedOhm: leastOhm >= 4 ? 4 : 2,
    // The largest that the lead carries, or the one below it.
    mainFuseA: pick(draw, FUSE_RATINGS_A.filter((ratingA) => ratingA <= mostA).slice(-2)),
  };
}

/** A bike with every value there, in proportions that are not those of other random bikes. A rear is always fitted. */
export function strangeRig(draw: Draw): ValuedRig {
  const { supplyRunningV, supplyOffV, loweredByDb, boostDb, rearRunM, rearRunM2, batteryAh } = BIKE_FIELDS;
  const { chargingIdleA, chargingCruiseA } = BIKE_FIELDS;
  const numbers = aroundAll(draw, {
    ...{ supplyRunningV, supplyOffV, loweredByDb, boostDb, rearRunM, rearRunM2, batteryAh },
    ...{ chargingIdleA, chargingCruiseA },
  });
  const unitKind = pick(draw, ['factory', 'factory', 'replaced'] as const);
  const [frontRatedOhm, rearRatedOhm] = [pick(draw, [2, 4, 4]), pick(draw, RATED_OHM)];
  const isTwo = rearRatedOhm / 2 >= LEAST_OHM && happens(draw, 0.25);
  const rearOhm = isTwo ? rearRatedOhm / 2 : rearRatedOhm;
  const drives = pick(draw, DRIVES);
  const leastOhm = { front: frontRatedOhm, rear: rearOhm, both: Math.min(frontRatedOhm, rearOhm) };
  const fedBy = (axle: 'front' | 'rear') => (drives.some((it) => it === axle || it === 'both') ? 'amp' : 'unit');
  return valuedRig({
    ...numbers,
    unitKind,
    deliveredWith: pick(draw, ['two', 'two', 'four'] as const),
    frontRatedOhm,
    frontFedBy: fedBy('front'),
    rearFitted: 'yes',
    rearPlug: happens(draw, 0.2) ? 'no' : 'yes',
    rearFedBy: fedBy('rear'),
    rearRatedOhm,
    rearPerChannel: isTwo ? 2 : 1,
    rearWiring: isTwo ? 'parallel' : 'single',
    amps: drives.map((pair) => strangeAmp(draw, { unitKind, drives: pair, leastOhm: leastOhm[pair] })),
  });
}
