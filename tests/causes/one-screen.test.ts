import { describe, expect, it } from 'vitest';
import { CAUSES } from '../../src/causes/all.ts';
import { outputInWords } from '../../src/causes/amp-load.ts';
import { assumedFor } from '../../src/causes/assumed.ts';
import { type Cause, titleOf } from '../../src/causes/cause.ts';
import { figureText } from '../../src/causes/figure.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { answeredWith, type Findings } from '../../src/steps/outcome.ts';
import { linesOf } from './found.ts';
import { ON_UNIT, onBike } from './on-bike.ts';

/* A verdict is read as a whole: what one line gives, no other line on the screen gives otherwise. Arithmetic alone. */

const withAmp = (amp: NonNullable<Rig['amps']>[number]): Rig => ({ rearFedBy: 'amp', amps: [amp] });
const RIGS: readonly Rig[] = [
  {},
  ON_UNIT,
  ...Object.values(EXAMPLE_RIGS),
  withAmp({ drives: 'rear' }),
  withAmp({ drives: 'both' }),
  withAmp({ drives: 'rear', powerW: 75 }),
  withAmp({ drives: 'rear', ratedOhm: 4 }),
  withAmp({ drives: 'rear', channels: 4 }),
  withAmp({ drives: 'front', channels: 5, plusLeadM2: 5.26e-6 }),
];
const told = (rig: Rig, corner?: string): Findings => ({
  ...onBike(rig),
  facts: corner === undefined ? {} : { 'which-corner': { option: corner } },
});
const BIKES = RIGS.flatMap((rig) => [told(rig), told(rig, 'front-left'), told(rig, 'left')]);

const isFrontLeft = ({ facts }: Findings) => answeredWith(facts, 'which-corner', 'front-left');

/** Everything on the screen of a verdict that has a figure in it. */
function screen(cause: Cause, f: Findings): readonly string[] {
  const remedy = cause.remedy(f);
  const lines = linesOf(remedy).map((line) => line.replace(/Four of 150 W need.*/, ''));
  const figures = remedy.numbers.map((figure) => `${figure.label}: ${figureText(figure)}`);
  return [...lines, ...figures, ...assumedFor((g) => cause.remedy(g), f)];
}
const found = (lines: readonly string[], ...patterns: readonly RegExp[]): readonly string[] =>
  lines.flatMap((line) => patterns.flatMap((pattern) => [...line.matchAll(pattern)].map(([, value = '']) => value)));
const on = (bad: (lines: readonly string[], f: Findings, cause: Cause) => readonly string[]): readonly string[] => [
  ...new Set(
    CAUSES.flatMap((cause) => BIKES.flatMap((f) => bad(screen(cause, f), f, cause).map((it) => `${cause.id}: ${it}`))),
  ),
];
const twoOf = (values: readonly string[], what: string) => {
  const different = [...new Set(values)];
  return different.length > 1 ? [`${what} ${different.join(' and ')}`] : [];
};

describe('the screen of a verdict', () => {
  it('names one power, one load and one number of channels of an amplifier, known or assumed', () => {
    const two = on((lines) => [
      ...twoOf(
        found(lines, /([\d.]+) W into/g, /channels of ([\d.]+) W/g, /Sine power of one channel[^:]*: ([\d.]+)/g),
        'watts',
      ),
      ...twoOf(found(lines, /W into ([\d.]+) Ω/g, /Rated load of one channel[^:]*: ([\d.]+)/g), 'ohms'),
      ...twoOf(found(lines, /([\d.]+) channels of/g, /Channels[^:]*: ([\d.]+)/g), 'channels'),
    ]);
    expect(two).toEqual([]);
  });
  it('gives a square root that comes to the volts beside it, with the digits that are shown', () => {
    const RATED = /([\d.]+) W into ([\d.]+) Ω.*: ([\d.]+) V$/;
    const [, above = 0, below = 1] = (/(\d)\/(\d) × watts × ohms/.exec(outputInWords(onBike({}))) ?? []).map(Number);
    const sums = CAUSES.flatMap((cause) =>
      BIKES.flatMap((f) => screen(cause, f).flatMap((line) => RATED.exec(line)?.slice(1).map(Number) ?? [])),
    );
    expect(sums.length).toBeGreaterThan(0);
    for (let i = 0; i < sums.length; i += 3) {
      const [powerW = 0, loadOhm = 0, outputV] = sums.slice(i, i + 3);
      expect(Number(Math.sqrt((above / below) * powerW * loadOhm).toPrecision(3))).toBe(outputV);
    }
  });
  it('says nothing of a rear run where the silent speaker is a front one, or may be', () => {
    const rear = on((lines, f, cause) =>
      cause.id === 'front-plug-bad' || (isFrontLeft(f) && /front/i.test(titleOf(cause, f)))
        ? lines.filter((line) => /^Rear speaker/.test(line))
        : [],
    );
    expect(rear).toEqual([]);
  });
});
