import { lowerFirst } from '../compute/first-letter.ts';
import { type PlanAct, reads } from './acts.ts';
import { FOR_FULL_LEVEL, gainDown, namesOf, settingsForBoost, someKnobs, untilThen } from './amp-names.ts';
import { needOf, whoSelectsAmplified } from './amp-need.ts';
import { changeLine, onlyTheEq } from './demand.ts';
import { expectEngine, expectRear, expectTones } from './expect.ts';
import type { PlanCase } from './facts.ts';
import { planVerdict } from './plan-verdict.ts';
import { STORED_PROFILES } from './profile/profile.ts';
import {
  BACK_BY,
  DEALER_OR_SPECIALIST,
  eqOfAmplified,
  harmOfAmplified,
  harmOfBoost,
  hasAmp,
  levels,
  PRACTICE,
  REAR_BY,
  SPECIAL_TOOL,
  selectsAmplified,
  sureness,
} from './wording.ts';

/** Answers that select something else in the head unit. */

const amps = (c: PlanCase) => c.findings.rig.amps ?? [];
const busAnswers = (c: PlanCase) => c.findings.outcome('factory-amp-answers') === 'yes';
const who = (c: PlanCase) => whoSelectsAmplified(amps(c), busAnswers(c));
const drivesRear = (c: PlanCase) => namesOf(c, (amp) => amps(c).length < 2 || amp.drives !== 'front');

const forBoost = (c: PlanCase): readonly PlanAct[] => (settingsForBoost(c).length > 0 ? FOR_FULL_LEVEL : []);

export const enableRear = planVerdict({
  id: 'plan-enable-rear',
  title: 'Rear channels on, nothing else',
  faults: ['rear-channels-disabled'],
  mends: ['profile'],
  remedy: (c, f) => ({
    what: `Yes, a small one: have only the rear channels switched on. ${DEALER_OR_SPECIALIST}`,
    ...sureness(c),
    background: `Outputs and wiring exist. The stored profile keeps them off. ${PRACTICE}`,
    numbers: levels(c, f),
    fix: [
      ...(c.facts.rear === 'amp'
        ? someKnobs(c)
          ? [
              `Before the visit: gain of ${drivesRear(c)} to minimum. Its inputs get sound at once. Set the gain after it.`,
            ]
          : ['Before the visit: volume at zero. The rear gets sound at once.']
        : []),
      changeLine(c),
      'Keep: the full level, the bass boost and the EQ. It must not become an amplified profile.',
      ...(c.facts.rear === 'amp'
        ? [
            'Or leave the profile alone. Feed the rear inputs from the front pair: the fader then does nothing. Only the amplifier’s inputs, never the speakers: a second speaker across a head-unit pair halves its ohms.',
          ]
        : ['One speaker of 4 Ω or more on each rear channel. Below that the head unit’s output runs hot.']),
      ...settingsForBoost(c),
      ...(c.facts.rear === 'unit' && hasAmp(c) && c.facts.amp !== 'unaltered'
        ? ['Better still: move the rear pair to an amplifier, too. Then an amplified profile fits the whole build.']
        : []),
    ],
    tools: SPECIAL_TOOL,
    minutes: 30,
    who: `${REAR_BY} “It cannot be done” is true for an amplified profile with an added amplifier, not for rear channels.`,
    notBuy: [
      'An amplified profile to get the rear channels.',
      ...(hasAmp(c) ? [] : ['An amplifier, only to get sound from the rear.']),
    ],
    ifDoneAnyway: `${harmOfAmplified(c, f)} With nothing done, the rear stays silent.`,
    acts: [...(c.facts.rear === 'amp' ? ([{ do: 'renew-wire', wire: 'signal' }] as const) : []), ...forBoost(c)],
    proofActs: reads('rear'),
    proof: `Sound: ${expectRear(c)} Half the supply as DC on the rear wires proves nothing.`,
  }),
});

/** Whether the full level may still be stored, which an amplifier for the lowered one has to live with until the visit. */
const fullUntilThen = (c: PlanCase) => c.facts.profiles.some((profile) => !STORED_PROFILES[profile].lowered);

const amplifiedActs = (c: PlanCase): readonly PlanAct[] => [
  ...(fullUntilThen(c) && someKnobs(c) ? FOR_FULL_LEVEL : []),
  ...(c.facts.amp === 'flexible' && !onlyTheEq(c) ? ([{ do: 'wake-by-wire' }] as const) : []),
];

const afterwards = (c: PlanCase): string => {
  if (onlyTheEq(c)) return someKnobs(c) ? 'The gain can stay as it is set.' : 'It plays as loud as before.';
  return someKnobs(c)
    ? 'After the visit set the gain again. The bass seems gone: the boost was taken out on purpose.'
    : 'The bass seems gone after the visit: the boost was taken out on purpose. A factory amplifier is made for that.';
};

const amplifiedFix = (c: PlanCase): readonly string[] => [
  ...(fullUntilThen(c) ? [untilThen(c)] : []),
  ...(c.facts.amp === 'flexible' && !onlyTheEq(c)
    ? [
        `First wire the remote input of ${namesOf(c, (amp) => needOf(amp) === 'flexible')}, or prove that it wakes at the lowered level with quiet music.`,
      ]
    : []),
  changeLine(c),
  onlyTheEq(c)
    ? 'Keep: level, bass and rear. They are right.'
    : 'Keep: every speaker on an amplifier. One left on the head unit would be starved.',
  afterwards(c),
];

export const amplifiedSame = planVerdict({
  id: 'plan-amplified-same',
  title: 'Amplified profile with the same EQ',
  faults: ['unaltered-profile-with-amp', 'amplified-profile-eq-changes'],
  mends: ['profile'],
  remedy: (c, f) => ({
    what: `Yes: have the amplified profile selected that keeps the same EQ with the engine running. ${selectsAmplified(c)}`,
    ...sureness(c),
    background: `All speakers play through an amplifier that takes the lowered level, and it can be tuned once for both engine states. ${PRACTICE}`,
    numbers: levels(c, f),
    fix: amplifiedFix(c),
    tools: SPECIAL_TOOL,
    minutes: 45,
    who: who(c),
    notBuy: [
      'A profile by its name. The number of amplifiers in it proves nothing: ask what it does with the engine running.',
    ],
    ifDoneAnyway: `With the wrong kind the EQ still jumps when the engine starts. ${harmOfBoost(f)}`,
    acts: amplifiedActs(c),
    proofActs: reads('boosted', 'sameEq'),
    proof: `Flat: ${expectTones(c)} ${expectEngine(c)}`,
  }),
});

export const amplifiedAny = planVerdict({
  id: 'plan-amplified-any',
  title: 'Amplified profile, either kind',
  faults: ['unaltered-profile-with-amp'],
  mends: ['profile'],
  remedy: (c, f) => ({
    what: `Yes: have an amplified profile selected, best the kind with the same EQ. ${selectsAmplified(c)}`,
    ...sureness(c),
    background: `Either kind will do. The one with the same EQ can be tuned once, engine off. ${PRACTICE}`,
    numbers: levels(c, f),
    fix: amplifiedFix(c),
    tools: SPECIAL_TOOL,
    minutes: 45,
    who: who(c),
    notBuy: ['A profile by its name. The number of amplifiers in it proves nothing: ask what it does.'],
    ifDoneAnyway: `${harmOfBoost(f)}`,
    acts: amplifiedActs(c),
    proofActs: reads('boosted'),
    proof: `Flat: ${expectTones(c)}`,
  }),
});

export const moveOrBack = planVerdict({
  id: 'plan-move-or-back',
  title: 'Move the starved pair, or go back',
  mends: ['profile', 'run'],
  remedy: (c, f) => {
    const pair = c.facts.front === 'unit' ? 'front' : 'rear';
    const eqKind = c.facts.sameEqWanted && c.facts.profiles.includes('amplified-changes');
    return {
      what: eqKind
        ? `Yes, one of two: move the ${pair} pair to an amplifier and have the kind with the same EQ, or go back to the full level.`
        : `Yes, one of two: move the ${pair} pair to an amplifier, which needs no reflash, or go back to the full level. Now that pair is starved.`,
      ...sureness(c),
      background: `An amplified profile lowers every output, and no amplifier makes up for it on the head unit’s own pair. ${PRACTICE}`,
      numbers: levels(c, f),
      fix: [
        eqKind
          ? `Either move the ${pair} pair to an amplifier. Then have the amplified profile with the same EQ selected.`
          : `Either move the ${pair} pair to an amplifier and keep the amplified profile. ${eqOfAmplified(c)}`,
        'Or change back to the full level with the bass boost, and keep the rear channels on.',
        ...(c.facts.fromNew
          ? ['Going back: first ask whether this head unit holds a full level. Built with an amplifier, it may not.']
          : []),
        ...gainDown(c).map((line) => `Going back, ${lowerFirst(line)}`),
        ...settingsForBoost(c).map((line) => `Going back, ${lowerFirst(line)}`),
      ],
      tools: SPECIAL_TOOL,
      minutes: 60,
      who: `A fitter moves the pair. For going back: ${lowerFirst(BACK_BY)}`,
      notBuy: [`Louder ${pair} speakers. They would be starved as well.`],
      ifDoneAnyway: `Left as it is, the ${pair} pair stays ${f.loweredDb} quieter and without the bass boost, whatever the fader says.`,
      acts: [{ do: 'renew-wire', wire: 'speaker-run', where: pair }, ...forBoost(c)],
      proofActs: reads('boosted'),
      proof: `Moved: front and rear are level at centred fader. Gone back, boosted: ${expectTones(c)}`,
    };
  },
});
