import { ampWontTurnOn } from '../../machines/amp-wont-turn-on.ts';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import type { Flow } from '../../machines/rows.ts';
import { AMP_SIGNS } from '../verdicts/amp/made-signs.ts';
import { AMP_AT_TIMES_SIGNS } from '../verdicts/amp/made-signs-at-times.ts';
import { AMP_AT_TIMES_TEXTS, AMP_TEXTS, ampTable } from '../verdicts/amp/suspects.ts';
import type { MadeTable, SuspectTexts, TableFor } from '../verdicts/made-table.ts';
import { REAR_SIGNS } from '../verdicts/rear/made-signs.ts';
import { REAR_TEXTS, rearTable } from '../verdicts/rear/suspects.ts';
import type { ComplaintId } from '../world/symptoms/index.ts';

/** A flow that can be proved: it starts from a complaint that the model of the bike can have. */
export interface ProvedFlow {
  /** The complaint that it is proved for. */
  readonly id: ComplaintId;
  readonly flow: Flow;
  /** Whether the flow takes this complaint on beside the one that it is named after, and that its order is made for. */
  readonly beside?: true;
  /** What each suspect shows, made from the circuit. */
  readonly signs: MadeTable;
  /** What each suspect is called. */
  readonly texts: SuspectTexts;
  readonly tableFor: TableFor;
  /** The file that these signs are made into, and the name they have there. */
  readonly table: string;
  readonly tableName: string;
}

export const PROVED_FLOWS: readonly ProvedFlow[] = [
  {
    id: 'no-rear-sound',
    flow: noRearSound,
    signs: REAR_SIGNS,
    texts: REAR_TEXTS,
    tableFor: rearTable,
    table: 'src/verdicts/rear/made-signs.ts',
    tableName: 'REAR_SIGNS',
  },
  {
    id: 'amp-wont-turn-on',
    flow: ampWontTurnOn,
    signs: AMP_SIGNS,
    texts: AMP_TEXTS,
    tableFor: ampTable,
    table: 'src/verdicts/amp/made-signs.ts',
    tableName: 'AMP_SIGNS',
  },
  {
    id: 'amp-goes-off',
    flow: ampWontTurnOn,
    beside: true,
    signs: AMP_AT_TIMES_SIGNS,
    texts: AMP_AT_TIMES_TEXTS,
    tableFor: ampTable,
    table: 'src/verdicts/amp/made-signs-at-times.ts',
    tableName: 'AMP_AT_TIMES_SIGNS',
  },
];

export function provedFlow(id: string): ProvedFlow {
  const found = PROVED_FLOWS.find((one) => one.id === id);
  if (!found) throw new RangeError(`flow must be one of ${PROVED_FLOWS.map((one) => one.id).join(', ')}, got ${id}`);
  return found;
}
