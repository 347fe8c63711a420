import type { CautionId } from './cautions.ts';
import { type ConditionKey, conditionOf } from './conditions.ts';
import { probesOf } from './probes-of.ts';
import type { Situation, Step, Tool } from './step.ts';
import type { TestPoint } from './test-points.ts';

/** What a probe can do at a place: short a live positive to the frame, or a wire of a bridge output. */
const AT_A_PROBE: Readonly<Partial<Record<TestPoint, CautionId>>> = {
  'unit-front-plus': 'bridge',
  'unit-front-minus': 'bridge',
  'unit-rear-plus': 'bridge',
  'unit-rear-minus': 'bridge',
  'amp-in-plus': 'bridge',
  'amp-in-minus': 'bridge',
  'amp-out-plus': 'bridge',
  'amp-out-minus': 'bridge',
  'battery-plus': 'plus-probe',
  'fuse-in': 'plus-probe',
  'fuse-out': 'plus-probe',
  'plus-copper': 'plus-probe',
  'amp-plus': 'plus-probe',
};
/** And a clip that brings positive somewhere: behind the main fuse that one comes out first, in front of it the battery negative. */
const AT_A_CLIP: Readonly<Partial<Record<TestPoint, CautionId>>> = {
  'amp-plus': 'live-clip',
  'battery-plus': 'minus-first',
  'fuse-in': 'minus-first',
  'amp-remote': 'jumper',
};
const OF_A_TOOL: Readonly<Partial<Record<Tool, CautionId>>> = { cell: 'cell' };

const looked = (points: readonly TestPoint[], where: Readonly<Partial<Record<TestPoint, CautionId>>>) =>
  points.flatMap((point) => where[point] ?? []);

export const cautionsOfProbes = (points: readonly TestPoint[]): readonly CautionId[] => looked(points, AT_A_PROBE);
export const cautionsOfClips = (points: readonly TestPoint[] = []): readonly CautionId[] => looked(points, AT_A_CLIP);

/** What is said where a condition is brought about: what follows from its clips, and its own. */
export function cautionsOfCondition(id: ConditionKey): readonly CautionId[] {
  const { clips, cautions } = conditionOf(id);
  return [...cautionsOfClips(clips), ...cautions];
}

/** What is said at a step, besides what its conditions say: what follows from its probes, clips and tool, and its own. */
export function cautionsOfStep(step: Step, situation: Situation): readonly CautionId[] {
  const points =
    step.kind === 'reading'
      ? Object.values(step.readings).flatMap((reading) => {
          const at = probesOf(step, reading, situation);
          return at ? [at.red, at.black] : [];
        })
      : [];
  const ofTool = OF_A_TOOL[step.tool];
  return [
    ...cautionsOfProbes(points),
    ...cautionsOfClips(step.clips),
    ...(ofTool ? [ofTool] : []),
    ...(step.cautions ?? []),
  ];
}
