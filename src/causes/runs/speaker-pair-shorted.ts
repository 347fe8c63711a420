import { type Findings, is } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import type { Where } from '../repair-action.ts';
import {
  findTheRun,
  isOfOneSpeaker,
  notForAShort,
  onePlaced,
  Placed,
  runThatIsShorted,
  silentOrRear,
  speakersInQuestion,
} from '../where.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';
import { coilFigure, lowestRunRead, runFigures, runWhole } from './run-figures.ts';

/** The rear where it was a rear run that read shorted, whatever else hangs on the amplifier. */
const axleOf = (f: Findings): Where =>
  isOfOneSpeaker(f) || is(f, 'run-ohms', 'low') ? silentOrRear(f) : speakersInQuestion(f);

/** Where a case is about the rear, the readings of its two runs tell the side. */
function placeOf(f: Findings): Where {
  const speakers = axleOf(f);
  return speakers === 'rear' || isOfOneSpeaker(f) ? runThatIsShorted(f) : speakers;
}

export const speakerPairShorted: Cause = {
  id: 'speaker-pair-shorted',
  title: (f) => Placed(placeOf(f), 'speaker run shorted'),
  faults: ['speaker-pair-shorted'],
  split: {
    byMeter:
      'Key off, plug apart, meter on ohms, one wire off the speaker: does the run still read next to nothing, while the coil is fine?',
    needs: ['meter-on-ohms'],
    without: 'Key off, plug in only that run: does it silence whatever drives it, with no wire of it touching metal?',
  },
  mends: ['run'],
  article: 'read-a-coil-in-ohms',
  remedy: (f) => ({
    what: `${onePlaced(placeOf(f), 'speaker run')} is shorted: its positive and negative touch each other.`,
    background: 'Loose strands at a terminal do it, or a lead pinched flat.',
    numbers:
      axleOf(f) === 'rear' || isOfOneSpeaker(f) ? runFigures(f) : [...lowestRunRead(f), coilFigure(f, axleOf(f))],
    repair: [{ do: 'renew-wire', wire: 'speaker-run', where: placeOf(f) }],
    fix: [
      ...findTheRun(f, placeOf(f)),
      'Leave that run unplugged: don’t keep restarting into the short.',
      'Key off, plug apart, meter on ohms: the run that reads next to nothing is the one. One wire off its speaker: still the same?',
      'Remake its ends, no loose strands. A pinched length: new wire.',
      'Does the run read its coil again? Then plug it back in.',
    ],
    tools: 'Meter, crimp tool',
    minutes: 45,
    who: YOURSELF_OR_FITTER,
    parts: ['Terminals, a length of speaker wire as thick as the old one'],
    notBuy: [notForAShort(f)],
    cautions: ['into-a-short', 'ohms-dead'],
    proofOfCure: runWhole(f),
  }),
};
