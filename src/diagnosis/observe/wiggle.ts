import { wiggle } from '../../steps/by-ear.ts';
import { offered } from '../../steps/outcome.ts';
import { perCorner } from '../../world/corner.ts';
import { OPEN, SOUND } from '../../world/healthy.ts';
import type { Moment, Place } from '../../world/moment.ts';
import type { Contact, PairOf, World } from '../../world/state.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { changed, isOpen, REAR, rearPlays } from './bike.ts';
import { happens, type Observer, option, type Says } from './observer.ts';

/* A finger on plugs and leads. What is loose reacts; what is broken may, since its ends still lie side by side. */

/** How often the ends of a broken joint, or a wire that touches, react to a finger. An estimate. */
const REACTS_SHARE = 1 / 3;

const closed = (contact: Contact): Contact => (isOpen(contact) ? SOUND : contact);
const closedPair = ({ plus, minus }: PairOf<Contact>): PairOf<Contact> => ({
  plus: closed(plus),
  minus: closed(minus),
});

interface Group {
  readonly places: readonly Place[];
  readonly isBroken: (world: World) => boolean;
  /** The bike while the ends of what is broken touch, and what touches the frame does not. */
  readonly touched: (world: World) => World;
}
const GROUPS: Readonly<Record<'amp-input' | 'rear-run' | 'amp-supply', Group>> = {
  'amp-input': {
    places: ['amp-inputs'],
    isBroken: ({ amps }) =>
      amps.some(({ inputPlug }) => Object.values(inputPlug).some(({ plus, minus }) => isOpen(plus) || isOpen(minus))),
    touched: (world) => ({
      ...world,
      amps: world.amps.map((amp) => ({ ...amp, inputPlug: perCorner((corner) => closedPair(amp.inputPlug[corner])) })),
    }),
  },
  'rear-run': {
    places: ['rear-run', 'lid'],
    isBroken: ({ runs }) =>
      REAR.some((corner) => {
        const { joint, dock, lidLead, toFrame } = runs[corner];
        return [joint.plus, joint.minus, dock, lidLead].some(isOpen) || !isOpen(toFrame);
      }),
    touched: (world) => ({
      ...world,
      runs: perCorner((corner) => {
        const run = world.runs[corner];
        const { joint, dock, lidLead } = run;
        return { ...run, joint: closedPair(joint), dock: closed(dock), lidLead: closed(lidLead), toFrame: OPEN };
      }),
    }),
  },
  'amp-supply': {
    places: ['amp-supply', 'battery'],
    isBroken: ({ amps }) =>
      amps.some(({ ring, holder, groundRing, remoteWire }) => [ring, holder, groundRing, remoteWire].some(isOpen)),
    touched: (world) => ({
      ...world,
      amps: world.amps.map((amp) => ({
        ...amp,
        ring: closed(amp.ring),
        holder: closed(amp.holder),
        groundRing: closed(amp.groundRing),
        remoteWire: closed(amp.remoteWire),
      })),
    }),
  },
};
export type GroupName = keyof typeof GROUPS;

/** Which of the groups a finger on it brings back, for a moment. What is there already does not come back. */
export function reacting(
  bike: Ridden,
  names: readonly GroupName[],
  isBack: (bike: Ridden, moment: Partial<Moment>) => boolean,
  observer: Observer,
): GroupName | null {
  const lucky = happens(observer, REACTS_SHARE);
  const reacts = (name: GroupName) => {
    const { places, isBroken, touched } = GROUPS[name];
    if (places.some((place) => isBack(bike, { moves: [place] }))) return true;
    return lucky && isBroken(bike.world) && isBack(changed(bike, `touched ${name}`, touched), {});
  };
  return isBack(bike, {}) ? null : (names.find(reacts) ?? null);
}

export const WIGGLE: Says = {
  [wiggle.id]: ({ step, bike, situation, observer }) => {
    const offers = offered(step, situation).map(([name]) => name);
    const names = (Object.keys(GROUPS) as GroupName[]).filter((name) => offers.includes(name));
    return option(reacting(bike, names, rearPlays, observer) ?? 'no-effect');
  },
};
