import { readdirSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import type { Cause } from '../../src/causes/cause.ts';

const FOLDERS = ['supply', 'turn-on', 'amplifier', 'battery'];

const load = async (path: string): Promise<readonly Cause[]> =>
  Object.values((await import(pathToFileURL(path).href)) as Readonly<Record<string, Cause>>);

/** Every cause of the power side, read from its folders: none can be forgotten. */
export const POWER_CAUSES: readonly Cause[] = (
  await Promise.all(
    FOLDERS.flatMap((folder) =>
      readdirSync(`src/causes/${folder}`).map((file) => load(`${process.cwd()}/src/causes/${folder}/${file}`)),
    ),
  )
).flat();
