import { cornersOf } from '../../../rig/corner.ts';
import { stepName } from '../../../steps/subject.ts';
import { hasRear } from '../../../world/faults/kit.ts';
import type { Ridden } from '../../../world/symptoms/index.ts';
import { between, type Draw, type Observe, type Oddity } from '../oddity.ts';
import { ohmsBetween, readsTone } from './places.ts';
import { type ReadingGiven, retyped, saying, typed } from './saying.ts';

/* Readings without what the step asks for first. */

/** Steps that look for a wire on the frame, its plug apart. */
const TO_THE_FRAME = ['wire-to-frame', 'amp-wires-to-frame'];
/** With the plug on what drives the run is measured as well: some kilohms to ground at each of its outputs. */
function throughTheDriver(bike: Ridden): number {
  const wires = cornersOf('rear').flatMap((corner) =>
    (['run-plus', 'run-minus'] as const).map(
      (red) => ohmsBetween(bike, { key: 'off', toneHz: null }, { red, black: 'frame' }, corner) ?? Infinity,
    ),
  );
  return Math.min(...wires);
}
const plugsOn = (_: string, value: number, { step, bike }: ReadingGiven): string | undefined =>
  TO_THE_FRAME.includes(stepName(step)) ? typed(Math.min(value, throughTheDriver(bike)), 'Ω') : undefined;

/** Music swings: what the meter happens to show when somebody looks, over what a tone would read. */
const SWING = [0.5, 1.6] as const;

export const CONDITIONS: readonly Oddity[] = [
  {
    id: 'plugs-left-on',
    says: 'ohms to the frame with the plugs still on',
    class: 'conditions',
    fits: hasRear,
    person: saying((given) => retyped(given, plugsOn)),
  },
  {
    id: 'music-for-the-tone',
    says: 'somebody who plays music where a tone was asked for',
    class: 'conditions',
    fits: () => true,
    person: (observe: Observe, draw: Draw) =>
      saying((given) =>
        retyped(given, (name, value, { step }) =>
          readsTone(step) && name !== 'papersV' && name !== 'residueV'
            ? typed(between(draw, ...SWING) * value, 'V', 3)
            : undefined,
        ),
      )(observe),
  },
];
