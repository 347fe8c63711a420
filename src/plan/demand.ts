import type { RepairAction } from '../causes/repair-action.ts';
import { choicesFrom } from './decide.ts';
import type { Answer } from './decision.ts';
import type { PlanAnswer, PlanCase } from './facts.ts';
import { EVERY_PROFILE, PROPERTIES, type Property, STORED_PROFILES, type StoredProfile } from './profile/profile.ts';
import type { Demand, ToSelect } from './verdict.ts';

/** What each kind of answer asks of the head unit. */

const FULL: ToSelect = { lowered: false, boosted: true };
const AMPLIFIED: ToSelect = { lowered: true, boosted: false, rear: true };

const TO_SELECT = {
  'enable-rear': { rear: true },
  'back-to-unaltered': FULL,
  'back-to-rear-on': { ...FULL, rear: true },
  'back-if-stored': FULL,
  'move-or-back': { ...FULL, rear: true },
  'amplified-any': AMPLIFIED,
  'amplified-same': { ...AMPLIFIED, sameEq: true },
} as const satisfies Partial<Record<Answer, ToSelect>>;

export type ChangeAnswer = keyof typeof TO_SELECT;
export const isChange = (answer: PlanAnswer): answer is ChangeAnswer => Object.hasOwn(TO_SELECT, answer);

/** Answers that are complete, and need nothing selected. */
const NOTHING: ReadonlySet<PlanAnswer> = new Set<PlanAnswer>([
  'nothing-to-do',
  'mirroring-only',
  'replaced-unit',
  'bass-masked',
  'speed-volume',
  'stay',
  'same-eq-without-amp',
  'same-eq-unaltered-amp',
  'same-eq-mixed',
]);

/** Only the EQ is wrong: level, bass and rear are those of an amplified profile already. */
export const onlyTheEq = ({ answer, facts }: Pick<PlanCase, 'answer' | 'facts'>): boolean =>
  answer === 'amplified-same' && facts.profiles.every((profile) => STORED_PROFILES[profile].lowered);

export function demandOf({ answer, facts }: Pick<PlanCase, 'answer' | 'facts'>): Demand {
  if (onlyTheEq({ answer, facts })) return { kind: 'select', to: { sameEq: true } };
  if (isChange(answer)) {
    const ask = answer === 'back-if-stored';
    const rear = ask && (facts.rear === 'unit' || facts.rear === 'amp');
    const sameEq = ask && facts.sameEqWanted && facts.profiles.includes('amplified-changes');
    return {
      kind: 'select',
      to: { ...TO_SELECT[answer], ...(rear && { rear: true }) },
      ...((ask || (answer === 'move-or-back' && facts.fromNew)) && { ifStored: true }),
      ...(sameEq && { orElse: { sameEq: true } }),
      ...(answer === 'move-or-back' && { orMove: facts.front === 'unit' ? 'front' : 'rear' }),
    };
  }
  return NOTHING.has(answer) ? { kind: 'nothing' } : { kind: 'find-out' };
}

/** The same as it is done to the bike. */
export function selecting(demand: Demand | undefined): readonly RepairAction[] {
  if (demand?.kind !== 'select') return [];
  const { rear, lowered, boosted, sameEq } = demand.to;
  return [
    {
      do: 'select-profile',
      ...(rear && { rear: 'on' }),
      ...(lowered !== undefined && { level: lowered ? 'lowered' : 'full' }),
      ...(boosted !== undefined && { boost: boosted ? 'as-delivered' : 'none' }),
      ...(sameEq && { eq: 'same' }),
    },
  ];
}

/** What a property is, said yes and said no. The same words on every page. */
export const SAID: Readonly<Record<Property, readonly [yes: string, no: string]>> = {
  rear: ['rear channels on', 'rear channels off'],
  lowered: ['level lowered', 'full level'],
  boosted: ['bass boost in', 'bass boost out'],
  sameEq: ['same EQ with the engine running', 'EQ changes with the engine'],
};
const ORDER: readonly Property[] = ['rear', 'lowered', 'boosted', 'sameEq'];

export const propertyIn = (property: Property, yes: boolean): string => SAID[property][yes ? 0 : 1];

/** What the trade calls the kinds of profile. Their names in a tool prove nothing. */
const KINDS: Readonly<Record<StoredProfile, string>> = {
  unaltered: 'unaltered',
  'rear-on': 'rear-on',
  'amplified-same': 'amplified, same EQ',
  'amplified-changes': 'amplified, changing EQ',
};
export const kindOf = (profile: StoredProfile): string => KINDS[profile];

/** A profile by what it does, in the words of its four properties. */
export const doesInWords = (profile: StoredProfile): string =>
  ORDER.map((property) => propertyIn(property, STORED_PROFILES[profile][property])).join(', ');

/** What tells some profiles from all others that are possible, in as few words as it takes. */
export function apartInWords(some: readonly StoredProfile[], all: readonly StoredProfile[]): string {
  const others = all.filter((profile) => !some.includes(profile));
  const shared = PROPERTIES.filter((property) => new Set(some.map((one) => STORED_PROFILES[one][property])).size === 1);
  const value = (property: Property) => STORED_PROFILES[some[0] ?? 'unaltered'][property];
  const rulesOut = (property: Property, one: StoredProfile) => STORED_PROFILES[one][property] !== value(property);
  const telling = shared.filter((property) => others.some((one) => rulesOut(property, one)));
  const enough = choicesFrom(telling).find((some_) =>
    others.every((one) => some_.some((property) => rulesOut(property, one))),
  );
  const named = enough && enough.length > 0 ? enough : telling.length > 0 ? telling : shared;
  return ORDER.filter((property) => named.includes(property))
    .map((property) => propertyIn(property, value(property)))
    .join(', ');
}

/** The words of what has to change. */
export const changesInWords = (to: ToSelect): string =>
  ORDER.flatMap((property) => {
    const yes = to[property];
    return yes === undefined ? [] : [propertyIn(property, yes)];
  }).join(', ');

/** The profiles that do what is asked for. */
export const fitting = (to: ToSelect): readonly StoredProfile[] =>
  EVERY_PROFILE.filter((profile) =>
    PROPERTIES.every((property) => to[property] === undefined || to[property] === STORED_PROFILES[profile][property]),
  );

/** What has to stay besides: as much of it as a stored profile has together with what is asked for, whatever is in now. */
export function kept(to: ToSelect, now: readonly StoredProfile[]): readonly Property[] {
  const stays = (profile: StoredProfile, properties: readonly Property[]) =>
    fitting(to).some((other) =>
      properties.every((property) => STORED_PROFILES[other][property] === STORED_PROFILES[profile][property]),
    );
  const properties: Property[] = [];
  for (const property of ORDER.filter((one) => to[one] === undefined))
    if (now.every((profile) => stays(profile, [...properties, property]))) properties.push(property);
  return properties;
}
export const keptInWords = (properties: readonly Property[]): string =>
  properties.map((property) => KEPT[property]).join(', ');

/** What is selected, in the words of the four properties. */
export function changeLine(c: Pick<PlanCase, 'answer' | 'facts'>): string {
  const demand = demandOf(c);
  return demand.kind === 'select' ? `Change: ${changesInWords(demand.to)}.` : '';
}

const KEPT: Readonly<Record<Property, string>> = {
  rear: 'the rear channels as they are',
  lowered: 'the level',
  boosted: 'the bass boost as it is',
  sameEq: 'the EQ with the engine as it is',
};
