import { gainFigures, gainWhenBack } from '../amp-load.ts';
import type { Cause } from '../cause.ts';
import { ampName } from '../the-amp.ts';
import { channelThatIsSilent, placed } from '../where.ts';
import { AMP_REPAIRER } from '../who.ts';

export const ampChannelDead: Cause = {
  id: 'amp-channel-dead',
  title: (f) => {
    const where = channelThatIsSilent(f, 'amp-out');
    return where === 'rear' || where === 'all'
      ? `A channel of ${ampName(f)} is dead`
      : `The ${placed(where, 'channel')} of ${ampName(f)} is dead`;
  },
  faults: ['amp-channel-dead'],
  split: {
    byMeter:
      'Speakers off, 400 Hz tone: AC across that input pair, none across its output, and the other outputs carry it?',
    needs: ['tone-400'],
    touches: ['amp-out-plus'],
    without:
      'Key off, silent speaker moved to an output that plays, its run looked at for a short first: does it play there?',
    cautions: ['key-off', 'short-suspected'],
  },
  mends: ['amp'],
  article: 'why-an-amplifier-protects-itself',
  remedy: (f) => ({
    what: `One or more outputs of ${ampName(f)} give nothing, though it is on and its signal comes in.`,
    background: 'A short on that output is the usual reason, and kills the next one as well.',
    numbers: gainFigures(f),
    repair: [{ do: 'repair-amp' }],
    fix: [
      'Key off. Read its selectors first: inputs as wired, crossover of those channels on full range, gain above its lowest. Key on, music low: listen.',
      'Key off, plugs apart: the run of that output in ohms and to the frame. A short there killed it: mend that first.',
      'A spare channel may play that speaker meanwhile.',
      'Ask a workshop what a repair costs. Say: which outputs, signal at the input, lamp normal.',
      gainWhenBack(f),
    ],
    tools: 'Meter, small screwdriver',
    minutes: 30,
    who: AMP_REPAIRER,
    parts: [],
    notBuy: [
      'A reflash: the signal is there.',
      'Speakers, before the run and the coil were read in ohms.',
      'Another amplifier, before a workshop said what the repair costs.',
    ],
    cautions: ['short-suspected', 'amp-output', 'loud-tone', 'bridge', 'ohms-dead'],
    proofOfCure: {
      byEar: 'Every speaker on it plays, as loud as its partner.',
      byMeter: 'Speakers off, 400 Hz tone: all its outputs within 10 % of each other.',
      needs: ['tone-400'],
    },
  }),
};
