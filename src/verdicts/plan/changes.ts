import { whoSelectsAmplified } from './amp-need.ts';
import type { PlanCase } from './facts.ts';
import { planVerdict } from './plan-verdict.ts';
import {
  BACK_BY,
  expectEngine,
  expectRear,
  expectTones,
  harmOfAmplified,
  harmOfBoost,
  hasAmp,
  levels,
  PRACTICE,
  REAR_BY,
  SETTINGS_FOR_BOOST,
  SPECIAL_TOOL,
  sureness,
} from './wording.ts';

/** Answers that select something else in the head unit. */

const amps = (c: PlanCase) => c.findings.rig.amps ?? [];
const boostForAmp = (c: PlanCase) => (hasAmp(c) && c.facts.amp !== 'unaltered' ? [SETTINGS_FOR_BOOST] : []);

export const enableRear = planVerdict({
  id: 'plan-enable-rear',
  title: 'Rear channels on, nothing else',
  faults: ['rear-channels-disabled'],
  mends: ['profile'],
  remedy: (c, f) => ({
    what: 'Have the rear channels switched on, and nothing else. Outputs and wiring exist; the stored profile keeps them off.',
    ...sureness(c),
    background: PRACTICE,
    numbers: levels(c, f),
    fix: [
      'Change: rear channels on.',
      'Keep: the full level, the bass boost and the EQ. It must not become an amplified profile.',
      ...(c.facts.rear === 'amp'
        ? [
            'Or leave the profile alone and feed the amplifier’s rear inputs from the front pair. The fader then does nothing.',
          ]
        : ['One speaker of 4 Ω or more on each rear channel. Below that the head unit’s output runs hot.']),
      ...boostForAmp(c),
      ...(c.facts.rear === 'unit' && hasAmp(c) && c.facts.amp !== 'unaltered'
        ? ['Better still: move the rear pair to the amplifier, too. Then an amplified profile fits the whole build.']
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
    cautions: ['bridge'],
    proof: `Sound: ${expectRear(c)} Half the supply as DC on the rear wires proves nothing.`,
  }),
});

const amplifiedFix = (c: PlanCase): readonly string[] => [
  ...(c.facts.amp === 'flexible'
    ? ['First wire the amplifier’s remote input, or prove that it wakes at the lowered level with quiet music.']
    : []),
  'Keep: every speaker on an amplifier. One left on the head unit would be starved.',
  'After the visit set the gain again. The bass seems gone: the boost was taken out on purpose.',
];

export const amplifiedSame = planVerdict({
  id: 'plan-amplified-same',
  title: 'Amplified profile with the same EQ',
  faults: ['unaltered-profile-with-amp', 'amplified-profile-eq-changes'],
  mends: ['profile'],
  remedy: (c, f) => ({
    what: 'Have an amplified profile selected, of the kind that keeps the same EQ when the engine runs.',
    ...sureness(c),
    background: `All speakers play through an amplifier that takes the lowered level, and it can be tuned once for both engine states. ${PRACTICE}`,
    numbers: levels(c, f),
    fix: [
      'Change: level lowered, bass boost out, rear channels on, EQ the same with the engine running.',
      ...amplifiedFix(c),
    ],
    tools: SPECIAL_TOOL,
    minutes: 45,
    who: whoSelectsAmplified(amps(c)),
    notBuy: [
      'A profile by its name. The number of amplifiers in it proves nothing: ask what it does with the engine running.',
    ],
    ifDoneAnyway: `With the wrong kind the tone still jumps when the engine starts. ${harmOfBoost(f)}`,
    cautions: ['set-gain-again', 'bridge'],
    proof: `Flat: ${expectTones(c)} ${expectEngine(c)}`,
  }),
});

export const amplifiedAny = planVerdict({
  id: 'plan-amplified-any',
  title: 'Amplified profile, either kind',
  faults: ['unaltered-profile-with-amp'],
  mends: ['profile'],
  remedy: (c, f) => ({
    what: 'Have an amplified profile selected. Either kind will do; take the one with the same EQ if you can choose.',
    ...sureness(c),
    background: `The kind with the same EQ can be tuned once, engine off. ${PRACTICE}`,
    numbers: levels(c, f),
    fix: ['Change: level lowered, bass boost out, rear channels on.', ...amplifiedFix(c)],
    tools: SPECIAL_TOOL,
    minutes: 45,
    who: whoSelectsAmplified(amps(c)),
    notBuy: ['A profile by its name. The number of amplifiers in it proves nothing: ask what it does.'],
    ifDoneAnyway: `With nothing done: ${harmOfBoost(f)}`,
    cautions: ['set-gain-again', 'bridge'],
    proof: `Flat: ${expectTones(c)}`,
  }),
});

export const moveOrBack = planVerdict({
  id: 'plan-move-or-back',
  title: 'Move the starved pair, or go back',
  mends: ['profile', 'run'],
  remedy: (c, f) => {
    const pair = c.facts.front === 'unit' ? 'front' : 'rear';
    return {
      what: `The amplified profile starves the ${pair} pair, which plays from the head unit. Move that pair to the amplifier, or go back.`,
      ...sureness(c),
      background: PRACTICE,
      numbers: levels(c, f),
      fix: [
        `Either move the ${pair} pair to the amplifier. Keep the amplified profile, and have the kind with the same EQ if the tone must not change.`,
        'Or change back to the full level with the bass boost, and keep the rear channels on.',
        'Going back: amplifier gain to minimum, speaker-level input range and high-pass on before the visit. Set the gain again after it.',
      ],
      tools: SPECIAL_TOOL,
      minutes: 60,
      who: `A fitter for moving the pair. For going back: ${BACK_BY}`,
      notBuy: [`Louder ${pair} speakers. They would be starved as well.`],
      ifDoneAnyway: `Left as it is, the ${pair} pair stays ${f.loweredDb} quieter and without the bass boost, whatever the fader says.`,
      cautions: ['back-to-full', 'set-gain-again', 'bridge'],
      proof: `Moved: front and rear are level at centred fader. Gone back, boosted: ${expectTones(c)}`,
    };
  },
});
