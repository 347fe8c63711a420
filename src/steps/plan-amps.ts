import type { AmpValues } from '../rig/fields.ts';
import { type KnownAmp, type Rig, withKnown, without } from '../rig/rig.ts';
import { choice, rigQuestion } from './step.ts';

/** Questions about the amplifiers of a planned build. Several are told apart by what they drive. */

const COUNTS = { '0': 0, '1': 1, '2': 2, '3': 3 } as const;
type Count = keyof typeof COUNTS;

export const ampCount = rigQuestion<Count>({
  id: 'amp-count',
  short: 'Amplifiers',
  ask: 'How many amplifiers will there be when it is finished?',
  phone: 'When everything is done, how many amplifiers are on the bike? Count the one the factory fitted, too.',
  how: [
    'Look under the seat, in the saddlebags, in the lids, behind the fairing and in the trunk.',
    'Every amplifier has a lead with a fuse from the battery. Count those leads.',
  ],
  why: 'An amplified profile only makes sense in front of an amplifier. With several, the one that is hardest to please decides.',
  tool: 'none',
  minutes: 1,
  observes: [],
  options: { '0': 'None', '1': 'One', '2': 'Two', '3': 'Three or more' },
  outcomes: { '0': 'none', '1': 'one', '2': 'two', '3': 'three or more' },
  ifCannot: 'We ask what drives each pair instead.',
  known: (rig) => (rig.amps ? (String(Math.min(3, rig.amps.length)) as Count) : undefined),
  learn: (option, rig) => {
    const listed = rig.amps ?? [];
    const count = option === '3' ? Math.max(3, listed.length) : COUNTS[option];
    return { ...rig, amps: Array.from({ length: count }, (_, i) => listed[i] ?? {}) };
  },
});

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

export const ampLayout = rigQuestion<Layout>({
  id: 'amp-layout',
  short: 'Amplifiers drive',
  ask: 'What do the amplifiers drive?',
  phone: 'More than one amplifier: which speakers hang on which of them?',
  how: ['Follow the output wires of each amplifier. Lids, saddlebags, top case, trunk and pods all count as rear.'],
  why: 'Each amplifier is asked about by what it drives. One may need another output than the other.',
  tool: 'none',
  minutes: 1,
  observes: [],
  options: {
    'front-rear': 'One the front, one the rear',
    'all-rear': 'One front and rear, one more the rear',
    'all-front': 'One front and rear, one more the front',
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
  ifCannot: 'Then answer for the one that is hardest to please.',
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

/** Amplifiers that are asked about together: a single one, or all that drive the same speakers. */
export const AMP_GROUPS = {
  only: { id: 'amp', name: 'Amplifier', the: 'The amplifier' },
  both: { id: 'amp-all', name: 'Amplifier for all four', the: 'The amplifier for all four' },
  front: { id: 'amp-front', name: 'Front amplifier', the: 'The front amplifier' },
  rear: { id: 'amp-rear', name: 'Rear amplifier', the: 'The rear amplifier' },
} as const;
export type AmpGroup = keyof typeof AMP_GROUPS;

const isIn = (group: AmpGroup) => (amp: KnownAmp) => group === 'only' || amp.drives === group;
const withGroup = (rig: Rig, group: AmpGroup, learnt: KnownAmp): Rig =>
  rig.amps ? { ...rig, amps: rig.amps.map((amp) => (isIn(group)(amp) ? { ...amp, ...learnt } : amp)) } : rig;

/** What the amplifiers of a group have in common, or the value that is hardest to please. Unknown while one is. */
function hardest<K extends keyof AmpValues>(rig: Rig, group: AmpGroup, field: K, order: readonly AmpValues[K][]) {
  const values = (rig.amps ?? []).filter(isIn(group)).map((amp) => amp[field]);
  return values.some((value) => value === undefined) ? undefined : order.find((value) => values.includes(value));
}

export function ampKindStep(group: AmpGroup) {
  const { id, name, the } = AMP_GROUPS[group];
  return rigQuestion<'add-on' | 'factory'>({
    id: `${id}-kind`,
    short: name,
    ask: `${the}: is it the bike maker’s own, or one added later?`,
    phone: `${the}: did it come from the bike’s maker, with its own plug into the bike’s wiring, or did somebody add it?`,
    how: [
      'A factory amplifier hangs on the data bus of the bike and has the bike maker’s part number.',
      'Several of them? One that was added later decides.',
    ],
    why: 'A dealer’s tool selects an amplified profile only if a factory amplifier answers on the data bus.',
    tool: 'none',
    minutes: 0.5,
    observes: [],
    cautions: ['data'],
    options: { 'add-on': 'Added later', factory: 'The bike maker’s own' },
    outcomes: { 'add-on': 'added later', factory: 'factory amplifier' },
    ifCannot: 'Then we name the tool that can do it in any case.',
    known: (rig) => hardest(rig, group, 'kind', ['add-on', 'factory']),
    learn: (kind, rig) => withGroup(rig, group, { kind }),
  });
}

export function ampTurnOnStep(group: AmpGroup) {
  const { id, name, the } = AMP_GROUPS[group];
  return rigQuestion<'wire' | 'signal' | 'dc'>({
    id: `${id}-turn-on`,
    short: `${name} switched by`,
    ask: `${the}: what switches it on?`,
    phone: `${the}: is there a thin wire on it marked remote, or does it wake by itself when it hears music?`,
    how: [
      'A remote wire sits on a small terminal beside the thick ones, and carries 12 V while the head unit is on.',
      'No such wire: it listens to its inputs. Its papers say whether for a signal or for DC.',
      'Several of them? One that listens decides.',
    ],
    why: 'An amplifier with a wire wakes at any level. One that listens can stay asleep when the level goes down.',
    tool: 'none',
    minutes: 1,
    observes: [],
    options: { wire: 'A remote wire', signal: 'Hearing a signal', dc: 'Sensing DC on its inputs' },
    outcomes: { wire: 'a remote wire', signal: 'hearing a signal', dc: 'sensing DC' },
    article: 'amplifiers-that-listen',
    known: (rig) => hardest(rig, group, 'turnOn', ['dc', 'signal', 'wire']),
    learn: (turnOn, rig) => withGroup(rig, group, { turnOn }),
  });
}

/** Only one that senses DC is asked this: it never wakes on a lead that carries none. */
export function ampSignalStep(group: AmpGroup) {
  const { id, name, the } = AMP_GROUPS[group];
  return rigQuestion<'speaker' | 'line'>({
    id: `${id}-signal`,
    short: `${name} fed by`,
    ask: `${the}: do plain speaker wires go into it, or a line-level lead?`,
    phone: `${the}: do two plain wires a channel go into it, or a shielded lead with a round plug?`,
    how: [
      'Speaker wires: two plain wires a channel, from the head unit’s plug.',
      'Line level: a round plug on a shielded lead, from a converter, a transformer or a line output.',
    ],
    why: 'Only the head unit’s speaker wires carry the DC that it waits for.',
    tool: 'none',
    minutes: 1,
    observes: [],
    options: { speaker: 'Speaker wires', line: 'A line-level lead' },
    outcomes: { speaker: 'speaker wires', line: 'a line-level lead' },
    article: 'half-the-supply-on-a-speaker-wire',
    known: (rig) => hardest(rig, group, 'input', ['line', 'speaker']),
    learn: (input, rig) => withGroup(rig, group, { input }),
  });
}

export function ampNeedsStep(group: AmpGroup) {
  const { id, name, the } = AMP_GROUPS[group];
  return rigQuestion<'any' | 'unaltered'>({
    id: `${id}-needs`,
    short: `${name} made for`,
    ask: `${the}: is it made for the head unit’s unaltered output only?`,
    phone: `${the}: do its papers say that the head unit must stay as delivered, or that it must not be reflashed?`,
    how: [
      'Look in its papers for “no reflash”, “factory output” or “corrects the factory sound”. A remote wire does not answer it.',
      'Any source: its papers name no head unit, or it has been heard to play well with an amplified profile.',
      'Several of them? Answer for the one that is hardest to please.',
    ],
    why: 'Some amplifiers are made for the full output and take its bass boost out themselves. A lowered output leaves them asleep or too quiet.',
    tool: 'papers',
    minutes: 3,
    observes: [],
    options: { any: 'No, it takes any source', unaltered: 'Yes, the unaltered output only' },
    outcomes: { any: 'any source', unaltered: 'the unaltered output only' },
    ifCannot:
      'One that listens then counts as made for the unaltered output, one with a remote wire as taking any source.',
    article: 'amplifiers-that-listen',
    known: (rig) => hardest(rig, group, 'needs', ['unaltered', 'any']),
    learn: (needs, rig) => withGroup(rig, group, { needs }),
  });
}

export const factoryAmpAnswers = choice<'yes' | 'no'>({
  id: 'factory-amp-answers',
  short: 'Factory amplifier answers',
  ask: 'Does the factory amplifier answer on the data bus?',
  phone: 'The bike maker’s amplifier: does the dealer’s tool find it, or has it been playing all along?',
  how: ['Ask whoever has the tool whether it lists the amplifier. One that plays as it always did answers.'],
  why: 'As long as it does not answer, a dealer’s tool selects no amplified profile. Then the amplifier comes first.',
  tool: 'none',
  minutes: 0.5,
  observes: ['amp', 'amp-supply'],
  cautions: ['data'],
  options: { yes: 'Yes, or it plays as always', no: 'No, the tool does not find it' },
  outcomes: { yes: 'answers', no: 'does not answer' },
  ifCannot: 'Not fitted yet, or not tried: have it looked at before you pay.',
});

export const hiddenAmp = choice<'no' | 'yes'>({
  id: 'hidden-amp',
  short: 'Hidden amplifier',
  ask: 'Is there a fused lead at the battery, or a box with a lit lamp, that nobody explained?',
  phone:
    'Look once more before anything is changed: any thick lead with its own fuse at the battery, or a box with a little lamp?',
  how: [
    'Music on. Look under the seat, in the saddlebags, in the lids, behind the fairing and in the trunk.',
    'A box that is warm after ten minutes of music is an amplifier, too.',
  ],
  why: 'An amplified profile is stored, and somebody had a reason. Going back would send the full bass into an amplifier that nobody counted.',
  tool: 'none',
  minutes: 3,
  observes: [],
  cautions: ['hot'],
  options: { no: 'No, nothing', yes: 'Yes' },
  outcomes: { no: 'nothing found', yes: 'found' },
  givenUnder: ['amp-count'],
});
