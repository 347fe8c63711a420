import type { Calculator } from './calculator.ts';
import { charging } from './charging.ts';
import { ear } from './ear.ts';
import { gain } from './gain.ts';
import { highPass } from './high-pass.ts';
import { leadAndFuse } from './lead-and-fuse.ts';
import { levels } from './levels.ts';
import { parked } from './parked.ts';
import { profile } from './profile.ts';
import { speakerWiring } from './speaker-wiring.ts';
import { whine } from './whine.ts';

/** Every calculator, in the order of the list. */
export const CALCULATORS: readonly Calculator[] = [
  gain,
  profile,
  speakerWiring,
  leadAndFuse,
  charging,
  parked,
  highPass,
  ear,
  whine,
  levels,
];
