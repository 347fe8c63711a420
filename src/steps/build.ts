import { ampDriving, type KnownAmp, type Rig, withAmpKnown, withKnown } from '../rig/rig.ts';
import { rigQuestion } from './step.ts';

/** Questions about what is fitted. "My bike" answers them when it knows. */

export const unitKind = rigQuestion<'factory' | 'replaced'>({
  id: 'unit-kind',
  short: 'Head unit',
  ask: 'Is the head unit the one the bike was built with?',
  phone: 'Is the radio in the dash the one the bike came with, or has somebody fitted another one?',
  how: [
    'Look at the start screen and at the frame around it. A replaced unit often has its own maker’s mark and a fitted surround.',
  ],
  why: 'Only a factory head unit has stored output profiles. A replaced one has its own menu, so no reflash exists for it.',
  tool: 'none',
  minutes: 0.3,
  observes: [],
  options: { factory: 'Yes, the factory one', replaced: 'No, it was replaced' },
  outcomes: { factory: 'factory', replaced: 'replaced' },
  ifCannot: 'Not sure? Go on, and send a photo of its screen to somebody who knows.',
  article: 'what-a-reflash-is',
  known: (rig) => rig.unitKind,
  learn: (unit, rig) => withKnown(rig, { unitKind: unit }),
});

/** Says that an amplifier drives the rear. One of which nothing more is known has a place in the list, too. */
const onAmplifier = (rig: Rig): Rig => withAmpKnown(withKnown(rig, { rearFedBy: 'amp' }), 'rear', {});
const knownRearDrive = (rig: Rig) =>
  ampDriving(rig, 'rear') ? 'amp' : (rig.rearFedBy ?? (rig.amps?.length === 0 ? 'unit' : undefined));

export const rearDrive = rigQuestion<'unit' | 'amp'>({
  id: 'rear-drive',
  short: 'Rear driven by',
  ask: 'What drives the rear speakers: the head unit or an amplifier?',
  phone: 'Is there an amplifier on the bike, a metal box with thick power leads, and do the rear speakers hang on it?',
  how: [
    'Look under the seat, in the saddlebags, behind the fairing and in the trunk. An amplifier has a fused lead from the battery.',
  ],
  why: 'The way to the rear speaker is one half longer with an amplifier, and every healthy reading after it is another one.',
  tool: 'none',
  minutes: 0.5,
  observes: [],
  options: { unit: 'The head unit, no amplifier', amp: 'An amplifier' },
  outcomes: { unit: 'the head unit', amp: 'an amplifier' },
  ifCannot: 'We go on as if there were none. If one turns up, change this answer.',
  known: knownRearDrive,
  learn: (drive, rig) => (drive === 'amp' ? onAmplifier(rig) : withKnown(rig, { rearFedBy: 'unit' })),
  complete: (rig) => (knownRearDrive(rig) === 'amp' ? onAmplifier(rig) : rig),
});

export const rearAmpTurnOn = rigQuestion<'wire' | 'signal' | 'dc'>({
  id: 'rear-amp-turn-on',
  short: 'Amplifier switched by',
  ask: 'How is the amplifier switched on?',
  phone: 'Is there a thin wire on the amplifier marked remote, or does it wake by itself when it hears music?',
  how: [
    'A remote wire sits on a small terminal beside the thick ones.',
    'No such wire: the amplifier listens to its inputs. Its papers say whether for a signal or for DC.',
  ],
  why: 'An amplifier that listens stays off when the rear outputs of the head unit are silent. One with a wire does not care.',
  tool: 'none',
  minutes: 1,
  observes: [],
  options: { wire: 'By a remote wire', signal: 'By hearing a signal', dc: 'By sensing DC on its inputs' },
  outcomes: { wire: 'a remote wire', signal: 'hearing a signal', dc: 'sensing DC' },
  ifCannot: 'We take it as one that listens until a reading says otherwise.',
  article: 'amplifiers-that-listen',
  known: (rig) => ampDriving(rig, 'rear')?.turnOn,
  learn: (turnOn, rig) => withAmpKnown(rig, 'rear', { turnOn }),
});

export const rearAmpInput = rigQuestion<'speaker' | 'line'>({
  id: 'rear-amp-input',
  short: 'Signal into the amplifier',
  ask: 'What feeds the amplifier: the head unit’s speaker wires, or a line-level lead?',
  phone:
    'Do the thin wires into the amplifier come from speaker wires, or is there a small round plug on a shielded lead?',
  how: [
    'Speaker wires: two plain wires a channel, into a plug or screws.',
    'Line level: a round plug on a shielded lead, from a converter or a line output.',
  ],
  why: 'The amplifier’s range must fit what comes in, and only speaker wires carry half the supply as DC.',
  tool: 'none',
  minutes: 0.5,
  observes: [],
  options: { speaker: 'Speaker wires', line: 'A line-level lead' },
  outcomes: { speaker: 'speaker wires', line: 'a line-level lead' },
  known: (rig) => ampDriving(rig, 'rear')?.input,
  learn: (input, rig) => withAmpKnown(rig, 'rear', { input }),
});

/** Says what drives the front, as far as the list of amplifiers or the answer to another question tells. */
function knownFrontDrive(rig: Rig): 'same' | 'unit' | 'other' | undefined {
  if (rig.frontFedBy === 'unit') return 'unit';
  if (ampDriving(rig, 'rear')?.drives === 'both') return 'same';
  return rig.amps?.some((amp) => amp.drives === 'front') ? 'other' : undefined;
}

/** What else hangs on the amplifier of the rear: one that makes the front play has power, ground and turn-on. */
export const frontDrive = rigQuestion<'same' | 'unit' | 'other'>({
  id: 'front-drive',
  short: 'Front driven by',
  ask: 'Do the front speakers hang on the same amplifier?',
  phone: 'The front speakers, the ones that play: are they on that same amplifier, or straight on the radio?',
  how: [
    'Follow the thick speaker wires from the amplifier: two pairs for the rear only, four pairs for front and rear.',
  ],
  why: 'An amplifier that makes the front play has power and is switched on. Then only its rear half can be at fault.',
  tool: 'none',
  minutes: 0.5,
  observes: [],
  options: { same: 'Yes, front and rear', unit: 'No, the head unit drives the front', other: 'No, another amplifier' },
  outcomes: { same: 'the same amplifier', unit: 'the head unit', other: 'another amplifier' },
  ifCannot: 'We look at its lamp.',
  known: knownFrontDrive,
  learn: (drive, rig) =>
    drive === 'same'
      ? withAmpKnown(withKnown(rig, { frontFedBy: 'amp' }), 'rear', { drives: 'both' })
      : withKnown(rig, { frontFedBy: drive === 'unit' ? 'unit' : 'amp' }),
});

/** The amplifiers of the list that drive the rear, or may, as far as anybody said. */
const mayDriveRear = (amp: KnownAmp) => amp.drives !== 'front';

export const rearInputs = rigQuestion<'own' | 'front'>({
  id: 'rear-inputs',
  short: 'Rear inputs come from',
  ask: 'Where do the rear inputs of the amplifier get their signal from?',
  phone:
    'The amplifier that drives the back: do its thin signal wires come from the radio’s rear outputs, or were they joined to the front ones?',
  how: [
    'An amplifier for front and rear with two pairs of signal wires only: the front pair.',
    'Fitted without touching the rear outputs of the head unit, or joined to the front wires: the front pair only.',
    'If the fader ever moved the sound from front to rear, they come from the rear outputs.',
  ],
  why: 'On a bike built with front speakers only, the rear outputs are switched off. An amplifier fed from the front pair does not care.',
  tool: 'none',
  minutes: 1,
  observes: [],
  options: { own: 'The head unit’s rear outputs', front: 'The front pair only' },
  outcomes: { own: 'the rear outputs', front: 'the front pair only' },
  ifCannot: 'We take the rear outputs, and the verdict says that this was not checked.',
  known: (rig) => rig.amps?.find((amp) => mayDriveRear(amp) && amp.fedFrom)?.fedFrom,
  learn: (fedFrom, rig) =>
    rig.amps ? { ...rig, amps: rig.amps.map((amp) => (mayDriveRear(amp) ? { ...amp, fedFrom } : amp)) } : rig,
});

export const deliveredWith = rigQuestion<'two' | 'four'>({
  id: 'delivered-with',
  short: 'Built with',
  ask: 'Did this bike leave the factory with rear speakers?',
  phone: 'When the bike was new, did it already have speakers in the back, or only in the front?',
  how: ['Think of the brochure, or ask for the model’s equipment list. Lids with speakers are often added later.'],
  why: 'A bike built with front speakers only is delivered with its rear channels switched off. Nothing is broken then: nobody has switched them on.',
  tool: 'none',
  minutes: 0.3,
  observes: [],
  options: { two: 'No, front only', four: 'Yes, front and rear' },
  outcomes: { two: 'front speakers only', four: 'front and rear speakers' },
  known: (rig) => rig.deliveredWith,
  learn: (speakers, rig) => withKnown(rig, { deliveredWith: speakers }),
});

export const rearRating = rigQuestion<'2' | '4' | '8'>({
  id: 'rear-rating',
  short: 'Rear speaker, rated',
  ask: 'How many ohms is one rear speaker rated at?',
  phone: 'What is printed on the rear speaker, or on its box: 2 ohm, 4 ohm or 8 ohm?',
  how: ['Look at the magnet, the box or the papers. Not sure: go on without. The healthy band gets wider.'],
  why: 'A healthy coil shows 0.7 to 0.95 of its rated ohms on a meter.',
  tool: 'none',
  minutes: 0.5,
  observes: [],
  options: { '2': '2 Ω', '4': '4 Ω', '8': '8 Ω' },
  outcomes: { '2': '2 Ω', '4': '4 Ω', '8': '8 Ω' },
  ifCannot: 'We take 2 to 4 Ω, and the healthy band gets wider.',
  article: 'read-a-coil-in-ohms',
  known: (rig) =>
    rig.rearRatedOhm === undefined ? undefined : rig.rearRatedOhm < 3 ? '2' : rig.rearRatedOhm < 6 ? '4' : '8',
  learn: (ohms, rig) => withKnown(rig, { rearRatedOhm: Number(ohms) }),
});
