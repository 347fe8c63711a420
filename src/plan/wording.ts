import { upperFirst } from '../compute/first-letter.ts';
import { namesOf, needsUnaltered } from './amp-names.ts';
import { type AssumedNeed, assumedNeed, dealerCanSelect } from './amp-need.ts';
import type { SameEqClash } from './decision.ts';
import { isMeasured, type PlanCase, wasRead } from './facts.ts';
import type { Figures } from './figures.ts';
import { measuredProfile, profileNow } from './profile/profile.ts';
import type { PlanNumber } from './verdict.ts';

/** Sentences that several verdicts share. */

export const PRACTICE = 'What the profiles do is common practice of the trade, no published source.';

export const REAR_BY =
  'A dealer or an independent specialist. Either tool switches the rear channels on, with or without an amplifier.';
export const BACK_BY =
  'An independent specialist or a dealer. Ask the dealer first: whether that tool also takes an amplified profile out again is not documented.';
export const BACK_IN_SHORT = 'An independent specialist does it, perhaps a dealer.';
export const SPECIAL_TOOL = 'a dealer’s or a specialist’s tool';
export const NOBODY = 'Nobody. There is nothing to select.';
export const YOU = 'You, or whoever fitted it.';

/** Who, in as few words as the first sentence of a verdict has room for. */
export const DEALER_OR_SPECIALIST = 'A dealer or an independent specialist does it.';
export const selectsAmplified = ({ findings }: PlanCase): string =>
  dealerCanSelect(findings.rig.amps ?? []) ? DEALER_OR_SPECIALIST : 'An independent specialist does it.';

/** What each wish for the same EQ runs into. */
export const sameEqNotToBeHad = (c: PlanCase, clash: SameEqClash): string =>
  ({
    'without-amp':
      'the same EQ comes only with an amplified profile, and without an amplifier that costs level and bass.',
    'unaltered-amp': `the same EQ comes only with an amplified profile, and ${namesOf(c, needsUnaltered)} needs the unaltered output.`,
    mixed: 'the same EQ comes only with an amplified profile, and that starves the pair on the head unit.',
  })[clash];

/** What a wish is told with the answer: what no profile can give. */
export function ofTheWish(c: PlanCase, f: Figures): readonly string[] {
  const { sameEqClash } = c.decision;
  switch (c.findings.outcome('planned-change')) {
    case 'louder':
      return [`No reflash adds power: amplified is ${f.loweredDb} quieter.`];
    case 'more-bass':
      return ['No reflash adds bass: unaltered has the most.'];
    case 'same-eq':
    case 'bass-gone':
      return sameEqClash && (c.answer === 'likely-stay' || c.answer === 'measure-first')
        ? [upperFirst(sameEqNotToBeHad(c, sameEqClash))]
        : [];
    default:
      return [];
  }
}

/** How the profile was found, which is how sure the answer is. */
export function sureness(c: PlanCase): { certainty: 'proved' | 'likely'; howSure: string } {
  if (isMeasured(c)) {
    if (!wasRead(c.findings))
      return { certainty: 'proved', howSure: 'That holds whatever is stored in the head unit.' };
    const howSure =
      c.decision.rows.length > 1
        ? 'Your readings leave more than one profile possible, and each of them gives this answer.'
        : 'Your readings show what is stored now.';
    return { certainty: 'proved', howSure };
  }
  const source = c.findings.outcome('profile-source');
  const rests =
    source === 'record'
      ? 'on a paper'
      : source === 'never'
        ? 'on nobody having changed the head unit'
        : c.findings.outcome('worse-how') !== undefined
          ? 'on what got worse'
          : 'on what could be read';
  return {
    certainty: 'likely',
    howSure: `It rests ${rests}. ${wasRead(c.findings) ? '' : 'A reading with two tones proves it.'}`.trim(),
  };
}

/** What an amplified profile would do to this build, in its own figures. */
export function harmOfAmplified(c: PlanCase, f: Figures): string {
  const { facts } = c;
  if (facts.amp === 'unaltered') {
    return `With an amplified profile the input of ${namesOf(c, needsUnaltered)} falls from ${f.fullV} to ${f.loweredV}, and the bass by ${f.bassMovesDb}. It stays asleep, or plays too quietly and too thinly.`;
  }
  const starved = `${f.loweredDb} quieter and without the ${f.boostDb} of bass boost`;
  if (facts.amp !== 'none') {
    return `An amplified profile lowers every output. The pair on the head unit then plays ${starved}, and no amplifier makes up for it.`;
  }
  return `An amplified profile makes it ${starved}: ${f.fullW} a channel become ${f.loweredW}, ${f.shareLeft} of the power. The bass falls by ${f.bassMovesDb}.`;
}

/** The same, for a build that has one already. */
export function harmOfStaying(c: PlanCase, f: Figures): string {
  if (hasAmp(c)) {
    return `Left as it is, the amplifier gets ${f.loweredV} where the full level gives ${f.fullV}, and no bass boost. It stays asleep, or plays too quietly and too thinly.`;
  }
  return `Left as it is, ${f.loweredW} a channel are all there is of ${f.fullW}. Bass turned up in the phone only clips sooner.`;
}

/** What an unaltered profile does to an amplifier that takes any level. */
export const harmOfBoost = (f: Figures): string =>
  `With the unaltered profile the bass takes ${f.bassTimes} the power of the rest. It clips when the rest is only at ${f.bassClipsAtV} of ${f.fullV}. The amplifier makes the clipping louder, and speakers blow.`;

export function levels(c: PlanCase, f: Figures): readonly PlanNumber[] {
  const watts = (levelV: string, powerW: string) => (c.facts.front === 'unit' ? `${levelV} · ${powerW}` : levelV);
  const into = c.facts.front === 'unit' ? `, into ${f.speaker}` : '';
  return [
    { label: `Loudest clean, full level${into}`, value: watts(f.fullV, f.fullW) },
    { label: 'Loudest clean, amplified profile', value: watts(f.loweredV, f.loweredW) },
  ];
}

/** What is said where nobody knows what an amplifier was made for. */
export const ASSUMED_NEED: Readonly<Record<AssumedNeed, string>> = {
  unaltered:
    'An amplifier here wakes by what is on its inputs, and nobody knows which output it was made for. Until proved otherwise it counts as one that needs the unaltered output. Proof: its papers, or a bench try at the lowered level with quiet music for ten seconds.',
  any: 'An amplifier with a remote wire wakes at any level, so it counts as one that takes any source. Some are made for the unaltered output all the same, and play too quietly without it. Their papers say so.',
};
export const assumedIn = ({ findings }: PlanCase): AssumedNeed | null => assumedNeed(findings.rig.amps ?? []);

/** The unaltered profile changes its EQ by design. That a profile with only the rear added does so, too, is assumed. */
export const eqOfFullLevel = ({ findings, facts }: PlanCase): string =>
  profileNow(findings).sameEq === 'no' || facts.profiles.every((profile) => profile === 'unaltered')
    ? 'The EQ changes when the engine starts. That is how the unaltered profile is made, not a fault.'
    : 'The EQ may change when the engine starts. That is how the unaltered profile is made, not a fault.';

/** What is known of the EQ of an amplified profile. It is the same only where somebody read it. */
export function eqOfAmplified({ findings }: PlanCase): string {
  if (measuredProfile(findings).sameEq === 'yes')
    return 'The EQ stays the same with the engine running: you read that.';
  const { sameEq } = profileNow(findings);
  if (sameEq === 'yes') return 'By the paper the EQ stays the same with the engine running. Nobody has read it.';
  if (sameEq === 'no') return 'The EQ changes when the engine starts. This kind of profile does that.';
  return 'The EQ may still change when the engine starts. “What is in this head unit now?” reads that with two tones.';
}

export const hasAmp = (c: PlanCase): boolean => c.facts.amp !== 'none';
