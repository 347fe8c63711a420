import type { Cause } from '../cause.ts';
import { runFigures, runWhole } from '../runs/run-figures.ts';
import { placed, runThatIsOpen } from '../where.ts';
import { YOURSELF } from '../who.ts';
import { BAD_CONTACT, CLEANING_PARTS, CLEANING_STEPS, CLEANING_TOOLS } from './cleaning.ts';

export const secondConnectorDirty: Cause = {
  id: 'second-connector-dirty',
  title: (f) =>
    runThatIsOpen(f) === 'rear'
      ? 'Second plug of the rear loom with bad contacts'
      : `Second plug of the ${placed(runThatIsOpen(f), 'run')} with bad contacts`,
  faults: ['second-connector-dirty'],
  provedBy: ['second-look'],
  split: {
    byMeter:
      'Key off, meter on ohms at the rear end of the bike’s loom, then from the far end: does the coil read only from the rear end?',
    needs: ['meter-on-ohms'],
    without:
      'Key off. Follow the rear loom under seat and side covers: is there another plug, with a film or water in it?',
    asStep: { without: 'second-look' },
  },
  mends: ['run'],
  article: 'read-a-coil-in-ohms',
  remedy: (f) => ({
    what: 'A second plug half-way along the rear loom has poor contacts.',
    background: 'It is under the seat or a side cover, and few people know it is there.',
    numbers: [...runFigures(f), BAD_CONTACT],
    repair: [
      { do: 'seat-plug', plug: 'second', where: runThatIsOpen(f) },
      { do: 'clean-contacts', plug: 'second', where: runThatIsOpen(f) },
    ],
    fix: [
      'Key off. Follow the rear loom forward from the lid or case plug: under the seat, behind side covers.',
      'Pull the plug you find there apart, and look for a grey or green film, water, or a pin set back.',
      ...CLEANING_STEPS,
      'Tie it up out of the spray.',
    ],
    tools: CLEANING_TOOLS,
    minutes: 30,
    who: YOURSELF,
    parts: CLEANING_PARTS,
    notBuy: ['Speakers or an amplifier, before that plug has been checked.', 'A reflash: it cleans no contact.'],
    proofOfCure: runWhole(f),
  }),
};
