import type { Cause } from '../cause.ts';
import { TEN_STARTS } from '../supply-ways.ts';
import { ampName } from '../the-amp.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';

export const waterInside: Cause = {
  id: 'water-inside',
  title: (f) => `Water in ${ampName(f)} or its plugs`,
  faults: ['water-inside'],
  split: {
    byMeter:
      'Key off, main fuse out, speaker plugs off it, meter on ohms: is a speaker wire between 100 Ω and 100 kΩ to the frame, neither clear nor shorted? That is damp.',
    needs: ['meter-on-ohms'],
    without: 'Key off, main fuse out: open its plugs and look under its cover. Drops, a white tide mark, or green?',
    asStep: { without: 'water-look' },
  },
  mends: ['amp', 'amp-supply'],
  article: 'connectors-vibration-and-water',
  remedy: (f) => ({
    what: `Water has got into ${ampName(f)} or its plugs, and current leaks where it should not.`,
    background: 'The day after rain or a wash is the worst day to condemn a part. Dry it, then judge.',
    numbers: [
      {
        id: 'wire-to-frame-dry',
        label: 'Each speaker wire to the frame, dry',
        value: 100e3,
        unit: 'Ω',
        limit: 'above',
      },
    ],
    repair: [{ do: 'dry-amp' }],
    fix: [
      'Key off, main fuse out, battery negative off. Don’t try it again while it is wet: that is what kills it.',
      'Amplifier out, plugs apart, covers off. Shake the water out, and let it drain with the plugs facing down.',
      'Three days in a warm dry room, or a day in front of a fan. No oven, no hot-air gun.',
      'Green or white on pins or board: brush it off with contact cleaner, and let that dry too.',
      'Where did it get in? A seal, a drain hole, a lead with no drip loop: mend that, and mount it plugs down.',
      'Refit it: line-level and speaker plugs last, low volume first.',
    ],
    tools: 'Spanners, contact cleaner, soft brush',
    minutes: 60,
    who: YOURSELF_OR_FITTER,
    parts: [],
    notBuy: ['An amplifier, before this one has dried for three days.'],
    ifDoneAnyway: 'A new one in the same wet place lasts until it next rains.',
    cautions: ['into-a-short'],
    proofOfCure: {
      byEar: `${TEN_STARTS} It plays for thirty minutes, and the same after the next wash or rain.`,
      byMeter: `Key off, speaker plugs off it: each speaker wire above 100 kΩ to the frame. Plugs back: ${ampName(f)} comes on, and plays for thirty minutes.`,
      needs: ['meter-on-ohms'],
    },
  }),
};
