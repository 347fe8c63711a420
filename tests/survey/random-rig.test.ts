import { describe, expect, it } from 'vitest';
import { FUSE_RATINGS_A, largestFuseA } from '../../src/compute/fuse.ts';
import { COIL_HIGHEST_RATIO, COIL_LOWEST_RATIO, parallelOhm, seriesOhm } from '../../src/compute/impedance.ts';
import { drawFrom } from '../../src/observe/draw.ts';
import { AMP_FIELDS, BIKE_FIELDS } from '../../src/rig/fields.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { validateRig } from '../../src/rig/validate.ts';
import { BUILD_KINDS, fixedRigs, kindOf } from '../../src/survey/fixed-rigs.ts';
import { asBuilt, randomRig } from '../../src/survey/random-rig.ts';
import { healthyWorld } from '../../src/world/healthy.ts';

const RIGS = Array.from({ length: 300 }, (_, i) => randomRig(drawFrom('rigs', i)));

describe('a random bike', () => {
  it('is the same for the same seed', () => {
    expect(randomRig(drawFrom(5))).toEqual(randomRig(drawFrom(5)));
    expect(randomRig(drawFrom(5))).not.toEqual(randomRig(drawFrom(6)));
  });
  it('has every value, each one that the form accepts', () => {
    for (const rig of RIGS) {
      expect(validateRig(rig)).toEqual({ rig, refused: [] });
      expect(Object.keys(BIKE_FIELDS).filter((field) => !(field in rig))).toEqual([]);
      for (const amp of rig.amps) expect(Object.keys(AMP_FIELDS).filter((field) => !(field in amp))).toEqual([]);
    }
  });
  it('has a fuse that is sold, and that its lead carries', () => {
    for (const { amps } of RIGS)
      for (const { mainFuseA, plusLeadM2 } of amps) {
        expect(FUSE_RATINGS_A).toContain(mainFuseA);
        expect(mainFuseA).toBeLessThanOrEqual(largestFuseA({ sectionM2: plusLeadM2 }));
      }
  });
  it('loads no amplifier with less than it is rated for', () => {
    for (const { amps, frontRatedOhm, rearRatedOhm, rearPerChannel, rearWiring } of RIGS) {
      const coils: number[] = Array.from({ length: rearPerChannel }, () => rearRatedOhm);
      const rearOhm = rearWiring === 'parallel' ? parallelOhm(coils) : seriesOhm(coils);
      for (const { drives, ratedOhm } of amps) {
        if (drives !== 'rear') expect(frontRatedOhm).toBeGreaterThanOrEqual(ratedOhm);
        if (drives !== 'front') expect(rearOhm).toBeGreaterThanOrEqual(ratedOhm);
      }
    }
  });
  it('feeds each pair by what drives it, and drives no rear that is not there', () => {
    for (const { amps, frontFedBy, rearFedBy, rearFitted } of RIGS) {
      const driven = (pair: 'front' | 'rear') => amps.some(({ drives }) => drives === pair || drives === 'both');
      expect(frontFedBy).toBe(driven('front') ? 'amp' : 'unit');
      expect(rearFedBy).toBe(driven('rear') ? 'amp' : 'unit');
      if (rearFitted === 'no') expect(driven('rear')).toBe(false);
    }
  });
  it('has no amplifier for an unaltered output that it cannot get', () => {
    for (const { amps, unitKind } of RIGS)
      for (const { needs, input, turnOn } of amps) {
        if (needs === 'unaltered') expect([unitKind, input]).toEqual(['factory', 'speaker']);
        if (turnOn === 'dc') expect(input).toBe('speaker');
      }
  });
  it('is, among many, of every kind: each choice of the form turns up', () => {
    for (const [id, field] of Object.entries(BIKE_FIELDS))
      if (field.kind === 'choice')
        expect(new Set(RIGS.map((rig) => (rig as Rig)[id as keyof Rig]))).toEqual(new Set(Object.keys(field.options)));
    const amps = RIGS.flatMap((rig) => rig.amps);
    for (const [id, field] of Object.entries(AMP_FIELDS))
      if (field.kind === 'choice')
        expect(new Set(amps.map((amp) => amp[id as keyof typeof amp]))).toEqual(new Set(Object.keys(field.options)));
    expect(new Set(RIGS.map((rig) => rig.amps.length))).toEqual(new Set([0, 1, 2]));
  });
});

describe('a bike as built', () => {
  it('has coils anywhere in the band of healthy ones, 0.7 to 0.95 of what is printed', () => {
    const ratios = RIGS.map((rig, i) => {
      const { coilOhm } = healthyWorld(asBuilt(drawFrom('built', i), rig)).speakers['rear-left'];
      return coilOhm / rig.rearRatedOhm;
    });
    for (const ratio of ratios) {
      expect(ratio).toBeGreaterThanOrEqual(COIL_LOWEST_RATIO - 1e-9);
      expect(ratio).toBeLessThanOrEqual(COIL_HIGHEST_RATIO + 1e-9);
    }
    expect(Math.max(...ratios) - Math.min(...ratios)).toBeGreaterThan(0.2);
  });
});

describe('the fixed bikes', () => {
  it.each(BUILD_KINDS)('of the kind “%s” are of it, and always the same', (kind) => {
    const rigs = fixedRigs(kind, 5);
    expect(rigs.map(kindOf)).toEqual(Array(5).fill(kind));
    expect(fixedRigs(kind, 5)).toEqual(rigs);
    expect(fixedRigs(kind, 2)).toEqual(rigs.slice(0, 2));
  });
  it.each(BUILD_KINDS)('of the kind “%s” have a lithium battery one time in seven, and one of two has it', (kind) => {
    const lithium = (count: number) => fixedRigs(kind, count).filter(({ batteryKind }) => batteryKind === 'lithium');
    expect([2, 7, 14, 20].map((count) => lithium(count).length)).toEqual([1, 1, 2, 3]);
  });
});
