import { drawFrom } from '../observe/draw.ts';
import { randomRig, type WholeRig } from './random-rig.ts';

/** Kinds of build that differ in what can be wrong and in what a step shows. */
export const BUILD_KINDS = [
  'unit',
  'amp by wire',
  'amp by signal',
  'amp by DC',
  'amp for the unaltered output',
] as const;
export type BuildKind = (typeof BUILD_KINDS)[number];

const BY = { wire: 'amp by wire', signal: 'amp by signal', dc: 'amp by DC' } as const;

/** The kind of a build, by what drives its rear, and its front where it has no rear. */
export function kindOf({ rearFitted, amps }: WholeRig): BuildKind {
  const pair = rearFitted === 'yes' ? 'rear' : 'front';
  const amp = amps.find(({ drives }) => drives === pair || drives === 'both');
  if (!amp) return 'unit';
  return amp.needs === 'unaltered' ? 'amp for the unaltered output' : BY[amp.turnOn];
}

/** Every fourth bike has a replaced unit, where the kind allows it: less chance, and none forgotten. */
const unitKindOf = (kind: BuildKind, nth: number): WholeRig['unitKind'] =>
  nth % 4 === 3 && kind !== 'amp for the unaltered output' ? 'replaced' : 'factory';

/** Every seventh bike has a lithium battery, about as many as among random ones: chance would leave some kinds without. */
const batteryKindOf = (nth: number): WholeRig['batteryKind'] => (nth % 7 === 1 ? 'lithium' : 'lead');

/** So many bikes of a kind, always the same ones. */
export function fixedRigs(kind: BuildKind, count: number): readonly WholeRig[] {
  const draw = drawFrom('fixed', kind);
  const found: WholeRig[] = [];
  while (found.length < count) {
    const rig = randomRig(draw);
    if (kindOf(rig) === kind && rig.rearFitted === 'yes' && rig.unitKind === unitKindOf(kind, found.length))
      found.push({ ...rig, batteryKind: batteryKindOf(found.length) });
  }
  return found;
}

/** So many bikes without a rear, always the same ones: with an amplifier at the front and without, and with either unit. */
export function rigsWithoutRear(count: number): readonly WholeRig[] {
  const draw = drawFrom('fixed', 'without rear');
  const found: WholeRig[] = [];
  while (found.length < count) {
    const rig = randomRig(draw);
    const nth = found.length;
    const isWanted = rig.rearFitted === 'no' && rig.amps.length > 0 === (nth % 2 === 1);
    if (isWanted && rig.unitKind === unitKindOf('unit', nth)) found.push({ ...rig, batteryKind: batteryKindOf(nth) });
  }
  return found;
}
