import { modulesBelow } from '../compute/modules-below.ts';
import type { Cause } from './cause.ts';

const isCause = (exported: unknown): exported is Cause =>
  typeof exported === 'object' && exported !== null && 'faults' in exported && 'remedy' in exported;

/** Every cause there is, with the file that it stands in, as a path below this folder. A file of figures has none. */
export const CAUSE_FILES: readonly (readonly [file: string, cause: Cause])[] = (
  await modulesBelow(import.meta.url)
).flatMap(([file, exported]) =>
  Object.values(exported)
    .filter(isCause)
    .map((cause) => [file, cause] as const),
);

export const CAUSES: readonly Cause[] = CAUSE_FILES.map(([, cause]) => cause);
