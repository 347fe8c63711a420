import { wordsOf } from './tokens.ts';

/** What comes behind these is what happened before. */
export const SINCE = wordsOf(
  'after since scince sinse sence afer aftr following seit seitdem nach nachdem desde despues tras',
);
