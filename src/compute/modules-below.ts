import { readdirSync } from 'node:fs';

/** A file by its path below a folder, and what it exports. */
export type Found = readonly [file: string, exported: Readonly<Record<string, unknown>>];

/** What stands in the folders below the file that asks, so that nothing can be forgotten. Not for pages: they load their own. */
export const modulesBelow = (url: string): Promise<readonly Found[]> =>
  Promise.all(
    readdirSync(new URL('.', url), { recursive: true, encoding: 'utf8' })
      .map((name) => name.replaceAll('\\', '/'))
      .filter((name) => /^[^/]+\/[^/]+\.ts$/.test(name))
      .toSorted()
      .map(async (file): Promise<Found> => [file, await import(/* @vite-ignore */ new URL(file, url).href)]),
  );
