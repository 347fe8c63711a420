import { REAR_OVER_FRONT_HIGHEST_RATIO, REAR_OVER_FRONT_LOWEST_RATIO } from '../../compute/signal-path.ts';
import type { Cause } from '../cause.ts';
import { channelThatIsSilent, Placed } from '../where.ts';
import { levelFigures } from './levels-alike.ts';
import { UNIT_REPAIR, UNIT_REPAIR_STEPS } from './unit-repair.ts';

export const unitChannelDead: Cause = {
  id: 'unit-channel-dead',
  title: (f) =>
    ['rear', 'all'].includes(channelThatIsSilent(f, 'rear-pair'))
      ? 'An output of the head unit dead'
      : Placed(channelThatIsSilent(f, 'rear-pair'), 'output of the head unit dead'),
  faults: ['unit-channel-dead'],
  split: {
    byMeter:
      'Speakers unplugged, 400 Hz tone, at the head unit’s own plug: does one pair read nothing while another is fine?',
    needs: ['tone-400'],
    touches: ['unit-rear-plus'],
    without:
      'Key off, plug apart, a 1.5 V cell for half a second on the run of the silent corner: does its speaker click?',
    cautions: ['cell'],
  },
  mends: ['unit'],
  article: 'measure-a-speaker-pair',
  remedy: (f) => ({
    ...UNIT_REPAIR,
    what: 'One output of the head unit gives nothing.',
    background:
      'A lasting short kills an output. Until the unit is repaired, an amplifier fed from another pair can drive that speaker.',
    numbers: levelFigures(f),
    fix: [
      'Key off, plug apart, meter on ohms: the run on that output to the frame, and across its two wires. A short there kills the next output, too.',
      ...UNIT_REPAIR_STEPS,
    ],
    tools: 'Meter',
    minutes: 30,
    notBuy: ['A speaker for that corner: it gets no signal.', 'A reflash: it won’t mend an output.'],
    cautions: ['short-suspected', 'ohms-dead'],
    proofOfCure: {
      byEar: 'All four corners play on their own, one after the other.',
      byMeter: `400 Hz tone, fader and balance in the middle, at the head unit: every pair reads ${REAR_OVER_FRONT_LOWEST_RATIO} to ${REAR_OVER_FRONT_HIGHEST_RATIO} of any other.`,
      needs: ['tone-400'],
      touches: ['unit-rear-plus'],
    },
  }),
};
