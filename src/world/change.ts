import type { Corner } from '../rig/corner.ts';
import type { Amp, Contact, Noise, PairOf, PhoneLink, Run, Settings, Speaker, Supply, Unit, World } from './state.ts';

/* Changes to parts of a bike. Each gives a new bike and leaves the old one as it was. */

type Part<T> = Partial<T> | ((now: T) => Partial<T>);
const changed = <T extends object>(now: T, part: Part<T>): T => ({
  ...now,
  ...(typeof part === 'function' ? part(now) : part),
});

export const withSupply = (world: World, part: Part<Supply>): World => ({
  ...world,
  supply: changed(world.supply, part),
});
export const withUnit = (world: World, part: Part<Unit>): World => ({ ...world, unit: changed(world.unit, part) });
/** The two wires of some corners in the head unit’s plug. */
export const withUnitPlug = (world: World, corners: readonly Corner[], pair: PairOf<Contact>): World =>
  withUnit(world, ({ plug }) => ({ plug: { ...plug, ...Object.fromEntries(corners.map((c) => [c, pair])) } }));
/** What joins the outputs of some corners to ground. */
export const withUnitToGround = (world: World, corners: readonly Corner[], contact: Contact): World =>
  withUnit(world, ({ toGround }) => ({
    toGround: { ...toGround, ...Object.fromEntries(corners.map((c) => [c, contact])) },
  }));
export const withSettings = (world: World, part: Part<Settings>): World => ({
  ...world,
  settings: changed(world.settings, part),
});
export const withPhone = (world: World, part: Part<PhoneLink>): World => ({
  ...world,
  phone: changed(world.phone, part),
});
export const withNoise = (world: World, noise: Noise): World => ({ ...world, noises: [...world.noises, noise] });
export const withRuns = (world: World, corners: readonly Corner[], part: Part<Run>): World => ({
  ...world,
  runs: { ...world.runs, ...Object.fromEntries(corners.map((c) => [c, changed(world.runs[c], part)])) },
});
export const withSpeakers = (world: World, corners: readonly Corner[], part: Part<Speaker>): World => ({
  ...world,
  speakers: { ...world.speakers, ...Object.fromEntries(corners.map((c) => [c, changed(world.speakers[c], part)])) },
});

export const theAmp = ({ about }: World): number | null => about;
export const withAmp = (world: World, part: Part<Amp>): World => {
  const at = theAmp(world);
  return { ...world, amps: world.amps.map((amp, i) => (i === at ? changed(amp, part) : amp)) };
};
