import type { AmpValues } from '../../rig/fields.ts';
import { type KnownAmp, type Rig, withKnown } from '../../rig/rig.ts';
import { type RigStep, rigQuestion } from '../step.ts';

/** What the amplifiers of a bike drive, by the name of the answer. */
const DRIVEN = {
  none: [],
  all: ['both'],
  rear: ['rear'],
  front: ['front'],
  each: ['front', 'rear'],
} as const satisfies Readonly<Record<string, readonly AmpValues['drives'][]>>;
type Driven = keyof typeof DRIVEN;

const isSame = (amps: readonly KnownAmp[], drives: readonly string[]): boolean =>
  amps.length === drives.length && drives.every((pair) => amps.some((amp) => amp.drives === pair));

export const ampsDrive: RigStep<Driven> = rigQuestion({
  place: 'fitted',
  id: 'amps-drive',
  short: 'What the amplifiers drive',
  ask: 'Is there an amplifier on the bike, and which speakers does it drive?',
  phone:
    'Is there an amplifier on the bike, a metal box with thick power leads? Does it drive front and back, only the back, only the front, or is there one for each? Or none at all?',
  how: [
    'Look under the seat, in the saddlebags, behind the fairing and in the trunk. An amplifier has a fused lead from the battery.',
    'Speakers in the trunk or top case count as rear.',
  ],
  why: 'One amplifier for everything can silence or spoil everything. One for the rear only cannot.',
  tool: 'none',
  minutes: 0.5,
  observes: [],
  options: {
    none: 'No amplifier',
    all: 'One for front and rear',
    rear: 'One for the rear only',
    front: 'One for the front only',
    each: 'One for the front and one for the rear',
  },
  outcomes: {
    none: 'no amplifier',
    all: 'one for front and rear',
    rear: 'one for the rear',
    front: 'one for the front',
    each: 'one for each',
  },
  ifCannot: 'We ask about everything else first, and keep an amplifier in mind. If one turns up, change this answer.',
  known: ({ amps }) => amps && (Object.keys(DRIVEN) as Driven[]).find((name) => isSame(amps, DRIVEN[name])),
  learn: (driven, rig) => {
    const drives: readonly AmpValues['drives'][] = DRIVEN[driven];
    const fedBy = (pair: 'front' | 'rear') => (drives.some((it) => it === pair || it === 'both') ? 'amp' : 'unit');
    const known: Rig = withKnown(rig, { frontFedBy: fedBy('front'), rearFedBy: fedBy('rear') });
    return {
      ...known,
      amps: drives.map((pair) => ({ ...rig.amps?.find((amp) => amp.drives === pair), drives: pair })),
    };
  },
});
