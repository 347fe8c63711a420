import type { Cause } from '../cause.ts';
import { healthyRemoteInWords, remoteFigures, TOLD_NOTHING } from '../remote-wire.ts';
import { TEN_STARTS } from '../supply-ways.ts';
import { ampName } from '../the-amp.ts';
import { FITTER } from '../who.ts';

export const adapterWithoutRemote: Cause = {
  id: 'adapter-without-remote',
  title: (f) => `The adapter of the replaced head unit leaves out the remote wire of ${ampName(f)}`,
  faults: ['replaced-unit-adapter-gap@remote'],
  provedBy: ['adapter-look'],
  split: {
    byMeter:
      'Head unit on, against the battery negative post: volts on its remote output, none on the bike’s side of the adapter?',
    needs: ['panel-off', 'head-unit-playing'],
    without: 'Key off, adapter apart: is the pin for the remote wire missing on one half?',
  },
  mends: ['unit-leads', 'amp-supply'],
  article: 'amplifiers-that-listen',
  remedy: (f) => ({
    what: `The replaced head unit switches its remote output, and the adapter behind it has no pin for the remote wire of ${ampName(f)}.`,
    background: 'An adapter made for another bike often leaves it out. At the amplifier that looks like a broken wire.',
    numbers: remoteFigures(f),
    repair: [{ do: 'complete-adapter', carries: 'remote' }],
    fix: [
      'Key off, adapter apart.',
      'Fit the missing pin, or bypass the adapter with a sealed crimp. Its papers give the colour, usually blue with a white stripe.',
      'A 1 A fuse where it starts. The papers say how much the output can supply: use a relay for more than one amplifier.',
      'While the plug is apart: are both rear pairs fitted, each matched to a rear pair?',
    ],
    tools: 'Crimp tool',
    minutes: 30,
    who: FITTER,
    parts: ['Pin for the adapter or a sealed crimp, a 1 A fuse with its holder'],
    notBuy: [TOLD_NOTHING, 'A reflash: a replaced head unit has no stored profile.'],
    proofOfCure: {
      byEar: TEN_STARTS,
      byMeter: `Head unit on: ${healthyRemoteInWords(f)} on the amplifier’s remote terminal, against the battery negative post.`,
      needs: ['head-unit-playing'],
    },
  }),
};
