import { tonesOff, tonesRunning, topStep } from '../../steps/profile-tones.ts';
import { rearPair } from '../../steps/rear-volts.ts';
import type { RemedyNumber } from '../verdict.ts';
import { needIsAssumed } from './amp-need.ts';
import type { SameEqClash } from './decision.ts';
import { isMeasured, type PlanCase } from './facts.ts';
import type { Figures } from './figures.ts';

/** Sentences that several verdicts share. */

const AND = new Intl.ListFormat('en-GB', { type: 'conjunction' });
export const list = (words: readonly string[]): string => AND.format(words);

export const PRACTICE = 'What the profiles do is common practice of the trade, no published source.';

export const REAR_BY =
  'A dealer or an independent specialist. Either tool switches the rear channels on, with or without an amplifier.';
export const BACK_BY =
  'An independent specialist or a dealer. Ask the dealer first: whether that tool also takes an amplified profile out again is not documented.';
export const SPECIAL_TOOL = 'a dealer’s or a specialist’s tool';
export const NOBODY = 'Nobody. There is nothing to select.';
export const YOU = 'You, or whoever fitted it.';

/** What each wish for the same EQ runs into. */
export const SAME_EQ_NOT_TO_BE_HAD: Readonly<Record<SameEqClash, string>> = {
  'without-amp': 'The same EQ is only in an amplified profile, and without an amplifier that costs level and bass.',
  'unaltered-amp':
    'The same EQ is only in an amplified profile, and this amplifier needs the unaltered output. You cannot have both.',
  mixed: 'The same EQ is only in an amplified profile, and that starves the pair on the head unit.',
};

/** How the profile was found, which is how sure the answer is. */
export function sureness(c: PlanCase): { certainty: 'proved' | 'likely'; howSure: string } {
  const whatever = c.decision.rows.length > 1;
  if (isMeasured(c)) {
    const howSure = whatever
      ? 'Your readings leave more than one profile possible, and each of them gives this answer.'
      : 'Your readings show what is stored now.';
    return { certainty: 'proved', howSure };
  }
  const source = c.findings.outcome('profile-source');
  const rests = source === 'record' ? 'on a paper' : 'on nobody having changed the head unit';
  return { certainty: 'likely', howSure: `It rests ${rests}. A reading with two tones proves it.` };
}

/** What an amplified profile would do to this build, in its own figures. */
export function harmOfAmplified({ facts }: PlanCase, f: Figures): string {
  if (facts.amp === 'unaltered') {
    return `With an amplified profile its input falls from ${f.fullV} to ${f.loweredV}, and the bass by ${f.bassMovesDb}. It stays asleep, or plays too quietly and too thinly.`;
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

export const levels = (c: PlanCase, f: Figures): readonly RemedyNumber[] => [
  { label: 'Loudest clean output, full level', value: f.fullV },
  { label: 'Loudest clean output, amplified profile', value: f.loweredV },
  ...(c.facts.front === 'unit'
    ? [
        { label: `In ${f.speaker}, full level`, value: f.fullW },
        { label: `In ${f.speaker}, amplified profile`, value: f.loweredW },
      ]
    : []),
];

/** The readings to expect, from the bands of the steps themselves. */
const now = ({ findings }: PlanCase) => ({ rig: findings.rig, facts: {} });
export const expectRear = (c: PlanCase) =>
  `a tone on the rear pairs, fader in the middle. ${rearPair.healthy({}, now(c))}`;
export const expectTones = (c: PlanCase) =>
  `80 Hz and 400 Hz on a front pair, one low step, engine off. ${tonesOff.healthy({}, now(c))}`;
export const expectEngine = (c: PlanCase) => `The same tones, engine running. ${tonesRunning.healthy({}, now(c))}`;
export const expectFull = (c: PlanCase) =>
  `the loudest clean step at 80 Hz on a front pair. ${topStep.healthy({}, now(c))}`;

/** What is said where an amplifier is treated as hard to please only because nobody knows better. */
export const ASSUMED_NEED =
  'The amplifier listens, and nobody knows for what. Until it is proved otherwise it counts as one that needs the unaltered output. Proof: its papers, or a bench try at the lowered level with quiet music for ten seconds.';
export const assumedNeed = (c: PlanCase): boolean => needIsAssumed(c.findings.rig.amps ?? []);

export const SETTINGS_FOR_BOOST =
  'Amplifier: speaker-level input range, high-pass at 80 Hz or above, its bass control at zero. The bass boost reaches it.';

export const hasAmp = (c: PlanCase): boolean => c.facts.amp !== 'none';
