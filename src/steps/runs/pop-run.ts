import { isKnown } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { type OfEach, ofEach, withSubject } from '../subject.ts';
import { concernsAxle } from '../told/silent-side.ts';

export const popRun: OfEach<ChoiceStep<'moves' | 'faint' | 'dead'>, 'rear', 'front'> = ofEach(
  ['rear', 'front'],
  (axle) =>
    choice({
      place: 'runs',
      id: 'pop-run',
      short: `1.5 V cell on the ${axle} run`,
      ask: `Plug apart, touch a 1.5 V cell to the two wires of each ${axle} run. Do the speakers click?`,
      phone: `A 1.5 volt cell, never 9 volt, half a second on the two ${axle} wires of each side. A click on both, a faint one, or none on one or both?`,
      how: [
        'A single 1.5 V cell, half a second, one wire to each end.',
        'Listen at the speaker, or have a helper watch the cone. Do both sides.',
      ],
      why: 'A click proves wire and coil in one go, without a meter.',
      tool: 'cell',
      minutes: 6,
      conditions: ['key-off', `${axle}-plug-apart`],
      sensible: (f) => concernsAxle(f, axle) && !isKnown(f, withSubject('run-ohms', axle, 'rear')),
      observes: ['run', 'speaker'],
      options: { moves: 'Both click', faint: 'Both click, one or both only faintly', dead: 'No click on one or both' },
      outcomes: { moves: 'clicks', faint: 'clicks faintly', dead: 'no click' },
    }),
);
