import type { Flow } from '../../machines/kit.ts';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import type { MadeTable } from '../verdicts/made-table.ts';
import { REAR_SIGNS } from '../verdicts/rear/made-signs.ts';
import { REAR_SUSPECTS } from '../verdicts/rear/suspects.ts';
import type { Suspect } from '../verdicts/suspects.ts';
import type { FlowId } from '../world/symptoms/index.ts';

/** A flow that can be proved: it starts from a complaint that the model of the bike can have. */
export interface ProvedFlow {
  readonly id: FlowId;
  readonly flow: Flow;
  readonly suspects: readonly Suspect[];
  /** What each suspect shows, made from the circuit. */
  readonly signs: MadeTable;
  /** The file that these signs are made into, and the name they have there. */
  readonly table: string;
  readonly tableName: string;
  /** The verdicts after which the site sends a rider on, and to which flow. */
  readonly goesOn: Readonly<Partial<Record<string, FlowId>>>;
}

export const PROVED_FLOWS: readonly ProvedFlow[] = [
  {
    id: 'no-rear-sound',
    flow: noRearSound,
    suspects: REAR_SUSPECTS,
    signs: REAR_SIGNS,
    table: 'src/verdicts/rear/made-signs.ts',
    tableName: 'REAR_SIGNS',
    goesOn: {},
  },
];

export function provedFlow(id: FlowId): ProvedFlow {
  const found = PROVED_FLOWS.find((one) => one.id === id);
  if (!found)
    throw new RangeError(`flow ${id} is not proved; there are ${PROVED_FLOWS.map((one) => one.id).join(', ')}`);
  return found;
}
