import type { Late, StagedFlow } from '../../machines/machine.ts';
import type { Opening } from '../../machines/opening.ts';
import type { Flow, RowsOpening } from '../../machines/rows.ts';

interface Named {
  readonly path: string;
  readonly title: string;
  /** One sentence for search engines and previews. */
  readonly description: string;
  /** How callers say it. */
  readonly says?: string;
  /** The flows that its answers can be taken on to, by id. */
  readonly goesOnIn?: readonly string[];
  /** Something drawn under the open question and in the verdict. */
  readonly picture?: 'profile';
}

/** A flow that the model of the bike can play, so it is proved. */
interface Proved extends Named {
  /** The complaints of the model that it takes on, each with its share of the callers who come to it. */
  readonly complaints: Readonly<Record<string, number>>;
  /** Bikes that have no rear speakers can have the complaint, too. */
  readonly withoutRear?: true;
  /** How many bikes of a kind its table is made of, where the usual number would leave rare causes to chance, or is more than it needs. */
  readonly bikesAKind?: number;
  /** How it opens: all that a page needs until its second question. */
  open(): Promise<Opening>;
  load(): Promise<StagedFlow>;
  /** What its causes show and how they are mended, made by `npm run likelihoods`. */
  late(): Promise<Late>;
}
/** A flow that starts from a complaint, and ends in its causes. */
export interface FaultFlow extends Proved {
  readonly kind: 'fault';
}
/** A flow that starts from no complaint yet, and ends in the fault flow that is best at it. */
export interface Intake extends Proved {
  readonly kind: 'intake';
}

/** A flow of explicit rows: a plan, or a reading. */
export interface RowsFlow extends Named {
  readonly kind: 'plan' | 'reading';
  /** How it opens: all that a page needs until its second question. */
  open(): Promise<RowsOpening>;
  load(): Promise<Flow>;
}

/**
 * Every flow of the site. Pages, start page, proof, tables and tests take them from here: one that is forgotten does not
 * exist. It holds names and loaders, so whoever reads it loads no flow.
 */
export const FLOWS = {
  'no-rear-sound': {
    kind: 'fault',
    path: 'find/no-rear-sound/',
    title: 'No sound from the rear',
    description:
      'Find out why the rear speakers of a touring motorcycle are silent, one question at a time, with the readings to expect on your bike.',
    goesOnIn: ['is-a-reflash-needed'],
    says: 'The lids don’t play · only the fairing plays · the passenger hears nothing',
    complaints: { 'no-rear-sound': 0.9, 'rear-weak': 0.1 },
    open: async () => (await import('../../machines/no-rear-sound.opening.ts')).opening,
    load: async () => (await import('../../machines/no-rear-sound.ts')).noRearSound,
    late: async () => (await import('../likelihoods/no-rear-sound.ts')).late,
  },
  'amp-wont-turn-on': {
    kind: 'fault',
    path: 'find/amp-wont-turn-on/',
    title: 'The amplifier stays off',
    description:
      'Find out why the amplifier of a touring motorcycle stays off or shows its fault light, one question at a time, with the readings to expect on your bike.',
    says: 'No light on the amp · red light · goes into protect · only wakes when cranked up',
    complaints: { 'amp-wont-turn-on': 0.8, 'amp-goes-off': 0.2 },
    withoutRear: true,
    open: async () => (await import('../../machines/amp-wont-turn-on.opening.ts')).opening,
    load: async () => (await import('../../machines/amp-wont-turn-on.ts')).ampWontTurnOn,
    late: async () => (await import('../likelihoods/amp-wont-turn-on.ts')).late,
  },
  'no-sound-at-all': {
    kind: 'fault',
    path: 'find/no-sound-at-all/',
    title: 'No sound at all',
    description:
      'Find out why no speaker of a touring motorcycle plays, one question at a time, with the readings to expect on your bike.',
    says: 'Dead silent all round · nothing anywhere · the whole radio is dead',
    complaints: { 'no-sound-at-all': 1 },
    withoutRear: true,
    bikesAKind: 60,
    open: async () => (await import('../../machines/no-sound-at-all.opening.ts')).opening,
    load: async () => (await import('../../machines/no-sound-at-all.ts')).noSoundAtAll,
    late: async () => (await import('../likelihoods/no-sound-at-all.ts')).late,
  },
  'distortion-at-volume': {
    kind: 'fault',
    path: 'find/distortion-at-volume/',
    title: 'It distorts when it is loud',
    description:
      'Find out why the sound of a touring motorcycle turns harsh, rattles or chops when it is loud, one question at a time, with the readings to expect on your bike.',
    goesOnIn: ['is-a-reflash-needed'],
    says: 'Crackles when I turn it up · the bass farts · it buzzes · harsh past number twenty',
    complaints: { 'distortion-at-volume': 1 },
    withoutRear: true,
    open: async () => (await import('../../machines/distortion-at-volume.opening.ts')).opening,
    load: async () => (await import('../../machines/distortion-at-volume.ts')).distortionAtVolume,
    late: async () => (await import('../likelihoods/distortion-at-volume.ts')).late,
  },
  'eq-changes-when-engine-starts': {
    kind: 'fault',
    path: 'find/eq-changes-when-engine-starts/',
    title: 'The tone changes with the engine',
    description:
      'Find out why a touring motorcycle sounds different with the engine running, one question at a time, with the readings to expect on your bike.',
    goesOnIn: ['is-a-reflash-needed'],
    says: 'The bass goes away when I start it · better parked · two different sounds · tinny once it idles',
    complaints: { 'eq-changes-when-engine-starts': 1 },
    open: async () => (await import('../../machines/eq-changes-when-engine-starts.opening.ts')).opening,
    load: async () => (await import('../../machines/eq-changes-when-engine-starts.ts')).eqChangesWhenEngineStarts,
    late: async () => (await import('../likelihoods/eq-changes-when-engine-starts.ts')).late,
  },
  'one-speaker-or-side-dead': {
    kind: 'fault',
    path: 'find/one-speaker-or-side-dead/',
    title: 'One speaker or one side is dead',
    description:
      'Find out why one speaker or one side of a touring motorcycle is silent or weak: left against right, one question at a time.',
    says: 'Left side dead · one speaker out · only one lid works · one corner has only highs',
    goesOnIn: ['is-a-reflash-needed'],
    complaints: { 'one-speaker-or-side-dead': 0.8, 'one-side-weak': 0.14, 'bass-cancels': 0.06 },
    open: async () => (await import('../../machines/one-speaker-or-side-dead.opening.ts')).opening,
    load: async () => (await import('../../machines/one-speaker-or-side-dead.ts')).oneSpeakerOrSideDead,
    late: async () => (await import('../likelihoods/one-speaker-or-side-dead.ts')).late,
  },
  'where-do-i-begin': {
    kind: 'intake',
    path: 'find/where-do-i-begin/',
    title: 'Where do I begin?',
    description:
      'Three questions without a tool, for whoever knows that the sound of a touring motorcycle is wrong and not what to call it.',
    goesOnIn: ['is-a-reflash-needed'],
    says: 'It just isn’t right · no idea what to call it',
    // A judged share of all callers each.
    complaints: {
      'no-rear-sound': 0.24,
      'rear-weak': 0.03,
      'amp-wont-turn-on': 0.13,
      'amp-goes-off': 0.05,
      'no-sound-at-all': 0.1,
      'distortion-at-volume': 0.2,
      'eq-changes-when-engine-starts': 0.1,
      'one-speaker-or-side-dead': 0.12,
      'one-side-weak': 0.03,
      'bass-cancels': 0.02,
    },
    withoutRear: true,
    bikesAKind: 6,
    open: async () => (await import('../../machines/where-do-i-begin.opening.ts')).opening,
    load: async () => (await import('../../machines/where-do-i-begin.ts')).whereDoIBegin,
    late: async () => (await import('../likelihoods/where-do-i-begin.ts')).late,
  },
  'is-a-reflash-needed': {
    kind: 'plan',
    path: 'plan/is-a-reflash-needed/',
    title: 'Does it need a reflash at all?',
    description:
      'Find out whether a planned change to the sound of a touring motorcycle needs the head unit reflashed, who can do it, and what not to pay for.',
    goesOnIn: ['what-is-in-the-head-unit'],
    picture: 'profile',
    open: async () => (await import('../../machines/is-a-reflash-needed.opening.ts')).opening,
    load: async () => (await import('../../machines/is-a-reflash-needed.ts')).isAReflashNeeded,
  },
  'what-is-in-the-head-unit': {
    kind: 'reading',
    path: 'find/what-is-in-the-head-unit/',
    title: 'What is in this head unit now?',
    description:
      'Read the stored output profile of a factory head unit by what it does, with two tones and a multimeter.',
    goesOnIn: ['is-a-reflash-needed', 'no-rear-sound'],
    picture: 'profile',
    open: async () => (await import('../../machines/what-is-in-the-head-unit.opening.ts')).opening,
    load: async () => (await import('../../machines/what-is-in-the-head-unit.ts')).whatIsInTheHeadUnit,
  },
} as const satisfies Readonly<Record<string, FaultFlow | Intake | RowsFlow>>;
export type FlowId = keyof typeof FLOWS;

export const isFlowId = (id: string): id is FlowId => Object.hasOwn(FLOWS, id);
export const FLOW_LIST = Object.entries(FLOWS) as readonly (readonly [FlowId, FaultFlow | Intake | RowsFlow])[];
export const FAULT_FLOWS = FLOW_LIST.flatMap(([id, flow]) => (flow.kind === 'fault' ? [[id, flow] as const] : []));
/** The flows that are proved. */
export const isProved = (flow: FaultFlow | Intake | RowsFlow): flow is FaultFlow | Intake =>
  flow.kind === 'fault' || flow.kind === 'intake';
export const PROVED_FLOWS = FLOW_LIST.flatMap(([id, flow]) => (isProved(flow) ? [[id, flow] as const] : []));
