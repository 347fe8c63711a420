import { describe, expect, it } from 'vitest';
import { drawFrom } from '../../../src/observe/draw.ts';
import { STRANGE_FAULTS, strangeRig, strangeSeverity } from '../../../src/proof/strange/index.ts';
import { validateRig } from '../../../src/rig/validate.ts';
import { FAULTS, keyOf } from '../../../src/world/faults/index.ts';
import { COMPLAINTS, type ComplaintId, ridden } from '../../../src/world/symptoms/index.ts';
import { careful, saidBy, soundWorld } from './bikes.ts';

const BIKES = 60;
const worlds = Array.from({ length: BIKES }, (_, i) => soundWorld(i));

describe('a fault that exists only here', () => {
  it('is none of the model’s, and has a cause whose repair is right for it', () => {
    const known = FAULTS.map(({ id }) => id);
    expect(STRANGE_FAULTS.filter(({ id }) => known.includes(id))).toEqual([]);
    expect(new Set(STRANGE_FAULTS.map(keyOf)).size).toBe(STRANGE_FAULTS.length);
    expect(STRANGE_FAULTS.filter(({ rightCauses }) => rightCauses.length === 0)).toEqual([]);
  });

  it.each(STRANGE_FAULTS.map((fault) => [keyOf(fault), fault] as const))(
    'causes what it is weighted for: %s',
    (_, fault) => {
      for (const complaint of Object.keys(fault.weights) as ComplaintId[]) {
        const found = worlds.some(
          (sound, i) =>
            fault.fits(sound) &&
            COMPLAINTS[complaint](ridden(sound)) !== 'yes' &&
            COMPLAINTS[complaint](ridden(fault.apply(sound, strangeSeverity(drawFrom(fault.id, i), fault)))) === 'yes',
        );
        expect([complaint, found]).toEqual([complaint, true]);
      }
    },
  );

  it('of a seat that pinches is gone while the seat is off, and a dead input stage leaves the hiss of the output', () => {
    for (const [id, step] of [
      ['pinched-by-the-seat', 'run-ohms'],
      ['amp-rear-inputs-dead', 'rear-hiss'],
    ] as const) {
      const fault = STRANGE_FAULTS.find((one) => one.id === id) ?? expect.fail();
      const sound = worlds.find((world) => fault.fits(world)) ?? expect.fail();
      const bike = ridden(fault.apply(sound, strangeSeverity(drawFrom(id), fault)));
      const seen = saidBy(fault.person?.(careful) ?? careful, bike).get(step);
      expect(seen).toEqual(saidBy(careful, ridden(sound)).get(step));
      expect(seen).not.toEqual(saidBy(careful, bike).get(step));
    }
  });
  it('of an input stage is silent on its pair, with its knobs as they should be', () => {
    const fault = STRANGE_FAULTS.find(({ id }) => id === 'amp-rear-inputs-dead') ?? expect.fail();
    const sound = worlds.find((world) => fault.fits(world)) ?? expect.fail();
    const seen = saidBy(fault.person?.(careful) ?? careful, ridden(fault.apply(sound, 0)));
    expect(seen.get('amp-switches')).toEqual({ option: 'right' });
    expect(seen.get('four-corners')).toEqual({ option: 'no-rear' });
  });
});

describe('what is drawn', () => {
  it('is a bike that the form accepts, the same for the same seed', () => {
    for (let i = 0; i < 200; i++) {
      const rig = strangeRig(drawFrom('rig', i));
      expect(validateRig(rig)).toEqual({ rig, refused: [] });
      expect(strangeRig(drawFrom('rig', i))).toEqual(rig);
    }
  });
  it('is a degree within the range of its fault, often near an end', () => {
    const fault = FAULTS.find(({ severity }) => severity !== null && severity.spread === 'even') ?? expect.fail();
    const [low, high] = [fault.severity?.low ?? 0, fault.severity?.high ?? 0];
    const shares = Array.from(
      { length: 300 },
      (_, i) => (strangeSeverity(drawFrom('s', i), fault) - low) / (high - low),
    );
    expect(Math.min(...shares)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...shares)).toBeLessThanOrEqual(1);
    expect(shares.filter((share) => share < 0.2 || share > 0.8).length).toBeGreaterThan(150);
  });
});
