import { formatQuantity, type Unit } from '../../compute/quantity.ts';
import { type Band, shownBand } from '../../steps/step.ts';

interface Props {
  readonly bands: readonly Band[];
  readonly unit: Unit;
  /** What was typed, once it is a number. The scale of an empty field is drawn without a marker. */
  readonly value: number | undefined;
  readonly label: string;
}

const WIDTH = 290;
const BAR_TOP = 16;
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

/** From where to where a zone goes; the first and the last are open to their side. */
function stretch(bands: readonly Band[], { low, high }: Band, unit: Unit): string {
  // A tenth of a volt tells a flat battery from a full one.
  const end = (value: number) => formatQuantity(value, unit, unit === 'V' && value >= 10 ? 3 : 2);
  if (low === bands[0]?.low) return `under ${end(high)}`;
  return low === bands.at(-1)?.low ? `above ${end(low)}` : `${end(low)} to ${end(high)}`;
}

/** A reading on the bands that were worked out for this bike. The zones are named below the bar, in its order. */
export function Scale({ bands, unit, value, label }: Props) {
  const place = places(bands, unit);
  // The marker stays whole at both ends of the bar.
  const at = value === undefined ? undefined : Math.min(WIDTH - 8, Math.max(8, place(value)));
  const band = value === undefined ? undefined : shownBand(bands, value);
  const written = value === undefined ? '' : value === Infinity ? 'OL' : formatQuantity(value, unit, 3);
  return (
    <div class="scale">
      {band && (
        <p class="scale-said">
          <b>{written}:</b> {band.label}
        </p>
      )}
      <svg
        viewBox={`0 0 ${WIDTH} ${BAR_TOP + BAR_HEIGHT}`}
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
        {at !== undefined && <path d={`M${at} ${BAR_TOP + 8}l-8-16h16z`} class="marker" />}
      </svg>
      <ul class="zones">
        {bands.map((b) => (
          <li key={b.low} class={b === band ? `${b.mood} here` : b.mood}>
            <b>{b.label}</b> {stretch(bands, b, unit)}
          </li>
        ))}
      </ul>
    </div>
  );
}
