import type { Corner, PerCorner } from '../../rig/corner.ts';
import { type Operated, operate } from '../bike/operate.ts';
import { isOverloaded } from '../bike/overloaded.ts';
import { healthyWorld } from '../healthy.ts';
import { type Heard, hear } from '../hear.ts';
import { type Moment, ORDINARY } from '../moment.ts';
import { oncePer, oncePerKey } from '../remembered.ts';
import { fittedCorners } from '../sights.ts';
import type { World } from '../state.ts';

export const FLOW_IDS = [
  'no-rear-sound',
  'amp-wont-turn-on',
  'distortion-at-volume',
  'eq-changes-when-engine-starts',
  'is-a-reflash-needed',
  'no-sound-at-all',
  'one-speaker-or-side-dead',
  'whine-or-ticking',
  'thin-no-bass',
  'cuts-out',
  'battery-flat-or-low',
  'speakers-blow-again',
  'mirroring-wont-start',
] as const;
export type FlowId = (typeof FLOW_IDS)[number];
/** What riders complain of. Each flow is named after a complaint; some take on another one beside it. */
export type ComplaintId = FlowId | 'amp-goes-off' | 'rear-weak' | 'one-side-weak' | 'bass-cancels';

/** Complaints about one amplifier: of two either may be meant. Every other one is about the rear's, if it is about one. */
export const ABOUT_AN_AMP: readonly ComplaintId[] = ['amp-wont-turn-on', 'amp-goes-off', 'distortion-at-volume'];

/** Whether a bike has a complaint, or why a model of it cannot say. */
export type Complaint = 'yes' | 'no' | { readonly undecidable: string };

/** A bike as its rider meets it: what it does at any moment, worked out once for each. */
export interface Ridden {
  readonly world: World;
  readonly fitted: readonly Corner[];
  at(moment: Partial<Moment>): Seen;
  /** The same build without a fault: complaints of more and less are comparisons with it. */
  healthy(): Ridden;
}
export interface Seen {
  readonly moment: Moment;
  readonly now: Operated;
  /** Null when the supply has no operating point at all: nothing plays. */
  readonly heard: PerCorner<Heard> | null;
}

const soundBikes = oncePerKey<World['rig'], Ridden>();
/** The same build without a fault, and the same amplifier meant: one for all bikes of the build. */
const soundBike = ({ rig, about }: World): Ridden =>
  soundBikes(rig, `${about}`, () => ridden({ ...healthyWorld(rig), about }));

/** What moving and heat change on a bike. Where that is nothing, it is over bumps and in the sun what it is at the stand. */
const feels = oncePer((world: World) => {
  const parts = JSON.stringify(world);
  return {
    bumps: parts.includes('"movedOhm"'),
    heat:
      parts.includes('"hotOhm"') ||
      parts.includes('"coolsBadly":true') ||
      world.amps.some((_, amp) => isOverloaded(world, amp)),
  };
});
function felt(world: World, moment: Moment): Moment {
  if (moment.moves.length === 0 && !moment.hot) return moment;
  const { bumps, heat } = feels(world);
  return { ...moment, moves: bumps ? moment.moves : [], hot: heat && moment.hot };
}

export function ridden(world: World): Ridden {
  const seen = new Map<string, Seen>();
  return {
    world,
    fitted: fittedCorners(world),
    at: (change) => {
      const moment = felt(world, { ...ORDINARY, ...change });
      const key = JSON.stringify(moment);
      const known = seen.get(key);
      if (known) return known;
      const now = operate(world, moment);
      const made = { moment, now, heard: now.ok ? hear(world, moment, now) : null };
      seen.set(key, made);
      return made;
    },
    healthy: () => soundBike(world),
  };
}

/** A corner this much quieter than the loudest is silent to a rider who hears both. An estimate: 20 dB. */
export const DROWNED_RATIO = 0.01;

/** What plays at this share of its sound power or more has lost nothing that is noticed. An estimate: 6 dB. */
export const AS_EVER_RATIO = 0.25;

/** The corners that a rider hears, next to each other. One that plays as ever is not silent because another is too loud. */
export function heardCorners(bike: Ridden, { heard, moment }: Seen): readonly Corner[] {
  const { fitted } = bike;
  if (!heard) return [];
  const loudestW = Math.max(...fitted.map((corner) => heard[corner].powerW));
  const playsAsEver = (corner: Corner) => {
    const sound = bike.healthy().at(moment).heard?.[corner];
    return sound?.plays === true && heard[corner].powerW >= AS_EVER_RATIO * sound.powerW;
  };
  return fitted.filter(
    (corner) => heard[corner].plays && (heard[corner].powerW > DROWNED_RATIO * loudestW || playsAsEver(corner)),
  );
}

export const yesIf = (it: boolean): Complaint => (it ? 'yes' : 'no');
