import type { Document } from './document.ts';
import { EMPTY } from './empty-words.ts';
import type { SameWords } from './same-words.ts';
import { tokensOf } from './tokens.ts';

const marksOf = (part: string): number => part.length - part.replace(/^!+/, '').length;

/** The names that are not the title, or another one, in other words. */
function names(title: string, words: string, oneFor: SameWords['oneFor']): readonly string[] {
  const one = (name: string) => tokensOf(name).map(oneFor).join(' ');
  const met = new Set([one(title)]);
  return words.split(/, */).flatMap((name) => {
    const told = tokensOf(name).filter((word) => !EMPTY.has(word));
    const plain = told.length > 0 ? told.join(' ') : name;
    if (met.has(one(plain))) return [];
    met.add(one(plain));
    return [plain];
  });
}

/**
 * An entry without the words that tell nothing beside the others: those of every question, and those that mean the same
 * as one that counts as much. The other names of a word of the glossary stay apart, each once.
 */
export function leanDocument(entry: Document, { oneFor }: SameWords): Document {
  const { id, words, title } = entry;
  if (id.startsWith('word/')) return { ...entry, words: names(title, words, oneFor).join(',') };
  const told = new Set(tokensOf(title).map(oneFor));
  // The marked ones first: what counts more makes the same word without a mark needless.
  const parts = words.split(/[ ,]+/).sort((a, b) => marksOf(b) - marksOf(a));
  const met = new Set<string>();
  const kept = parts.filter((part) => {
    const all = tokensOf(part);
    if (marksOf(part) === 0 && all.every((word) => EMPTY.has(word) || told.has(oneFor(word)))) return false;
    const adds = all.some((word) => !met.has(oneFor(word)));
    for (const word of all) met.add(oneFor(word));
    return adds;
  });
  return { ...entry, words: kept.join(' ') };
}
