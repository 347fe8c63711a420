import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AMP_FIELDS, BIKE_FIELDS } from '../../src/rig/fields.ts';
import {
  ampDriving,
  ampEstimate,
  chosen,
  estimate,
  NOTHING_KNOWN,
  withAmpKnown,
  withKnown,
} from '../../src/rig/rig.ts';
import { anyAmp, anyRig } from './any-rig.ts';

const pairs = fc.constantFrom('front' as const, 'rear' as const);
const numberFields = <T extends Record<string, { kind: string }>>(fields: T) =>
  Object.keys(fields).filter((id) => fields[id]?.kind === 'number');
type NumberId = Parameters<typeof estimate>[1];
type AmpNumberId = Parameters<typeof ampEstimate>[1];

describe('estimate', () => {
  it.each(numberFields(BIKE_FIELDS) as NumberId[])('gives %s its typical value and usual range while unknown', (id) => {
    const { typical, usual } = BIKE_FIELDS[id];
    expect(estimate(NOTHING_KNOWN, id)).toEqual({ value: typical, low: usual[0], high: usual[1], assumed: true });
  });
  it('gives a known value no width of its own', () => {
    expect(estimate({ supplyOffV: 12.9 }, 'supplyOffV')).toEqual({
      value: 12.9,
      low: 12.9,
      high: 12.9,
      assumed: false,
    });
  });
  it('lies between its own ends for every bike', () => {
    fc.assert(
      fc.property(anyRig, fc.constantFrom(...(numberFields(BIKE_FIELDS) as NumberId[])), (rig, id) => {
        const { value, low, high, assumed } = estimate(rig, id);
        expect(low).toBeLessThanOrEqual(value);
        expect(value).toBeLessThanOrEqual(high);
        expect(assumed).toBe(rig[id] === undefined);
      }),
    );
  });
});

describe('ampEstimate', () => {
  it.each(numberFields(AMP_FIELDS) as AmpNumberId[])(
    'gives %s its typical value while unknown, else what is known',
    (id) => {
      const { typical, usual } = AMP_FIELDS[id];
      expect(ampEstimate({}, id)).toEqual({ value: typical, low: usual[0], high: usual[1], assumed: true });
      expect(ampEstimate({ [id]: 7 }, id)).toEqual({ value: 7, low: 7, high: 7, assumed: false });
    },
  );
});

describe('chosen', () => {
  it('takes the option of the typical build while nobody knows', () => {
    expect(chosen(NOTHING_KNOWN, 'rearFedBy')).toBe('unit');
    expect(chosen({ rearFedBy: 'amp' }, 'rearFedBy')).toBe('amp');
  });
});

describe('ampDriving', () => {
  const front = { drives: 'front' } as const;
  const rear = { drives: 'rear' } as const;
  const both = { drives: 'both' } as const;
  it('finds the amplifier of a pair, wherever it stands in the list', () => {
    expect(ampDriving({ amps: [front, rear] }, 'rear')).toBe(rear);
    expect(ampDriving({ amps: [front, rear] }, 'front')).toBe(front);
  });
  it('takes one that drives both for either pair', () => {
    expect(ampDriving({ amps: [both] }, 'front')).toBe(both);
    expect(ampDriving({ amps: [both] }, 'rear')).toBe(both);
  });
  it('finds none where none is listed, none drives the pair, or nobody said what it drives', () => {
    expect(ampDriving(NOTHING_KNOWN, 'rear')).toBeUndefined();
    expect(ampDriving({ amps: [] }, 'rear')).toBeUndefined();
    expect(ampDriving({ amps: [front] }, 'rear')).toBeUndefined();
    expect(ampDriving({ amps: [{ turnOn: 'dc' }] }, 'rear')).toBeUndefined();
  });
});

describe('withKnown', () => {
  it('lets the later word win and leaves the rig that it was given as it was', () => {
    const rig = { unitKind: 'factory', batteryAh: 20 } as const;
    expect(withKnown(rig, { unitKind: 'replaced' })).toEqual({ unitKind: 'replaced', batteryAh: 20 });
    expect(rig).toEqual({ unitKind: 'factory', batteryAh: 20 });
  });
});

describe('withAmpKnown', () => {
  it('adds to the amplifier that drives the pair and leaves the others alone', () => {
    const rig = { amps: [{ drives: 'front', powerW: 50 }, { drives: 'rear' }] } as const;
    expect(withAmpKnown(rig, 'rear', { turnOn: 'dc' }).amps).toEqual([
      { drives: 'front', powerW: 50 },
      { drives: 'rear', turnOn: 'dc' },
    ]);
  });
  it('takes one of which nobody said what it drives as the one meant', () => {
    const rig = { amps: [{ drives: 'front' }, { powerW: 75 }] } as const;
    expect(withAmpKnown(rig, 'rear', { input: 'line' }).amps).toEqual([
      { drives: 'front' },
      { powerW: 75, drives: 'rear', input: 'line' },
    ]);
  });
  it('lists one more where none can be meant', () => {
    expect(withAmpKnown({ amps: [{ drives: 'front' }] }, 'rear', {}).amps).toEqual([
      { drives: 'front' },
      { drives: 'rear' },
    ]);
    expect(withAmpKnown(NOTHING_KNOWN, 'rear', { turnOn: 'wire' }).amps).toEqual([{ drives: 'rear', turnOn: 'wire' }]);
  });
  it('is found again by the pair, holds what was learnt, and learning the same twice changes nothing', () => {
    fc.assert(
      fc.property(anyRig, pairs, anyAmp, (rig, pair, { drives: _, ...learnt }) => {
        const once = withAmpKnown(rig, pair, learnt);
        expect(ampDriving(once, pair)).toMatchObject(learnt);
        expect(withAmpKnown(once, pair, learnt)).toEqual(once);
        expect(once.amps?.length ?? 0).toBeLessThanOrEqual((rig.amps?.length ?? 0) + 1);
      }),
    );
  });
});
