import { gainFigures, gainWhenBack } from '../amp-load.ts';
import type { Cause } from '../cause.ts';
import { ampName } from '../the-amp.ts';
import { placed, uglySpeakers } from '../where.ts';
import { AMP_REPAIRER } from '../who.ts';

export const ampChannelRough: Cause = {
  id: 'amp-channel-rough',
  title: (f) => {
    const where = uglySpeakers(f);
    return where === 'all' || where === 'front' || where === 'rear'
      ? `A channel of ${ampName(f)} distorts`
      : `The ${placed(where, 'channel')} of ${ampName(f)} distorts`;
  },
  faults: ['amp-channel-rough'],
  split: {
    byMeter:
      'Key off, left and right speaker plugs of that pair swapped: does the distortion move to the other speaker?',
    touches: ['amp-out-plus'],
    without: 'Key off, the two speakers of that pair swapped at the amplifier: does it move?',
  },
  mends: ['amp'],
  article: 'where-it-turns-ugly',
  remedy: (f) => ({
    what: `One output stage of ${ampName(f)} distorts at any volume.`,
    background:
      'A short, a speaker wire on the frame or heat can leave a stage half working. The speaker on it is fine.',
    numbers: gainFigures(f),
    repair: [{ do: 'repair-amp' }],
    fix: [
      'Key off, plugs apart: the run of that output in ohms and to the frame. If a short there did it, mend that first.',
      'Key off, swap the left and right input plugs: still distorted on the same output? Then it is the output stage.',
      'A spare channel can drive that speaker meanwhile.',
      'Ask a workshop what a repair costs. Tell them which output, that it distorts at any volume, and that the speaker is fine on another output.',
      gainWhenBack(f),
    ],
    tools: 'Meter, small screwdriver',
    minutes: 30,
    who: AMP_REPAIRER,
    parts: [],
    notBuy: [
      'A speaker, before it has played on another output.',
      'Another amplifier, before a workshop has quoted for the repair.',
    ],
    cautions: ['short-suspected', 'amp-output', 'loud-tone', 'bridge', 'ohms-dead'],
    proofOfCure: { byEar: 'Both speakers of that pair clean, each on its own output.' },
  }),
};
