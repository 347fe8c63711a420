import type { Cause } from '../cause.ts';
import { runFigures, runWhole } from '../runs/run-figures.ts';
import { capital } from '../the-amp.ts';
import { placed, runThatIsOpen } from '../where.ts';
import { YOURSELF } from '../who.ts';
import { BAD_CONTACT, CLEANING_PARTS, CLEANING_STEPS, CLEANING_TOOLS } from './cleaning.ts';

export const lidContactsDirty: Cause = {
  id: 'lid-contacts-dirty',
  title: (f) => capital(placed(runThatIsOpen(f), 'plug with bad contacts')),
  faults: ['lid-contacts-dirty'],
  split: {
    byMeter: 'Key off, lid still, meter on ohms: the coil from the lid’s half of the plug, and not through the plug?',
    needs: ['meter-on-ohms'],
    without: 'Press the plug together while music plays: does it come back? Clean the contacts: it harms nothing.',
  },
  mends: ['run'],
  article: 'read-a-coil-in-ohms',
  remedy: (f) => ({
    what: 'The contacts of a rear plug do not touch well: dirt, water or a slack socket.',
    background: 'They sit in road spray. A wash or a wet ride is a bad day to condemn any other part: dry it first.',
    numbers: [...runFigures(f), BAD_CONTACT],
    repair: [
      { do: 'seat-plug', plug: 'rear-dock', where: runThatIsOpen(f) },
      { do: 'clean-contacts', plug: 'rear-dock', where: runThatIsOpen(f) },
    ],
    fix: [
      'Key off. Push the plug home until it locks. Key on, music low: does it play? No? Key off, plug apart.',
      ...CLEANING_STEPS,
    ],
    tools: CLEANING_TOOLS,
    minutes: 20,
    who: YOURSELF,
    parts: CLEANING_PARTS,
    notBuy: ['Speakers, before the contacts are clean.', 'A reflash: it cleans no contact.'],
    proofOfCure: runWhole(f),
  }),
};
