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
  /** The work that makes it sound again, where pushing it home or tightening it does not. */
  readonly wants?: 'cleaning' | 'pin' | 'wire' | 'joining';
}
export const ohmNow = ({ ohm, movedOhm, hotOhm }: Contact, place: Place, moment: Moment): number =>
  movedOhm !== undefined && moment.moves.includes(place) ? movedOhm : hotOhm !== undefined && moment.hot ? hotOhm : ohm;

/** More than this from a wire to the frame is damp, and no joint. */
const JOINED_OHM = 50;
export const isJoined = ({ ohm }: Contact): boolean => ohm < JOINED_OHM;

/** Both wires of a pair. */
export interface PairOf<T> {
  readonly plus: T;
  readonly minus: T;
}

export interface Supply {
  /** Volts of the battery without any load. */
  readonly openV: number;
  readonly internalOhm: number;
  /** Volts above that, which a charge leaves on its plates until something draws. */
  readonly surfaceV: number;
  readonly batteryC: number;
  /** What it shows to current that goes in. */
  readonly acceptOhm: number;
  readonly capacityRatio: number;
  readonly regulatorV: number;
  readonly idleA: number;
  readonly cruiseA: number;
  /** AC on the battery with the engine running. */
  readonly rippleV: number;
  readonly bikeRing: Contact;
  /** A screw that holds the grounds of head unit and amplifier both, or held both; null where each has its own. */
  readonly sharedScrew: { readonly joint: Contact; readonly holds: 'both' | 'unit' } | null;
  /** Below this at its posts a battery with a circuit of its own switches itself off; null for one without. */
  readonly cutOffV: number | null;
  /** What the bike itself takes, in the three states of the engine, and asleep. */
  readonly baseA: { readonly off: number; readonly idle: number; readonly cruise: number };
  readonly asleepA: number;
}

/**
 * How the two rear pairs leave the head unit: each to its own side; sides changed; with each other's negative wire, so that
 * both sides play half of left and half of right; or positive with positive and negative with negative, so that what is the same on
 * both sides is nothing between the wires.
 */
export type RearPairs = 'own' | 'sides-changed' | 'minuses-changed' | 'like-with-like';

export interface Unit {
  readonly alive: boolean;
  /** The fuse on its back. */
  readonly fuseOpen: boolean;
  readonly hung: boolean;
  readonly neverSleeps: boolean;
  /** Whether its mute wire lies on ground: it keeps silent for a telephone that is not there. */
  readonly mutedByLine: boolean;
  readonly permanent: Contact;
  readonly switched: Contact;
  readonly ground: Contact;
  readonly rearOn: boolean;
  readonly profile: ProfileShape;
  readonly deadChannels: readonly Corner[];
  /** Where each pair leaves the unit: plug and adapter. */
  readonly plug: PerCorner<PairOf<Contact>>;
  readonly rearPairs: RearPairs;
  /** What joins one wire of a pair to ground. */
  readonly toGround: PerCorner<Contact>;
  /** Where its outputs rest, over its supply, and whether those rest too that the stored profile switches off. */
  readonly restRatio: number;
  readonly restsWhenOff: boolean;
  /** What an output gives over what it should: no two are alike. */
  readonly levelRatio: PerCorner<number>;
  /** What a meter on AC reads across each awake output of its switching, tone or not; no ear hears it. */
  readonly residueV: number;
  /** DC between the two wires of a pair: that of a damaged output. */
  readonly outputDcV: PerCorner<number>;
  /** Whether an output that protects itself leaves its neighbour of the same axle playing. */
  readonly protectsAlone: boolean;
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
  /** Water in it: it stays dark, or says that something is wrong. */
  readonly wet: 'no' | 'dark' | 'fault';
  readonly ring: Contact;
  readonly holder: Contact;
  readonly fuseRatedA: number;
  readonly fuseOpen: boolean;
  /** What joins its positive lead, behind the fuse, to the frame, and its two terminals inside to each other. */
  readonly leadToFrame: Contact;
  readonly shortInside: Contact;
  /** A fuse in the amplifier itself, beside its power plug. */
  readonly bodyFuseOpen: boolean;
  readonly plusLead: Wire;
  /** The copper of its positive lead where it may be broken inside, and the joint of copper and terminal at the amplifier. */
  readonly plusCopper: Contact;
  readonly terminal: Contact;
  readonly groundLead: Wire;
  /** Where its ground lead is bolted on, and the ring of that place at the battery negative post. */
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
  /** What its lamp does while it wants to be on and has too few volts. */
  readonly lampBelow: 'off' | 'blinks' | 'fault';
  readonly senseV: number;
  readonly sleepsInQuiet: boolean;
  readonly level: 'speaker' | 'line';
  /** What makes line level of speaker wires; none where its inputs take them, or where the unit has line outputs. */
  readonly converter: 'none' | 'works' | 'dead';
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
  /** Output stages that are hurt and still play, with a rough sound at any level. */
  readonly roughChannels: readonly Corner[];
  readonly outputDcV: number;
  /** Whether a channel that protects itself leaves the others playing, and the lamp as it is. */
  readonly protectsAlone: boolean;
  readonly coolsBadly: boolean;
}

export interface Run {
  readonly wire: Wire;
  readonly joint: PairOf<Contact>;
  /** A second connector on the way, under the seat: nobody thinks of it. */
  readonly second: Contact;
  readonly dock: Contact;
  readonly lidLead: Contact;
  /** What joins its positive wire to the frame (a metal, or damp), and its two wires to each other. */
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
  /** When its coil rubs or its cone rasps: at any travel, or only where bass drives it far. */
  readonly scrapes: 'never' | 'always' | 'far';
  /** What its cone makes of its power: something can take the sound away, or all of it, that no reading shows. */
  readonly gives: 'sound' | 'rough sound' | 'hiss only' | 'nothing';
  /** How much bass a leaking or loose mount takes away. */
  readonly leakDb: number;
  readonly bareTweeter: boolean;
}

/** One noise and where it gets in. Volts are what it adds there. */
export interface Noise {
  readonly kind: 'follows' | 'ticks' | 'steady';
  readonly enters: 'amp-input' | 'amp-ground' | 'converter' | 'source-lead';
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
  /** Next to the speakers of which axles a panel, a screen or a lining buzzes along with the bass. */
  readonly trimRattles: readonly Axle[];
  readonly noises: readonly Noise[];
  /** Bass that engine and wind cover at speed. */
  readonly maskedBassDb: number;
  readonly history: History | 'unknown';
}
