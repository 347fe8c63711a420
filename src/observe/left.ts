import { swapSidesIn } from '../steps/amplifier/swap-sides-in.ts';
import { outcomeOf } from '../steps/outcome.ts';
import { inputPlug } from '../steps/plugs/input-plug.ts';
import { lidCheck } from '../steps/plugs/lid-check.ts';
import { pinLook } from '../steps/plugs/pin-look.ts';
import { speakerPlug } from '../steps/plugs/speaker-plug.ts';
import { secondLook } from '../steps/runs/second-look.ts';
import { audioTarget } from '../steps/settings/audio-target.ts';
import { faderCentre } from '../steps/settings/fader-centre.ts';
import { rearControl } from '../steps/settings/rear-control.ts';
import { sourcePlays } from '../steps/settings/source-plays.ts';
import type { Situation, Step } from '../steps/step.ts';
import { muteWire } from '../steps/unit/mute-wire.ts';
import { unitRestart } from '../steps/unit/unit-restart.ts';
import { SOUND } from '../world/healthy.ts';
import type { Moment } from '../world/moment.ts';
import { repaired } from '../world/repair.ts';
import type { Settings, World } from '../world/state.ts';
import { type Ridden, whenAmpGoesOff } from '../world/symptoms/index.ts';
import { bestOf, changed, isOpen, lampOf, ofConcern, REAR } from './bike.ts';
import { anyHeard } from './heard.ts';

/* Some steps change what they look at, and leave it so: the next one meets another bike than the first. */

const withSettings = (world: World, part: Partial<Settings>): World =>
  Object.entries(part).every(([name, value]) => world.settings[name as keyof Settings] === value)
    ? world
    : { ...world, settings: { ...world.settings, ...part } };

export const centred = (bike: Ridden): Ridden =>
  changed(bike, 'centred', (world) => withSettings(world, { fader: 0, balance: 0 }));

export const turnedUp = (bike: Ridden): Ridden =>
  changed(bike, 'turned up', (world) => withSettings(world, { rearControlRatio: 1 }));

/** Every plug of the rear pushed home. A film stays where it is. */
export const pushedHome = (bike: Ridden): Ridden =>
  changed(bike, 'pushed home', (world) => {
    const apart = REAR.filter((corner) => isOpen(world.runs[corner].dock) && !world.runs[corner].dock.wants);
    if (apart.length === 0) return world;
    const mated = apart.map((corner) => [corner, { ...world.runs[corner], dock: SOUND }]);
    return { ...world, runs: { ...world.runs, ...Object.fromEntries(mated) } };
  });

/** The plugs of the front speakers pushed home. A film stays where it is. */
export const frontHome = (bike: Ridden): Ridden =>
  changed(bike, 'front plugs home', (world) => repaired(world, { do: 'seat-plug', plug: 'front-speaker' }));

/** Tone controls flat and nothing that follows speed. */
export const unitFlat = (bike: Ridden): Ridden =>
  changed(bike, 'unit flat', (world) => withSettings(world, { bassDb: 0, speedVolumeDb: 0 }));

/** Every tone setting in the phone off. */
export const phoneFlat = (bike: Ridden): Ridden =>
  changed(bike, 'phone flat', (world) =>
    world.phone.bassDb === 0 ? world : { ...world, phone: { ...world.phone, bassDb: 0 } },
  );

/** Both of them. */
export const flat = (bike: Ridden): Ridden => phoneFlat(unitFlat(bike));

/** The signal plug of the amplifier pushed home. */
export const signalHome = (bike: Ridden): Ridden =>
  changed(bike, 'signal plug home', (world) => repaired(world, { do: 'seat-plug', plug: 'amp-input' }));

/** The second connector of the rear loom pushed home, with luck its film wiped. */
export const secondHome = (bike: Ridden): Ridden =>
  changed(bike, 'second connector pushed home', (world) => repaired(world, { do: 'clean-contacts', plug: 'second' }));

/** Played on and not muted. */
export const playedOn = (bike: Ridden): Ridden =>
  changed(bike, 'played on', (world) => withSettings(world, { paused: false, muted: false }));

/** Sent to the speakers. */
export const toSpeakers = (bike: Ridden): Ridden =>
  changed(bike, 'to the speakers', (world) => withSettings(world, { target: 'speakers' }));

/** The head unit started anew. */
export const restarted = (bike: Ridden): Ridden =>
  changed(bike, 'started anew', (world) => (world.unit.hung ? repaired(world, { do: 'restart-unit' }) : world));

/** The mute wire off, its end taped. */
export const muteWireOff = (bike: Ridden): Ridden =>
  changed(bike, 'mute wire off', (world) => repaired(world, { do: 'isolate-mute-line' }));

/** Of a bike that is silent as a whole, any sound is heard. */
const EVERYWHERE: readonly Step[] = [sourcePlays, audioTarget, unitRestart, muteWire];

const DEEDS: readonly (readonly [step: Step, done: (bike: Ridden) => Ridden])[] = [
  [sourcePlays, playedOn],
  [audioTarget, toSpeakers],
  [unitRestart, restarted],
  [muteWire, muteWireOff],
  [faderCentre, centred],
  [rearControl, turnedUp],
  [lidCheck, pushedHome],
  [inputPlug, signalHome],
  [pinLook, signalHome],
  [secondLook, secondHome],
  [speakerPlug, frontHome],
  [swapSidesIn, signalHome],
];

/** Outcomes of these steps with which the rear is heard, and with which there was nothing to do. */
const HEARD = ['cured', 'out', 'plays', 'weak'];
const NOT_THERE = ['none', 'no-plug'];

/**
 * The bike as the steps so far left it. What somebody says not to have helped, although it would have, was not done: a
 * wrong answer is a plug that was not pushed.
 */
export function asLeft(found: Ridden, situation: Situation): Ridden {
  return DEEDS.reduce((bike, [step, done]) => {
    const outcome = outcomeOf(step, situation);
    if (outcome === undefined || outcome === 'cannot') return bike;
    const after = done(bike);
    if (after === bike || NOT_THERE.includes(outcome)) return bike;
    const heard = EVERYWHERE.includes(step) ? anyHeard(after) : bestOf(after, ofConcern(found)) !== 'silent';
    return heard === HEARD.includes(outcome) ? after : bike;
  }, found);
}

/** When to look: at once, or hot, for a bike whose amplifier is only off after half an hour of loud music. */
export const whenToLook = (bike: Ridden): Partial<Moment> =>
  lampOf(bike, {}) === 'normal' && lampOf(bike, { hot: true }) !== 'normal' ? { hot: true } : {};

/** When it fails that the rider told of, for an amplifier that is on at the stand and goes off at times. */
export function whileOff(bike: Ridden, { facts }: Situation): Partial<Moment> {
  const [told, times] = [facts['amp-goes-off'], whenAmpGoesOff(bike)];
  const meant = times.find(({ when }) => told !== undefined && 'option' in told && told.option === when) ?? times[0];
  return meant?.moment ?? {};
}
