import { drawFigures } from '../amp-load.ts';
import { batteryRead, CHARGING_FIGURE, whatItFeeds } from '../battery-state.ts';
import type { Cause } from '../cause.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';

export const batteryCutsOff: Cause = {
  id: 'battery-cuts-off',
  title: 'The lithium battery switches itself off',
  faults: ['battery-cuts-off'],
  split: {
    byMeter: 'The moment it goes dark, meter on the battery posts: 0 to 5 V, and back after a rest or on its charger?',
    touches: ['battery-plus'],
    without: 'Is it a lithium battery, and does the whole bike go dark at once, lights and all?',
  },
  mends: ['amp-supply', 'unit'],
  article: 'the-charging-system',
  remedy: (f) => ({
    what: 'The battery’s own protection switches it off: too empty, too cold, charged too high, or more drawn than it can give.',
    background:
      'The posts then read nothing, and the bike is as dark as with a loose post. A rest or its charger brings it back.',
    numbers: [...batteryRead(f), ...drawFigures(f), CHARGING_FIGURE],
    repair: [{ do: 'charge-battery' }],
    fix: [
      'Warm or swollen: hands off, no charger, and keep it out of the house.',
      'Key off. Use its own charger, made for lithium: it wakes the battery and fills it. A lead-acid charger does neither.',
      'Look up its continuous amps on the label or in its papers. Full bass must stay below that.',
      'Outdoors, about 3000 rpm: above 15 V at the posts? Then the charging trips it.',
      'Below freezing: lights on for a few minutes first, music later.',
    ],
    tools: 'Charger for lithium, meter',
    minutes: 30,
    who: YOURSELF_OR_FITTER,
    parts: [],
    notBuy: [
      `${whatItFeeds(f)} or a fuse: the battery switches itself off.`,
      'A battery, before this one has been charged and its label read.',
    ],
    cautions: ['outdoors', 'hot'],
    proofOfCure: {
      byEar: 'Ten loud minutes with the engine off, and a cold start the next morning: nothing goes dark.',
      byMeter: 'Full and rested: 13.2 V or more. Ten loud minutes with the engine off: above 12.5 V.',
    },
  }),
};
