import type { AmpValues } from '../../rig/fields.ts';
import { type KnownAmp, type Rig, withKnown, without } from '../../rig/rig.ts';
import { type RigStep, rigQuestion } from '../step.ts';

export type Drives = AmpValues['drives'];

/** What several amplifiers drive. Where one is left over, it drives what the last one does. */
const LAYOUTS = {
  'front-rear': ['front', 'rear'],
  'all-rear': ['both', 'rear'],
  'all-front': ['both', 'front'],
  rear: ['rear'],
  front: ['front'],
  all: ['both'],
} as const satisfies Record<string, readonly Drives[]>;

type Layout = keyof typeof LAYOUTS;

const layouts = Object.entries(LAYOUTS) as readonly (readonly [Layout, readonly Drives[]])[];

/** The pairs that an amplifier drives follow from what all of them drive, unless that leaves the rear open. */
function withPairsDriven(rig: Rig, drives: readonly Drives[]): Rig {
  const drivesPair = (pair: 'front' | 'rear') => drives.some((driven) => driven === pair || driven === 'both');
  const front = withKnown(rig, { frontFedBy: drivesPair('front') ? 'amp' : 'unit' });
  if (drivesPair('rear')) return withKnown(front, { rearFitted: 'yes', rearFedBy: 'amp' });
  return rig.rearFedBy === 'amp' ? without(front, 'rearFedBy') : front;
}

export const ampLayout: RigStep<Layout> = rigQuestion({
  place: 'plan',
  id: 'amp-layout',
  short: 'Amplifiers drive',
  ask: 'What do the amplifiers drive?',
  phone: 'More than one amplifier: which speakers does each of them drive?',
  how: ['Follow the output wires of each amplifier. Lids, saddlebags, top case, trunk and pods all count as rear.'],
  why: 'We ask about each amplifier by what it drives. One may need a different output from the other.',
  tool: 'none',
  minutes: 1,
  observes: [],
  options: {
    'front-rear': 'One the front, one the rear',
    'all-rear': 'One front and rear, another the rear',
    'all-front': 'One front and rear, another the front',
    rear: 'All of them the rear only',
    front: 'All of them the front only',
    all: 'Each of them front and rear',
  },
  outcomes: {
    'front-rear': 'front and rear apart',
    'all-rear': 'one for all four, one for the rear',
    'all-front': 'one for all four, one for the front',
    rear: 'the rear only',
    front: 'the front only',
    all: 'each front and rear',
  },
  ifCannot: 'Then answer for the fussiest one.',
  known: ({ amps = [] }) => {
    if (amps.length < 2 || amps.some(({ drives }) => drives === undefined)) return undefined;
    return layouts.find(([, driven]) => driven.every((pair) => amps.some(({ drives }) => drives === pair)))?.[0];
  },
  learn: (layout, rig) => {
    const { amps } = rig;
    if (!amps || amps.length < 2) return rig;
    const driven: readonly Drives[] = LAYOUTS[layout];
    const open = driven.filter((pair) => !amps.some(({ drives }) => drives === pair));
    const last = driven.at(-1) ?? 'both';
    const keepsItsPlace = (amp: KnownAmp) => amp.drives !== undefined && driven.includes(amp.drives);
    const toPlace = amps.filter((amp) => !keepsItsPlace(amp));
    const placed = amps.map((amp) =>
      keepsItsPlace(amp) ? amp : { ...amp, drives: open[toPlace.indexOf(amp)] ?? last },
    );
    return withPairsDriven({ ...rig, amps: placed }, driven);
  },
});
