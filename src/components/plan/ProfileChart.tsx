import type { Standing } from '../../case/standing.ts';
import { candidateCurves, measuredPoints } from '../../plan/profile/points.ts';

const BOX = { left: 38, right: 284, top: 16, bottom: 176 } as const;
const SPAN = { lowHz: 40, highHz: 8000, lowDb: -9, highDb: 18 } as const;
const round = (value: number) => Math.round(value * 10) / 10;
const x = (hertz: number) =>
  round(BOX.left + (Math.log(hertz / SPAN.lowHz) / Math.log(SPAN.highHz / SPAN.lowHz)) * (BOX.right - BOX.left));
const y = (gainDb: number) => {
  const inside = Math.min(SPAN.highDb, Math.max(SPAN.lowDb, gainDb));
  return round(BOX.bottom - ((inside - SPAN.lowDb) / (SPAN.highDb - SPAN.lowDb)) * (BOX.bottom - BOX.top));
};

type Points = ReturnType<typeof measuredPoints>;

/** The readings of one state of the engine: a ring or a square each, its error bar across it, and a thin line through all. */
function Readings({ points }: { readonly points: Points }) {
  const inOrder = points.toSorted((a, b) => a.frequencyHz - b.frequencyHz);
  return (
    <g class="point" stroke-width="2">
      <path
        class={inOrder[0]?.engineRunning ? 'through running' : 'through'}
        d={inOrder.map(({ frequencyHz, gainDb }, i) => `${i ? 'L' : 'M'}${x(frequencyHz)} ${y(gainDb)}`).join('')}
      />
      {inOrder.map(({ frequencyHz, gainDb, lowDb, highDb, engineRunning }) => {
        const [at, middle, low, high] = [x(frequencyHz), y(gainDb), y(lowDb), y(highDb)];
        return (
          <g key={frequencyHz}>
            {engineRunning ? (
              <rect x={at - 5} y={middle - 5} width="10" height="10" />
            ) : (
              <circle cx={at} cy={middle} r="5" />
            )}
            <path d={`M${at} ${low}V${high}M${at - 9} ${low}h18M${at - 9} ${high}h18`} />
          </g>
        );
      })}
    </g>
  );
}

/** The measured tones with their error bars, on the responses that a stored profile can have. All against 400 Hz. */
export function ProfileChart({ findings }: Standing) {
  const points = measuredPoints(findings);
  if (points.length === 0) return null;
  const running = points.some((point) => point.engineRunning);
  const described = points
    .map((point) => `${point.frequencyHz} Hz ${point.engineRunning ? 'running' : 'off'}: ${point.gainDb.toFixed(1)} dB`)
    .join('; ');
  return (
    <figure class="chart">
      <svg viewBox="0 0 290 204" role="img" aria-label={`Measured against 400 Hz. ${described}`}>
        <g class="grid" stroke-width="1">
          {[-6, 0, 6, 12].map((gainDb) => (
            <path key={gainDb} d={`M${BOX.left} ${y(gainDb)}H${BOX.right}`} />
          ))}
        </g>
        <g font-size="15">
          {[-6, 0, 6, 12].map((gainDb) => (
            <text key={gainDb} x={BOX.left - 6} y={y(gainDb) + 4} text-anchor="end">
              {gainDb > 0 ? `+${gainDb}` : String(gainDb).replace('-', '−')}
            </text>
          ))}
          {[80, 400, 1000, 4000].map((hertz) => (
            <text key={hertz} x={x(hertz)} y={BOX.bottom + 20} text-anchor="middle">
              {hertz < 1000 ? hertz : `${hertz / 1000}k`}
            </text>
          ))}
          <text x="0" y="13">
            dB
          </text>
          <text x={BOX.right + 4} y={BOX.bottom + 20} text-anchor="end">
            Hz
          </text>
        </g>
        {candidateCurves(findings).map(({ name, points: line }) => (
          <g key={name}>
            <path
              class="lead"
              stroke-width="3"
              stroke-dasharray={name === 'flat' ? '7 5' : undefined}
              d={line.map(({ frequencyHz, gainDb }, i) => `${i ? 'L' : 'M'}${x(frequencyHz)} ${y(gainDb)}`).join('')}
            />
            <text font-size="15" x={name === 'flat' ? BOX.left + 3 : x(150)} y={name === 'flat' ? y(0) + 17 : y(12.2)}>
              {name}
            </text>
          </g>
        ))}
        {[false, true].map((engineRunning) => (
          <Readings key={String(engineRunning)} points={points.filter((one) => one.engineRunning === engineRunning)} />
        ))}
      </svg>
      <figcaption>
        Rings: engine off. {running ? 'Squares: engine running.' : 'Engine running: not read yet.'} Between the bars
        lies what the meter leaves possible. Copper lines: what stored profiles do with the engine off. All against 400
        Hz.
      </figcaption>
    </figure>
  );
}
