import { noRearSound } from '../../../machines/no-rear-sound.ts';
import { toolsAtHand } from '../../steps/meter.ts';
import { REAR_SUSPECTS } from '../../verdicts/rear/suspects.ts';
import { FlowPage } from '../flow/FlowPage.tsx';

export const NoRearSound = ({ root }: { readonly root: string }) => (
  <FlowPage
    flow={noRearSound}
    root={root}
    suspects={REAR_SUSPECTS}
    rankAt={toolsAtHand.id}
    goesOnIn={['is-a-reflash-needed']}
    repairs
  />
);
