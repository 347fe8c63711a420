import { isDeepStrictEqual } from 'node:util';
import { describe, expect, it } from 'vitest';
import { drawFrom } from '../../../src/observe/draw.ts';
import {
  ODDITIES,
  ODDITY_CLASSES,
  type Oddity,
  oddBike,
  oddities,
  oddRider,
} from '../../../src/proof/strange/index.ts';
import type { World } from '../../../src/world/state.ts';
import { COMPLAINTS, type ComplaintId, ridden } from '../../../src/world/symptoms/index.ts';
import { careful, faultyWorld, STEPS, saidBy, soundWorld } from './bikes.ts';

const SOUND_BIKES = 36;
/** What shows with a fault only fits no sound bike. It is tried on sound ones all the same. */
const SHOWS_WITH_A_FAULT = ['rest-nothing-when-off', 'lamp-red-at-low-volts'];
const MOST_FAULTY_BIKES = 500;
const DRAWS = ['a', 'b', 'c', 'd', 'e', 'f'];

/** What a bike complains of beside what it is known to complain of. */
function complaints(world: World, beside: readonly string[] = []): readonly string[] {
  const bike = ridden(world);
  const others = (Object.keys(COMPLAINTS) as ComplaintId[]).filter((id) => !beside.includes(id));
  return others.filter((id) => COMPLAINTS[id](bike) === 'yes');
}

/** What changes in the answers of a careful person on a bike with a fault. */
function changed(one: Oddity, world: World, seed: string): readonly string[] {
  const truth = saidBy(careful, ridden(world));
  const told = saidBy(oddRider(careful, [one], seed), ridden(oddBike(world, [one], seed)));
  return STEPS.map(({ id }) => id).filter((id) => JSON.stringify(truth.get(id)) !== JSON.stringify(told.get(id)));
}

describe('an oddity', () => {
  it('has a name of its own, a class, and something that it changes', () => {
    expect(new Set(ODDITIES.map(({ id }) => id)).size).toBe(ODDITIES.length);
    expect(new Set(ODDITIES.map((one) => one.class))).toEqual(new Set(ODDITY_CLASSES));
    expect(ODDITIES.filter(({ bike, person }) => !bike && !person)).toEqual([]);
  });

  it('changes on some bike what a careful person would say', () => {
    // What was left undone shows only after the step that it was left by.
    const waiting = new Set(ODDITIES.filter((one) => one.class !== 'deeds'));
    for (let i = 0; i < MOST_FAULTY_BIKES && waiting.size > 0; i++) {
      const world = faultyWorld(i, drawFrom('changes', i));
      for (const one of waiting)
        if (one.fits(world) && changed(one, world, `case ${i}`).length > 0) waiting.delete(one);
    }
    expect([...waiting].map(({ id }) => id)).toEqual([]);
  });

  it('is no fault: a sound bike that has it complains of nothing more', () => {
    const tried = new Set<string>();
    for (let i = 0; i < SOUND_BIKES; i++) {
      const sound = soundWorld(i);
      const before = complaints(sound);
      // Each on every third bike.
      for (const one of ODDITIES.filter((_, n) => (n + i) % 3 === 0)) {
        if (!one.bike || !(one.fits(sound) || SHOWS_WITH_A_FAULT.includes(one.id))) continue;
        tried.add(one.id);
        const more = complaints(oddBike(sound, [one], `sound ${i}`), before);
        expect([one.id, i, more]).toEqual([one.id, i, []]);
      }
    }
    expect(ODDITIES.filter(({ id, bike }) => bike && !tried.has(id)).map(({ id }) => id)).toEqual([]);
  });

  it('of a bike changes every bike that it fits, by one draw or another', () => {
    for (let i = 0; i < 20; i++) {
      const world = faultyWorld(i, drawFrom('fits', i));
      for (const one of ODDITIES.filter(({ bike, fits }) => bike && fits(world))) {
        const changes = DRAWS.some((seed) => !isDeepStrictEqual(oddBike(world, [one], seed), world));
        expect([one.id, i, changes]).toEqual([one.id, i, true]);
      }
    }
  });

  it('needs an amplifier where it is about one', () => {
    const bare = soundWorld([...Array(40).keys()].find((i) => soundWorld(i).about === null) ?? expect.fail());
    const fitting = ODDITIES.filter(({ fits }) => fits(bare)).map(({ id }) => id);
    for (const id of ['amp-residue', 'no-lamp', 'red-stays-on-amp-plus', 'leads-thin', 'turn-on-told-wrong'])
      expect(fitting).not.toContain(id);
  });
});

describe('the oddities of a case', () => {
  const cases = Array.from({ length: 40 }, (_, i) => {
    const world = faultyWorld(i, drawFrom('cases', i));
    return { world, i, chosen: oddities(drawFrom('chosen', i), world) };
  });
  it('are one to three, each one that fits, of different classes', () => {
    for (const { world, chosen } of cases) {
      expect(chosen.length).toBeGreaterThanOrEqual(1);
      expect(chosen.length).toBeLessThanOrEqual(3);
      expect(new Set(chosen.map((one) => one.class)).size).toBe(chosen.length);
      expect(chosen.filter(({ fits }) => !fits(world))).toEqual([]);
    }
    expect(new Set(cases.map(({ chosen }) => chosen.length))).toEqual(new Set([1, 2, 3]));
  });
  it('do not contradict each other', () => {
    const classes = cases.map(({ chosen }) => chosen.map((one) => one.class));
    for (const [a, b] of [
      ['agreeable', 'unsure'],
      ['agreeable', 'build'],
      ['lamp', 'past'],
    ] as const)
      expect(classes.filter((all) => all.includes(a) && all.includes(b))).toEqual([]);
  });
  it('are together no fault either', () => {
    for (const { world, i, chosen } of cases) {
      const sound = soundWorld(i);
      const before = complaints(sound);
      expect(complaints(oddBike(sound, chosen, `case ${i}`), before)).toEqual([]);
      expect(world.about).toBe(sound.about);
    }
  });
  it('are the same for the same seed: bike, person and answers', () => {
    for (const { world, i, chosen } of cases.slice(0, 10)) {
      expect(oddities(drawFrom('chosen', i), world)).toEqual(chosen);
      const told = () => saidBy(oddRider(careful, chosen, `seed ${i}`), ridden(oddBike(world, chosen, `seed ${i}`)));
      expect(told()).toEqual(told());
    }
  });
  it('are of many kinds over many cases', () => {
    const seen = new Set(cases.flatMap(({ chosen }) => chosen.map((one) => one.class)));
    expect(seen.size).toBeGreaterThan(0.7 * ODDITY_CLASSES.length);
  });
});
