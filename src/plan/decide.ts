import type { CertainFacts, Decision, Feed, PlanFacts, SameEqClash } from './decision.ts';
import { PROPERTIES, type Property, STORED_PROFILES } from './profile/profile.ts';
import { EARLY_ROWS, PROFILE_ROWS, type ProfileRow } from './rows.ts';

type Case = CertainFacts & { readonly row: ProfileRow };

const feeds = <T extends string>(known: T | 'unknown', all: readonly T[]): readonly T[] =>
  known === 'unknown' ? all : [known];

/** Whether a build can exist: an amplifier feeds something, and what an amplifier feeds has one. */
const canBe = ({ amp, front, rear }: Pick<CertainFacts, 'amp' | 'front' | 'rear'>) =>
  (amp !== 'none') === (front === 'amp' || rear === 'amp');

/** Every bike that agrees with the facts, with the row that it meets. */
export function casesOf(facts: PlanFacts): readonly Case[] {
  const { amp, sameEqWanted, fromNew } = facts;
  const cases: Case[] = [];
  for (const front of feeds(facts.front, ['unit', 'amp'])) {
    for (const rear of feeds(facts.rear, ['none', 'unit', 'amp'])) {
      for (const inputs of feeds(facts.inputs, rear === 'amp' ? ['own', 'front'] : ['own'])) {
        for (const profile of canBe({ amp, front, rear }) ? facts.profiles : []) {
          const certain = { profile, fromNew, amp, front, rear, inputs, sameEqWanted };
          cases.push({ ...certain, row: rowOf(certain) });
        }
      }
    }
  }
  return cases;
}

/** The row for a bike of which everything is known. */
export function rowOf(certain: CertainFacts): ProfileRow {
  const row = PROFILE_ROWS.find(({ when }) => when(certain));
  if (!row) throw new RangeError(`certain facts must meet a row, got ${JSON.stringify(certain)}`);
  return row;
}

const answersOf = (cases: readonly Case[]) => new Set(cases.map(({ row }) => row.answer));

/**
 * Which open feeds matter: two bikes that differ in nothing else get different answers. Where a pair's driver is open,
 * where the inputs come from may not matter any more once it is known.
 */
function feedsThatMatter(cases: readonly Case[]): readonly Feed[] {
  const key = (one: Case, but: Feed) => JSON.stringify({ ...one, row: null, [but]: null });
  const matters = (feed: Feed) => {
    if (new Set(cases.map((one) => one[feed])).size < 2) return false;
    const groups = Map.groupBy(cases, (one) => key(one, feed));
    return [...groups.values()].some((group) => answersOf(group).size > 1);
  };
  const drivers = (['front', 'rear'] as const).filter(matters);
  return drivers.length > 0 ? drivers : (['inputs'] as const).filter(matters);
}

const doesIn = (one: Case, properties: readonly Property[]) =>
  properties.map((property) => STORED_PROFILES[one.profile][property]).join();

const settles = (cases: readonly Case[], properties: readonly Property[]) =>
  [...Map.groupBy(cases, (one) => doesIn(one, properties)).values()].every((group) => answersOf(group).size === 1);

/** Every choice from a list, shorter ones first, earlier entries first. */
export const choicesFrom = (from: readonly Property[]): readonly (readonly Property[])[] =>
  Array.from({ length: 2 ** from.length }, (_, bits) => from.filter((_, i) => bits & (1 << i))).toSorted(
    (a, b) => a.length - b.length,
  );

/**
 * The fewest of some properties that, once known, leave one answer. When even all of them do not, those that still tell
 * two possible bikes apart.
 */
export function separators(facts: PlanFacts, from: readonly Property[] = PROPERTIES): readonly Property[] {
  const cases = casesOf(facts);
  const telling = from.filter((property) => new Set(cases.map((one) => doesIn(one, [property]))).size > 1);
  return choicesFrom(telling).find((properties) => settles(cases, properties)) ?? telling;
}

function sameEqClashOf({ sameEqWanted, amp, front, rear }: PlanFacts): SameEqClash | null {
  if (!sameEqWanted || amp === 'unknown') return null;
  if (amp === 'none') return 'without-amp';
  if (amp === 'unaltered') return 'unaltered-amp';
  return front === 'unit' || rear === 'unit' ? 'mixed' : null;
}

/** What the head unit needs. Every set of facts has one answer. */
export function decide(facts: PlanFacts): Decision {
  const sameEqClash = sameEqClashOf(facts);
  const decision = { separators: [], open: [], sameEqClash };
  const early = EARLY_ROWS.find(({ when }) => when(facts));
  if (early) return { ...decision, row: early.id, answer: early.answer, rows: [early.id] };

  const cases = casesOf(facts);
  const rows = [...new Set(cases.map(({ row }) => row.id))];
  const [first] = cases;
  if (first && answersOf(cases).size === 1) return { ...decision, row: first.row.id, answer: first.row.answer, rows };

  const open = feedsThatMatter(cases);
  if (open.length > 0) return { ...decision, row: 'feed-open', answer: 'follow-the-wires', rows, open };
  return { ...decision, row: 'profile-open', answer: 'measure-first', rows, separators: separators(facts) };
}
