import { readFileSync } from 'node:fs';
import type { Heard } from '../search/learn.ts';

/** A line of a file of phrasings, with the answers that its words give by step. */
export interface Phrasing extends Heard {
  /** Where else somebody who knows the trade would send it. */
  readonly orElse: readonly string[];
  readonly facts: Readonly<Record<string, string>>;
}

/** The lines of a text, each `words | what it is or what else | facts`; those that begin with a cross are remarks. */
export const phrasingsIn = (text: string): readonly Phrasing[] =>
  text
    .split('\n')
    .filter((line) => line.includes('|') && !line.startsWith('#'))
    .map((line) => {
      const [words = '', places = '', facts = ''] = line.split('|').map((part) => part.trim());
      const [is = '', ...orElse] = places.split(' or ');
      const pairs = facts === '' ? [] : facts.split(' ').map((fact) => fact.split('=') as [string, string]);
      return { words, is, orElse, facts: Object.fromEntries(pairs) };
    });

/** What people were heard to type, to learn from. */
export const heard = (content = 'content'): readonly Phrasing[] =>
  phrasingsIn(readFileSync(`${content}/words/heard.txt`, 'utf8'));
