import { ampDriving, withAmpKnown, withKnown } from '../../rig/rig.ts';
import { type RigStep, rigQuestion } from '../step.ts';
import { concernsAxle } from '../told/silent-side.ts';

/** What drives the front, asked by itself: of a speaker that is silent there. */
export const frontFed: RigStep<'unit' | 'amp'> = rigQuestion({
  place: 'fitted',
  id: 'front-fed',
  short: 'Front driven by',
  ask: 'What drives the front speakers: the head unit or an amplifier?',
  phone: 'Are the front speakers wired straight to the radio, or to an amplifier, a metal box with thick power leads?',
  how: ['Look behind the fairing, under the seat and in the cases. An amplifier has a fused lead from the battery.'],
  why: 'An amplifier adds one more plug, one more channel and one more lead on the way.',
  tool: 'none',
  minutes: 0.5,
  sensible: (f) => concernsAxle(f, 'front'),
  observes: [],
  options: { unit: 'The head unit', amp: 'An amplifier' },
  outcomes: { unit: 'the head unit', amp: 'an amplifier' },
  ifCannot: 'We ask about everything else first, and keep an amplifier in mind.',
  known: (rig) =>
    ampDriving(rig, 'front') ? 'amp' : (rig.frontFedBy ?? (rig.amps?.length === 0 ? 'unit' : undefined)),
  learn: (drive, rig) =>
    drive === 'unit'
      ? withKnown(rig, { frontFedBy: 'unit' })
      : withAmpKnown(withKnown(rig, { frontFedBy: 'amp' }), 'front', {}),
});
