import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { isAReflashNeeded } from '../../machines/is-a-reflash-needed.ts';
import { whatIsInTheHeadUnit } from '../../machines/what-is-in-the-head-unit.ts';
import { changesInWords, doesInWords, propertyIn, SAID } from '../../src/plan/demand.ts';
import { EVERY_PROFILE, PROPERTIES, STORED_PROFILES } from '../../src/plan/profile/profile.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import { BIKE_FIELDS } from '../../src/rig/fields.ts';
import { CAUTIONS } from '../../src/steps/cautions.ts';
import { inWords } from '../../src/steps/step.ts';
import { ride } from '../case/ride.ts';
import { on } from '../steps/situation.ts';
import { SAMPLE } from './routes.ts';

/* The plan and the reading of a profile are about the same four properties, so they use the same words and figures. */

const WORDS = Object.values(SAID).flat();
const READ = ride(whatIsInTheHeadUnit, EXAMPLE_RIGS['fork-fairing'], {
  'tools-at-hand': 'meter',
  'meter-digit': '0.01',
  'tones-off': { v400V: '0.50', v80V: '0.51' },
  'rear-pair': { frontV: '2.00', leftV: '1.95', rightV: '1.95' },
  'top-step': { topV: '3.30' },
  'tones-running': { v400V: '0.50', v80V: '0.51' },
});

describe('the words for the four properties', () => {
  it('name each property and its opposite once', () => {
    expect(new Set(WORDS).size).toBe(2 * PROPERTIES.length);
  });
  it('are those in which the reading says what is stored', () => {
    expect(READ.remedy.what).toContain(doesInWords('amplified-same'));
    for (const { value } of READ.remedy.numbers) expect(WORDS).toContain(value);
  });
  it('are those in which the plan says what to change, on the page and on the paper for the counter', () => {
    let changes = 0;
    for (const { remedy } of SAMPLE) {
      if (remedy?.demand?.kind !== 'select') continue;
      changes += 1;
      const change = changesInWords(remedy.demand.to);
      for (const part of change.split(', ')) expect(WORDS).toContain(part);
      expect(remedy.sheet?.parts[0]?.lines.join(' ')).toContain(`Please change: ${change}`);
      const moves = remedy.demand.orMove !== undefined;
      if (!moves) expect(remedy.fix.join(' ')).toContain(`Change: ${change}.`);
    }
    expect(changes).toBeGreaterThan(100);
  });
  it('are those by which what is still possible is told apart, and what an answer hangs on', () => {
    const whens = SAMPLE.flatMap(({ verdict, remedy }) => [
      ...(remedy?.unless ?? []).map(({ when }) => when),
      ...(verdict === 'plan-measure-first' || verdict === 'plan-likely-stay'
        ? (remedy?.findings ?? []).map(({ when }) => when)
        : []),
    ]);
    expect(whens.length).toBeGreaterThan(100);
    for (const when of whens) for (const part of when.split(', ')) expect(WORDS).toContain(part);
  });
  it('are on the readings that both have taken down, in the same words', () => {
    for (const { remedy } of SAMPLE) {
      const read =
        remedy?.sheet?.parts[0]?.lines.filter((line) =>
          /^(80 Hz over|Rear over|Loudest clean step \d|With the engine that)/.test(line),
        ) ?? [];
      for (const line of read)
        expect(
          [...WORDS, 'unclear'].some((one) => line.endsWith(`: ${one}.`)),
          line,
        ).toBe(true);
    }
  });
  it('are told of every profile', () => {
    for (const profile of EVERY_PROFILE)
      for (const property of PROPERTIES)
        expect(doesInWords(profile)).toContain(propertyIn(property, STORED_PROFILES[profile][property]));
  });
});

describe('the figure for “lowered”', () => {
  const { typical, usual } = BIKE_FIELDS.loweredByDb as unknown as {
    readonly typical: number;
    readonly usual: readonly [number, number];
  };
  const [low, high] = usual;
  const BAND = `${low} to ${high} dB`;
  /** Numbers of decibels beside a word for less level. 20 dB is this and the boost of 13 together, 9 dB a gain. */
  const FIGURES =
    /(\d+(?: to \d+)?) ?dB (?:quieter|less level|lower(?:ed)?\b|below it|louder, and)|(?:lower(?:s|ed)?|quieter)[^.|]{0,40}? by about (\d+(?: to \d+)?) dB|ends? about (\d+) dB below|(\d+) dB less where the level/g;
  const figuresIn = (text: string) => [...text.matchAll(FIGURES)].map((match) => match.slice(1).find(Boolean));

  it('is one value, 7 dB, and one band, 6 to 8 dB (common practice, no published source)', () => {
    expect({ typical, low, high }).toEqual({ typical: 7, low: 6, high: 8 });
  });
  it('is that band in every verdict of a bike of which nobody knows it', () => {
    const said = SAMPLE.filter(({ rig }) => rig.loweredByDb === undefined).flatMap(({ remedy }) =>
      [...JSON.stringify(remedy).matchAll(/(\d+ to \d+|\d+) dB quieter/g)].map(([, figure]) => `${figure} dB`),
    );
    expect(said.length).toBeGreaterThan(30);
    expect([...new Set(said)]).toEqual([BAND]);
  });
  it('is that value wherever one is written: in cautions, in the steps of both flows, in every article', () => {
    const texts = [
      ...Object.values(CAUTIONS),
      ...[isAReflashNeeded, whatIsInTheHeadUnit].flatMap(({ steps }) =>
        [...steps.values()].flatMap((step) => [
          inWords(step.short, on({})),
          step.why ?? '',
          'formula' in step ? String(step.formula) : '',
        ]),
      ),
      ...readdirSync('content/explanation').map((file) =>
        readFileSync(`content/explanation/${file}`, 'utf8').replace(/\s+/g, ' '),
      ),
    ];
    const said = texts.flatMap(figuresIn);
    expect(said.length).toBeGreaterThan(5);
    expect(said.filter((figure) => figure !== String(typical) && figure !== `${low} to ${high}`)).toEqual([]);
  });
});
