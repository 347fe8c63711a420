import { ampDriving, type Rig, withAmpKnown, withKnown } from '../../rig/rig.ts';
import { type RigStep, rigQuestion } from '../step.ts';
import { rearAmpMayBeThere } from './amp-there.ts';

/** Says what drives the front, as far as the list of amplifiers or the answer to another question tells. */
function knownFrontDrive(rig: Rig): 'same' | 'unit' | 'other' | undefined {
  if (rig.frontFedBy === 'unit') return 'unit';
  if (ampDriving(rig, 'rear')?.drives === 'both') return 'same';
  return rig.amps?.some((amp) => amp.drives === 'front') ? 'other' : undefined;
}

/** What else hangs on the amplifier of the rear: one that makes the front play has power, ground and turn-on. */
export const frontDrive: RigStep<'same' | 'unit' | 'other'> = rigQuestion({
  place: 'fitted',
  id: 'front-drive',
  short: 'Front driven by',
  ask: 'Does the same amplifier drive the front speakers?',
  phone:
    'The front speakers, the ones that play: are they on that same amplifier, on another one, or straight on the radio?',
  how: [
    'Follow the thick speaker wires from the amplifier: two pairs for the rear only, four pairs for front and rear.',
  ],
  why: 'An amplifier that drives the front has power and is switched on. Then only its rear half can be at fault.',
  tool: 'none',
  minutes: 0.5,
  sensible: rearAmpMayBeThere,
  observes: [],
  givenUnder: ['rear-drive', 'amps-drive'],
  options: { same: 'Yes, front and rear', unit: 'No, the head unit drives the front', other: 'No, another amplifier' },
  outcomes: { same: 'the same amplifier', unit: 'the head unit', other: 'another amplifier' },
  ifCannot: 'We look at its light.',
  known: knownFrontDrive,
  learn: (drive, rig) =>
    drive === 'same'
      ? withAmpKnown(withKnown(rig, { frontFedBy: 'amp' }), 'rear', { drives: 'both' })
      : withKnown(rig, { frontFedBy: drive === 'unit' ? 'unit' : 'amp' }),
});
