import { ampDriving, type Rig, withAmpKnown, withKnown } from '../../rig/rig.ts';
import { type RigStep, rigQuestion } from '../step.ts';
import { concernsAxle } from '../told/silent-side.ts';

/** Says that an amplifier drives the rear. One of which nothing more is known has a place in the list, too. */
const onAmplifier = (rig: Rig): Rig => withAmpKnown(withKnown(rig, { rearFedBy: 'amp' }), 'rear', {});

const knownRearDrive = (rig: Rig) =>
  ampDriving(rig, 'rear') ? 'amp' : (rig.rearFedBy ?? (rig.amps?.length === 0 ? 'unit' : undefined));

export const rearDrive: RigStep<'unit' | 'amp'> = rigQuestion({
  place: 'fitted',
  id: 'rear-drive',
  short: 'Rear driven by',
  ask: 'What drives the rear speakers: the head unit or an amplifier?',
  phone: 'Is there an amplifier on the bike, a metal box with thick power leads, and does it drive the rear speakers?',
  how: [
    'Look under the seat, in the saddlebags, behind the fairing and in the trunk. An amplifier has a fused lead from the battery.',
  ],
  why: 'An amplifier makes the path to the rear speakers half as long again, and changes every healthy reading after it.',
  tool: 'none',
  minutes: 0.5,
  sensible: (f) => concernsAxle(f, 'rear'),
  observes: [],
  options: { unit: 'The head unit, no amplifier', amp: 'An amplifier' },
  outcomes: { unit: 'the head unit', amp: 'an amplifier' },
  ifCannot: 'We ask about everything else first, and keep an amplifier in mind. If one turns up, change this answer.',
  known: knownRearDrive,
  learn: (drive, rig) => (drive === 'amp' ? onAmplifier(rig) : withKnown(rig, { rearFedBy: 'unit' })),
  complete: (rig) => (knownRearDrive(rig) === 'amp' ? onAmplifier(rig) : rig),
});
