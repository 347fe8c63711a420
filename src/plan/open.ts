import type { KnownAmp } from '../rig/rig.ts';
import { dealerCanSelect } from './amp-need.ts';
import { choicesFrom, decide } from './decide.ts';
import type { Answer, PlanFacts } from './decision.ts';
import { apartInWords, demandOf } from './demand.ts';
import { leftOut, type PlanCase } from './facts.ts';
import { PROPERTIES, type Property, STORED_PROFILES, type StoredProfile } from './profile/profile.ts';
import type { Finding, Unless } from './verdict.ts';

/** What each answer comes to in a few words, for somebody who does not have it yet. */
const IN_SHORT: Readonly<Partial<Record<Answer, string>>> = {
  stay: 'no reflash',
  'enable-rear': 'have only the rear channels switched on',
  'back-to-unaltered': 'have the full level and the bass boost selected again',
  'back-to-rear-on': 'have the full level and the bass boost selected again, rear channels on',
  'back-if-stored': 'ask whether this head unit holds a full level to go back to',
  'amplified-same': 'have the amplified profile with the same EQ selected',
  'amplified-any': 'have an amplified profile selected',
  'move-or-back': 'move the starved pair to an amplifier, or go back to the full level',
  'measure-first': 'then read what is stored',
  'follow-the-wires': 'then follow the wires',
  'find-the-amp': 'then find out which output the amplifier was made for',
  'on-no-amp': 'then count the amplifiers again',
  'which-rear': 'then look for the rear speakers again',
  'replaced-unit': 'no reflash, there is nothing to select',
  'amp-feeds-nothing': 'it does not count, answer without it',
};
const MINUTES: Readonly<Partial<Record<Answer, number>>> = {
  stay: 0,
  'replaced-unit': 0,
  'enable-rear': 30,
  'back-to-unaltered': 30,
  'back-to-rear-on': 30,
  'back-if-stored': 10,
  'amplified-same': 45,
  'amplified-any': 45,
  'move-or-back': 60,
  'measure-first': 10,
  'follow-the-wires': 20,
};

const inShort = (answer: Answer): string => IN_SHORT[answer] ?? 'look again';

function whoFor(answer: Answer, amps: readonly KnownAmp[]): string {
  switch (answer) {
    case 'enable-rear':
      return 'a dealer or an independent specialist';
    case 'amplified-same':
    case 'amplified-any':
      return dealerCanSelect(amps) ? 'a dealer or an independent specialist' : 'an independent specialist';
    case 'back-to-unaltered':
    case 'back-to-rear-on':
    case 'back-if-stored':
      return 'an independent specialist, perhaps a dealer';
    case 'move-or-back':
      return 'a fitter, or an independent specialist';
    case 'stay':
    case 'replaced-unit':
      return 'nobody';
    default:
      return 'you';
  }
}

/** What an answer comes to where these profiles are possible. */
const comesTo = (when: string, answer: Answer, c: PlanCase, profiles: readonly StoredProfile[]) => ({
  when,
  follows: inShort(answer),
  demand: demandOf({ answer, facts: { ...c.facts, profiles } }),
});

const finding = (when: string, answer: Answer, c: PlanCase, profiles = c.facts.profiles): Finding => ({
  ...comesTo(when, answer, c, profiles),
  who: whoFor(answer, c.findings.rig.amps ?? []),
  minutes: MINUTES[answer] ?? 10,
});

const answerFor = (facts: PlanFacts, change: Partial<PlanFacts>): Answer => decide({ ...facts, ...change }).answer;

/** The possible profiles, together where they lead to the same answer. */
function byAnswer(c: PlanCase, profiles: readonly StoredProfile[]): readonly (readonly [Answer, StoredProfile[]])[] {
  return [...Map.groupBy(profiles, (profile) => answerFor(c.facts, { profiles: [profile], toldAgainstMeter: false }))];
}

/** What the stored profile may turn out to be, and what follows from each. */
const ofProfiles = (c: PlanCase, profiles: readonly StoredProfile[]): readonly Finding[] =>
  byAnswer(c, profiles).map(([answer, some]) => finding(apartInWords(some, profiles), answer, c, some));

const everyPossible = (c: PlanCase): readonly StoredProfile[] => c.shares.map(({ profile }) => profile);

/** What separates the profiles with which an answer holds from those with which it does not: the fewest properties. */
export function decidesIt(c: PlanCase): readonly Property[] {
  const without = leftOut(c);
  const holds = everyPossible(c).filter((profile) => !without.includes(profile));
  const apart = (one: StoredProfile, other: StoredProfile) => (property: Property) =>
    STORED_PROFILES[one][property] !== STORED_PROFILES[other][property];
  const separate = (properties: readonly Property[]) =>
    holds.every((one) => without.every((other) => properties.some(apart(one, other))));
  return choicesFrom(PROPERTIES).find(separate) ?? PROPERTIES;
}

/** The same where it is open what an amplifier needs, what drives a pair, or which head unit it is. */
export function openFindings(c: PlanCase): readonly Finding[] {
  const { facts, decision } = c;
  switch (c.answer) {
    case 'measure-first':
      return ofProfiles(c, c.facts.profiles);
    case 'likely-stay':
      return ofProfiles(c, everyPossible(c));
    case 'find-the-unit':
      return [
        finding('a head unit of another make', 'replaced-unit', c),
        finding('the bike maker’s own', answerFor(facts, { unit: 'factory' }), c),
      ];
    case 'find-the-amp':
      return [
        ...(c.findings.rig.amps ? [] : [finding('no amplifier at all', answerFor(facts, { amp: 'none' }), c)]),
        finding('it takes any source', answerFor(facts, { amp: 'wire' }), c),
        finding('made for the unaltered output', answerFor(facts, { amp: 'unaltered' }), c),
      ];
    case 'follow-the-wires': {
      const [feed] = decision.open;
      if (feed === 'inputs')
        return [
          finding('inputs on the rear outputs', answerFor(facts, { inputs: 'own' }), c),
          finding('inputs on the front pair', answerFor(facts, { inputs: 'front' }), c),
        ];
      if (feed === undefined) return [];
      return [
        finding(`${feed} pair on the head unit`, answerFor(facts, { [feed]: 'unit' }), c),
        finding(`${feed} pair on an amplifier`, answerFor(facts, { [feed]: 'amp' }), c),
      ];
    }
    default:
      return [];
  }
}

/** What is left out of an answer that leans on what was told or heard: when it is another one, and which. */
export function unlessOf(c: PlanCase): readonly Unless[] {
  return byAnswer(c, leftOut(c)).map(([answer, some]) => ({
    ...comesTo(apartInWords(some, everyPossible(c)), answer, c, some),
    profiles: some,
  }));
}

/** What holds whatever turns out. */
export function holdsOf(c: PlanCase): readonly string[] {
  const { facts } = c;
  if (!['measure-first', 'likely-stay', 'follow-the-wires', 'find-the-amp'].includes(c.answer)) return [];
  const starves = facts.front === 'unit' || facts.rear === 'unit' || facts.amp === 'unaltered' || facts.amp === 'none';
  const plan = c.findings.outcome('planned-change');
  return [
    ...(plan === 'front-only' || plan === 'rear-on-unit' ? ['No reflash for the speakers themselves.'] : []),
    ...(starves
      ? ['No amplified profile, whatever is stored: it would starve whatever relies on the full level.']
      : []),
    ...(facts.front === 'amp' && (facts.rear === 'amp' || facts.rear === 'none') && facts.amp !== 'unaltered'
      ? ['Keep every speaker on the amplifier. Its inputs take speaker level either way.']
      : []),
    'Nothing needs to be bought before that.',
  ];
}
