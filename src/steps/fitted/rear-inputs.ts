import type { KnownAmp } from '../../rig/rig.ts';
import { type RigStep, rigQuestion } from '../step.ts';
import { concernsAxle } from '../told/silent-side.ts';
import { rearAmpMayBeThere } from './amp-there.ts';

/** The amplifiers of the list that drive the rear, or may, as far as anybody said. */
const mayDriveRear = (amp: KnownAmp) => amp.drives !== 'front';

export const rearInputs: RigStep<'own' | 'front'> = rigQuestion({
  place: 'fitted',
  id: 'rear-inputs',
  short: 'Rear inputs come from',
  ask: 'Where do the amplifier’s rear inputs get their signal?',
  phone:
    'The amplifier that drives the back: do its thin signal wires come from the radio’s rear outputs, or were they joined to the front ones?',
  how: [
    'An amplifier for front and rear with only two pairs of signal wires: the front pair.',
    'Fitted without touching the rear outputs of the head unit, or joined to the front wires: the front pair only.',
    'If the fader ever moved the sound from front to rear, they come from the rear outputs.',
  ],
  why: 'On a bike built with front speakers only, the rear outputs are switched off. An amplifier fed from the front pair does not care.',
  tool: 'none',
  minutes: 1,
  sensible: (f) => rearAmpMayBeThere(f) && concernsAxle(f, 'rear'),
  observes: [],
  givenUnder: ['rear-drive', 'amps-drive'],
  options: { own: 'The head unit’s rear outputs', front: 'The front pair only' },
  outcomes: { own: 'the rear outputs', front: 'the front pair only' },
  ifCannot: 'We assume the rear outputs, and the verdict says that this was not checked.',
  known: (rig) => rig.amps?.find((amp) => mayDriveRear(amp) && amp.fedFrom)?.fedFrom,
  learn: (fedFrom, rig) =>
    rig.amps ? { ...rig, amps: rig.amps.map((amp) => (mayDriveRear(amp) ? { ...amp, fedFrom } : amp)) } : rig,
});
