import { ampWontTurnOn } from '../../../machines/amp-wont-turn-on.ts';
import { toolsAtHand } from '../../steps/tools/tools-at-hand.ts';
import { FlowPage } from '../flow/FlowPage.tsx';

const loadTable = () => import('../../verdicts/amp/suspects.ts').then(({ ampTable }) => ampTable);

export const AmpWontTurnOn = ({ root }: { readonly root: string }) => (
  <FlowPage flow={ampWontTurnOn} root={root} loadTable={loadTable} rankAt={toolsAtHand.id} repairs />
);
