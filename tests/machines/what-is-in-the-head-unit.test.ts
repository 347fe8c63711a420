import { describe, expect, it } from 'vitest';
import { whatIsInTheHeadUnit } from '../../machines/what-is-in-the-head-unit.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { ride } from '../case/ride.ts';
import type { Answers, Short } from '../journey.ts';

/*
 * What each stored profile does: unaltered is full level, 12 to 14 dB of bass and another EQ with the engine running,
 * rear off on a bike built with two speakers; an amplified one is 7 dB lower and flat. Common practice, no published
 * source. Readings: 13 dB is 4.47 times (definition of the decibel); (12.6 − 2.2) / √2 = 7.35 V is the clean output.
 */
const TWO: Rig = EXAMPLE_RIGS['fork-fairing'];
const FOUR: Rig = EXAMPLE_RIGS.trunk;

const METER: Answers = { 'tools-at-hand': 'meter', 'meter-digit': '0.01' };
const tones = (v400V: string, v80V: string): Answers => ({ 'tones-off': { v400V, v80V } });
const BOOSTED = tones('0.50', '2.24');
const FLAT = tones('0.50', '0.51');
const rear = (volts: string): Answers => ({ 'rear-pair': { frontV: '2.00', leftV: volts, rightV: volts } });
const REAR_ON = rear('1.95');
const REAR_OFF = rear('0');
const top = (topV: Short | string): Answers => ({ 'top-step': typeof topV === 'string' ? { topV } : topV });
const running = (v400V: string, v80V: string): Answers => ({ 'tones-running': { v400V, v80V } });

/** Read once more, and the same. */
const again = (...steps: readonly string[]): Answers => Object.fromEntries(steps.map((id) => [`again ${id}`, 'same']));

const read = (rig: Rig, answers: Answers) => ride(whatIsInTheHeadUnit, rig, answers);

describe('what is in the head unit', () => {
  it('is the unaltered profile when the bass is boosted, the rear silent, the level full and the EQ another', () => {
    const { verdict, remedy, numbers } = read(TWO, {
      ...METER,
      ...BOOSTED,
      ...REAR_OFF,
      ...top('7.30'),
      ...running('0.56', '3.50'),
    });
    expect(verdict).toBe('profile-read');
    expect(remedy.certainty).toBe('proved');
    expect(remedy.what).toMatch(/unaltered: rear channels off, full level, bass boost in, EQ changes with the engine/);
    expect(numbers).toEqual([
      // (2.24 ∓ 0.0636) / (0.50 ± 0.0375), with 1.5 % and 3 digits of a basic meter, from memory.
      'Bass boost · 80 Hz over 400 Hz is 4.5 times, 4.0 to 5.0 possible: bass boost in',
      'Rear channels · rear over front: left nothing, right nothing: rear channels off',
      expect.stringMatching(
        /^EQ with the engine · with the engine that ratio is 1\.4 times, 1\.\d to 1\.\d possible what it was: EQ changes/,
      ),
      'Level · loudest clean step 7.3 V: full level',
    ]);
  });
  it('has its rear channels on besides when the rear reads like the front', () => {
    const { remedy } = read(TWO, { ...METER, ...BOOSTED, ...REAR_ON, ...top('7.30'), ...running('0.56', '3.50') });
    expect(remedy.certainty).toBe('proved');
    expect(remedy.what).toMatch(/rear-on: rear channels on, full level, bass boost in, EQ changes/);
  });
  it('is an amplified profile with the same EQ when flat, lowered and unmoved by the engine', () => {
    const { remedy } = read(TWO, { ...METER, ...FLAT, ...REAR_ON, ...top('3.30'), ...running('0.56', '0.57') });
    expect(remedy.certainty).toBe('proved');
    expect(remedy.what).toMatch(/amplified, same EQ: rear channels on, level lowered, bass boost out, same EQ/);
  });
  it('is the other amplified profile when the engine moves the tone by 3 dB', () => {
    const { remedy } = read(TWO, { ...METER, ...FLAT, ...REAR_ON, ...top('3.30'), ...running('0.56', '0.80') });
    expect(remedy.certainty).toBe('proved');
    expect(remedy.what).toMatch(/amplified, changing EQ: rear channels on, level lowered, bass boost out, EQ changes/);
  });
  it('is read with a basic meter too, at 1.1 V, and turned down for the running engine', () => {
    const { remedy } = read(TWO, {
      'tools-at-hand': 'meter',
      'meter-digit': '0.1',
      ...tones('1.1', '4.9'),
      'rear-pair': { frontV: '3.5', leftV: '0', rightV: '0' },
      ...top('7.3'),
      ...running('0.8', '5.0'),
    });
    expect(remedy.what).toMatch(/unaltered: rear channels off/);
  });

  it('stays likely when what was read leaves one profile, and says what was not read', () => {
    const { remedy } = read(TWO, { ...METER, ...BOOSTED, ...REAR_OFF, ...top(null), 'tones-running': null });
    expect(remedy.certainty).toBe('likely');
    expect(remedy.howSure).toBe('Not read: EQ with the engine, Level.');
    expect(remedy.minutes).toBe(20);
  });
  it('stays a short list of both amplified profiles when the engine was not started', () => {
    const { remedy } = read(TWO, { ...METER, ...FLAT, ...REAR_ON, ...top('3.30'), 'tones-running': null });
    expect(remedy.certainty).toBe('short list');
    expect(remedy.mayAlsoBe?.map(({ what }) => what)).toEqual([
      expect.stringMatching(/^Amplified, same EQ: .* same EQ/),
      expect.stringMatching(/^Amplified, changing EQ: .* EQ changes/),
    ]);
  });
  it('does not start the engine when there are no readings to compare with', () => {
    const { remedy } = read(TWO, { ...METER, 'tones-off': null, ...REAR_OFF, ...top('7.30') });
    expect(remedy.certainty).toBe('likely');
    expect(remedy.what).toMatch(/unaltered/);
  });
  it('leaves every profile open without a meter', () => {
    const { remedy, numbers } = read(TWO, { 'tools-at-hand': 'none' });
    expect(remedy.certainty).toBe('short list');
    expect(remedy.what).toMatch(/Nothing was read yet/);
    expect(numbers.every((line) => line.endsWith(': not read'))).toBe(true);
    expect(remedy.minutes).toBe(40);
  });
  it('is never the one without rear on a bike that was built with four speakers', () => {
    const { remedy } = read(FOUR, { ...METER, ...BOOSTED, 'rear-pair': null, ...top(null), 'tones-running': null });
    expect(remedy.certainty).toBe('likely');
    expect(remedy.what).toMatch(/rear channels on, full level, bass boost in/);
  });
  it('asks what the bike was built with when nobody knows', () => {
    const { verdict } = read({}, { 'unit-kind': null, 'delivered-with': 'two', 'tools-at-hand': 'none' });
    expect(verdict).toBe('profile-read');
  });

  it.each<[string, Answers]>([
    [
      'a lowered level with a bass boost',
      { ...BOOSTED, ...REAR_ON, ...top('3.30'), 'tones-running': null, ...again('top-step', 'tones-off') },
    ],
    [
      'a full level without one',
      { ...FLAT, ...REAR_ON, ...top('7.30'), 'tones-running': null, ...again('top-step', 'tones-off') },
    ],
    [
      'a lowered level with a silent rear',
      { ...FLAT, ...REAR_OFF, ...top('3.30'), 'tones-running': null, ...again('top-step', 'rear-pair') },
    ],
    [
      'a boost with the same EQ',
      { ...BOOSTED, ...REAR_ON, ...top('7.30'), ...running('0.56', '2.51'), ...again('top-step', 'tones-running') },
    ],
  ])('is called impossible for %s, which no stored profile has, once it was read twice', (_, answers) => {
    const { remedy } = read(TWO, { ...METER, ...answers });
    expect(remedy.certainty).toBe('short list');
    expect(remedy.what).toMatch(/No stored profile does all of this/);
    expect(remedy.howSure).toMatch(/again/);
  });

  it('is what the second reading says where the first fits nothing', () => {
    const { remedy } = read(TWO, {
      ...METER,
      ...BOOSTED,
      ...REAR_ON,
      ...top('3.30'),
      'tones-running': null,
      'again top-step': { topV: '7.2' },
    });
    expect(remedy.what).toMatch(/rear-on: rear channels on, full level/);
  });
  it('says that a rear pair is dead, and which reading was unclear', () => {
    const { remedy, numbers } = read(TWO, {
      ...METER,
      ...tones('0.50', '0.95'),
      'rear-pair': { frontV: '2.00', leftV: '1.95', rightV: '0' },
      ...top(null),
      'tones-running': null,
    });
    expect(remedy.fix[0]).toMatch(/^One rear pair gives nothing while the other does: a fault of that pair/);
    expect(remedy.howSure).toBe('Read, but unclear: Bass boost. Not read: EQ with the engine, Level.');
    expect(numbers).toContainEqual(expect.stringMatching(/^Bass boost · .*: read, unclear$/));
    expect(remedy.certainty).not.toBe('proved');
  });

  it('is nothing at all in a replaced head unit', () => {
    const { verdict, remedy } = read({}, { 'unit-kind': 'replaced' });
    expect(verdict).toBe('replaced-unit-has-no-profile');
    expect(remedy.certainty).toBe('proved');
    expect(read({ ...TWO, unitKind: 'replaced' }, {}).verdict).toBe('replaced-unit-has-no-profile');
  });
});

describe('the order of the readings', () => {
  it('is engine off first, the running engine last, so that it is started once', () => {
    const asked = Object.keys(whatIsInTheHeadUnit.states);
    const at = (state: string) => asked.indexOf(state);
    expect(at('measureTones')).toBeLessThan(at('measureRearPair'));
    expect(at('measureRearPair')).toBeLessThan(at('measureTopStep'));
    expect(at('measureTopStep')).toBeLessThan(at('measureTonesRunning'));
  });
});
