import type { Cause } from '../cause.ts';
import { runFigures, runWhole } from '../runs/run-figures.ts';
import { Placed, runThatIsOpen } from '../where.ts';
import { YOURSELF } from '../who.ts';
import { BAD_CONTACT, CLEANING_PARTS, CLEANING_STEPS, CLEANING_TOOLS } from './cleaning.ts';

export const lidContactsDirty: Cause = {
  id: 'lid-contacts-dirty',
  title: (f) => Placed(runThatIsOpen(f), 'plug with bad contacts'),
  faults: ['lid-contacts-dirty'],
  split: {
    byMeter:
      'Key off, lid still, meter on ohms: the coil reads from the lid’s half of the plug, but not through the plug?',
    needs: ['meter-on-ohms'],
    without:
      'Press the plug together while music plays: does it come back? Clean the contacts anyway: it does no harm.',
    asStep: { byMeter: 'run-split' },
  },
  mends: ['run'],
  article: 'read-a-coil-in-ohms',
  remedy: (f) => ({
    what: 'The contacts in a rear plug are poor: dirt, water or a slack socket.',
    background:
      'They sit in road spray. Don’t condemn any other part straight after a wash or a wet ride: dry the plug first.',
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
