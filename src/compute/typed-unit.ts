import { type AnyUnit, PREFIX_WORDS, PREFIXES, type Prefix, rowOf, symbolOf, UNITS, type Unit } from './units.ts';

const ANY_OF = new Intl.ListFormat('en-GB', { type: 'disjunction' });

/** The power of ten that a typed unit stands for, or undefined if it is not this unit. */
export function powerOfTen(typed: string, unit: AnyUnit): number | undefined {
  const { plural, singular, spellings, prefixes, kinds, barePrefixes } = rowOf(unit);
  const bare = kinds ? typed.replace(/\s*(?:ac|dc|rms|[~=⎓])$/i, '') : typed;
  if (bare === '') return 0;
  const lower = bare.toLowerCase();
  const letterCounts = prefixes.includes('m') && prefixes.includes('M');
  const isThis = (prefix: Prefix, name: string) => {
    const word = PREFIX_WORDS[prefix];
    if (lower === word + name || lower === word.slice(0, -1) + name) return true; // milliohm, and kilohm
    const [head, tail] = [bare.slice(0, prefix.length), lower.slice(prefix.length).trim()];
    const sameLetter =
      letterCounts && /m/i.test(prefix) ? head === prefix : head.toLowerCase() === prefix.toLowerCase();
    return sameLetter && tail === name;
  };
  const names = [symbolOf(unit).toLowerCase(), plural, singular, ...spellings];
  const found = prefixes.find(
    (prefix) =>
      names.some((name) => isThis(prefix, name)) || (barePrefixes && /[kM]/.test(prefix) && isThis(prefix, '')),
  );
  return found === undefined ? undefined : PREFIXES[found];
}

/** What is wrong with a typed unit, and what is allowed instead. */
export function wrongUnit(typed: string, unit: AnyUnit, example: string): string {
  const { plural, prefixes } = rowOf(unit);
  const allowed = ANY_OF.format(prefixes.map((prefix) => prefix + symbolOf(unit)));
  const other = (Object.keys(UNITS) as Unit[]).find((candidate) => powerOfTen(typed, candidate) !== undefined);
  const problem = other ? `You typed ${UNITS[other].plural}` : `“${typed}” is not a unit known here`;
  if (isCount(unit)) return `${problem}. Type the number alone, for example ${example}.`;
  return `${problem}. This needs ${plural}: ${allowed}, or no unit, for example ${example}.`;
}

/** Counts and ratios are typed without a unit. */
const isCount = (unit: AnyUnit): boolean => unit === 'speaker' || unit === 'channel' || symbolOf(unit) === '';
