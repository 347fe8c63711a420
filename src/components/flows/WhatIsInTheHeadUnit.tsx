import { whatIsInTheHeadUnit } from '../../../machines/what-is-in-the-head-unit.ts';
import { FlowPage } from '../flow/FlowPage.tsx';
import { ProfileChart } from '../flow/ProfileChart.tsx';

export const WhatIsInTheHeadUnit = ({ root }: { readonly root: string }) => (
  <FlowPage
    flow={whatIsInTheHeadUnit}
    root={root}
    goesOnIn={['is-a-reflash-needed', 'no-rear-sound']}
    picture={ProfileChart}
  />
);
