import { readFileSync } from 'node:fs';
import { phrasingsIn } from '../../src/tools/heard.ts';

const read = (file: string) => phrasingsIn(readFileSync(new URL(file, import.meta.url), 'utf8'));

/** What people type, with what it is and the facts that the words give. Nothing is learnt from it. */
export const MEASURED = read('./phrasings.txt');
/** The same of another day: it was measured before anybody had looked at it, and has been tuned with since. */
export const LOOKED_AT = read('./phrasings-last.txt');
