import { readdirSync } from 'node:fs';
import type { Cause } from './cause.ts';

/** Every cause there is, found in the folders of the parts, so that none can be forgotten. Not for pages: they load their own. */

const isCause = (exported: unknown): exported is Cause =>
  typeof exported === 'object' && exported !== null && 'faults' in exported && 'remedy' in exported;

const inPartFolders = readdirSync(import.meta.dirname, { recursive: true, encoding: 'utf8' })
  .map((name) => name.replaceAll('\\', '/'))
  .filter((name) => /^[^/]+\/[^/]+\.ts$/.test(name))
  .toSorted();

/** The causes with the files that they stand in, as paths below this folder. A file of figures has none. */
export const CAUSE_FILES: readonly (readonly [file: string, cause: Cause])[] = (
  await Promise.all(
    inPartFolders.map(async (file) => {
      const module: Record<string, unknown> = await import(/* @vite-ignore */ new URL(file, import.meta.url).href);
      return Object.values(module)
        .filter(isCause)
        .map((cause) => [file, cause] as const);
    }),
  )
).flat();

export const CAUSES: readonly Cause[] = CAUSE_FILES.map(([, cause]) => cause);
