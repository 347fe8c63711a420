import type { Cause } from '../cause.ts';
import { CUT_OUT, healthyFigure, healthyInWords, LAMP_NEEDS, LAMP_ON, readFigures, TEN_LOUD } from '../supply-ways.ts';
import { AmpName, ampName } from '../the-amp.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';

export const ampGroundResistive: Cause = {
  id: 'amp-ground-resistive',
  title: (f) => `The ground of ${ampName(f)} makes poor contact`,
  faults: ['amp-ground-resistive'],
  split: {
    byMeter: `${LAMP_ON}: amplifier’s ground to the battery negative post, a few hundredths of a volt, or more?`,
    ...LAMP_NEEDS,
    without: 'Key off, battery negative off, its ground ring off: paint, anodising or green under it?',
    cautions: ['minus-first', 'battery-gas', 'cranking', 'ground-open'],
  },
  mends: ['amp-supply'],
  article: 'voltage-drop-under-load',
  remedy: (f) => ({
    what: `${AmpName(f)} loses volts on the return path: its ground makes poor contact once it draws current.`,
    background: 'Paint or anodising under a ring reads fine with no current. At ten amps it does not.',
    numbers: [...readFigures(f, 'ground'), healthyFigure(f, 'ground'), CUT_OUT],
    repair: [{ do: 'tighten-joint', at: 'amp-ground' }],
    fix: [
      'Key off, main fuse out, battery negative off. Line-level plugs out of the amplifier.',
      'Ground ring off. Scrape ring and metal bright, as wide as the ring: no paint, anodising or rust.',
      'Only bare metal of the main frame or the battery negative post will do. No rubber-mounted bracket, no painted tray.',
      'Screw tight with a toothed washer, grease over it to keep water out. The ring must not turn by hand.',
      'Do the same at the amplifier end. Battery negative on, main fuse last.',
    ],
    tools: 'Scraper, spanner',
    minutes: 30,
    who: YOURSELF_OR_FITTER,
    parts: [],
    notBuy: ['An amplifier or a battery.', 'A capacitor on the supply: it won’t mend a contact.'],
    proofOfCure: {
      byEar: `${TEN_LOUD} A whine that followed the engine is gone.`,
      byMeter: `${LAMP_ON}: ${healthyInWords(f, 'ground')} from the amplifier’s ground to the battery negative post, steady when you press the ring.`,
      ...LAMP_NEEDS,
    },
  }),
};
