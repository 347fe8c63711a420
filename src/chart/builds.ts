import type { StagedFlow } from '../../machines/machine.ts';
import { EXAMPLE_RIGS } from '../rig/examples.ts';
import type { Rig } from '../rig/rig.ts';

export interface Build {
  readonly id: string;
  readonly title: string;
  readonly rig: Rig;
  /** Whether a flow has anything to ask of such a bike. */
  fits(flow: StagedFlow): boolean;
}

/** Whether a flow is about something else than an amplifier: else it asks first which one it is. */
const needsNoAmp = (flow: StagedFlow): boolean => !flow.inOrder.some(({ id }) => id === 'which-amp');

/** What is said of the bike at the head of a chart. Everything else is as typical as the fields of a rig say. */
export const BUILDS: readonly Build[] = [
  {
    id: 'without-an-amplifier',
    title: 'Factory head unit drives all speakers, no amplifier',
    rig: {
      unitKind: 'factory',
      deliveredWith: 'four',
      deliveredAmp: 'no',
      frontFedBy: 'unit',
      frontRatedOhm: 4,
      rearFitted: 'yes',
      rearFedBy: 'unit',
      rearRatedOhm: 4,
      rearPerChannel: 1,
      rearWiring: 'single',
      amps: [],
    },
    fits: needsNoAmp,
  },
  {
    id: 'with-an-amplifier',
    title: 'Factory head unit, one amplifier for front and rear, woken by a wire',
    rig: EXAMPLE_RIGS['frame-fairing'],
    fits: () => true,
  },
];
