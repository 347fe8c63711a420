import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatQuantity, formatRange } from '../../src/compute/quantity.ts';
import { loweredV } from '../../src/rig/levels.ts';
import { ampDriving } from '../../src/rig/rig.ts';
import { ampIn } from '../../src/steps/amplifier/amp-in.ts';
import { ampOut } from '../../src/steps/amplifier/amp-out.ts';
import { halfSupply } from '../../src/steps/amplifier/half-supply.ts';
import { inputSides } from '../../src/steps/amplifier/input-sides.ts';
import { outputSides } from '../../src/steps/amplifier/output-sides.ts';
import { usable, valuesIn } from '../../src/steps/outcome.ts';
import { tonesOff } from '../../src/steps/profile/tones-off.ts';
import { tonesRunning } from '../../src/steps/profile/tones-running.ts';
import { topStep } from '../../src/steps/profile/top-step.ts';
import { coilOhms } from '../../src/steps/runs/coil-ohms.ts';
import { runOhms } from '../../src/steps/runs/run-ohms.ts';
import { wireToFrame } from '../../src/steps/runs/wire-to-frame.ts';
import { type Band, bandOf, type ReadingStep, type Situation, shownBand, type Values } from '../../src/steps/step.ts';
import { batteryRipple } from '../../src/steps/supply/battery-ripple.ts';
import { chargingVolts } from '../../src/steps/supply/charging-volts.ts';
import { fuseSides } from '../../src/steps/supply/fuse-sides.ts';
import { jointDrop } from '../../src/steps/supply/joint-drop.ts';
import { lowestVolts } from '../../src/steps/supply/lowest-volts.ts';
import { rearPair } from '../../src/steps/unit/rear-pair.ts';
import { unitSides } from '../../src/steps/unit/unit-sides.ts';
import { evenly } from '../compute/evenly.ts';
import { anyRig } from '../rig/any-rig.ts';
import { anyStep, type Digit, on } from './situation.ts';

/** Readings as a meter may show them: one that sets the scale, and the rest as multiples of it up to six. */
function readingsOf(step: ReadingStep): fc.Arbitrary<Readonly<Record<string, string>>> {
  const written = (value: number) => value.toFixed(4);
  const ohms = fc.oneof(
    evenly(0, 12).map(written),
    evenly(-1, 6).map((decade) => written(10 ** decade)),
    fc.constant('OL'),
  );
  const own: Readonly<Record<string, fc.Arbitrary<string>>> = {
    leadsOhm: evenly(0, 1).map(written),
    batteryV: evenly(8, 16).map(written),
    plusV: evenly(-0.5, 18).map(written),
    minusV: evenly(-0.5, 18).map(written),
    residueV: evenly(0, 0.5).map(written),
    plusJointV: evenly(0, 0.12).map(written),
    groundJointV: evenly(0, 0.12).map(written),
    topV: evenly(0, 16).map(written),
  };
  return evenly(0.2, 4).chain((scaleV) =>
    fc.record(
      Object.fromEntries(
        Object.entries(step.readings).map(([name, { unit }]) => [
          name,
          own[name] ?? (unit === 'Ω' ? ohms : evenly(0, 6).map((times) => written(times * scaleV))),
        ]),
      ),
    ),
  );
}

const OFF = { v400V: '0.5', v80V: '2.2', v1000V: '0.5', v4000V: '0.5' };
const situations: fc.Arbitrary<Situation> = fc
  .tuple(anyRig, fc.constantFrom<Digit>('0.001', '0.01', '0.1'))
  .map(([rig, digit]) => on(rig, digit, { 'tones-off': { readings: OFF } }));

type Labels = Readonly<Record<string, string | undefined>>;
/** What a step may make of the bands that its readings fall in. */
type Meaning = (labels: Labels, values: Values) => readonly string[];

const both = ({ leftV, rightV }: Labels) => [leftV, rightV];
const silent = (labels: Labels) => both(labels).filter((label) => label === 'nothing').length;
const worst = (labels: Labels, order: readonly (readonly [label: string, outcome: string])[], otherwise: string) => [
  order.find(([label]) => Object.values(labels).includes(label))?.[1] ?? otherwise,
];

type Meant = readonly [step: { readonly id: string; readonly kind: 'reading' }, Meaning];
const MEANINGS: readonly Meant[] = [
  [
    rearPair,
    (labels) => {
      if (silent(labels) > 0) return [silent(labels) === 2 ? 'none' : 'one-only'];
      return [both(labels).every((label) => label === 'healthy') ? 'ok' : 'uneven'];
    },
  ],
  [
    ampIn,
    (labels) => {
      if (silent(labels) === 2) return ['none'];
      // On a line-level lead two sides that are there may still differ too much.
      if (both(labels).every((label) => label === 'a signal arrives')) return ['ok', 'low'];
      return [both(labels).every((label) => label === 'healthy') ? 'ok' : 'low'];
    },
  ],
  [
    ampOut,
    (labels) =>
      worst(
        labels,
        [
          ['nothing', 'none'],
          ['weak', 'low'],
        ],
        'ok',
      ),
  ],
  ...[unitSides, unitSides.of('front'), inputSides, outputSides].map(
    (step): Meant => [
      step,
      (labels) => {
        if (silent(labels) > 0) return ['one-only'];
        return [both(labels).every((label) => label === 'healthy') ? 'alike' : 'uneven'];
      },
    ],
  ),
  [
    halfSupply,
    ({ plusV, minusV }, values) => {
      const labels = [plusV ?? 'too high', minusV ?? 'too high'];
      if (labels.every((label) => label === 'no DC')) return ['zero'];
      const apartV = Math.abs((values['plusV'] ?? 0) - (values['minusV'] ?? 0));
      if (apartV > 0.5 || labels.includes('too high')) return ['one-odd'];
      return [labels.every((label) => label === 'half the supply') ? 'half' : 'unclear'];
    },
  ],
  [
    runOhms,
    (labels) =>
      worst(
        labels,
        [
          ['open', 'open'],
          ['shorted', 'low'],
          ['bad contact', 'high'],
          ['unclear', 'unclear'],
          ['far less than the other', 'unclear'],
        ],
        'ok',
      ),
  ],
  [
    coilOhms,
    (labels) =>
      worst(
        labels,
        [
          ['open', 'open'],
          ['shorted', 'low'],
          ['unclear', 'unclear'],
        ],
        'ok',
      ),
  ],
  [
    wireToFrame,
    (labels) =>
      worst(
        labels,
        [
          ['touching', 'shorted'],
          ['unclear', 'unclear'],
        ],
        'clear',
      ),
  ],
  [
    jointDrop,
    ({ plusJointV, groundJointV }) => {
      if (plusJointV === 'bad joint' && groundJointV === 'bad joint') return ['plus', 'ground'];
      if (plusJointV === 'bad joint') return ['plus'];
      if (groundJointV === 'bad joint') return ['ground'];
      return [plusJointV === 'healthy' && groundJointV === 'healthy' ? 'ok' : 'unclear'];
    },
  ],
  [
    lowestVolts,
    ({ lowestV }) => [
      lowestV === 'no supply' ? 'none' : lowestV === 'pulled down' ? 'sags' : lowestV === 'holds' ? 'holds' : 'unclear',
    ],
  ],
  [
    chargingVolts,
    ({ idleV, fastV }) => {
      if (idleV === 'too high' || fastV === 'too high') return ['high'];
      if (fastV === 'too low') return ['low'];
      return [idleV === 'nothing fills it' ? 'idle-low' : 'fills'];
    },
  ],
  [
    fuseSides,
    ({ inV, outV }) => {
      if (inV === 'no supply') return ['no-feed'];
      if (outV === 'no supply') return ['open'];
      return [inV === 'healthy' && outV === 'healthy' ? 'whole' : 'sags'];
    },
  ],
  [batteryRipple, ({ rippleV }) => [rippleV === 'smooth' ? 'ok' : rippleV === 'far too much' ? 'high' : 'raised']],
  [topStep, ({ topV }) => [topV === 'full' || topV === 'lowered' ? topV : 'unclear']],
  // The digits of the meter can leave it open what the band says.
  [tonesOff, ({ v80V }) => ['unclear', v80V ?? 'boosted']],
  [
    tonesRunning,
    (labels) => {
      const moved = Object.values(labels).some((label) => label !== 'the same');
      return ['unclear', moved ? 'changes' : 'same'];
    },
  ],
];

const bandsIn = (step: ReadingStep, values: Values, s: Situation): readonly (readonly [string, readonly Band[]])[] =>
  Object.keys(step.readings).flatMap((name) => {
    const bands = values[name] === undefined ? null : step.bands(name, values, s);
    return bands ? [[name, bands] as const] : [];
  });

describe.each(MEANINGS.map(([step, meaning]) => [step.id, anyStep(step), meaning] as const))(
  'the bands of %s',
  (_, step, meaning) => {
    it('lie side by side from low to high, on every bike, also while a reading is still being typed', () => {
      fc.assert(
        fc.property(situations, readingsOf(step), (s, readings) => {
          for (const [, bands] of bandsIn(step, valuesIn({ readings }, step), s)) {
            expect(bands.length).toBeGreaterThan(1);
            for (const [i, { low, high }] of bands.entries()) {
              expect(low).toBeLessThanOrEqual(high);
              if (i > 0) expect(low).toBe(bands[i - 1]?.high);
            }
          }
        }),
      );
    });

    it('have a part that is healthy or known, and a name for every part', () => {
      fc.assert(
        fc.property(situations, readingsOf(step), (s, readings) => {
          for (const [, bands] of bandsIn(step, valuesIn({ readings }, step), s)) {
            expect(bands.some(({ mood }) => mood === 'good')).toBe(true);
            expect(bands.every(({ label }) => label !== '')).toBe(true);
          }
        }),
        { numRuns: 20 },
      );
    });

    it('show what the outcome will be: the band that is drawn and the answer that is given agree', () => {
      let seen = 0;
      fc.assert(
        fc.property(situations, readingsOf(step), (s, readings) => {
          fc.pre(usable(step, { readings }, s));
          const values = valuesIn({ readings }, step);
          const labels = Object.fromEntries(
            bandsIn(step, values, s).map(([name, bands]) => [name, shownBand(bands, values[name] ?? 0)?.label]),
          );
          expect(meaning(labels, values)).toContain(step.judge(values, s));
          seen += 1;
        }),
        { numRuns: 300 },
      );
      expect(seen).toBe(300);
    });
  },
);

describe('what a step calls healthy', () => {
  const good = (step: ReadingStep, reading: string, values: Values, s: Situation) => {
    const band = step.bands(reading, values, s)?.find(({ mood }) => mood === 'good');
    if (!band) throw new Error(`${step.id} has no healthy band for ${reading}`);
    return band;
  };
  const across = (
    step: { readonly id: string; readonly kind: 'reading' },
    reading: string,
    values: Values,
    where: (s: Situation) => boolean = () => true,
  ) => {
    const any = anyStep(step);
    fc.assert(
      fc.property(situations, (s) => {
        fc.pre(where(s) && !any.unusable?.(values, s));
        const { low, high } = good(any, reading, values, s);
        expect(any.healthy(values, s)).toContain(formatRange(low, high, any.readings[reading]?.unit ?? 'V'));
      }),
    );
  };
  it('is the healthy band of the rear pairs, in volts', () => across(rearPair, 'leftV', { frontV: 3.3 }));
  it('is the healthy band of the amplifier’s inputs, in volts', () =>
    across(ampIn, 'leftV', { sentV: 3.3 }, ({ rig }) => ampDriving(rig, 'rear')?.input !== 'line'));
  it('is the band of half the supply, in volts', () => across(halfSupply, 'plusV', { batteryV: 12.4 }));
  it('is the healthy band of the run, in ohms', () => across(runOhms, 'leftOhm', { leadsOhm: 0 }));
  it('is the band of a coil that passes, in ohms', () => across(coilOhms, 'coilOhm', { leadsOhm: 0 }));
  it('is the band that stays the same with the engine running, in volts', () =>
    across(tonesRunning, 'v80V', { v400V: 0.9, v80V: 2 }));
  it('is everything above the least of a healthy output', () => {
    fc.assert(
      fc.property(situations, (s) => {
        const values = { inV: 3.3, residueV: 0 };
        const { low } = good(anyStep(ampOut), 'leftV', values, s);
        expect(ampOut.healthy(values, s)).toContain(`above ${formatQuantity(low, 'V', 2)}`);
      }),
    );
  });
  it('is full from one number to the other at the loudest step, and lowered at a number below it', () => {
    fc.assert(
      fc.property(situations, (s) => {
        const bands = anyStep(topStep).bands('topV', {}, s) ?? [];
        const [lowered, , full] = bands;
        expect(topStep.healthy({}, s)).toContain(formatRange(full?.low ?? 0, full?.high ?? 0, 'V'));
        expect(topStep.healthy({}, s)).toMatch(/A lowered one ends at [^.]/);
        expect(lowered?.high).toBeGreaterThan(loweredV(s.rig).high);
      }),
    );
  });
  it('is flat between two numbers at 80 Hz and boosted above a third', () => {
    const [, , flat, , boosted] = anyStep(tonesOff).bands('v80V', { v400V: 0.5 }, on({})) ?? [];
    const text = tonesOff.healthy({ v400V: 0.5 }, on({}));
    expect(text).toContain(formatRange(flat?.low ?? 0, flat?.high ?? 0, 'V'));
    expect(text).toContain(`above ${formatQuantity(boosted?.low ?? 0, 'V', 2)}`);
  });
});

describe('bandOf', () => {
  const BANDS: readonly Band[] = [
    { label: 'low', low: 0, high: 1, mood: 'bad' },
    { label: 'good', low: 1, high: 2, mood: 'good' },
    { label: 'open', low: 2, high: Infinity, mood: 'bad' },
  ];
  it.each([
    [0, 'low'],
    [0.999, 'low'],
    [1, 'good'],
    [1.999, 'good'],
    [2, 'open'],
    [Infinity, 'open'],
    [-0.001, undefined],
    [Number.NaN, undefined],
  ])('puts %f into %s: an edge belongs to the band above it', (value, label) => {
    expect(bandOf(BANDS, value)?.label).toBe(label);
  });
  it('finds none above a scale that ends', () => expect(bandOf(BANDS.slice(0, 2), 2)).toBeUndefined());
});
