import type { ConditionId } from '../../steps/conditions.ts';
import type { Probes } from '../../steps/step.ts';
import { TEST_POINTS } from '../../steps/test-points.ts';
import { type OnTheWay, placeOf, type Spot } from './places.tsx';

interface Props {
  /** The reading whose two points are marked, as its field is called. */
  readonly reading: string;
  /** Null for a reading that is taken at no point of the bike. */
  readonly probes: Probes | null;
  /** What the meter is set to: what the step needs. */
  readonly conditions: readonly ConditionId[];
  /** Whether an amplifier stands between head unit and rear speakers. */
  readonly onAmp: boolean;
}

const PANEL = { top: 56, middle: 70 } as const;
/** Where the leads leave the meter. */
const METER = { left: 112, right: 178, y: 178 } as const;

/** The way that the two places lie on, from where the current or the sound comes. */
function wayOf({ red, black }: Probes, onAmp: boolean): readonly OnTheWay[] {
  const parts = [placeOf(red).part, placeOf(black).part];
  if (red === 'amp-remote' || red === 'remote-start') return ['head unit', 'remote wire', 'amplifier'];
  if (red.startsWith('amp-in')) return ['head unit', 'amplifier', 'speakers'];
  if (parts.includes('battery') || parts.includes('fuse') || /^(amp-(plus|ground)|.*-copper)$/.test(red))
    if (!parts.includes('head unit') && !parts.includes('speakers')) return ['battery', 'fuse', 'amplifier'];
  return onAmp || parts.includes('amplifier') ? ['head unit', 'amplifier', 'speakers'] : ['head unit', 'speakers'];
}

/** The whole way in one line of boxes: those where a probe stands are filled. */
function Strip({ way, here }: { readonly way: readonly OnTheWay[]; readonly here: readonly unknown[] }) {
  const width = 290 / way.length;
  return (
    <g font-size="12" text-anchor="middle">
      <path class="wires thin" d="M10 13h270" />
      {way.map((part, i) => (
        <g key={part} class={here.includes(part) ? 'here' : undefined}>
          <rect x={i * width + 4} y="1" width={width - 8} height="24" rx="4" />
          <text x={(i + 0.5) * width} y="17.5">
            {part}
          </text>
        </g>
      ))}
    </g>
  );
}

/** A probe from its tip to its handle, and its lead to the meter. It leans outward, so that two never cross. */
function Probe({
  name,
  tip: [x, y],
  lean,
}: {
  readonly name: 'red' | 'black';
  readonly tip: Spot;
  readonly lean: number;
}) {
  const [endX, endY] = [x + 10 * lean, Math.max(y + 32, 150)];
  const meterX = lean < 0 ? METER.left : METER.right;
  // At the edge of the drawing its name stands on the inner side.
  const inward = x < 50 || x > 240 ? -1 : 1;
  const shape = `M${x} ${y}L${endX} ${endY}`;
  return (
    <g class={`probe-${name}`}>
      <path class="lead" d={`M${endX} ${endY}Q${endX + 6 * lean} ${METER.y + 14} ${meterX} ${METER.y}`} />
      <path class="rim" d={shape} />
      <path d={shape} />
      <circle cx={x} cy={y} r="5.5" />
      <text x={endX + 9 * lean * inward} y={endY + 2} text-anchor={lean * inward < 0 ? 'end' : 'start'}>
        {name}
      </text>
    </g>
  );
}

const METER_SET: Partial<Readonly<Record<ConditionId, string>>> = {
  'meter-on-ac': 'V AC',
  'meter-on-dc': 'V DC',
  'meter-on-ohms': 'Ω',
};

/** Both places as the hand meets them, the two probes on them, and where on the way they are. */
export function ProbeDrawing({ reading, probes, conditions, onAmp }: Props) {
  if (!probes) return null;
  const places = [placeOf(probes.red), placeOf(probes.black)] as const;
  const [red, black] = places;
  const alone = red.title === black.title;
  // The one that stands further left on the way is drawn on the left.
  const way = wayOf(probes, onAmp);
  const order = (part: OnTheWay | undefined) => (part ? way.indexOf(part) : -1);
  const swapped = !alone && order(black.part) < order(red.part);
  const panelX = (isRed: boolean) => (alone ? 75 : isRed === swapped ? 150 : 0);
  const tip = (isRed: boolean): Spot => {
    const [x, y] = (isRed ? red : black).spot;
    return [panelX(isRed) + x, PANEL.top + y];
  };
  const [redTip, blackTip] = [tip(true), tip(false)];
  const redLean = redTip[0] < blackTip[0] ? -1 : 1;
  const says = `Red probe: ${TEST_POINTS[probes.red]}. Black probe: ${TEST_POINTS[probes.black]}.`;
  return (
    <figure class="drawing">
      <svg viewBox="0 0 290 200" role="img" aria-label={`${reading}. ${says}`}>
        <Strip way={way} here={places.map(({ part }) => part)} />
        {(alone ? [true] : [true, false]).map((isRed) => (
          <g key={String(isRed)} transform={`translate(${panelX(isRed)} ${PANEL.top})`}>
            <text class="place" x={PANEL.middle} y="-9" font-size="13" text-anchor="middle">
              {(isRed ? red : black).title}
            </text>
            {(isRed ? red : black).drawn}
          </g>
        ))}
        <Probe name="black" tip={blackTip} lean={-redLean} />
        <Probe name="red" tip={redTip} lean={redLean} />
        <rect x={METER.left} y="164" width={METER.right - METER.left} height="32" rx="5" />
        <text x="145" y="185" font-size="14" text-anchor="middle">
          {METER_SET[conditions.find((id) => METER_SET[id]) ?? 'key-off'] ?? 'meter'}
        </text>
      </svg>
      <figcaption aria-live="polite">
        <b>{reading}.</b> {says}
      </figcaption>
    </figure>
  );
}
