import type { MadeTable } from '../made-table.ts';

export const AMP_SIGNS: MadeTable = { suspects: [], sound: {} };
