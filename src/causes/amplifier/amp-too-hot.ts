import { DENSE_MUSIC_AVERAGE_RATIO } from '../../compute/amp-current.ts';
import type { Findings } from '../../steps/outcome.ts';
import { EFFICIENCY_RATIO } from '../../steps/supply/amp-feed.ts';
import { ampLoad, drawFigures } from '../amp-load.ts';
import type { Cause } from '../cause.ts';
import { AmpName, ampName } from '../the-amp.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';

/** What dense loud music leaves in its case: what it takes from the battery less what it gives to the speakers. */
function heatW(f: Findings): number {
  const { channels, powerW } = ampLoad(f);
  return DENSE_MUSIC_AVERAGE_RATIO * channels * powerW * (1 / EFFICIENCY_RATIO - 1);
}

export const ampTooHot: Cause = {
  id: 'amp-too-hot',
  title: (f) => `${AmpName(f)} gets too hot`,
  faults: ['amp-heat-protect'],
  provedBy: ['amp-runs'],
  split: {
    byMeter: 'While it is off and hot: positive to ground at its terminals within 0.5 V of the battery?',
    touches: ['amp-plus'],
    without: 'Feel its case: too hot to leave your hand there? Does it come back by itself once cooler?',
  },
  mends: ['amp'],
  article: 'why-an-amplifier-protects-itself',
  remedy: (f) => ({
    what: `${AmpName(f)} cannot shed its heat: it switches off when its case gets too hot and comes back once cooler.`,
    background: 'Most switch off at a case of 75 to 90 °C, and come back 10 to 20 °C below that. That takes minutes.',
    numbers: [{ id: 'heat', label: 'Heat with dense, loud music', value: heatW(f), unit: 'W' }, ...drawFigures(f)],
    repair: [{ do: 'cool-amp' }],
    fix: [
      'Key off, and let it cool.',
      'Clear its fins: no carpet, foam or rain cover on it. A hand’s width of air on the finned side.',
      'Stand it on spacers, fins upright, out of the closed bag, or with vent holes.',
      'Gain down to what the speakers need, high-pass on: whatever they cannot play is just heat.',
      'Still too hot: a small fan on its own fused feed, through a relay that the remote wire switches.',
    ],
    tools: 'Spacers, screwdriver',
    minutes: 40,
    who: YOURSELF_OR_FITTER,
    parts: ['Four spacers a finger’s width thick'],
    notBuy: ['A bigger amplifier for the same closed space.', 'A repair: it is right to switch off when that hot.'],
    proofOfCure: {
      byEar: `Thirty minutes at the volume and in the heat that made it cut out, bag closed as on the road: ${ampName(f)} stays on.`,
    },
  }),
};
