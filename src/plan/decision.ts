import type { AmpNeed } from './amp-need.ts';
import type { AnswerClash } from './answer-clash.ts';
import type { Property, StoredProfile } from './profile/profile.ts';

export type Feed = 'front' | 'rear' | 'inputs';

/** Everything that the answer depends on. Phone mirroring is answered apart and changes nothing here. */
export interface PlanFacts {
  /** Nothing is wrong, and nothing is wished for. */
  readonly nothingToDo: boolean;
  readonly unit: 'factory' | 'replaced' | 'unknown';
  /** The stored profiles that are believed possible, of those that agree with every reading. */
  readonly profiles: readonly StoredProfile[];
  /** The bike was built with an amplifier: its head unit may hold no full level to go back to. */
  readonly fromNew: boolean;
  /** When the bass goes, for somebody who misses it only then. */
  readonly bassGone: 'riding' | 'with-speed' | null;
  /** A paper, or memory, says the opposite of the meter. */
  readonly toldAgainstMeter: boolean;
  /** Answers that cannot all be true. */
  readonly clashes: readonly AnswerClash[];
  readonly amp: AmpNeed;
  readonly front: 'unit' | 'amp' | 'unknown';
  readonly rear: 'none' | 'unit' | 'amp' | 'unknown';
  /** Where an amplifier on the rear takes its signal from: the rear outputs, or the front pair only. */
  readonly inputs: 'own' | 'front' | 'unknown';
  readonly sameEqWanted: boolean;
  /** Somebody misses sound from the rear. */
  readonly rearMissed: boolean;
}

/** The facts with nothing left open: one of the bikes that it can be. */
export interface CertainFacts {
  readonly profile: StoredProfile;
  readonly fromNew: boolean;
  readonly amp: AmpNeed;
  readonly front: 'unit' | 'amp';
  readonly rear: 'none' | 'unit' | 'amp';
  readonly inputs: 'own' | 'front';
  readonly sameEqWanted: boolean;
}

/** A wish for the same EQ that this build cannot have at full level. */
export type SameEqClash = 'without-amp' | 'unaltered-amp' | 'mixed';

export type Answer =
  | 'nothing-to-do'
  | 'bass-masked'
  | 'speed-volume'
  | 'find-the-unit'
  | 'replaced-unit'
  | 'which-rear'
  | 'on-no-amp'
  | 'amp-feeds-nothing'
  | Exclude<AnswerClash, 'driven-by-none'>
  | 'find-the-amp'
  | 'told-against-meter'
  | 'no-such-profile'
  | 'follow-the-wires'
  | 'measure-first'
  | ProfileAnswer;
export type ProfileAnswer =
  | 'stay'
  | 'enable-rear'
  | 'back-to-unaltered'
  | 'back-to-rear-on'
  | 'back-if-stored'
  | 'amplified-same'
  | 'amplified-any'
  | 'move-or-back';

export interface Decision {
  /** The row that was met: of several that agree, the first. */
  readonly row: string;
  readonly answer: Answer;
  /** Every row that one of the possible bikes meets. */
  readonly rows: readonly string[];
  /** For 'measure-first': the fewest properties that separate the answers. */
  readonly separators: readonly Property[];
  /** For 'follow-the-wires': what is open and matters. */
  readonly open: readonly Feed[];
  readonly sameEqClash: SameEqClash | null;
}
