import { upperFirst } from '../compute/first-letter.ts';
import { bringsAbout, reads } from './acts.ts';
import { FOR_FULL_LEVEL, namesOf, needsUnaltered, settingsForBoost } from './amp-names.ts';
import { planVerdict } from './plan-verdict.ts';
import { harmOfAmplified, levels, NOBODY, PRACTICE, sameEqNotToBeHad } from './wording.ts';

/** The wish for the same EQ, on builds that cannot have it at full level. */

/** Bass and treble are set to the ear with the engine idling, standing. */
const WITH_THE_ENGINE = [...bringsAbout('engine-running'), { do: 'flatten-tone', of: 'unit' }] as const;

export const sameEqWithoutAmp = planVerdict({
  id: 'plan-same-eq-without-amp',
  title: 'Same EQ without an amplifier: better not',
  faults: ['eq-changes-by-design'],
  article: 'why-amplified-without-an-amplifier-is-quieter',
  remedy: (c, f) => ({
    what: `No reflash: ${sameEqNotToBeHad(c, 'without-amp')}`,
    certainty: 'likely',
    howSure: 'No profile is known that has the full level and the same EQ.',
    background: `The change at engine start is how the unaltered profile is made, not a fault. ${PRACTICE}`,
    numbers: levels(c, f),
    fix: [
      'Either keep the unaltered profile and set bass and treble with the engine running.',
      'Or add an amplifier for all speakers first. Then an amplified profile with the same EQ fits.',
    ],
    who: NOBODY,
    notBuy: ['An amplified profile for the same EQ. The price is level and bass.'],
    ifDoneAnyway: harmOfAmplified(c, f),
    acts: WITH_THE_ENGINE,
    proofActs: reads('boosted', 'sameEq'),
    proof: 'Same tones, engine off and running: the ratio changes, and the level stays full.',
  }),
});

export const sameEqUnalteredAmp = planVerdict({
  id: 'plan-same-eq-unaltered-amp',
  title: 'Same EQ with this amplifier: not both',
  faults: ['eq-changes-by-design'],
  article: 'amplifiers-that-listen',
  remedy: (c, f) => ({
    what: `No reflash: ${sameEqNotToBeHad(c, 'unaltered-amp')}`,
    certainty: 'likely',
    howSure: 'No profile is known that has the full level and the same EQ.',
    background: PRACTICE,
    fix: [
      'Either keep the unaltered profile and the amplifier, and set bass and treble with the engine running.',
      `Or exchange ${namesOf(c, needsUnaltered)} for one that takes any source. Only after that have the profile changed.`,
      'Keep the profile as it is until the new amplifier is in.',
      ...settingsForBoost(c),
    ],
    who: NOBODY,
    notBuy: ['An amplified profile in front of an amplifier made for the unaltered output.'],
    ifDoneAnyway: harmOfAmplified(c, f),
    acts: [...WITH_THE_ENGINE, ...(settingsForBoost(c).length > 0 ? FOR_FULL_LEVEL : [])],
    proofActs: reads('boosted', 'sameEq'),
    proof: 'Same tones, engine off and running: the ratio changes, and the amplifier wakes with quiet music.',
  }),
});

export const sameEqMixed = planVerdict({
  id: 'plan-same-eq-mixed',
  title: 'Same EQ: first every speaker on an amplifier',
  faults: ['eq-changes-by-design'],
  remedy: (c, f) => {
    const pair = c.facts.front === 'unit' ? 'front' : 'rear';
    return {
      what: `No reflash: not before the ${pair} pair is on an amplifier, too. ${upperFirst(sameEqNotToBeHad(c, 'mixed'))}`,
      certainty: 'likely',
      howSure: 'No profile is known that has the full level and the same EQ.',
      background: PRACTICE,
      fix: [
        `Either move the ${pair} pair to an amplifier. Then have the amplified profile with the same EQ selected.`,
        'Or keep the profile and set bass and treble with the engine running.',
        ...settingsForBoost(c),
      ],
      who: `A fitter moves the ${pair} pair. Nobody needs to select anything before that.`,
      notBuy: ['An amplified profile as long as one pair is on the head unit.'],
      ifDoneAnyway: harmOfAmplified(c, f),
      acts: [
        ...WITH_THE_ENGINE,
        { do: 'renew-wire', wire: 'speaker-run', where: pair },
        ...(settingsForBoost(c).length > 0 ? FOR_FULL_LEVEL : []),
      ],
      proof: 'Every pair on an amplifier, and only then the visit.',
      minutes: 60,
    };
  },
});
