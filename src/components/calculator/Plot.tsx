import { type Axis, type Plot as Drawn, ticksOf } from '../../calculators/picture.ts';

const WIDTH = 340;
const HEIGHT = 236;
const BOX = { left: 46, right: 322, top: 30, bottom: 196 } as const;
/** A page has one plot. */
const INSIDE = 'inside-the-axes';
const round = (value: number) => Math.round(value * 10) / 10;

/** Where a value stands between the ends of an axis: 0 at its low end, 1 at its high one. */
const share = ({ low, high, log }: Axis, value: number): number =>
  log ? Math.log(Math.max(value, low / 1e6) / low) / Math.log(high / low) : (value - low) / (high - low);
/** A mark that lies outside stands at the edge. */
const inside = ({ low, high }: Axis, value: number) => Math.min(high, Math.max(low, value));

/** `2k` for 2000: the ticks of an axis have little room. */
export function tickText(value: number): string {
  const size = Math.abs(value);
  const text = size >= 1000 ? `${Number((size / 1000).toPrecision(3))}k` : String(Number(size.toPrecision(3)));
  return value < 0 ? `−${text}` : text;
}

/** Curves over two axes, with the limits they meet and where this bike stands. */
export function Plot({ x, y, curves, limits = [], marks = [], says }: Drawn & { readonly says: string }) {
  const px = (value: number) => round(BOX.left + share(x, value) * (BOX.right - BOX.left));
  const py = (value: number) => round(BOX.bottom - share(y, value) * (BOX.bottom - BOX.top));
  return (
    <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={says}>
      <g class="grid" stroke-width="1">
        {ticksOf(y).map((tick) => (
          <path key={tick} d={`M${BOX.left} ${py(tick)}H${BOX.right}`} />
        ))}
        {ticksOf(x).map((tick) => (
          <path key={tick} d={`M${px(tick)} ${BOX.top}V${BOX.bottom}`} />
        ))}
      </g>
      <g font-size="13">
        {ticksOf(y).map((tick) => (
          <text key={tick} x={BOX.left - 6} y={py(tick) + 4} text-anchor="end">
            {tickText(tick)}
          </text>
        ))}
        {ticksOf(x).map((tick) => (
          <text key={tick} x={px(tick)} y={BOX.bottom + 17} text-anchor="middle">
            {tickText(tick)}
          </text>
        ))}
        <text x="0" y="14">
          {y.label}
        </text>
        <text x={BOX.right} y={HEIGHT - 4} text-anchor="end">
          {x.label}
        </text>
      </g>
      {limits.map(({ name, y: level }) => (
        <g key={name} class="limit">
          <path d={`M${BOX.left} ${py(level)}H${BOX.right}`} stroke-width="2" stroke-dasharray="2 4" />
          <text font-size="13" x={BOX.left + 5} y={py(level) - 5}>
            {name}
          </text>
        </g>
      ))}
      <clipPath id={INSIDE}>
        <rect x={BOX.left} y={BOX.top - 2} width={BOX.right - BOX.left} height={BOX.bottom - BOX.top + 4} />
      </clipPath>
      <g clip-path={`url(#${INSIDE})`}>
        {curves.map(({ name, points, dashed }, i) => (
          <g key={name} class={`curve curve-${i}`}>
            <path
              stroke-width="3"
              stroke-dasharray={dashed ? '8 5' : undefined}
              d={points.map(([a, b], n) => `${n ? 'L' : 'M'}${px(a)} ${py(b)}`).join('')}
            />
          </g>
        ))}
      </g>
      {marks.map(({ name, x: a, y: b }, i) => {
        const [atX, atY] = [px(inside(x, a)), py(inside(y, b))];
        const left = atX > (BOX.left + BOX.right) / 2;
        const below = atY < BOX.top + 16 || limits.some(({ y: level }) => Math.abs(py(level) - atY) < 14);
        return (
          <g key={name} class={i === 0 ? 'mark' : 'mark other'}>
            <circle cx={atX} cy={atY} r="6" stroke-width="2" />
            <text
              font-size="13"
              x={left ? atX - 10 : atX + 10}
              y={below ? atY + 19 : atY - 8}
              text-anchor={left ? 'end' : 'start'}
            >
              {name}
            </text>
          </g>
        );
      })}
    </svg>
  );
}

/** Which line is which: names beside their strokes, below the picture, where no line can cross them. */
export function Key({ curves }: Pick<Drawn, 'curves'>) {
  if (curves.length < 2) return null;
  return (
    <ul class="curve-key">
      {curves.map(({ name, dashed }, i) => (
        <li key={name}>
          <svg viewBox="0 0 34 10" aria-hidden="true" class={`curve curve-${i}`}>
            <path d="M1 5H33" stroke-width="3" stroke-dasharray={dashed ? '8 5' : undefined} />
          </svg>
          {name}
        </li>
      ))}
    </ul>
  );
}

const MOST_ROWS = 9;
/** The curves in figures, for whoever would rather read them. */
export function Figures({ x, y, curves }: Pick<Drawn, 'x' | 'y' | 'curves'>) {
  const longest = curves.reduce((so, { points }) => (points.length > so.length ? points : so), curves[0]?.points ?? []);
  const every = Math.max(1, Math.ceil((longest.length - 1) / (MOST_ROWS - 1)));
  const rows = longest.map(([at]) => at).filter((_, i) => i % every === 0 || i === longest.length - 1);
  return (
    <details>
      <summary>The picture in figures</summary>
      <div class="wide">
        <table>
          <thead>
            <tr>
              <th scope="col">{x.label}</th>
              {curves.map(({ name }) => (
                <th key={name} scope="col">
                  {name}, {y.label}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((at) => (
              <tr key={at}>
                <th scope="row">{Number(at.toPrecision(3))}</th>
                {curves.map(({ name, points }) => (
                  <td key={name}>{valueAt(points, at)}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}

/** The height of a curve between two of its points. */
export function valueAt(points: readonly (readonly [number, number])[], x: number): string {
  const next = points.findIndex(([at]) => at >= x - 1e-9);
  const [x1, y1] = points[next] ?? [Number.NaN, Number.NaN];
  const [x0, y0] = points[Math.max(0, next - 1)] ?? [x1, y1];
  const value = x1 === x0 ? y1 : y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
  return Number.isFinite(value) ? String(Number(value.toPrecision(3))).replace('-', '−') : '–';
}
