import type { Rig } from '../../rig/rig.ts';
import type { Probes } from '../../steps/probes-of.ts';
import { TEST_POINTS, type TestPoint } from '../../steps/test-points.ts';
import { isPowerPoint, PowerDrawing } from './PowerDrawing.tsx';
import { type Place, ProbeMarks } from './ProbeMarks.tsx';

interface Props {
  readonly rig: Rig;
  /** The reading whose two points are marked, as its field is called. */
  readonly reading: string;
  /** Null for a reading that is taken at no point of this drawing. */
  readonly probes: Probes | null;
}

/** The height of the wires on the drawing: the front pair above, the rear pair below. */
const FRONT = { plus: 44, minus: 58 } as const;
const REAR = { plus: 94, minus: 108 } as const;

/** Where each test point of the sound is on the drawing. */
const PLACES: Partial<Readonly<Record<TestPoint, Place>>> = {
  'unit-front-plus': [88, FRONT.plus],
  'unit-front-minus': [106, FRONT.minus],
  'unit-rear-plus': [84, REAR.plus],
  'unit-rear-minus': [100, REAR.minus],
  'amp-in-plus': [104, REAR.plus],
  'amp-in-minus': [116, REAR.minus],
  'amp-out-plus': [192, REAR.plus],
  'amp-out-minus': [204, REAR.minus],
  'run-plus': [204, REAR.plus],
  'run-minus': [216, REAR.minus],
  'speaker-plus': [228, REAR.plus],
  'speaker-minus': [234, REAR.minus],
  frame: [34, 154],
  'battery-minus': [34, 154],
};

const speaker = (x: number, pair: { readonly plus: number; readonly minus: number }) =>
  `M${x} ${pair.plus - 6}h12l14-11v48l-14-11h-12z`;

const isGround = (point: TestPoint) => point === 'frame' || point === 'battery-minus';

/** The way of the sound on this bike, with the two test points of the reading that is being taken. */
export function PathDrawing({ rig, reading, probes }: Props) {
  if (probes && (isPowerPoint(probes.red) || isPowerPoint(probes.black)))
    return <PowerDrawing reading={reading} {...probes} />;
  const [red, black] = [probes && PLACES[probes.red], probes && PLACES[probes.black]];
  const onAmp = rig.rearFedBy === 'amp' || (rig.amps?.some((amp) => amp.drives !== 'front') ?? false);
  const apart = probes?.red.startsWith('run-') ?? false;
  const toGround = probes !== null && isGround(probes.black);
  const says = probes
    ? `Red probe: ${TEST_POINTS[probes.red]}. Black probe: ${TEST_POINTS[probes.black]}.`
    : 'Where the probes go is said above.';
  const rearPair = (from: number, to: number) => `M${from} ${REAR.plus}H${to}M${from} ${REAR.minus}H${to}`;
  return (
    <figure class="drawing">
      <svg viewBox="0 0 290 190" role="img" aria-label={`${reading}. ${says}`}>
        <g class="lead" stroke-width="4">
          <path d={`M66 ${FRONT.plus}h84M66 ${FRONT.minus}h84`} />
          <path d={rearPair(66, onAmp ? 124 : apart ? 182 : 240)} />
          {(onAmp || apart) && <path d={rearPair(apart ? 200 : 180, 240)} />}
        </g>
        <g class="outline" stroke-width="2">
          <rect x="2" y="28" width="64" height="96" rx="3" />
          {onAmp && <rect x="124" y="76" width="56" height="50" rx="3" />}
          <path d={speaker(150, FRONT)} />
          <path d={speaker(240, REAR)} />
          {toGround && <path d="M18 144h32M24 150h20M30 156h8M34 124v20" />}
          {apart && <path d="M191 84v34" stroke-dasharray="4 4" />}
        </g>
        <g font-size="17">
          <text x="34" y="72" text-anchor="middle">
            head
          </text>
          <text x="34" y="91" text-anchor="middle">
            unit
          </text>
          {onAmp && (
            <text x="152" y="107" text-anchor="middle">
              amp
            </text>
          )}
          <text x="160" y="21">
            front
          </text>
          <text x="240" y="152">
            rear
          </text>
          {toGround && (
            <text x="58" y="154">
              {probes.black === 'frame' ? 'frame' : 'battery −'}
            </text>
          )}
        </g>
        {red && black && <ProbeMarks red={red} black={black} />}
      </svg>
      <figcaption role="status">
        <b>{reading}.</b> {says}
      </figcaption>
    </figure>
  );
}
