import type { Late } from '../../machines/machine.ts';
import type { Cause } from '../causes/cause.ts';
import { type PackedTable, unpack } from './packed.ts';

/** What a page fetches late for a flow: its table, and its causes by id. */
export const lateOf = (table: PackedTable, causes: readonly Cause[]): Late => ({
  table: unpack(table),
  causes: Object.fromEntries(causes.map((cause) => [cause.id, cause])),
});
