import type { Cause } from '../cause.ts';
import { runFigures, runWhole } from '../runs/run-figures.ts';
import { onePlaced, Placed, silentOne } from '../where.ts';
import { YOURSELF } from '../who.ts';
import { BAD_CONTACT, CLEANING_PARTS, CLEANING_STEPS, CLEANING_TOOLS } from './cleaning.ts';

export const frontPlugBad: Cause = {
  id: 'front-plug-bad',
  title: (f) => Placed(silentOne(f), 'plug off, or with bad contacts'),
  faults: ['front-plug-off', 'front-contacts-dirty'],
  split: {
    byMeter:
      'Key off, meter on ohms: the coil reads right at the speaker’s own tabs, but open or far higher through its plug?',
    needs: ['meter-on-ohms'],
    without: 'Key off, pull the speaker’s plug and push it home until it locks. Key on, music low: does it play?',
    asStep: { without: 'speaker-plug' },
  },
  mends: ['run'],
  article: 'one-speaker-or-one-side',
  remedy: (f) => ({
    what: `${onePlaced(silentOne(f), 'plug')} behind the fairing is off or on the wrong partner, or its contacts do not touch well.`,
    background: 'It gets pushed on blind after the fairing has been off. Spray and vibration do the rest.',
    numbers: [...runFigures(f, 'front'), BAD_CONTACT],
    repair: [
      { do: 'seat-plug', plug: 'front-speaker', where: silentOne(f) },
      { do: 'clean-contacts', plug: 'front-speaker', where: silentOne(f) },
    ],
    fix: [
      'Key off. Grille or fairing part off. Push the plug home until it locks. Key on, music low: does it play? No? Key off, plug off, and follow its wires: does it belong there?',
      ...CLEANING_STEPS,
      'Tie the lead so that the steering does not pull on it.',
    ],
    tools: `Screwdriver. ${CLEANING_TOOLS}`,
    minutes: 25,
    who: YOURSELF,
    parts: CLEANING_PARTS,
    notBuy: ['A speaker, before its plug has been checked.', 'A reflash: it plugs nothing in.'],
    proofOfCure: runWhole(f, 'front'),
  }),
};
