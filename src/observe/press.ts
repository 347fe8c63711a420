import { type Axle, axleOf, perCorner } from '../rig/corner.ts';
import { OPEN, SOUND } from '../world/healthy.ts';
import type { Amp, Contact, PairOf, Run, Supply, World } from '../world/state.ts';
import type { Ridden } from '../world/symptoms/index.ts';
import { changed, inputNotHome, isOpen } from './bike.ts';
import type { Observer } from './observer.ts';

/* A finger on plugs and leads. What is loose reacts; what is broken may, since its ends still lie side by side. */

/** How often the ends of a broken joint, or a wire that touches, react to a finger. An estimate. */
const REACTS_SHARE = 1 / 3;
/** The same of a remote wire: one that hangs out of its terminal is seen, too. An estimate. */
const REMOTE_REACTS_SHARE = 1 / 2;
/** How often a signal plug that is not home hangs right out: nothing reacts, and nobody notices it. An estimate. */
const HANGS_UNSEEN_SHARE = 1 / 4;

/** What a contact is while a finger presses it: what it is known to become, or, with luck, sound where it was open. */
type Pressed = (contact: Contact) => Contact;

/** A pin that has slipped back, a wire that is not there, and a half that was never joined: no finger on the plug reaches it. */
const outOfReach = ({ wants }: Contact): boolean => wants !== undefined && wants !== 'cleaning';

const pressed =
  (lucky: boolean): Pressed =>
  (contact) =>
    contact.movedOhm !== undefined
      ? { ohm: contact.movedOhm }
      : lucky && isOpen(contact) && !outOfReach(contact)
        ? SOUND
        : contact;

/** A fuse holder grips with springs: a finger moves those where they only burnt, too. */
const BURNT_OHM = 1;

const sprung =
  (lucky: boolean): Pressed =>
  (contact) =>
    lucky && contact.ohm > BURNT_OHM ? SOUND : pressed(lucky)(contact);

/** A wire that touches the frame comes off it. */
const lifted =
  (lucky: boolean): Pressed =>
  (contact) =>
    contact.movedOhm !== undefined ? { ohm: contact.movedOhm } : lucky && !isOpen(contact) ? OPEN : contact;

const pairOf = (press: Pressed, { plus, minus }: PairOf<Contact>): PairOf<Contact> => ({
  plus: press(plus),
  minus: press(minus),
});

const onAmps =
  (part: (amp: Amp, press: Pressed) => Partial<Amp>) =>
  (world: World, lucky: boolean): World => ({
    ...world,
    amps: world.amps.map((amp) => ({ ...amp, ...part(amp, pressed(lucky)) })),
  });

const runPressed = (run: Run, lucky: boolean): Run => {
  const press = pressed(lucky);
  return {
    ...run,
    joint: pairOf(press, run.joint),
    second: press(run.second),
    dock: press(run.dock),
    lidLead: press(run.lidLead),
    toFrame: lifted(lucky)(run.toFrame),
  };
};

const runsOf =
  (axle: Axle) =>
  (world: World, lucky: boolean): World => ({
    ...world,
    runs: perCorner((corner) => (axleOf(corner) === axle ? runPressed(world.runs[corner], lucky) : world.runs[corner])),
  });

const screwPressed = (screw: Supply['sharedScrew'], press: Pressed): Supply['sharedScrew'] =>
  screw && { ...screw, joint: press(screw.joint) };

/** Things that a finger can be laid on, one after the other, and what the bike is meanwhile. */
const PRESSED = {
  input: onAmps(({ inputPlug }, press) => ({ inputPlug: perCorner((corner) => pairOf(press, inputPlug[corner])) })),
  run: runsOf('rear'),
  front: runsOf('front'),
  battery: (world: World, lucky: boolean): World => ({
    ...onAmps(({ ring, minusRing }, press) => ({ ring: press(ring), minusRing: press(minusRing) }))(world, lucky),
    supply: { ...world.supply, bikeRing: pressed(lucky)(world.supply.bikeRing) },
  }),
  holder: (world: World, lucky: boolean): World => ({
    ...world,
    amps: world.amps.map((amp) => ({ ...amp, holder: sprung(lucky)(amp.holder) })),
  }),
  lead: onAmps(({ plusCopper }, press) => ({ plusCopper: press(plusCopper) })),
  terminal: onAmps(({ terminal }, press) => ({ terminal: press(terminal) })),
  ground: (world: World, lucky: boolean): World => ({
    ...onAmps(({ groundRing }, press) => ({ groundRing: press(groundRing) }))(world, lucky),
    supply: { ...world.supply, sharedScrew: screwPressed(world.supply.sharedScrew, pressed(lucky)) },
  }),
  remote: onAmps(({ remoteWire }, press) => ({ remoteWire: press(remoteWire) })),
  unit: (world: World, lucky: boolean): World => {
    const { plug, permanent, switched, ground } = world.unit;
    const press = pressed(lucky);
    return {
      ...world,
      unit: {
        ...world.unit,
        plug: perCorner((corner) => pairOf(press, plug[corner])),
        permanent: press(permanent),
        switched: press(switched),
        ground: press(ground),
      },
    };
  },
} as const satisfies Record<string, (world: World, lucky: boolean) => World>;

export type Pressable = keyof typeof PRESSED;

const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b);

/** Which of them reacts to a finger: what is gone comes back for a moment, or what is there goes. */
export function reacting(
  bike: Ridden,
  names: readonly Pressable[],
  isBack: (bike: Ridden) => boolean,
  observer: Observer,
): Pressable | null {
  const luck = observer.draw();
  const hangsUnseen = luck >= 1 - HANGS_UNSEEN_SHARE && inputNotHome(bike);
  const there = isBack(bike);
  const reacts = (name: Pressable) => {
    if (name === 'input' && hangsUnseen) return false;
    const lucky = luck < (name === 'remote' ? REMOTE_REACTS_SHARE : REACTS_SHARE);
    const under = changed(bike, `${name} pressed, ${lucky}`, (world) => {
      const after = PRESSED[name](world, lucky);
      return same(after, world) ? world : after;
    });
    return under !== bike && isBack(under) !== there;
  };
  return names.find(reacts) ?? null;
}
