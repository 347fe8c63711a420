import { voltageRatio } from '../compute/decibel.ts';
import { largestFuseA } from '../compute/fuse.ts';
import { gainTargetV } from '../compute/gain.ts';
import { parseQuantity } from '../compute/quantity.ts';
import { CORNERS } from '../rig/corner.ts';
import type { Remedy, Verdict } from '../verdicts/verdict.ts';
import { theAmp, withAmp, withUnit } from '../world/faults/kit.ts';
import { loudestInputV, shapeOf } from '../world/healthy.ts';
import type { World } from '../world/state.ts';
import { driverOf, driversInUse } from '../world/valued-rig.ts';

/** The number of a remedy whose label says so, or undefined. */
function figure(remedy: Remedy, label: RegExp, unit: 'A' | 'V'): number | undefined {
  const found = remedy.numbers.find((number) => label.test(number.label));
  const parsed = found && parseQuantity(found.value, unit);
  return parsed?.ok && !parsed.over ? parsed.value : undefined;
}

/** The section of the lead that a figure for the main fuse is said to be for, or 0 where it is said of any. */
function leadItIsForM2({ numbers }: Remedy): number {
  const label = numbers.find((number) => /^Main fuse/.test(number.label))?.label ?? '';
  return Number(/on ([\d.]+) mm²/.exec(label)?.[1] ?? 0) * 1e-6;
}

/** What following a fix to the letter makes of the true bike, for the fixes that turn, set or select something. */
const DOES: Readonly<Record<string, (world: World, remedy: Remedy) => World>> = {
  'rear-channels-disabled': (world) => withUnit(world, { rearOn: true }),
  'profile-reverted': (world) => withUnit(world, { rearOn: true }),
  'replaced-unit-setting': (world) => withUnit(world, { rearOn: true }),
  // It may also say to wake the amplifier by a wire, which leaves the level as it is.
  'sense-starved-by-profile': (world, { fix }) =>
    fix.some((line) => /full level/.test(line)) ? withUnit(world, { profile: shapeOf(world.rig, 'unaltered') }) : world,
  'channel-mode-wrong': (world) =>
    withAmp(world, ({ inputs }) => ({ inputMode: inputs['rear-left'] ? 'four' : 'two' })),
  'amp-input-too-low': (world, remedy) => {
    const outputV = figure(remedy, /^Output to set/, 'V');
    if (outputV === undefined) return world;
    const rear = outputV / loudestInputV(world.rig, world.unit.profile);
    return withAmp(world, ({ gainRatio }) => ({ gainRatio: { ...gainRatio, rear } }));
  },
};

/** One way in which a fix hurts somebody or something. The worlds are the true bike before and after it. */
interface Harm {
  readonly says: string;
  does(before: World, after: World, remedy: Remedy): boolean;
}

const louderDb = (before: World, after: World) => after.unit.profile.levelDb - before.unit.profile.levelDb;
const hasUsedAmp = ({ rig }: World) => driversInUse(rig).length > 0;

/** An amplifier driven this far past its full output clips for good: 1 dB, a distortion of 5 %. */
const CLIPS_RATIO = voltageRatio({ gainDb: 1 });
const fullOutputV = (world: World): number => {
  const made = world.rig.amps[theAmp(world) ?? -1];
  return made ? gainTargetV({ powerW: made.powerW, loadOhm: made.ratedOhm }) : Infinity;
};
const rearGain = (world: World): number => world.amps[theAmp(world) ?? -1]?.gainRatio.rear ?? 0;
const rearOutputV = (world: World): number => rearGain(world) * loudestInputV(world.rig, world.unit.profile);

const toGround = ({ unit, runs }: World) =>
  CORNERS.filter((corner) => unit.toGround[corner].ohm < Infinity || runs[corner].toFrame.ohm < Infinity).length;

/** Every way to do harm that the model can see. */
export const HARMS: readonly Harm[] = [
  {
    says: 'a bigger fuse than the plus lead carries',
    does: (before, _, remedy) => {
      const fuseA = figure(remedy, /^Main fuse/, 'A');
      const amp = before.rig.amps[theAmp(before) ?? -1];
      if (fuseA === undefined || amp === undefined) return false;
      // A figure that names the lead it is for says nothing of a thinner one.
      const sectionM2 = Math.max(amp.plusLeadM2, leadItIsForM2(remedy));
      return fuseA > largestFuseA({ sectionM2 });
    },
  },
  {
    says: 'an amplified profile under an amplifier that needs the unaltered output',
    does: (before, after) =>
      louderDb(before, after) < 0 && driversInUse(before.rig).some((i) => before.rig.amps[i]?.needs === 'unaltered'),
  },
  {
    says: 'full level back into an amplifier without a word about its gain',
    does: (before, after, remedy) =>
      hasUsedAmp(before) &&
      louderDb(before, after) > 0 &&
      !remedy.cautions.includes('back-to-full') &&
      !remedy.fix.some((line) => /gain to minimum/.test(line)),
  },
  {
    says: 'a channel switched on into an amplifier without a word about its gain',
    does: (before, after, remedy) =>
      driverOf(before.rig, 'rear-left') !== 'unit' &&
      before.unit.profile.boostDb > 0 &&
      after.unit.rearOn &&
      !before.unit.rearOn &&
      !remedy.cautions.includes('back-to-full') &&
      !remedy.fix.some((line) => /gain to minimum/.test(line)),
  },
  {
    says: 'a wire of a bridge output joined to ground',
    does: (before, after) => toGround(after) > toGround(before),
  },
  {
    says: 'a gain that makes the amplifier clip at the loudest clean step',
    does: (before, after) =>
      rearGain(after) > rearGain(before) && rearOutputV(after) > CLIPS_RATIO * fullOutputV(after),
  },
];

/** What a fix would do to the true bike that it must never do. Empty when it harms nothing. */
export function harmOf(verdict: Verdict, remedy: Remedy, world: World): readonly string[] {
  const after = DOES[verdict.id]?.(world, remedy) ?? world;
  return HARMS.filter((harm) => harm.does(world, after, remedy)).map(({ says }) => says);
}
