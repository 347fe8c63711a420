import type { ComponentChildren } from 'preact';
import type { TestPoint } from '../../steps/test-points.ts';

export type Spot = readonly [x: number, y: number];

/** The parts of the bike that the strip above a drawing names, in the order of the current or of the sound. */
export type OnTheWay = 'battery' | 'fuse' | 'head unit' | 'remote wire' | 'amplifier' | 'speakers';

/** A place as the hand meets it, drawn on a panel of 140 by 84, and where its test points are. */
interface Place {
  readonly title: string;
  readonly part?: OnTheWay;
  readonly spots: Partial<Readonly<Record<TestPoint, Spot>>>;
  readonly drawn: ComponentChildren;
}

const word = (x: number, y: number, text: string, size = 13) => (
  <text x={x} y={y} font-size={size} text-anchor="middle">
    {text}
  </text>
);
const screw = (x: number, y: number) => (
  <>
    <circle cx={x} cy={y} r="10" />
    <path d={`M${x - 6} ${y - 6}l12 12`} />
  </>
);

/** A plug seen from the side where its wires go in: a probe slides in beside the wire. Which wire is which hangs on the bike. */
const plug = (pairs: readonly (readonly [x: number, text: string])[]) => (
  <>
    <g class="outline">
      <path d="M10 16h120v58H10zM58 16v-6h24v6" />
      {pairs.map(([x]) => (
        <path key={x} d={`M${x - 24} 58a8 8 0 1 0 16 0a8 8 0 1 0-16 0M${x + 8} 58a8 8 0 1 0 16 0a8 8 0 1 0-16 0`} />
      ))}
    </g>
    {pairs.map(([x, text]) => (
      <g key={x}>
        <path class="wires" d={`M${x - 20} 58h8M${x + 12} 58h8`} />
        {word(x, 42, text)}
      </g>
    ))}
    {word(70, 28, 'wire side', 11)}
  </>
);

export const PLACES = {
  battery: {
    title: 'Battery',
    part: 'battery',
    spots: { 'battery-minus': [36, 58], 'battery-plus': [104, 58] },
    drawn: (
      <>
        <g class="outline">
          <path d="M8 12h124v62H8z" />
          <circle cx="36" cy="58" r="11" />
          <circle cx="104" cy="58" r="11" />
        </g>
        {word(36, 38, '−', 20)}
        {word(104, 38, '+', 20)}
      </>
    ),
  },
  fuse: {
    title: 'Main fuse',
    part: 'fuse',
    spots: { 'fuse-in': [32, 48], 'fuse-out': [108, 48] },
    drawn: (
      <>
        <path class="wires" d="M0 48h24M116 48h24" />
        <g class="outline">
          <path d="M24 42h16v12h-16zM100 42h16v12h-16zM40 34h60v28H40z" />
          <path d="M52 48q9-12 18 0t18 0" />
        </g>
        {word(37, 24, 'battery side', 12)}
        {word(108, 24, 'amp side', 12)}
      </>
    ),
  },
  'amp-power': {
    title: 'Amp, power side',
    part: 'amplifier',
    spots: {
      'amp-plus': [24, 42],
      'amp-remote': [66, 42],
      'amp-ground': [112, 42],
      'plus-copper': [24, 68],
      'ground-copper': [112, 68],
    },
    drawn: (
      <>
        <path class="wires" d="M24 56v26M112 56v26" />
        <path class="wires thin" d="M66 56v26" />
        <g class="outline">
          <path d="M4 8h132v48H4z" />
          {screw(24, 42)}
          {screw(66, 42)}
          {screw(112, 42)}
        </g>
        {word(24, 26, '+', 18)}
        {word(66, 25, 'remote', 12)}
        {word(112, 25, 'ground', 12)}
      </>
    ),
  },
  'amp-in': {
    title: 'Amp’s signal plug',
    part: 'amplifier',
    spots: { 'amp-in-plus': [54, 58], 'amp-in-minus': [86, 58] },
    drawn: plug([[70, 'input pair']]),
  },
  'amp-out': {
    title: 'Amp, speaker side',
    part: 'amplifier',
    spots: { 'amp-out-plus': [48, 44], 'amp-out-minus': [92, 44] },
    drawn: (
      <>
        <g class="outline">
          <path d="M20 8h100v50H20z" />
          {screw(48, 44)}
          {screw(92, 44)}
        </g>
        {word(70, 25, 'one output')}
      </>
    ),
  },
  unit: {
    title: 'Head unit’s plug',
    part: 'head unit',
    spots: {
      'unit-front-plus': [24, 58],
      'unit-front-minus': [56, 58],
      'unit-rear-plus': [84, 58],
      'unit-rear-minus': [116, 58],
    },
    drawn: plug([
      [40, 'front'],
      [100, 'rear'],
    ]),
  },
  run: {
    title: 'Speaker plug, apart',
    part: 'speakers',
    spots: { 'run-plus': [34, 58], 'run-minus': [66, 58] },
    drawn: (
      <>
        <g class="outline">
          <path d="M14 32h72v42H14zM112 36h8l14-14v56l-14-14h-8z" />
          <path d="M26 58a8 8 0 1 0 16 0a8 8 0 1 0-16 0M58 58a8 8 0 1 0 16 0a8 8 0 1 0-16 0" />
        </g>
        <path class="wires thin" d="M86 44h26M86 56h26" />
        {word(50, 24, 'speaker’s half', 12)}
      </>
    ),
  },
  speaker: {
    title: 'Back of the speaker',
    part: 'speakers',
    spots: { 'speaker-plus': [50, 62], 'speaker-minus': [90, 62] },
    drawn: (
      <>
        <g class="outline">
          <circle cx="70" cy="40" r="34" />
          <circle cx="70" cy="34" r="18" />
          <path d="M46 54h8v14h-8zM86 54h8v14h-8z" />
        </g>
        {word(70, 39, 'tabs')}
      </>
    ),
  },
  frame: {
    title: 'Frame',
    spots: { frame: [70, 50] },
    drawn: (
      <>
        <g class="outline">
          <path d="M0 30h140M0 70h140M58 38h24l12 12-12 12H58L46 50z" />
        </g>
        {word(70, 20, 'a bare, bright bolt')}
      </>
    ),
  },
  'remote-start': {
    title: 'Start of the wire',
    part: 'remote wire',
    spots: { 'remote-start': [70, 58] },
    drawn: (
      <>
        <g class="outline">
          <path d="M24 12h92v62H24z" />
          <path d="M62 58a8 8 0 1 0 16 0a8 8 0 1 0-16 0" />
        </g>
        <path class="wires thin" d="M66 58h8" />
        {word(70, 38, 'remote out')}
      </>
    ),
  },
} as const satisfies Readonly<Record<string, Place>>;

/** The place that a test point is at. */
export function placeOf(point: TestPoint): Place & { readonly spot: Spot } {
  for (const place of Object.values<Place>(PLACES)) {
    const spot = place.spots[point];
    if (spot) return { ...place, spot };
  }
  throw new RangeError(`a test point must be drawn at some place, got ${point}`);
}
