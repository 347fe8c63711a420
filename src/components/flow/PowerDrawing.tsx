import type { Probes } from '../../steps/probes-of.ts';
import { TEST_POINTS, type TestPoint } from '../../steps/test-points.ts';
import { type Place, ProbeMarks } from './ProbeMarks.tsx';

/** The places of an amplifier's supply, which the drawing of the sound does not show. */
const POWER_PLACES = {
  'battery-plus': [16, 54],
  'fuse-in': [84, 40],
  'fuse-out': [136, 40],
  'plus-copper': [164, 40],
  'amp-plus': [194, 40],
  'amp-remote': [194, 86],
  'remote-start': [160, 86],
  'amp-ground': [194, 120],
  'ground-copper': [182, 140],
} as const satisfies Partial<Record<TestPoint, Place>>;
type PowerPoint = keyof typeof POWER_PLACES;

const GROUND_PLACES = { 'battery-minus': [42, 136], frame: [120, 150] } as const;
const PLACES: Partial<Readonly<Record<TestPoint, Place>>> = { ...POWER_PLACES, ...GROUND_PLACES };

export const isPowerPoint = (point: TestPoint): point is PowerPoint => Object.hasOwn(POWER_PLACES, point);

/** The way of the current to an amplifier and back, and its turn-on, with the two test points of the reading that is being taken. */
export function PowerDrawing({ reading, red, black }: Probes & { readonly reading: string }) {
  const [onRed, onBlack] = [PLACES[red], PLACES[black]];
  const says = `Red probe: ${TEST_POINTS[red]}. Black probe: ${TEST_POINTS[black]}.`;
  return (
    <figure class="drawing">
      <svg viewBox="0 0 290 190" role="img" aria-label={`${reading}. ${says}`}>
        <g class="lead" stroke-width="4">
          <path d="M16 66V40H92M128 40H200" />
          <path d="M42 122V150H182V120H200" />
          <path d="M156 86H200" stroke-width="2" />
        </g>
        <g class="outline" stroke-width="2">
          <rect x="2" y="66" width="68" height="56" rx="3" />
          <rect x="92" y="29" width="36" height="22" rx="3" />
          <path d="M98 40h24" />
          <rect x="94" y="66" width="62" height="44" rx="3" />
          <rect x="200" y="28" width="84" height="104" rx="3" />
        </g>
        <g font-size="17">
          <text x="36" y="99" text-anchor="middle">
            battery
          </text>
          <text x="110" y="24" text-anchor="middle">
            fuse
          </text>
          <text x="125" y="84" text-anchor="middle">
            head
          </text>
          <text x="125" y="102" text-anchor="middle">
            unit
          </text>
          <text x="242" y="72" text-anchor="middle">
            amp
          </text>
          <text x="208" y="46" font-size="15">
            +
          </text>
          <text x="206" y="92" font-size="13">
            remote
          </text>
          <text x="206" y="125" font-size="13">
            ground
          </text>
        </g>
        {onRed && onBlack && <ProbeMarks red={onRed} black={onBlack} />}
      </svg>
      <figcaption role="status">
        <b>{reading}.</b> {says}
      </figcaption>
    </figure>
  );
}
