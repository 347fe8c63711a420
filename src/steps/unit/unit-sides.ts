import type { ReadingStep } from '../step.ts';
import { type OfEach, ofEach } from '../subject.ts';
import { wholeAtTheStand } from '../told/comes-and-goes.ts';
import { concernsAxle } from '../told/silent-side.ts';
import { acReading } from '../tools/ac-volts.ts';
import { leftAndRight, type TwoSides } from '../tools/left-and-right.ts';

/** The left and right pair of an axle where they leave the head unit. */
export const unitSides: OfEach<ReadingStep<TwoSides>, 'rear', 'front'> = ofEach(['rear', 'front'], (axle) =>
  leftAndRight({
    place: 'unit',
    id: 'unit-sides',
    short: `${axle === 'rear' ? 'Rear' : 'Front'} left and right at the head unit`,
    ask: `What AC voltage is across the ${axle} left and right pairs at the head unit?`,
    phone: `Stop the tone: one ${axle} pair at the radio’s own plug, wire to wire, never to metal: what number? Tone on again, same volume for both: ${axle} left, ${axle} right. What numbers?`,
    where: 'at the head unit’s own plug',
    reading: acReading,
    why: 'One pair dead and the other fine: a head unit output. Both the same: the sound is lost further on.',
    minutes: 8,
    conditions: [
      'controls-flat',
      'amp-outputs-off',
      ...(axle === 'rear' ? (['rear-off-unit'] as const) : []),
      'panel-off',
      'tone-400',
      'meter-on-ac',
    ],
    sensible: (f) => concernsAxle(f, axle) && !wholeAtTheStand(f),
    observes: ['settings', 'unit'],
    probes:
      axle === 'rear'
        ? { red: 'unit-rear-plus', black: 'unit-rear-minus' }
        : { red: 'unit-front-plus', black: 'unit-front-minus' },
    givenUnder: ['meter-digit'],
    ifCannot: 'We carry on with what can be reached.',
  }),
);
