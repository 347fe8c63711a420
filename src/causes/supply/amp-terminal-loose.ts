import type { Cause } from '../cause.ts';
import { CUT_OUT, LAMP_NEEDS, LAMP_ON, MINUS_BACK, readFigures, TEN_STARTS } from '../supply-ways.ts';
import { ampName } from '../the-amp.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';

export const ampTerminalLoose: Cause = {
  id: 'amp-terminal-loose',
  title: (f) => `A power terminal of ${ampName(f)} makes poor contact`,
  faults: ['amp-terminal-loose'],
  split: {
    byMeter: `${LAMP_ON}: more than 10 mV from the copper of a lead to the metal of its terminal?`,
    ...LAMP_NEEDS,
    without:
      'Key off, main fuse out: pull gently at positive and ground where they enter the amplifier. Does one move?',
  },
  mends: ['amp-supply'],
  article: 'voltage-drop-under-load',
  remedy: (f) => ({
    what: `A power lead makes poor contact where it enters ${ampName(f)}: a loose screw, a slipped ferrule, or a screw clamped on insulation.`,
    background: 'Leads, rings and fuse are fine, yet the volts are lost in the last centimetre.',
    numbers: [...readFigures(f, 'plus'), ...readFigures(f, 'ground'), CUT_OUT],
    repair: [{ do: 'tighten-joint', at: 'amp-terminal' }],
    fix: [
      'Key off, main fuse out, battery negative off.',
      'Positive and ground out of the amplifier. Green, brown, or strands cut by the screw? Cut back to bright copper.',
      'Strip enough that no insulation goes under the screw. Twist the strands, or crimp a ferrule on. Never tin them: solder creeps and works loose.',
      'Screw tight, tug it, tighten again. A push-on plug: push until it locks.',
      MINUS_BACK,
    ],
    tools: 'Screwdriver or hex key, stripper',
    minutes: 20,
    who: YOURSELF_OR_FITTER,
    parts: [],
    notBuy: ['An amplifier: only the joint at its terminal is bad.', 'A new lead or a fuse.'],
    proofOfCure: {
      byEar: `Tug both leads, music on: its light does not flicker. ${TEN_STARTS}`,
      byMeter: `${LAMP_ON}: below 10 mV from the copper of each lead to the metal of its terminal.`,
      ...LAMP_NEEDS,
    },
  }),
};
