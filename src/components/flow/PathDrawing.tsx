import type { Rig } from '../../rig/rig.ts';
import { TEST_POINTS, type TestPoint } from '../../steps/test-points.ts';

interface Props {
  readonly rig: Rig;
  readonly probes: { readonly red: TestPoint; readonly black: TestPoint };
}

/** Where each test point is on the drawing. A lead drops onto it from above (red) or comes up from below (black). */
const PLACES: Readonly<Record<TestPoint, readonly [x: number, y: number]>> = {
  'unit-front-plus': [112, 40],
  'unit-front-minus': [128, 52],
  'unit-rear-plus': [108, 84],
  'unit-rear-minus': [122, 96],
  'amp-in-plus': [136, 84],
  'amp-in-minus': [144, 96],
  'amp-out-plus': [222, 84],
  'amp-out-minus': [234, 96],
  'run-plus': [226, 84],
  'run-minus': [238, 96],
  'speaker-plus': [262, 84],
  'speaker-minus': [266, 96],
  frame: [44, 136],
  'battery-minus': [44, 136],
};

const isApart = (point: TestPoint) => point.startsWith('run-');

/** The way of the sound on this bike, with the two test points of the open step. */
export function PathDrawing({ rig, probes }: Props) {
  const onAmp = rig.rearFedBy === 'amp' || (rig.amps?.some((amp) => amp.drives !== 'front') ?? false);
  const [red, black] = [PLACES[probes.red], PLACES[probes.black]];
  const apart = isApart(probes.red);
  const toGround = probes.black === 'frame' || probes.black === 'battery-minus';
  const says = `Red probe: ${TEST_POINTS[probes.red]}. Black probe: ${TEST_POINTS[probes.black]}.`;
  return (
    <figure class="drawing">
      <svg viewBox="0 0 320 164" role="img" aria-label={says}>
        <g class="lead" stroke-width="4">
          <path d="M84 40h84M84 52h84" />
          <path d={`M84 84h${onAmp ? 66 : apart ? 118 : 180}M84 96h${onAmp ? 66 : apart ? 118 : 180}`} />
          {onAmp && <path d={apart ? 'M222 84h44M222 96h44' : 'M206 84h60M206 96h60'} />}
          {!onAmp && apart && <path d="M222 84h44M222 96h44" />}
        </g>
        <g class="outline" stroke-width="2">
          <rect x="6" y="28" width="78" height="80" rx="3" />
          {onAmp && <rect x="150" y="68" width="56" height="44" rx="3" />}
          <path d="M168 34h12l16-10v44l-16-10h-12z" />
          <path d="M266 78h12l18-12v48l-18-12h-12z" />
          {toGround && <path d="M28 128h32M34 134h20M40 140h8M44 108v20" />}
          {apart && <path d="M214 76v28" stroke-dasharray="4 4" />}
        </g>
        <g font-size="14">
          <text x="45" y="66" text-anchor="middle">
            head
          </text>
          <text x="45" y="82" text-anchor="middle">
            unit
          </text>
          {onAmp && (
            <text x="178" y="95" text-anchor="middle">
              amp
            </text>
          )}
          <text x="202" y="51">
            front
          </text>
          <text x="266" y="130">
            rear
          </text>
          {toGround && (
            <text x="66" y="140">
              {probes.black === 'frame' ? 'frame' : 'battery −'}
            </text>
          )}
        </g>
        <g class="probe-red">
          <path d={`M${red[0] + 10} 8L${red[0]} ${red[1] - 6}`} stroke-width="5" stroke-linecap="round" />
          <circle cx={red[0]} cy={red[1]} r="6.5" />
          <text x={red[0] + 16} y="15" font-size="14" font-weight="700">
            red
          </text>
        </g>
        <g class="probe-black">
          <path d={`M${black[0] + 8} 156L${black[0]} ${black[1] + 6}`} stroke-width="5" stroke-linecap="round" />
          <circle cx={black[0]} cy={black[1]} r="6.5" />
          <text x={black[0] + 14} y="160" font-size="14" font-weight="700">
            black
          </text>
        </g>
      </svg>
      <figcaption>{says}</figcaption>
    </figure>
  );
}
