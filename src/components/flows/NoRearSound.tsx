import { noRearSound } from '../../../machines/no-rear-sound.ts';
import { toolsAtHand } from '../../steps/tools/tools-at-hand.ts';
import { FlowPage } from '../flow/FlowPage.tsx';

const loadTable = () => import('../../verdicts/rear/suspects.ts').then(({ rearTable }) => rearTable);

export const NoRearSound = ({ root }: { readonly root: string }) => (
  <FlowPage
    flow={noRearSound}
    root={root}
    loadTable={loadTable}
    rankAt={toolsAtHand.id}
    goesOnIn={['is-a-reflash-needed']}
    repairs
  />
);
