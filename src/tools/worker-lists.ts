import { createHash } from 'node:crypto';

/** A built file: its path in the folder, with slashes, and what is in it. */
export interface BuiltFile {
  readonly path: string;
  readonly bytes: Uint8Array;
}

type Hashes = Readonly<Record<string, string>>;

/** Never kept on the device: the worker itself, what only the host reads, and the page for an unknown address. */
const NOT_KEPT = /^(sw\.js|_headers|404\.html)$|\.map$/;
/** Large, and not needed to read a page: fetched once the rest is there. */
const LATER = /\.wav$/;

const addressOf = (path: string) => path.replace(/(^|\/)index\.html$/, '$1');
const hashOf = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex').slice(0, 12);

/** What the service worker keeps: address below the site's base, against a hash of the content. */
export function workerLists(files: readonly BuiltFile[]): { readonly first: Hashes; readonly later: Hashes } {
  const kept = files
    .filter(({ path }) => !NOT_KEPT.test(path))
    .toSorted((a, b) => (a.path < b.path ? -1 : 1))
    .map(({ path, bytes }) => [addressOf(path), hashOf(bytes)] as const);
  const part = (later: boolean) => Object.fromEntries(kept.filter(([address]) => LATER.test(address) === later));
  return { first: part(false), later: part(true) };
}

/** The worker's source with its lists filled in. */
export function fillWorker(source: string, lists: ReturnType<typeof workerLists>): string {
  const fill = (text: string, mark: string, list: Hashes) => {
    if (text.split(mark).length !== 2) throw new Error(`The worker must hold “${mark}” exactly once.`);
    return text.replace(mark, () => JSON.stringify(list));
  };
  return fill(fill(source, '/*FIRST*/ {}', lists.first), '/*LATER*/ {}', lists.later);
}
