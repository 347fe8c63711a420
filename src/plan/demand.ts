import type { RepairAction } from '../causes/repair-action.ts';
import type { Answer } from './decision.ts';
import type { PlanAnswer, PlanCase } from './facts.ts';
import { PROPERTIES, type Property, STORED_PROFILES, type StoredProfile } from './profile/profile.ts';
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

export function demandOf({ answer, facts }: Pick<PlanCase, 'answer' | 'facts'>): Demand {
  if (isChange(answer)) {
    const rear = answer === 'back-if-stored' && (facts.rear === 'unit' || facts.rear === 'amp');
    return {
      kind: 'select',
      to: { ...TO_SELECT[answer], ...(rear && { rear: true }) },
      ...((answer === 'back-if-stored' || (answer === 'move-or-back' && facts.fromNew)) && { ifStored: true }),
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
  const telling = shared.filter((property) => others.some((one) => STORED_PROFILES[one][property] !== value(property)));
  const enough = telling.find((property) => others.every((one) => STORED_PROFILES[one][property] !== value(property)));
  const named = enough ? [enough] : telling.length > 0 ? telling : shared;
  return ORDER.filter((property) => named.includes(property))
    .map((property) => propertyIn(property, value(property)))
    .join(', ');
}

/** The words of what has to change, and of what has to stay. */
export function changesInWords(to: ToSelect): { readonly change: string; readonly keep: string } {
  const words = (named: boolean) =>
    ORDER.filter((property) => (to[property] !== undefined) === named).map((property) =>
      named ? propertyIn(property, to[property] ?? false) : KEPT[property],
    );
  return { change: words(true).join(', '), keep: words(false).join(', ') };
}

/** What is selected, in the words of the four properties. */
export function changeLine(c: Pick<PlanCase, 'answer' | 'facts'>): string {
  const demand = demandOf(c);
  return demand.kind === 'select' ? `Change: ${changesInWords(demand.to).change}.` : '';
}

const KEPT: Readonly<Record<Property, string>> = {
  rear: 'the rear channels as they are',
  lowered: 'the level',
  boosted: 'the bass boost as it is',
  sameEq: 'the EQ with the engine as it is',
};
