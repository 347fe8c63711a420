import type { ReadingStep } from '../step.ts';
import { type OfEach, ofEach } from '../subject.ts';
import { acReading } from '../tools/ac-volts.ts';
import { leftAndRight, type TwoSides } from '../tools/left-and-right.ts';
import { mayBeOnAmp } from './silent-on-amp.ts';

/** The left and right inputs of an axle where they enter its amplifier. */
export const inputSides: OfEach<ReadingStep<TwoSides>, 'rear', 'front'> = ofEach(['rear', 'front'], (axle) =>
  leftAndRight({
    place: 'amplifier',
    id: 'input-sides',
    short: `${axle === 'rear' ? 'Rear' : 'Front'} left and right into the amplifier`,
    ask: `Does the signal arrive at the amplifier’s ${axle} left and right inputs alike?`,
    phone: `Stop the tone: one thin ${axle} pair where it enters the amplifier, wire to wire, number? Tone on again, one step for both: left, right, never to metal. Numbers?`,
    where: 'at the amplifier’s inputs, plug fitted',
    reading: acReading,
    why: 'What leaves the head unit alike and arrives on one side only is lost in a plug, a pin or a lead between.',
    minutes: 6,
    conditions: ['controls-flat', 'amp-uncovered', 'amp-outputs-off', 'tone-400', 'meter-on-ac'],
    sensible: (f) => mayBeOnAmp(f, axle),
    observes: ['settings', 'unit', 'unit-leads'],
    probes: { red: 'amp-in-plus', black: 'amp-in-minus' },
    givenUnder: ['meter-digit'],
    ifCannot: 'We change the two signal plugs over by ear instead.',
  }),
);
