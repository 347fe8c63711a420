import { describe, expect, it } from 'vitest';
import { parseQuantity } from '../../../../src/compute/quantity.ts';
import { STRANGE_FAULTS } from '../../../../src/proof/strange/index.ts';
import { ridden } from '../../../../src/world/symptoms/index.ts';
import { careful } from '../bikes.ts';
import { bikeWith, numbers, oddity, readingsOf, rider, SOUND } from '../riders.ts';

describe('some volts where twelve are expected', () => {
  // A green seat of 12 kΩ before the 12 kΩ of an amplifier that is off leaves it half the battery.
  const green = STRANGE_FAULTS.find(({ id }) => id === 'fuse-seat-green') ?? expect.fail();
  const bike = ridden(green.apply(SOUND.world, 20_000));
  it('are told as none, and twelve as twelve', () => {
    const [right, told] = [careful, rider('some-volts-told-as-none')].map((sees) =>
      readingsOf(sees, 'amp-terminals', bike),
    );
    expect(Number.parseFloat(right?.['plusV'] ?? '')).toBeGreaterThan(2);
    expect(Number.parseFloat(right?.['plusV'] ?? '')).toBeLessThan(8);
    expect(told?.['plusV']).toBe('0.00 V');
    expect(told?.['batteryV']).toBe(right?.['batteryV']);
  });
  it('are no half supply: a signal wire that rests at six volts is told so', () => {
    expect(readingsOf(rider('some-volts-told-as-none'), 'half-supply', SOUND)).toEqual(
      readingsOf(careful, 'half-supply', SOUND),
    );
    expect(oddity('some-volts-told-as-none').fits(SOUND.world)).toBe(false);
  });
});

describe('an open circuit', () => {
  const open = bikeWith('coil-open@both-rear');
  it('is a 1 on an old meter, which reads as one ohm where nobody thinks of it', () => {
    const { leftOhm = '', leadsOhm } = readingsOf(rider('open-typed-as-one'), 'run-ohms', open);
    expect(leftOhm).toBe('1');
    expect(parseQuantity(leftOhm, 'Ω')).toEqual({ ok: true, value: 1 });
    expect(leadsOhm).toBe(readingsOf(careful, 'run-ohms', open)['leadsOhm']);
  });
  it('is found to be one by half of those who are asked again', () => {
    const noticed = Array.from({ length: 40 }, (_, i) => {
      const sees = rider('open-typed-as-one', `again ${i}`);
      readingsOf(sees, 'run-ohms', open);
      return readingsOf(sees, 'run-ohms', open)['leftOhm'] === 'OL';
    }).filter(Boolean).length;
    expect(noticed).toBeGreaterThan(8);
    expect(noticed).toBeLessThan(32);
  });
  it('is called a short: it reads what the leads read', () => {
    const { leftOhm, rightOhm, leadsOhm } = readingsOf(rider('open-called-a-short'), 'run-ohms', open);
    expect([leftOhm, rightOhm]).toEqual([leadsOhm, leadsOhm]);
  });
});

describe('a number that is another one each time', () => {
  it('differs from look to look by no more than a tenth, all readings of a look alike', () => {
    const sees = rider('another-number-each-time');
    const right = numbers(readingsOf(careful, 'amp-terminals', SOUND));
    const looks = Array.from({ length: 20 }, () => numbers(readingsOf(sees, 'amp-terminals', SOUND)));
    const ratios = looks.map(([batteryV = 0]) => batteryV / (right[0] ?? 0));
    expect(Math.max(...ratios) / Math.min(...ratios)).toBeLessThan(1.106);
    expect(Math.max(...ratios) / Math.min(...ratios)).toBeGreaterThan(1.03);
    for (const [batteryV = 0, plusV = 0] of looks) expect(Math.abs(batteryV - plusV)).toBeLessThan(0.05);
  });
});
