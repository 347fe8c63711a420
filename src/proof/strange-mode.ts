import type { Table, Trial } from './modes.ts';
import type { Subject } from './subjects.ts';

export const strangeTrials = (_: Table, __: Subject): readonly Trial[] => [];
