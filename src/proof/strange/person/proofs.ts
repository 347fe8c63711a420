import { cornersOf } from '../../../rig/corner.ts';
import { stepName } from '../../../steps/subject.ts';
import { hasAmp } from '../../../world/faults/kit.ts';
import { contactsLook, wrongSelectors } from '../../../world/sights.ts';
import type { Amp, World } from '../../../world/state.ts';
import { isUntouched } from '../bike/harmless.ts';
import type { Oddity } from '../oddity.ts';
import { cornerOf, dcBetween, pointsOf } from './places.ts';
import { type Given, instead, type ReadingGiven, retyped, saying, typed, unitOf } from './saying.ts';

/* Proofs that people trust, and that prove nothing. */

const ofAmp =
  <T>(read: (amp: Amp) => T) =>
  ({ amps, about }: World): readonly T[] =>
    amps.flatMap((amp, i) => (i === about ? [read(amp)] : []));
const powerWay = (world: World): readonly object[] =>
  ofAmp(({ ring, holder, plusLead, plusCopper, terminal, groundLead, groundRing, minusRing }) => [
    ...[ring, holder, plusLead, plusCopper, terminal],
    ...[groundLead, groundRing, minusRing],
  ])(world).flat();
const isFuseOpen = (world: World): boolean =>
  ofAmp(({ fuseOpen, bodyFuseOpen }) => fuseOpen || bodyFuseOpen)(world).includes(true);

/** The same volts without the lamp on them: whatever is left of a contact lets a meter's current by. */
function unloaded(name: string, _: number, { step, situation, bike }: ReadingGiven): string | undefined {
  const points = pointsOf(step, name, situation);
  if (!points || !step.conditions?.includes('lamp-on') || unitOf(step, name) !== 'V') return undefined;
  const volts = dcBetween(bike, { toneHz: null }, points, cornerOf(bike.world, name));
  return volts === null ? undefined : typed(volts, 'V', 3);
}

/** Steps at which somebody only looks. */
const ALSO_LOOKS = ['amp-switches', 'body-fuse', 'shared-screw'];
const onlyLooks = ({ step }: Given): boolean => stepName(step).endsWith('-look') || ALSO_LOOKS.includes(stepName(step));
/** What the steps call it when there is nothing to be seen. */
const ALL_IS_WELL = ['whole', 'tight', 'clean', 'right', 'through', 'level', 'dry', 'copper', 'own'];

/** A joint of more than this shows. */
const SEEN_OHM = 0.02;
const hasSomethingToSee = (world: World): boolean =>
  isFuseOpen(world) ||
  cornersOf('rear').some((corner) => contactsLook(world, corner) !== 'clean') ||
  (world.about !== null && wrongSelectors(world, world.about).length > 0) ||
  ofAmp(({ groundRing, minusRing, remotePin }) => [groundRing, minusRing, remotePin])(world)
    .flat()
    .some(({ ohm }) => ohm > SEEN_OHM);

export const PROOFS: readonly Oddity[] = [
  {
    id: 'volts-without-load',
    says: 'twelve volts on a meter, with no lamp on them',
    class: 'proofs',
    fits: (world) => hasAmp(world) && !isUntouched(world, powerWay),
    person: saying((given) => retyped(given, unloaded)),
  },
  {
    id: 'one-kind-of-cable',
    says: 'other leads tried that are no better than the old ones',
    class: 'proofs',
    fits: (world) => hasAmp(world) && !isUntouched(world, powerWay),
    person: saying((given) => (stepName(given.step) === 'temporary-leads' ? instead(given, 'neither') : given.answer)),
  },
  {
    id: 'fuse-looks-whole',
    says: 'a fuse that is open at its cap, and looks whole',
    class: 'proofs',
    fits: isFuseOpen,
    person: saying((given) =>
      ['fuse-look', 'body-fuse'].includes(stepName(given.step)) ? instead(given, 'whole') : given.answer,
    ),
  },
  {
    id: 'looked-and-all-is-well',
    says: 'somebody who looks, and sees that all is well',
    class: 'proofs',
    fits: hasSomethingToSee,
    person: saying((given) => (onlyLooks(given) ? instead(given, ...ALL_IS_WELL) : given.answer)),
  },
];
