import type { Cause } from '../cause.ts';
import { runFigures, runWhole } from '../runs/run-figures.ts';
import { capital } from '../the-amp.ts';
import { onePlaced, placed, silentOne } from '../where.ts';
import { YOURSELF } from '../who.ts';
import { BAD_CONTACT, CLEANING_PARTS, CLEANING_STEPS, CLEANING_TOOLS } from './cleaning.ts';

export const frontPlugBad: Cause = {
  id: 'front-plug-bad',
  title: (f) => capital(placed(silentOne(f), 'plug off, or with bad contacts')),
  faults: ['front-plug-off', 'front-contacts-dirty'],
  split: {
    byMeter: 'Key off, meter on ohms: the coil at the speaker’s own tabs, and through its plug not, or far more?',
    needs: ['meter-on-ohms'],
    without: 'Key off, pull the speaker’s plug and push it home until it locks. Key on, music low: does it play?',
  },
  mends: ['run'],
  article: 'one-speaker-or-one-side',
  remedy: (f) => ({
    what: `${onePlaced(silentOne(f), 'plug')} behind the fairing is off, or its contacts do not touch well.`,
    background: 'It goes on blind after the fairing was away. Spray and vibration do the rest.',
    numbers: [...runFigures(f), BAD_CONTACT],
    repair: [
      { do: 'seat-plug', plug: 'front-speaker', where: silentOne(f) },
      { do: 'clean-contacts', plug: 'front-speaker', where: silentOne(f) },
    ],
    fix: [
      'Key off. Grille or fairing part off. Push the plug home until it locks. Key on, music low: does it play? No? Key off, plug off.',
      ...CLEANING_STEPS,
      'Tie the lead so that the steering does not pull on it.',
    ],
    tools: `Screwdriver. ${CLEANING_TOOLS}`,
    minutes: 25,
    who: YOURSELF,
    parts: CLEANING_PARTS,
    notBuy: ['A speaker, before its plug was seen.', 'A reflash: it plugs nothing in.'],
    proofOfCure: runWhole(f),
  }),
};
