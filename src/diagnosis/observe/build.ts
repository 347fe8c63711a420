import { deliveredWith, rearAmpInput, rearAmpTurnOn, rearDrive, rearRating, unitKind } from '../../steps/build.ts';
import { metersDigit, toolsAtHand } from '../../steps/meter.ts';
import { rearAmp } from './bike.ts';
import { type Asked, CANNOT, option, type Says } from './observer.ts';

/* What is fitted, and what is in the tool bag: said as it truly is, whatever anybody believes. */

function asFitted({ step, bike }: Asked) {
  const known = step.kind === 'rig' ? step.known(bike.world.rig) : undefined;
  return known === undefined ? CANNOT : option(known);
}
const ofTheRearAmp = (asked: Asked) => (rearAmp(asked.bike) === null ? CANNOT : asFitted(asked));

export const BUILD: Says = {
  [unitKind.id]: asFitted,
  [deliveredWith.id]: asFitted,
  [rearRating.id]: asFitted,
  [rearDrive.id]: ({ bike }) => option(rearAmp(bike) === null ? 'unit' : 'amp'),
  [rearAmpTurnOn.id]: ofTheRearAmp,
  [rearAmpInput.id]: ofTheRearAmp,
  [toolsAtHand.id]: () => option('meter'),
  [metersDigit.id]: ({ observer }) => {
    const { acDigitV } = observer.meter;
    return option(acDigitV <= 0.001 ? '0.001' : acDigitV <= 0.01 ? '0.01' : '0.1');
  },
};
