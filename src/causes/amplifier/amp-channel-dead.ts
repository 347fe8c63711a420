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
      'Speakers off, 400 Hz tone: AC across that input pair, none across its output, while the other outputs carry it?',
    needs: ['tone-400'],
    touches: ['amp-out-plus'],
    without:
      'Key off, check the silent speaker’s run for a short, then move it to an output that works: does it play there?',
    cautions: ['key-off', 'short-suspected'],
  },
  mends: ['amp'],
  article: 'why-an-amplifier-protects-itself',
  remedy: (f) => ({
    what: `One or more outputs of ${ampName(f)} give nothing, though it is on and has a signal.`,
    background: 'A short on that output is the usual cause, and kills the next amplifier as well.',
    numbers: gainFigures(f),
    repair: [{ do: 'repair-amp' }],
    fix: [
      'Key off. Read its selectors first: inputs as wired, crossover of those channels on full range, gain above its lowest. Key on, music low: listen.',
      'Key off, plugs apart: the run of that output in ohms and to the frame. If a short there killed it, mend that first.',
      'A spare channel can drive that speaker meanwhile.',
      'Ask a workshop what a repair costs. Tell them which outputs, that the input has signal, and that the light is normal.',
      gainWhenBack(f),
    ],
    tools: 'Meter, small screwdriver',
    minutes: 30,
    who: AMP_REPAIRER,
    parts: [],
    notBuy: [
      'A reflash: the signal is there.',
      'Speakers, before the run and the coil have been measured in ohms.',
      'Another amplifier, before a workshop has quoted for the repair.',
    ],
    cautions: ['short-suspected', 'amp-output', 'loud-tone', 'bridge', 'ohms-dead'],
    proofOfCure: {
      byEar: 'Every speaker on it plays, as loud as its partner.',
      byMeter: 'Speakers off, 400 Hz tone: all its outputs within 10 % of each other.',
      needs: ['tone-400'],
    },
  }),
};
