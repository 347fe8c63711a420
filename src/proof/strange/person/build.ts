import type { AmpValues } from '../../../rig/fields.ts';
import type { Rig } from '../../../rig/rig.ts';
import { hasAmp, hasRear, isFactory } from '../../../world/faults/kit.ts';
import type { Oddity } from '../oddity.ts';
import { saying, swapped } from './saying.ts';

/* The build told wrong, and put down wrong. It is told so every time. */

const OTHER_TURN_ON = { wire: 'signal', signal: 'wire', dc: 'signal' } as const;
const OTHER_INPUT = { speaker: 'line', line: 'speaker' } as const;
const OTHER_UNIT = { factory: 'replaced', replaced: 'factory' } as const;

const OTHER_ORIGIN = { two: 'four', four: 'two' } as const;
const OTHER_RATING = { '2': '4', '4': '8', '8': '4' } as const;
const ratingOf = (ohm: number) => (ohm < 3 ? '2' : ohm < 6 ? '4' : '8');

const onAmps = ({ amps, ...rig }: Rig, change: (amp: Partial<AmpValues>) => Partial<AmpValues>): Rig =>
  amps ? { ...rig, amps: amps.map((amp) => ({ ...amp, ...change(amp) })) } : rig;

export const BUILD: readonly Oddity[] = [
  {
    id: 'turn-on-told-wrong',
    says: 'a wrong kind of turn-on told of the amplifier',
    class: 'build',
    fits: hasAmp,
    person: saying(swapped({ 'rear-amp-turn-on': OTHER_TURN_ON, 'front-amp-turn-on': OTHER_TURN_ON })),
    believed: (rig) => onAmps(rig, ({ turnOn }) => (turnOn ? { turnOn: OTHER_TURN_ON[turnOn] } : {})),
  },
  {
    id: 'unit-told-wrong',
    says: 'a replaced head unit taken for the factory one, or the other way round',
    class: 'build',
    fits: () => true,
    person: saying(swapped({ 'unit-kind': OTHER_UNIT })),
    believed: (rig) => (rig.unitKind ? { ...rig, unitKind: OTHER_UNIT[rig.unitKind] } : rig),
  },
  {
    id: 'input-told-wrong',
    says: 'speaker wires into the amplifier taken for a line-level lead, or the other way round',
    class: 'build',
    fits: hasAmp,
    person: saying(swapped({ 'rear-amp-input': OTHER_INPUT, 'front-amp-input': OTHER_INPUT })),
    believed: (rig) => onAmps(rig, ({ input }) => (input ? { input: OTHER_INPUT[input] } : {})),
  },
  {
    id: 'origin-told-wrong',
    says: 'rear speakers taken for those of the factory, or the other way round',
    class: 'build',
    fits: isFactory,
    person: saying(swapped({ 'delivered-with': OTHER_ORIGIN })),
    believed: (rig) => (rig.deliveredWith ? { ...rig, deliveredWith: OTHER_ORIGIN[rig.deliveredWith] } : rig),
  },
  {
    id: 'rating-told-wrong',
    says: 'rear speakers taken for ones of twice the ohms, or half of them',
    class: 'build',
    fits: hasRear,
    person: saying(swapped({ 'rear-rating': OTHER_RATING })),
    believed: (rig) =>
      rig.rearRatedOhm ? { ...rig, rearRatedOhm: Number(OTHER_RATING[ratingOf(rig.rearRatedOhm)]) } : rig,
  },
];
