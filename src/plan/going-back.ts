import { upperFirst } from '../compute/first-letter.ts';
import type { KnownAmp } from '../rig/rig.ts';
import { is } from '../steps/outcome.ts';
import { type PlanAct, reads } from './acts.ts';
import { FOR_FULL_LEVEL, gainDown, namesOf, needsUnaltered, settingsForBoost, someKnobs } from './amp-names.ts';
import { changeLine, changesInWords, demandOf } from './demand.ts';
import { expectFull, expectRear, expectTones } from './expect.ts';
import type { PlanCase } from './facts.ts';
import { planVerdict } from './plan-verdict.ts';
import {
  BACK_BY,
  BACK_IN_SHORT,
  eqOfFullLevel,
  harmOfStaying,
  hasAmp,
  levels,
  PRACTICE,
  SPECIAL_TOOL,
  sureness,
} from './wording.ts';

/** Answers that undo an amplified profile. */

/** Going back lifts the level: harmless without an amplifier, dangerous in front of one. */
const liftActs = (c: PlanCase): readonly PlanAct[] => (hasAmp(c) && someKnobs(c) ? FOR_FULL_LEVEL : []);
const listens = (c: PlanCase) => c.facts.amp === 'unaltered';
const WAKES_WHEN_LOUD = 'Does it wake when you turn it up? Then its wiring is fine, and too little reaches it.';
const madeForIt = (amp: KnownAmp) => amp.needs === 'unaltered';
const liftFirst = (c: PlanCase): readonly string[] => {
  if (!hasAmp(c)) return [];
  const known = (c.findings.rig.amps ?? []).some(madeForIt);
  return [
    ...gainDown(c),
    ...(known ? [`${upperFirst(namesOf(c, madeForIt))}: speaker-level input range, high-pass on.`] : []),
    ...settingsForBoost(c),
  ];
};

export const backToUnaltered = planVerdict({
  id: 'plan-back-to-unaltered',
  title: 'Back to the unaltered profile',
  faults: ['amplified-profile-no-amp', 'sense-starved-by-profile'],
  mends: ['profile'],
  article: 'why-amplified-without-an-amplifier-is-quieter',
  remedy: (c, f) => ({
    what: `Yes: have the unaltered profile selected again. ${
      hasAmp(c)
        ? `${upperFirst(namesOf(c, needsUnaltered))} needs the full output.`
        : 'No amplifier makes up for the lowered level.'
    } ${BACK_IN_SHORT}`,
    ...sureness(c),
    background: listens(c) ? `${WAKES_WHEN_LOUD} ${PRACTICE}` : PRACTICE,
    numbers: levels(c, f),
    fix: [
      ...liftFirst(c),
      `${changeLine(c)} That is the profile it was delivered with.`,
      eqOfFullLevel(c),
      'Keep: the wiring and the speakers. They are not at fault.',
    ],
    tools: SPECIAL_TOOL,
    minutes: 30,
    who: BACK_BY,
    notBuy: [
      'Speakers, because they sound thin. They get too little.',
      'Another amplified profile. Each of them lowers the level.',
      ...(hasAmp(c) ? ['A new amplifier because this one stays off. It may only be asleep.'] : []),
    ],
    ifDoneAnyway: harmOfStaying(c, f),
    acts: liftActs(c),
    proofActs: reads('boosted', 'lowered'),
    proof: `Boosted: ${expectTones(c)} Full level: ${expectFull(c)}`,
  }),
});

export const backToRearOn = planVerdict({
  id: 'plan-back-to-rear-on',
  title: 'Back to the full level, rear channels on',
  faults: ['amplified-profile-no-amp', 'sense-starved-by-profile'],
  mends: ['profile'],
  article: 'why-amplified-without-an-amplifier-is-quieter',
  remedy: (c, f) => ({
    what: `Yes: have the full level and the bass boost selected again, with the rear channels on. ${BACK_IN_SHORT}`,
    ...sureness(c),
    background: `Speakers or inputs on the rear outputs need both: the full level, and channels that are on. ${PRACTICE}`,
    numbers: levels(c, f),
    fix: [
      ...liftFirst(c),
      changeLine(c),
      eqOfFullLevel(c),
      'Say before the work that the rear channels stay on: plain unaltered can switch them off.',
    ],
    tools: SPECIAL_TOOL,
    minutes: 30,
    who: BACK_BY,
    notBuy: ['Speakers, because they are quiet.', 'Another amplified profile. Each of them lowers the level.'],
    ifDoneAnyway: `${harmOfStaying(c, f)} Back to plain unaltered: the rear goes dead on a bike built with front speakers only.`,
    acts: liftActs(c),
    proofActs: reads('boosted', 'rear'),
    proof: `Boosted: ${expectTones(c)} Rear on: ${expectRear(c)}`,
  }),
});

/** A bike that was built with an amplifier: nobody has promised that its head unit holds a full level at all. */
export const backIfStored = planVerdict({
  id: 'plan-back-if-stored',
  title: 'First ask whether a full level is stored',
  faults: ['amplified-profile-no-amp'],
  mends: ['profile'],
  article: 'why-amplified-without-an-amplifier-is-quieter',
  remedy: (c, f) => {
    const demand = demandOf(c);
    const orElse = demand.kind === 'select' ? demand.orElse : undefined;
    const ampComesOff = is(c.findings, 'planned-change', 'amp-removed');
    return {
      what: `Yes, if it can be had: have a specialist look whether this head unit holds a profile with the full level. Built with an amplifier, it may hold none, and then it stays ${f.loweredDb} quieter.`,
      ...sureness(c),
      background: `A bike built with an amplifier is delivered for one. ${PRACTICE}`,
      numbers: levels(c, f),
      fix: [
        ampComesOff
          ? 'Ask before the amplifier comes off. Without a full level, it is what makes this bike loud.'
          : 'Ask before anything is bought.',
        ...liftFirst(c),
        ...(ampComesOff
          ? [
              'It holds one? Then take the amplifier out and put its speakers on the head unit. Those below 4 Ω were made for the amplifier: on the head unit its outputs run hot.',
            ]
          : []),
        `${ampComesOff ? 'It is out?' : 'It holds one?'} ${changeLine(c)}`,
        'It holds none? Keep an amplifier that takes the lowered level, or put the old one back.',
        ...(orElse
          ? [
              `It holds none, and there is no such amplifier? Then change only this: ${changesInWords(orElse)}. The level stays as it is now.`,
            ]
          : []),
      ],
      tools: SPECIAL_TOOL,
      minutes: 30,
      who: BACK_BY,
      notBuy: [
        'A visit before somebody has said that the full level is there.',
        'Speakers, because it is quiet. They would get the same.',
      ],
      ifDoneAnyway: harmOfStaying(c, f),
      acts: liftActs(c),
      proofActs: reads('boosted', 'lowered'),
      proof: `Boosted: ${expectTones(c)} Full level: ${expectFull(c)}`,
    };
  },
});
