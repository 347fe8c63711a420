import { readdir, readFile } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import type { FileOf } from './page-size.ts';
import type { BuiltFile } from './worker-lists.ts';

/** Every file of a built site, by its path with slashes. Empty where nothing was built. */
export async function builtFiles(folder: string): Promise<Map<string, Uint8Array>> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true }).catch(() => []);
  const paths = entries.filter((entry) => entry.isFile()).map(({ parentPath, name }) => join(parentPath, name));
  const files = paths.map(async (path) => [relative(folder, path).split(sep).join('/'), await readFile(path)] as const);
  return new Map(await Promise.all(files));
}

/** Reads the files of a build as text. */
export const textOf =
  (files: ReadonlyMap<string, Uint8Array>): FileOf =>
  (path) => {
    const bytes = files.get(path);
    return bytes && Buffer.from(bytes).toString('utf8');
  };

/** The pages of a build. */
export const pagesOf = (
  files: ReadonlyMap<string, Uint8Array>,
): readonly { readonly path: string; readonly html: string }[] =>
  [...files.keys()].filter((path) => path.endsWith('.html')).map((path) => ({ path, html: textOf(files)(path) ?? '' }));

export const asBuilt = (files: ReadonlyMap<string, Uint8Array>): readonly BuiltFile[] =>
  [...files].map(([path, bytes]) => ({ path, bytes }));
