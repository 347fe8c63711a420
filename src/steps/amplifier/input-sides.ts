import type { ReadingStep } from '../step.ts';
import { type OfEach, ofEach } from '../subject.ts';
import { wholeAtTheStand } from '../told/comes-and-goes.ts';
import { acReading } from '../tools/ac-volts.ts';
import { leftAndRight, type TwoSides } from '../tools/left-and-right.ts';
import { mayBeOnAmp } from './silent-on-amp.ts';

/** The left and right inputs of an axle where they enter its amplifier. */
export const inputSides: OfEach<ReadingStep<TwoSides>, 'rear', 'front'> = ofEach(['rear', 'front'], (axle) =>
  leftAndRight({
    place: 'amplifier',
    id: 'input-sides',
    short: `${axle === 'rear' ? 'Rear' : 'Front'} left and right into the amplifier`,
    ask: `Is the signal the same at the amplifier’s ${axle} left and right inputs?`,
    phone: `Stop the tone: one thin ${axle} pair where it goes into the amplifier, wire to wire, what number? Tone on again, same volume for both: left, then right, never to metal. What numbers?`,
    where: 'at the amplifier’s inputs, plug fitted',
    reading: acReading,
    why: 'A signal that leaves the head unit on both sides but arrives on one is lost in a plug, a pin or a lead in between.',
    minutes: 6,
    conditions: ['controls-flat', 'amp-uncovered', 'amp-outputs-off', 'tone-400', 'meter-on-ac'],
    sensible: (f) => mayBeOnAmp(f, axle) && !wholeAtTheStand(f),
    observes: ['settings', 'unit', 'unit-leads'],
    probes: { red: 'amp-in-plus', black: 'amp-in-minus' },
    givenUnder: ['meter-digit'],
    ifCannot: 'Without it we swap the two signal plugs and listen.',
  }),
);
