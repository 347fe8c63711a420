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
      ? `A channel of ${ampName(f)} plays rough`
      : `The ${placed(where, 'channel')} of ${ampName(f)} plays rough`;
  },
  faults: ['amp-channel-rough'],
  split: {
    byMeter:
      'Key off, left and right speaker plugs of that pair changed over: does the ugly sound move to the other speaker?',
    touches: ['amp-out-plus'],
    without: 'Key off, the two speakers of that pair changed over at the amplifier: does it move?',
  },
  mends: ['amp'],
  article: 'where-it-turns-ugly',
  remedy: (f) => ({
    what: `One output stage of ${ampName(f)} bends what it plays, at any volume.`,
    background:
      'A short, a speaker wire on the frame or heat leaves a stage that half works. The speaker on it is sound.',
    numbers: gainFigures(f),
    repair: [{ do: 'repair-amp' }],
    fix: [
      'Key off, plugs apart: the run of that output in ohms and to the frame. A short there did it: mend that first.',
      'Input plugs of left and right changed over, key off: ugly on the same output still? Then it is the stage.',
      'A spare channel may play that speaker meanwhile.',
      'Ask a workshop what a repair costs. Say: which output, rough at any volume, speaker sound on another output.',
      gainWhenBack(f),
    ],
    tools: 'Meter, small screwdriver',
    minutes: 30,
    who: AMP_REPAIRER,
    parts: [],
    notBuy: [
      'A speaker: it played clean on the other output.',
      'Another amplifier, before a workshop said what the repair costs.',
    ],
    cautions: ['short-suspected', 'amp-output', 'loud-tone', 'bridge', 'ohms-dead'],
    proofOfCure: { byEar: 'Both speakers of that pair clean, each on its own output.' },
  }),
};
