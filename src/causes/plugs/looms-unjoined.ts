import type { Cause } from '../cause.ts';
import { runFigures, runWhole } from '../runs/run-figures.ts';
import { isOfOneSpeaker, Placed, silentOne, silentOrRear } from '../where.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';

export const loomsUnjoined: Cause = {
  id: 'looms-unjoined',
  title: (f) =>
    isOfOneSpeaker(f)
      ? Placed(silentOne(f), 'half of the loom not connected')
      : 'Front and rear halves of the loom not connected',
  faults: ['looms-unjoined'],
  split: {
    byMeter: 'Key off, meter on ohms: the coils read from the rear half of the loom, but open from whatever feeds it?',
    needs: ['meter-on-ohms'],
    without: 'Key off. Look under seat and tank for two loose plugs that fit each other, often capped or taped up.',
    asStep: { without: 'second-look' },
  },
  mends: ['run'],
  article: 'read-a-coil-in-ohms',
  remedy: (f) => ({
    what: 'The two halves of the rear speaker loom are not plugged into each other.',
    background: 'A bike built with front speakers only can have both halves fitted, each plug with nothing in it.',
    numbers: runFigures(f),
    repair: [{ do: 'join-looms', where: silentOrRear(f) }],
    fix: [
      'Key off. Find both ends: the front half ends under tank or seat, the rear half near the case or the lids.',
      'Same shape, same colours: plug them together until they lock. No matching partner? Then it is not the speaker loom.',
      'Tie the connector up out of the spray and away from the exhaust.',
    ],
    tools: 'Screwdriver for the covers',
    minutes: 30,
    who: YOURSELF_OR_FITTER,
    parts: [],
    notBuy: ['Speakers, an amplifier or a reflash, before the two halves are connected.'],
    proofOfCure: runWhole(f),
  }),
};
