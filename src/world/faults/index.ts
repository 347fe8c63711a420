import { mirror } from '../mirror.ts';
import type { World } from '../state.ts';
import type { ComplaintId } from '../symptoms/symptom.ts';
import { AMP_FAULTS } from './amp.ts';
import { CHARGING_FAULTS } from './charging.ts';
import { historyOf } from './history.ts';
import type { Fault } from './kit.ts';
import { POWER_FAULTS } from './power.ts';
import { SOURCE_FAULTS } from './source.ts';
import { TURN_ON_FAULTS } from './turn-on.ts';
import { UNIT_FAULTS } from './unit.ts';
import { WIRING_FAULTS } from './wiring.ts';

export { type Fault, keyOf, severityAt } from './kit.ts';

/** A bike with a fault also has a past; with several, that of the last. */
const remembered = (fault: Fault): Fault => ({
  ...fault,
  apply: (world, severity) => ({ ...fault.apply(world, severity), history: historyOf(fault) }),
});

/** What one side complains of, whichever side it is. */
const OF_ONE_SIDE = ['one-speaker-or-side-dead', 'one-side-weak'] as const;

/** What makes one speaker rough, and not its partner. */
const ROUGH_ON_ONE_SIDE: ReadonlySet<string> = new Set([
  'amp-channel-rough',
  'coil-rubbing-or-cone-torn',
  'speaker-mount-loose',
]);

const oneSidedOf = ({ id }: Fault): readonly (keyof Fault['weights'])[] =>
  ROUGH_ON_ONE_SIDE.has(id) ? [...OF_ONE_SIDE, 'distortion-at-volume'] : OF_ONE_SIDE;

/** What a variant is called on the left, whichever side it is on. */
export const onTheLeft = (variant = ''): string => variant.replace(/-?right$/, '');

/** A fault of one side is as often on the other. */
function onEitherSide(fault: Fault): readonly Fault[] {
  const halved = Object.fromEntries(
    oneSidedOf(fault).flatMap((complaint) => {
      const weight = fault.weights[complaint];
      return weight === undefined ? [] : [[complaint, weight / 2]];
    }),
  );
  if (Object.keys(halved).length === 0) return [fault];
  return [
    { ...fault, side: 'left', weights: { ...fault.weights, ...halved } },
    {
      ...fault,
      side: 'right',
      variant: fault.variant === undefined ? 'right' : `${fault.variant}-right`,
      title: `${fault.title}, right`,
      weights: halved,
      apply: (world, severity) => mirror(fault.apply(mirror(world), severity)),
    },
  ];
}

/** Everything that can be wrong, each with its variants. */
export const FAULTS: readonly Fault[] = [
  ...POWER_FAULTS,
  ...TURN_ON_FAULTS,
  ...SOURCE_FAULTS,
  ...UNIT_FAULTS,
  ...AMP_FAULTS,
  ...WIRING_FAULTS,
  ...CHARGING_FAULTS,
]
  .flatMap(onEitherSide)
  .map(remembered);

/** How often a fault is the cause among callers with a complaint. An amplifier that goes off at times is one way to cut out. */
export const weightOf = ({ weights }: Fault, complaint: ComplaintId): number | undefined =>
  weights[complaint === 'amp-goes-off' ? 'cuts-out' : complaint];

/** A bike with several faults, each on top of those before it. */
export const withFaults = (world: World, faults: readonly (readonly [fault: Fault, severity: number])[]): World =>
  faults.reduce((so, [fault, severity]) => fault.apply(so, severity), world);
