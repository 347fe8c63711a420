import GLOSSARY from '../../content/glossary.json' with { type: 'json' };
import { slugOf } from './slug.ts';
import type { Term } from './terms.ts';

/** A word of the trade. */
export interface Entry extends Term {
  /** What people say instead. */
  readonly also: string;
  readonly text: string;
  readonly article?: string;
  /** Known to everybody who reads here: no text links it. */
  readonly everyday?: true;
}

export const ENTRIES: readonly Entry[] = (GLOSSARY as readonly Omit<Entry, 'slug'>[]).map((entry) => ({
  ...entry,
  slug: slugOf(entry.word),
}));

/** The words that texts link. */
export const TERMS: readonly Term[] = ENTRIES.filter(({ everyday }) => !everyday).map(({ word, slug }) => ({
  word,
  slug,
}));
