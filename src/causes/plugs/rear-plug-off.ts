import { is } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import { runFigures, runWhole } from '../runs/run-figures.ts';
import { Placed, runThatIsOpen } from '../where.ts';
import { YOURSELF } from '../who.ts';

/** Somebody who found no plug is not told to push it home: either it is hidden, or the lead itself is open. */
const FIND_IT_FIRST: readonly string[] = [
  'Found no plug? Key off, and follow the rear lead from the speaker to whatever feeds it: many are under the seat, or behind the floor of the case.',
  'None all the way along? Then it is the lead: measure each length in ohms from end to end, the lid hinge first.',
];

export const rearPlugOff: Cause = {
  id: 'rear-plug-off',
  title: (f) => Placed(runThatIsOpen(f), 'plug not home'),
  faults: ['rear-plug-off'],
  split: {
    byMeter: 'Key off, meter on ohms from the far end of the run: open, then the coil once the plug is pushed home?',
    needs: ['meter-on-ohms'],
    without: 'Key off, pull every lid and case plug and push it home until it locks. Key on, music low: does it play?',
    asStep: { without: 'lid-check' },
  },
  mends: ['run'],
  article: 'read-a-coil-in-ohms',
  remedy: (f) => ({
    what: 'The plug of the rear loom, the lid or the case is not home.',
    background: 'It gets opened more than any other: a case taken off, a lid off for a wash.',
    numbers: runFigures(f),
    repair: [{ do: 'seat-plug', plug: 'rear-dock', where: runThatIsOpen(f) }],
    fix: [
      ...(is(f, 'lid-check', 'no-plug') ? FIND_IT_FIRST : []),
      'Key off. Case and lid in place.',
      'Pull the plug, look at it, push it home until it locks.',
      'Tie the lead so that nothing pulls on it. Ride once, then listen again.',
    ],
    tools: 'A cable tie',
    minutes: 5,
    who: YOURSELF,
    parts: [],
    notBuy: ['Speakers, an amplifier or a reflash: a plug is apart.'],
    ifDoneAnyway: 'With the key on, plugging in can short an output for a moment.',
    proofOfCure: { ...runWhole(f), byEar: 'It still plays after a ride and after opening the lid ten times.' },
  }),
};
