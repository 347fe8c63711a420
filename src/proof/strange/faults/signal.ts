import { CORNERS, type Corner, perCorner } from '../../../rig/corner.ts';
import { decades, driven, REAR, withAmp, withNoise, withUnitPlug } from '../../../world/faults/kit.ts';
import { OPEN, SOUND } from '../../../world/healthy.ts';
import type { Contact, World } from '../../../world/state.ts';
import { type StrangeFault, seenAs, withPast } from './strange-fault.ts';

/* Of the signal's way from the head unit into the amplifier. */

const rearByUnit = driven('rear', 'unit');
const rearByAmp = driven('rear', 'amp');
/** The rear's sound leaves the head unit at its rear pairs. */
const takesRearPairs = (world: World): boolean => {
  const { rig, amps, about } = world;
  if (rig.rearFitted !== 'yes') return false;
  return (
    rearByUnit(world) ||
    (about !== null && CORNERS.some((input) => REAR.includes(amps[about]?.inputs[input] as Corner)))
  );
};
const onLine = ({ amps, about }: World): boolean => about !== null && amps[about]?.level === 'line';

/** It touches while somebody presses it, and slips back: pushing the plug home is no cure. */
const UNLATCHED: Contact = { ...OPEN, movedOhm: SOUND.ohm, wants: 'pin' };
const NO_WIRE: Contact = { ...OPEN, wants: 'wire' };

/** Steps that listen for the hiss of an output stage. */
const FOR_A_HISS = ['rear-hiss', 'lid-check'];
/** A channel that is dead on the bike does not hiss. Where only its input stage is dead, the output stage does. */
const hissesAllTheSame = seenAs(FOR_A_HISS, (world) =>
  withAmp(world, ({ gainRatio }) => ({ deadChannels: [], gainRatio: { ...gainRatio, rear: 0 } })),
);

export const STRANGE_SIGNAL: readonly StrangeFault[] = [
  withPast(
    {
      id: 'unit-pins-unlatched',
      title: 'Pins of the rear pairs that do not latch in the head unit’s plug',
      severity: null,
      weights: { 'no-rear-sound': 4 },
      rightCauses: ['unit-plug-dirty', 'input-pin-pushed-back', 'adapter-without-rear'],
      fits: takesRearPairs,
      apply: (world) => withUnitPlug(world, REAR, { plus: UNLATCHED, minus: UNLATCHED }),
    },
    { before: { 'comes-and-goes': 5 }, lastChange: { unit: 4, workshop: 3 } },
  ),
  withPast(
    {
      id: 'unit-pins-unlatched',
      variant: 'one-pair',
      title: 'Pins of one rear pair that do not latch in the head unit’s plug',
      severity: null,
      weights: { 'one-speaker-or-side-dead': 3 },
      rightCauses: ['unit-plug-dirty', 'input-pin-pushed-back', 'adapter-without-rear'],
      fits: takesRearPairs,
      apply: (world) => withUnitPlug(world, ['rear-left'], { plus: UNLATCHED, minus: UNLATCHED }),
    },
    { before: { 'comes-and-goes': 5 }, lastChange: { unit: 4, workshop: 3 } },
  ),
  withPast(
    {
      id: 'leftover-adapter',
      title: 'An adapter of the previous owner left in the rear loom, one wire of each pair open',
      severity: null,
      weights: { 'no-rear-sound': 3 },
      rightCauses: ['adapter-without-rear', 'looms-unjoined'],
      fits: rearByUnit,
      apply: (world) => withUnitPlug(world, REAR, { plus: SOUND, minus: NO_WIRE }),
    },
    { before: { never: 5 }, lastChange: { unit: 3, fitted: 2 } },
  ),
  withPast(
    {
      id: 'line-screen-open',
      title: 'The screen of the line-level lead open at its plug',
      severity: decades('humV', 0.03, 0.2),
      weights: { 'whine-or-ticking': 3 },
      rightCauses: ['signal-lead-open'],
      fits: onLine,
      apply: (world, levelV) =>
        withNoise(
          withAmp(world, ({ inputPlug }) => ({
            inputPlug: perCorner((corner) => ({ ...inputPlug[corner], minus: NO_WIRE })),
          })),
          { kind: 'follows', enters: 'amp-input', levelV },
        ),
    },
    { lastChange: { workshop: 3 } },
  ),
  withPast(
    {
      id: 'amp-rear-inputs-dead',
      title: 'The input stage of the amplifier dead on its rear pair: it hisses, and plays nothing',
      severity: null,
      weights: { 'no-rear-sound': 3 },
      rightCauses: ['amp-channel-dead'],
      fits: rearByAmp,
      apply: (world) => withAmp(world, { deadChannels: REAR }),
      person: hissesAllTheSame,
    },
    { before: { never: 0.3 }, lastChange: { battery: 2 } },
  ),
];
