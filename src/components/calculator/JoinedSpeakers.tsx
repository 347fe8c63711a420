import type { Joined } from '../../calculators/picture.ts';
import { formatQuantity } from '../../compute/quantity.ts';

const WIDTH = 340;
const TOP = 24;
const BOTTOM = 176;

/** A speaker between two wires, drawn as its coil: a box with the ohms in it. */
function Speaker({ x, y, text }: { readonly x: number; readonly y: number; readonly text: string }) {
  return (
    <g class="coil">
      <rect x={x - 27} y={y - 17} width="54" height="34" rx="4" stroke-width="2" />
      <text x={x} y={y + 5} font-size="14" text-anchor="middle">
        {text}
      </text>
    </g>
  );
}

/** Speakers on one channel, joined as they are, from positive at the top to negative at the bottom. */
export function JoinedSpeakers({ count, wiring, each, says }: Joined & { readonly says: string }) {
  const text = formatQuantity(each.value, each.unit, 2);
  const inRow = wiring !== 'parallel';
  const gap = inRow ? (BOTTOM - TOP) / (count + 1) : (WIDTH - 80) / count;
  const places = Array.from({ length: count }, (_, i) =>
    inRow ? { x: WIDTH / 2, y: TOP + gap * (i + 1) } : { x: 60 + gap * (i + 0.5), y: (TOP + BOTTOM) / 2 },
  );
  const rails = `M40 ${TOP}H${inRow ? WIDTH / 2 : places.at(-1)?.x}M40 ${BOTTOM}H${inRow ? WIDTH / 2 : places.at(-1)?.x}`;
  const drops = inRow ? `M${WIDTH / 2} ${TOP}V${BOTTOM}` : places.map(({ x }) => `M${x} ${TOP}V${BOTTOM}`).join('');
  return (
    <svg viewBox={`0 0 ${WIDTH} 200`} role="img" aria-label={says}>
      <g class="curve curve-0">
        <path d={rails + drops} stroke-width="3" />
      </g>
      {places.map(({ x, y }) => (
        <Speaker key={`${x} ${y}`} x={x} y={y} text={text} />
      ))}
      <text x="10" y={TOP + 6} font-size="20">
        +
      </text>
      <text x="10" y={BOTTOM + 6} font-size="20">
        −
      </text>
    </svg>
  );
}
