import { isAReflashNeeded } from '../../../machines/is-a-reflash-needed.ts';
import { FlowPage } from '../flow/FlowPage.tsx';
import { ProfileChart } from '../flow/ProfileChart.tsx';

export const IsAReflashNeeded = ({ root }: { readonly root: string }) => (
  <FlowPage flow={isAReflashNeeded} root={root} goesOnIn={['what-is-in-the-head-unit']} picture={ProfileChart} />
);
