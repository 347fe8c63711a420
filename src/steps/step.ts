import type { Unit } from '../compute/quantity.ts';
import type { Axle } from '../rig/corner.ts';
import type { Rig } from '../rig/rig.ts';
import type { TONES } from '../sound/tone.ts';
import type { CautionId } from './cautions.ts';
import type { ConditionKey } from './conditions.ts';
import type { ConstantStepId, StepId } from './ids.ts';
import type { Findings } from './outcome.ts';
import type { About } from './subject.ts';
import type { TestPoint } from './test-points.ts';

export type ToneName = (typeof TONES)[number]['name'];

/** What the user gave, raw. What it means (the outcome) is worked out at every replay and never stored. */
export type Answer =
  | { readonly option: string }
  | { readonly readings: Readonly<Record<string, string>> }
  | { readonly cannot: true };

/** The answers known so far, by step. */
export type Facts = Readonly<Record<string, Answer>>;

/** Everything a step may look at to say what a healthy answer is on this bike. */
export interface Situation {
  readonly rig: Rig;
  readonly facts: Facts;
  /** The speakers of the amplifier that a question names, where it is about one by its name. */
  readonly amp?: Axle;
  /** Steps whose answers were given or looked at a second time. */
  readonly checked?: ReadonlySet<string>;
}

/** Parts of the bike whose state an outcome depends on. A repair makes the outcomes that observe its part stale. */
export type Part = 'settings' | 'profile' | 'unit' | 'unit-leads' | 'amp-supply' | 'amp' | 'run' | 'speaker';
export const EVERY_PART: readonly Part[] = [
  'settings',
  'profile',
  'unit',
  'unit-leads',
  'amp-supply',
  'amp',
  'run',
  'speaker',
];

/** Where a step is done. */
export type Place =
  | 'fitted'
  | 'told'
  | 'tools'
  | 'settings'
  | 'ears'
  | 'plugs'
  | 'unit'
  | 'runs'
  | 'supply'
  | 'turn-on'
  | 'amplifier'
  | 'plan'
  | 'profile';

export type Tool = 'none' | 'ears' | 'meter' | 'cell' | 'papers' | 'test-lamp' | 'jumper' | 'spare-fuse';
export const TOOL_NAMES: Readonly<Record<Tool, string>> = {
  none: 'no tool',
  ears: 'your ears',
  meter: 'a multimeter',
  cell: 'a 1.5 V cell',
  papers: 'papers',
  'test-lamp': 'a 12 V test lamp',
  jumper: 'a fused jumper lead',
  'spare-fuse': 'a spare fuse',
};

/** Words that may hang on what is known: a silent speaker is called by its place once that is known. */
export type Words = string | ((situation: Situation) => string);

export const inWords = (words: Words, situation: Situation): string =>
  typeof words === 'function' ? words(situation) : words;

/** What is written on a step, whatever kind it is. Text that depends on the bike is a function of the situation. */
interface Wording<O extends string> {
  /** What its answers go by: its name, and the subject behind it where it is not about the first of its subjects. */
  readonly id: string;
  /** What it is about, where a bike has several of it. */
  readonly about?: About;
  /** Where on the bike, or in the conversation, it is done: the folder that it is in. */
  readonly place: Place;
  /** A few words for the terminal on the wire. */
  readonly short: Words;
  /** The question, to a rider at the bike. */
  readonly ask: Words;
  /** The same, as said to a caller. */
  readonly phone: Words;
  readonly how: readonly string[] | ((situation: Situation) => readonly string[]);
  readonly why: string;
  readonly tool: Tool;
  /** From nothing: with the minutes of its conditions. */
  readonly minutes: number;
  /** What must stand before the question makes sense, in the order in which it is brought about. */
  readonly conditions?: readonly ConditionKey[];
  /** When it makes sense to ask it on this bike, with what is known; always, where nothing is said. */
  readonly sensible?: (findings: Findings) => boolean;
  /** Whether what was answered so far is half a reading without it: then it is taken before anything is concluded. */
  readonly completes?: (findings: Findings) => boolean;
  readonly observes: readonly Part[];
  /** Where something is clipped on for it that stays there: its cautions follow. */
  readonly clips?: readonly TestPoint[];
  /** What to be careful of besides what follows from its conditions, probes, clips and tool. */
  readonly cautions?: readonly CautionId[];
  /** Slug of the article that explains the background. */
  readonly article?: string;
  /** What each outcome is called on the wire and in the evidence of a verdict. */
  readonly outcomes: Readonly<Record<O, string>>;
  /** Steps whose answer this one was given under: when that changes, this is asked again. */
  readonly givenUnder?: readonly StepId[];
  /**
   * What it shows where two things are wrong, from what it shows with each: what is done against one leaves the other.
   * Where nothing is said, whatever is odd of either shows.
   */
  both?(one: NoInfer<O>, other: NoInfer<O>): NoInfer<O>;
  /** What to do instead, shown with "I can't do this". */
  readonly ifCannot?: string;
}

/** A question with named answers. */
export interface ChoiceStep<O extends string = string> extends Wording<O> {
  readonly kind: 'choice';
  readonly options: Readonly<Record<O, string>>;
  /** Tones that are listened to. */
  readonly tones?: readonly ToneName[];
  /** Options that make no sense on this bike. */
  leftOut?(situation: Situation): readonly NoInfer<O>[];
  /** Options that only say that all is well at this moment: where it comes and goes, and plays just now, they say nothing. */
  readonly justNow?: readonly NoInfer<O>[];
  /** Of those, which outcome it comes to all the same where it comes and goes: what was tried had been right before. */
  readonly rightBefore?: Readonly<Partial<Record<NoInfer<O>, NoInfer<O>>>>;
  /** Options that say what was wrong and that it was put right on the spot: nobody can look once more. */
  readonly putRight?: readonly NoInfer<O>[];
  /** Something is done and undone while somebody listens: the ear compares, which is surer than what it describes. */
  readonly compares?: true;
  /** Options after which the step is not taken once more: it would do harm. */
  readonly neverAgain?: readonly NoInfer<O>[];
  /** Answers that say how the bike is built and not what it does: the part is not there. */
  readonly notFitted?: readonly NoInfer<O>[];
  /** Answers that a part is not there, with the questions that may have been told that it is: those are asked once more. */
  readonly denies?: Readonly<Partial<Record<NoInfer<O>, readonly ConstantStepId[]>>>;
}

/** A question about what is fitted. It is skipped when "my bike" already says. */
export interface RigStep<O extends string = string> extends Wording<O> {
  readonly kind: 'rig';
  readonly options: Readonly<Record<O, string>>;
  known(rig: Rig): O | undefined;
  learn(option: O, rig: Rig): Rig;
  /** What a rig that answers the question still lacks for the steps and verdicts after it. */
  complete?(rig: Rig): Rig;
}

/** Where the two leads of a meter go. */
export interface Probes {
  readonly red: TestPoint;
  readonly black: TestPoint;
}

/** One number to read off the meter. */
export interface Reading {
  readonly label: string;
  readonly unit: Unit;
  readonly optional?: boolean;
  /** Where the leads go for this reading, when it is not where the step says. */
  readonly probes?: ReadingStep['probes'];
  /** Limits of what the meter can honestly show here; outside them the value is questioned. Infinity allows OL. */
  readonly possible: readonly [low: number, high: number];
  /** The question asked of an impossible value. */
  readonly impossible: string;
}

export type Values = Readonly<Record<string, number>>;

/** A stretch of a reading's scale and what it means. `mood` only chooses how it is drawn. */
export interface Band {
  readonly label: string;
  readonly low: number;
  readonly high: number;
  readonly mood: 'good' | 'bad' | 'unsure';
}

/** A measurement: one or more named readings, bands worked out for this bike, and what they mean together. */
export interface ReadingStep<O extends string = string> extends Wording<O> {
  readonly kind: 'reading';
  readonly tones?: readonly ToneName[];
  /** Where the leads go, or that it is no point of the drawing. */
  readonly probes: Probes | ((situation: Situation) => Probes) | 'not drawn';
  readonly readings: Readonly<Record<string, Reading>>;
  /** Why these values were not taken in a usable condition, or null. The first sentence names what to change. */
  unusable?(values: Values, situation: Situation): { readonly reading: string; readonly message: string } | null;
  /** The scale of one reading, given the others; null where it is not judged by itself. */
  bands(reading: string, values: Values, situation: Situation): readonly Band[] | null;
  judge(values: Values, situation: Situation): O;
  /** What a healthy reading is made of, in letters: for whoever learns. Its numbers stand in `healthy`. */
  readonly formula: string;
  /** One sentence that says where the healthy band comes from, with the numbers of this bike. */
  healthy(values: Values, situation: Situation): string;
}

export type Step<O extends string = string> = ChoiceStep<O> | RigStep<O> | ReadingStep<O>;
export type OutcomeOf<S> = S extends { readonly outcomes: infer R } ? Extract<keyof R, string> : never;

/** The label of the band that a value falls in. */
export const bandOf = (bands: readonly Band[], value: number): Band | undefined =>
  bands.find((band) => value >= band.low && value < band.high) ?? bands.at(value === Infinity ? -1 : bands.length);

/** The band that a reading is shown in: the first and the last are open to their side. */
export const shownBand = (bands: readonly Band[], value: number): Band | undefined =>
  bandOf(bands, value) ?? bands.at(value < 0 ? 0 : -1);

/** The name of the band that a value falls in. A scale ends where nothing new begins: what lies beyond is in its last band. */
export const labelIn = (bands: readonly Band[], value: number): string | undefined =>
  (bandOf(bands, value) ?? (value > 0 ? bands.at(-1) : bands[0]))?.label;

/** @__NO_SIDE_EFFECTS__ */
export const choice = <const O extends string>(step: Omit<ChoiceStep<O>, 'kind'>): ChoiceStep<O> => ({
  kind: 'choice',
  ...step,
});

/** @__NO_SIDE_EFFECTS__ */
export const rigQuestion = <const O extends string>(step: Omit<RigStep<O>, 'kind'>): RigStep<O> => ({
  kind: 'rig',
  ...step,
});

/** @__NO_SIDE_EFFECTS__ */
export const measurement = <const O extends string>(step: Omit<ReadingStep<O>, 'kind'>): ReadingStep<O> => ({
  kind: 'reading',
  ...step,
});
