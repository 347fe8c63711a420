import { ampWontTurnOn } from '../../../machines/amp-wont-turn-on.ts';
import { toolsAtHand } from '../../steps/meter.ts';
import { AMP_SUSPECTS } from '../../verdicts/amp/suspects.ts';
import { FlowPage } from '../flow/FlowPage.tsx';

export const AmpWontTurnOn = ({ root }: { readonly root: string }) => (
  <FlowPage flow={ampWontTurnOn} root={root} suspects={AMP_SUSPECTS} rankAt={toolsAtHand.id} repairs />
);
