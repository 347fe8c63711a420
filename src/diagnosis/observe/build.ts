import {
  deliveredWith,
  frontDrive,
  rearAmpInput,
  rearAmpTurnOn,
  rearDrive,
  rearInputs,
  rearRating,
  unitKind,
} from '../../steps/build.ts';
import { metersDigit, toolsAtHand } from '../../steps/meter.ts';
import { rearPairPlace } from '../../steps/rear-volts.ts';
import { driverOf, type ValuedRig } from '../../world/valued-rig.ts';
import { rearAmp } from './bike.ts';
import { type Asked, CANNOT, option, type Says } from './observer.ts';

/* What is fitted, and what is in the tool bag: said as it truly is, whatever anybody believes. */

function asFitted({ step, bike }: Asked) {
  const known = step.kind === 'rig' ? step.known(bike.world.rig) : undefined;
  return known === undefined ? CANNOT : option(known);
}
/** What drives the front, next to the amplifier of the rear. */
function frontOf(rig: ValuedRig): 'same' | 'unit' | 'other' {
  const front = driverOf(rig, 'front-left');
  if (front === 'unit') return 'unit';
  return front === driverOf(rig, 'rear-left') ? 'same' : 'other';
}

const ofTheRearAmp = (asked: Asked) => (rearAmp(asked.bike) === null ? CANNOT : asFitted(asked));

export const BUILD: Says = {
  [unitKind.id]: asFitted,
  [deliveredWith.id]: asFitted,
  [rearRating.id]: asFitted,
  [rearDrive.id]: ({ bike }) => option(rearAmp(bike) === null ? 'unit' : 'amp'),
  [rearAmpTurnOn.id]: ofTheRearAmp,
  [rearAmpInput.id]: ofTheRearAmp,
  [rearInputs.id]: ofTheRearAmp,
  [frontDrive.id]: ({ bike }) => option(frontOf(bike.world.rig)),
  [rearPairPlace.id]: () => option('unit'),
  [toolsAtHand.id]: () => option('meter'),
  [metersDigit.id]: ({ observer }) => {
    const { acDigitV } = observer.meter;
    return option(acDigitV <= 0.001 ? '0.001' : acDigitV <= 0.01 ? '0.01' : '0.1');
  },
};
