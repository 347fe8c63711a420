import type { ProfileShape } from '../compute/profile-response.ts';
import type { Axle, Corner, PerCorner } from '../rig/corner.ts';
import type { OutcomeOf } from '../steps/step.ts';
import type { lastChange } from '../steps/told/last-change.ts';
import type { rearHistory } from '../steps/told/rear-history.ts';
import type { Wire } from './elements/wire.ts';
import type { Moment, Place } from './moment.ts';
import type { ValuedRig } from './valued-rig.ts';

/** A place where two metals touch, at rest, when it is moved, and when it is hot. Open is `Infinity`. */
export interface Contact {
  readonly ohm: number;
  readonly movedOhm?: number;
  readonly hotOhm?: number;
}
export const ohmNow = ({ ohm, movedOhm, hotOhm }: Contact, place: Place, moment: Moment): number =>
  movedOhm !== undefined && moment.moves.includes(place) ? movedOhm : hotOhm !== undefined && moment.hot ? hotOhm : ohm;

/** Both wires of a pair. */
export interface PairOf<T> {
  readonly plus: T;
  readonly minus: T;
}

export interface Supply {
  /** Volts of the battery without any load. */
  readonly openV: number;
  readonly internalOhm: number;
  /** What it shows to current that goes in. */
  readonly acceptOhm: number;
  readonly capacityRatio: number;
  readonly regulatorV: number;
  readonly idleA: number;
  readonly cruiseA: number;
  /** AC on the battery with the engine running. */
  readonly rippleV: number;
  readonly bikeRing: Contact;
  /** What the bike itself takes, in the three states of the engine, and asleep. */
  readonly baseA: { readonly off: number; readonly idle: number; readonly cruise: number };
  readonly asleepA: number;
}

export interface Unit {
  readonly alive: boolean;
  readonly hung: boolean;
  readonly neverSleeps: boolean;
  readonly permanent: Contact;
  readonly switched: Contact;
  readonly ground: Contact;
  readonly rearOn: boolean;
  readonly profile: ProfileShape;
  readonly deadChannels: readonly Corner[];
  /** Where each pair leaves the unit: plug and adapter. */
  readonly plug: PerCorner<PairOf<Contact>>;
  /** What joins one wire of a pair to ground. */
  readonly toGround: PerCorner<Contact>;
}

export interface Settings {
  /** −1 is all front, 1 all rear. */
  readonly fader: number;
  /** −1 is all left, 1 all right. */
  readonly balance: number;
  readonly rearControlRatio: number;
  readonly bassDb: number;
  readonly paused: boolean;
  readonly muted: boolean;
  readonly target: 'speakers' | 'headset';
  /** Whether the setting makes the unit louder or fuller with the engine running. */
  readonly speedVolumeDb: number;
  /** The loudest step that this rider uses. */
  readonly topVolumeRatio: number;
}

export interface Amp {
  readonly alive: boolean;
  readonly ring: Contact;
  readonly holder: Contact;
  readonly fuseOpen: boolean;
  /** What joins its plus lead, behind the fuse, to the frame, and its two terminals inside to each other. */
  readonly leadToFrame: Contact;
  readonly shortInside: Contact;
  /** A fuse in the amplifier itself, beside its power plug. */
  readonly bodyFuseOpen: boolean;
  readonly plusLead: Wire;
  readonly groundLead: Wire;
  /** Where its ground lead is bolted on, and the ring of that place at the battery minus post. */
  readonly groundRing: Contact;
  readonly minusRing: Contact;
  /** Where the remote wire begins: a feed that follows the unit, one that never switches off, one that is dead. */
  readonly remoteSource: 'switched' | 'permanent' | 'dead' | 'none';
  readonly remoteSourceOhm: number;
  /** The pin of an adapter between source and wire; sound where there is no adapter. */
  readonly remotePin: Contact;
  readonly remoteWire: Contact;
  /** What the turn-on selector stands on. */
  readonly turnOn: 'wire' | 'signal' | 'dc';
  readonly senseV: number;
  readonly sleepsInQuiet: boolean;
  readonly level: 'speaker' | 'line';
  /** Which unit pair is wired to each input; null where none is. */
  readonly inputs: PerCorner<Corner | null>;
  readonly inputPlug: PerCorner<PairOf<Contact>>;
  /** Whether DC of the unit's outputs reaches its inputs: not through a transformer, a capacitor or a line output. */
  readonly passesDc: boolean;
  readonly inputMode: 'four' | 'two';
  readonly inputLimitV: number;
  /** Front and rear have a knob of their own. */
  readonly gainRatio: Readonly<Record<Axle, number>>;
  readonly highpassHz: number | null;
  readonly bassBoostDb: number;
  readonly deadChannels: readonly Corner[];
  readonly outputDcV: number;
  readonly coolsBadly: boolean;
}

export interface Run {
  readonly wire: Wire;
  readonly joint: PairOf<Contact>;
  readonly dock: Contact;
  readonly lidLead: Contact;
  /** What joins its plus wire to the frame, and its two wires to each other. */
  readonly toFrame: Contact;
  readonly acrossPair: Contact;
  readonly reversed: boolean;
}

export interface Speaker {
  readonly coilOhm: number;
  readonly braid: Contact;
  readonly count: number;
  readonly wiring: 'single' | 'parallel' | 'series';
  readonly ratedW: number;
  readonly scrapes: boolean;
  /** What its cone makes of its power: something can take the sound away, or all of it, that no reading shows. */
  readonly gives: 'sound' | 'hiss only' | 'nothing';
  /** How much bass a leaking or loose mount takes away. */
  readonly leakDb: number;
  readonly bareTweeter: boolean;
}

/** One noise and where it gets in. Volts are what it adds there. */
export interface Noise {
  readonly kind: 'follows' | 'ticks' | 'steady';
  readonly enters: 'amp-input' | 'amp-ground' | 'source-lead';
  readonly levelV: number;
}

/** What is between phone and unit, none of which is a circuit that a probe can reach. */
export interface PhoneLink {
  readonly cableHasData: boolean;
  readonly port: Contact;
  readonly permitted: boolean;
  readonly softwareAgrees: boolean;
  readonly needsHeadset: boolean;
  readonly offersMirroring: boolean;
  readonly bassDb: number;
  readonly callMode: boolean;
}

/** What a rider can tell of the past: how such bikes usually came to where they are, as odds. */
export interface History {
  /** What is complained of, before now. */
  readonly before: Readonly<Record<OutcomeOf<typeof rearHistory>, number>>;
  readonly lastChange: Readonly<Record<OutcomeOf<typeof lastChange>, number>>;
}

/** A bike as it stands: what is fitted, and the state of every part. A fault is a change to this. */
export interface World {
  readonly rig: ValuedRig;
  readonly supply: Supply;
  readonly unit: Unit;
  readonly settings: Settings;
  readonly phone: PhoneLink;
  readonly amps: readonly Amp[];
  /** Which of the amplifiers faults befall, and whoever works at the bike means, by number; null where there is none. */
  readonly about: number | null;
  readonly runs: PerCorner<Run>;
  readonly speakers: PerCorner<Speaker>;
  readonly noises: readonly Noise[];
  /** Bass that engine and wind cover at speed. */
  readonly maskedBassDb: number;
  readonly history: History | 'unknown';
}
