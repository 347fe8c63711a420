import { claim } from './rows.ts';

export const readBefore = claim(
  'a reading is saved, from before or after the work',
  (findings) => findings.rig.profileRead !== undefined,
);
