import type { Unit } from '../../compute/quantity.ts';
import { formatQuantity } from '../../compute/quantity.ts';
import type { Band } from '../../steps/step.ts';

interface Props {
  readonly bands: readonly Band[];
  readonly unit: Unit;
  /** What was typed, once it is a number. The scale of an empty field is drawn without a marker. */
  readonly value: number | undefined;
  readonly label: string;
}

const WIDTH = 290;
const BAR_TOP = 30;
const BAR_HEIGHT = 16;
const round = (x: number) => Math.round(x * 10) / 10;

/** Where a value stands on the bar: straight for volts, by decades for ohms, whose bands span from 0.1 to millions. */
function places(bands: readonly Band[], unit: Unit): (value: number) => number {
  const finite = bands.flatMap(({ low, high }) => [low, high]).filter(Number.isFinite);
  const top = Math.max(...finite);
  if (unit !== 'Ω') return (value) => round(Math.min(1, Math.max(0, value / top)) * WIDTH);
  const [low, high] = [0.1, top * 10];
  return (value) => round((Math.log(Math.min(high, Math.max(low, value)) / low) / Math.log(high / low)) * WIDTH);
}

/** A reading on the bands that were worked out for this bike. */
export function Scale({ bands, unit, value, label }: Props) {
  const place = places(bands, unit);
  const good = bands.filter((band) => band.mood === 'good');
  // The marker stays whole at both ends of the bar.
  const at = value === undefined ? undefined : Math.min(WIDTH - 8, Math.max(8, place(value)));
  const band = value === undefined ? undefined : (bands.find((b) => value >= b.low && value < b.high) ?? bands.at(-1));
  const written = value === undefined ? '' : value === Infinity ? 'OL' : formatQuantity(value, unit, 3);
  return (
    <div class="scale">
      <svg
        viewBox={`0 0 ${WIDTH} ${BAR_TOP + BAR_HEIGHT + 26}`}
        role="img"
        aria-label={band ? `${label}: ${written} is in the band “${band.label}”` : `${label}: the bands of a reading`}
      >
        {bands.map((b) => (
          <rect
            key={b.low}
            class={b.mood}
            x={place(b.low)}
            y={BAR_TOP}
            width={round(Math.max(2, place(b.high) - place(b.low) - 1))}
            height={BAR_HEIGHT}
          />
        ))}
        {good.map((b) => {
          const middle = (place(b.low) + place(b.high)) / 2;
          return (
            <text
              key={b.low}
              x={Math.min(WIDTH - 4, Math.max(4, middle))}
              y={BAR_TOP + BAR_HEIGHT + 20}
              font-size="16"
              text-anchor={middle > 235 ? 'end' : middle < 50 ? 'start' : 'middle'}
            >
              {b.label}
            </text>
          );
        })}
        {at !== undefined && (
          <>
            <path d={`M${at} ${BAR_TOP + BAR_HEIGHT / 2}l-7-14h14z`} class="marker" />
            <text
              x={Math.min(WIDTH - 2, Math.max(2, at))}
              y="14"
              font-size="17"
              font-weight="700"
              text-anchor={at > 200 ? 'end' : at < 90 ? 'start' : 'middle'}
            >
              {written}
              {band && `: ${band.label}`}
            </text>
          </>
        )}
      </svg>
    </div>
  );
}
