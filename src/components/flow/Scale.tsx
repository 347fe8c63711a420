import { useEffect, useRef } from 'preact/hooks';
import type { Unit } from '../../compute/quantity.ts';
import { type Band, shownBand } from '../../steps/step.ts';
import { scaleInWords } from './scale-words.ts';

interface Props {
  readonly bands: readonly Band[];
  readonly unit: Unit;
  /** What was typed, once it is a number. The scale of an empty field is drawn without a marker. */
  readonly value: number | undefined;
  readonly label: string;
  /** Whether it is drawn whole, or only says in which band the reading is. */
  readonly whole: boolean;
  /** Whether it belongs to the field that is typed in: then it is brought clear of the bar at the foot. */
  readonly inHand?: boolean;
}

const WIDTH = 290;
const BAR_TOP = 12;
const BAR_HEIGHT = 14;
const round = (x: number) => Math.round(x * 10) / 10;
const within = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));

/**
 * Where a value stands on the bar: straight for volts, with as much room beside the limits as they lie apart; by decades
 * for ohms, whose bands span from 0.1 to millions.
 */
function places(bands: readonly Band[], unit: Unit): (value: number) => number {
  const limits = bands.slice(1).map(({ low }) => low);
  const [first, last] = [Math.min(...limits), Math.max(...limits)];
  if (unit !== 'Ω') {
    const beside = limits.length > 1 ? (last - first) / 2 : Math.abs(last);
    const [low, high] = [Math.max(bands[0]?.low ?? 0, first - beside), last + beside];
    return (value) => round(((within(value, low, high) - low) / (high - low)) * WIDTH);
  }
  const [low, high] = [0.1, last * 10];
  return (value) => round((Math.log(within(value, low, high) / low) / Math.log(high / low)) * WIDTH);
}

/** A reading on the bands that were worked out for this bike. The bands are named below the bar, in its order. */
export function Scale({ bands, unit, value, label, whole, inHand = false }: Props) {
  const scale = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (inHand) scale.current?.scrollIntoView({ block: 'nearest' });
  }, [inHand]);
  const place = places(bands, unit);
  const band = value === undefined ? undefined : shownBand(bands, value);
  const { stretches, written } = scaleInWords(bands, unit, value);
  // The marker stays whole at both ends of the bar.
  const at = value === undefined ? undefined : within(place(value), 8, WIDTH - 8);
  return (
    <div class="scale" ref={scale}>
      {band && (
        <p class={`scale-said ${band.mood}`}>
          <b>{written}:</b> {band.label}
        </p>
      )}
      {whole && (
        <>
          <svg
            viewBox={`0 0 ${WIDTH} ${BAR_TOP + BAR_HEIGHT}`}
            role="img"
            aria-label={
              band ? `${label}: ${written} is in the band “${band.label}”` : `${label}: the bands of a reading`
            }
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
            {at !== undefined && <path d={`M${at} ${BAR_TOP + 6}l-8-15h16z`} class="marker" />}
          </svg>
          <ul class="zones">
            {bands.map((b, i) => (
              <li key={b.low} class={b === band ? `${b.mood} here` : b.mood}>
                <b>{b.label}</b> {stretches[i]}
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
