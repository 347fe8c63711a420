import { describe, expect, it } from 'vitest';
import { careful } from '../bikes.ts';
import { bikeWith, numbers, readingsOf, rider, SOUND } from '../riders.ts';

describe('plugs left on', () => {
  it('show some kilohms to the frame where nothing touches it, and a wire on the frame as ever', () => {
    const lowest = (id: string, bike = SOUND) => readingsOf(rider(id), 'wire-to-frame', bike)['lowestOhm'] ?? '';
    expect(readingsOf(careful, 'wire-to-frame', SOUND)).toEqual({ lowestOhm: 'OL' });
    expect(lowest('plugs-left-on')).toMatch(/^[\d.]+ kΩ$/);
    expect(Number.parseFloat(lowest('plugs-left-on'))).toBeGreaterThan(0.5);
    expect(Number.parseFloat(lowest('plugs-left-on', bikeWith('speaker-wire-to-frame@both-rear')))).toBeLessThan(5);
  });
});

describe('music for the tone', () => {
  it('reads half to one and a half times as much, each pair another share, and nothing where nothing is', () => {
    // Residue is read with the tone off: there is none on this bike, with music or without.
    const pairs = ({ frontV = '', leftV = '', rightV = '' }: ReturnType<typeof readingsOf>) =>
      numbers({ frontV, leftV, rightV });
    const right = pairs(readingsOf(careful, 'rear-pair', SOUND));
    const looks = Array.from({ length: 30 }, (_, i) =>
      pairs(readingsOf(rider('music-for-the-tone', `music ${i}`), 'rear-pair', SOUND)),
    );
    const ratios = looks.flatMap((look) => look.map((volts, i) => volts / (right[i] ?? 0)));
    expect(Math.min(...ratios)).toBeGreaterThan(0.49);
    expect(Math.max(...ratios)).toBeLessThan(1.61);
    expect(looks.filter(([frontV = 0, leftV = 0]) => leftV < 0.7 * frontV).length).toBeGreaterThan(3);
    const dead = bikeWith('rear-channels-disabled');
    expect(readingsOf(rider('music-for-the-tone'), 'rear-pair', dead)).toMatchObject({ leftV: '0.000 V' });
  });
  it('leaves DC as it is', () => {
    expect(readingsOf(rider('music-for-the-tone'), 'amp-terminals', SOUND)).toEqual(
      readingsOf(careful, 'amp-terminals', SOUND),
    );
  });
});
