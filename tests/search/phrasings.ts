import { readFileSync } from 'node:fs';

export interface Phrasing {
  readonly words: string;
  readonly is: string;
  readonly facts: Readonly<Record<string, string>>;
}

const read = (file: string): readonly Phrasing[] =>
  readFileSync(new URL(file, import.meta.url), 'utf8')
    .split('\n')
    .filter((line) => line.includes('|') && !line.startsWith('#'))
    .map((line) => {
      const [words = '', is = '', facts = ''] = line.split('|').map((part) => part.trim());
      const pairs = facts === '' ? [] : facts.split(' ').map((fact) => fact.split('=') as [string, string]);
      return { words, is, facts: Object.fromEntries(pairs) };
    });

/** What people type, with what it is and the facts that the words give. */
export const PHRASINGS = read('./phrasings.txt');
/** More, for tuning only. */
export const MORE = read('./phrasings-more.txt');

/** The half that words and weights were chosen by, and the half that they are measured on. */
export const TUNED = PHRASINGS.filter((_, i) => i % 2 === 0);
export const MEASURED = PHRASINGS.filter((_, i) => i % 2 === 1);
