import type { ReadingStep } from '../step.ts';
import { type OfEach, ofEach } from '../subject.ts';
import { wholeAtTheStand } from '../told/comes-and-goes.ts';
import { leftAndRight, type TwoSides } from '../tools/left-and-right.ts';
import { mayBeOnAmp } from './silent-on-amp.ts';

const ampReading = (label: string, optional = false) => ({
  label,
  unit: 'V' as const,
  optional,
  possible: [0, 120] as const,
  impossible: 'No amplifier on a 12 V bike gives that. Is the meter on AC volts, and on the right range?',
});

/** The left and right outputs of an axle at its amplifier. */
export const outputSides: OfEach<ReadingStep<TwoSides>, 'rear', 'front'> = ofEach(['rear', 'front'], (axle) =>
  leftAndRight({
    place: 'amplifier',
    id: 'output-sides',
    short: `${axle === 'rear' ? 'Rear' : 'Front'} left and right out of the amplifier`,
    ask: `Do the amplifier’s ${axle} left and right outputs read the same?`,
    phone: `Stop the tone: one thick ${axle} pair, screw to screw, what number? Tone on again, same volume for both: left, then right, never to metal. What numbers?`,
    where: 'at the amplifier’s output screws',
    reading: ampReading,
    why: 'Good input, nothing at the output: that channel is dead.',
    minutes: 6,
    conditions: ['controls-flat', 'amp-uncovered', 'amp-outputs-off', 'tone-400', 'meter-on-ac'],
    sensible: (f) => mayBeOnAmp(f, axle) && !wholeAtTheStand(f),
    observes: ['settings', 'unit', 'unit-leads', 'amp'],
    probes: { red: 'amp-out-plus', black: 'amp-out-minus' },
    givenUnder: ['meter-digit'],
    ifCannot: 'Without it we swap the two speaker plugs and listen.',
  }),
);
