import { describe, expect, it } from 'vitest';
import { isAReflashNeeded } from '../../machines/is-a-reflash-needed.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { ride } from '../case/ride.ts';
import { factory, listeningAmp, measured, never, noAmp, twoAmps, walk, wireAmp } from '../plan/routes.ts';

/*
 * Builds that a table of plain cases gets wrong, each asked as its owner would. What fits which profile is common practice
 * of the trade, no published source.
 */

const front = (drives: 'amp' | 'unit') => ({ 'front-build': drives });
const rear = (drives: 'amp' | 'unit' | 'none') => ({ 'rear-build': drives });
const words = (text: string, count: number) => text.split(/\s+/).slice(0, count).join(' ');

describe('two kinds of amplifier', () => {
  const both = {
    'planned-change': 'amp-added',
    ...factory,
    ...twoAmps,
    'amp-front-kind': 'add-on',
    'amp-front-turn-on': 'wire',
    'amp-front-needs': 'any',
    'amp-rear-kind': 'add-on',
    'amp-rear-turn-on': 'signal',
    'wish-same-eq': 'no',
    'rear-inputs': 'own',
    ...never,
  };
  it('go by the one that is hardest to please, and the other is protected from the boost', () => {
    const { verdict, remedy } = walk({ ...both, 'amp-rear-needs': 'unaltered' });
    expect(verdict).toBe('plan-enable-rear');
    expect(remedy.notBuy.join()).toContain('An amplified profile');
    expect(remedy.fix.join()).toMatch(/The front amplifier: speaker-level input range, high-pass at 80 to 100 Hz/);
  });
  it('are not told of the rear channels alone from memory on a bike that was built with an amplifier', () => {
    const needy = { ...both, 'amp-rear-needs': 'unaltered' };
    const unread = { 'meter-digit': 'cannot', 'tones-off': 'cannot', 'rear-pair': 'cannot', 'top-step': 'cannot' };
    expect(walk(needy).asked).toContain('delivered-amp');
    expect(walk({ ...needy, 'delivered-amp': 'no' }).verdict).toBe('plan-enable-rear');
    expect(walk({ ...needy, ...unread, 'delivered-amp': 'yes' }).verdict).toBe('plan-measure-first');
  });
  it('get an amplified profile once both take any source', () => {
    const { 'rear-inputs': _, 'delivered-with': __, ...rest } = both;
    const { verdict } = walk({ ...rest, 'amp-rear-needs': 'any' });
    expect(verdict).toBe('plan-amplified-any');
  });
});

describe('an amplifier that is exchanged', () => {
  const exchanged = {
    'planned-change': 'amp-exchanged',
    ...wireAmp,
    ...front('amp'),
    ...rear('none'),
    ...measured,
  };
  it('leaves the profile alone until the new one is in, where the new one wants another', () => {
    const { verdict, remedy } = walk({
      ...exchanged,
      'tones-off': 'boosted',
    });
    expect(verdict).toBe('plan-amplified-any');
    expect(remedy.fix.slice(0, 2).join(' ')).toMatch(
      /^Leave the profile as it is until the new amplifier is in.*gain at minimum/,
    );
  });
  it('leaves the profile alone for good where it fits the new one, too', () => {
    const { verdict, remedy } = walk({
      ...exchanged,
      'tones-off': 'flat',
    });
    expect(verdict).toBe('plan-stay');
    expect(remedy.fix[0]).toMatch(
      /^Exchange the amplifier, gain at minimum first\. The profile stays as it is, before and after/,
    );
  });
});

describe('an amplifier for the rear only', () => {
  it('never takes the level from the front pair on the head unit: only the rear channels go on', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'amp-added',
      ...wireAmp,
      ...front('unit'),
      ...rear('amp'),
      ...never,
      'rear-inputs': 'own',
    });
    expect(verdict).toBe('plan-enable-rear');
    expect(remedy.fix.join(' ')).toMatch(/Change: rear channels on\. .*must not become an amplified profile/);
  });
});

describe('front only', () => {
  it('new speakers most likely need no reflash, and cost a fifth of the power with an amplified profile', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'front-only',
      ...noAmp,
      ...rear('none'),
      'profile-source': 'never',
    });
    expect(verdict).toBe('plan-likely-stay');
    // 10^(−6/10) and 10^(−8/10) of the power (definition of the decibel).
    expect(remedy.ifDoneAnyway).toMatch(/16 to 25 % of the power/);
  });
  it('an amplifier with no rear speakers gets an amplified profile', () => {
    const { verdict } = walk({
      'planned-change': 'amp-added',
      ...wireAmp,
      ...front('amp'),
      ...rear('none'),
      'profile-source': 'never',
    });
    expect(verdict).toBe('plan-amplified-any');
  });
  it('an amplifier with the rear left on the head unit does not', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'amp-added',
      ...wireAmp,
      ...front('amp'),
      ...rear('unit'),
      ...never,
    });
    expect(verdict).toBe('plan-enable-rear');
    expect(remedy.fix.join()).toContain('move the rear pair to an amplifier');
  });
});

describe('a replaced head unit', () => {
  it('has nothing to reflash, whoever names a profile for it', () => {
    const { verdict, remedy, asked } = walk({
      'planned-change': 'louder',
      'wish-mirroring': 'no',
      'unit-kind': 'replaced',
    });
    expect(verdict).toBe('plan-replaced-unit');
    expect(asked).toHaveLength(3);
    expect(remedy.background).toMatch(/names a profile for this bike, it belonged to the old head unit/);
    expect(remedy.demand).toEqual({ kind: 'nothing' });
  });
});

describe('new speakers of 2 Ω on the head unit', () => {
  const two = walk({
    'planned-change': 'front-only',
    ...noAmp,
    ...rear('none'),
    'front-ohms': '2',
    ...measured,
    'tones-off': 'boosted',
  });
  it('are refused with the answer: 4 Ω or more', () => {
    expect(two.verdict).toBe('plan-stay');
    expect(two.remedy.what).toMatch(/^No reflash\. .*no front speakers below 4 Ω on the head unit\.$/);
    expect(two.remedy.fix[0]).toContain('4 Ω or more');
    expect(two.remedy.sheet?.parts.flatMap(({ lines }) => lines).join()).toContain(
      'Front, on the head unit: 4 Ω or more',
    );
  });
  it('get no watts promised below what its channels are rated for', () => {
    // (14.2 − 2.2)² / 2 / 4 = 18 W into 4 Ω; into 2 Ω it would be 36 (power law).
    expect(two.text.replace('30 W or more', '')).not.toMatch(/\b(2[1-9]|3\d|4\d)(\.\d)? W\b/);
    expect(two.text).not.toMatch(/into 2 Ω/);
    expect(two.remedy.numbers[0]?.label).toContain('into 4 Ω');
  });
});

describe('a wish', () => {
  it('for more bass hears at once that no profile has more than the unaltered one, and what gives more', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'more-bass',
      ...noAmp,
      ...rear('none'),
      ...measured,
      'tones-off': 'boosted',
    });
    expect(verdict).toBe('plan-stay');
    expect(words(remedy.what, 40)).toMatch(/No reflash adds bass: unaltered has the most/);
    expect(remedy.fix.join()).toMatch(/more cone area .* wired the same way round/);
    expect(remedy.notBuy.join()).toContain('A reflash for more bass');
  });
  it('for more bass gets back what an amplified profile took, where no amplifier is there', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'more-bass',
      ...noAmp,
      ...rear('none'),
      ...measured,
      'tones-off': 'flat',
      'hidden-amp': 'no',
    });
    expect(verdict).toBe('plan-back-to-unaltered');
    expect(remedy.fix.join()).toContain('The bass comes back with the full level');
  });
  it.each([
    ['without an amplifier, read', { ...noAmp, ...rear('none'), ...measured, 'tones-off': 'boosted' }],
    ['without an amplifier, told', { ...noAmp, ...rear('unit'), ...never }],
    ['without an amplifier, not known', { ...noAmp, ...rear('none'), 'profile-source': 'unknown' }],
    ['on an amplifier', { ...wireAmp, ...front('amp'), ...rear('amp'), ...measured, 'tones-off': 'flat' }],
    ['on an amplifier that listens', { ...listeningAmp, ...front('amp'), ...rear('none'), 'profile-source': 'never' }],
  ])('for louder hears “quieter” within the first 40 words, %s', (_, answers) => {
    const { remedy } = walk({ 'planned-change': 'louder', ...answers });
    expect(words(remedy.what, 40)).toMatch(/No reflash adds power: amplified is 6 to 8 dB quieter/);
  });
  it('for phone mirroring only has the headset module set, and nothing selected', () => {
    const { verdict, remedy, asked } = walk({
      'planned-change': 'mirroring',
      'wrong-now': 'no',
      'unit-kind': 'factory',
    });
    expect(verdict).toBe('plan-mirroring-only');
    expect(asked).toHaveLength(3);
    expect(remedy.demand).toEqual({ kind: 'nothing' });
    expect(remedy.notBuy.join()).toContain('It changes the sound and not the mirroring');
  });
});

describe('a head unit of unknown past', () => {
  it('is read, whatever this bike was built with: it remembers another one', () => {
    const { verdict, asked } = walk({
      'planned-change': 'unit-swapped',
      'wish-mirroring': 'no',
      'amp-count': '0',
      ...rear('none'),
      ...measured,
      'tones-off': 'flat',
      'hidden-amp': 'no',
    });
    expect(asked).toContain('tones-off');
    expect(verdict).toBe('plan-back-to-unaltered');
  });
  it('is not answered by what is told: nobody can say that it was never changed', () => {
    const { verdict } = walk({
      'planned-change': 'unit-swapped',
      'wish-mirroring': 'no',
      'amp-count': '0',
      ...rear('none'),
      'profile-source': 'unknown',
    });
    expect(verdict).toBe('plan-measure-first');
  });
});

describe('bass that goes', () => {
  it('on the road is covered by wind and engine, which no profile changes', () => {
    const { verdict, remedy } = walk({ 'planned-change': 'bass-gone', 'bass-gone-when': 'riding' });
    expect(verdict).toBe('plan-bass-masked');
    expect(remedy.what).toMatch(/wind and engine noise cover it, whatever is stored/);
    expect(remedy.mayAlsoBe?.[0]?.split).toContain('an amplified profile may be stored where no amplifier is');
  });
  it('as the speed changes is speed volume, a setting', () => {
    const { verdict, remedy } = walk({ 'planned-change': 'bass-gone', 'bass-gone-when': 'with-speed' });
    expect(verdict).toBe('plan-speed-volume');
    expect(remedy.fix[0]).toMatch(/^Change: speed volume in the sound menu/);
  });
  it('as the engine starts is the EQ of the profile, and without an amplifier stays as it is where the level is full', () => {
    const told = {
      'planned-change': 'bass-gone',
      'bass-gone-when': 'at-start',
      'unit-kind': 'factory',
      'amp-count': '0',
      ...rear('none'),
      ...measured,
    };
    expect(walk({ ...told, 'tones-off': 'boosted' }).verdict).toBe('plan-same-eq-without-amp');
    // An amplified profile may change its EQ as well: no answer before it is known which of the two is stored.
    expect(walk({ ...told, 'tones-off': 'flat', 'hidden-amp': 'no' }).verdict).toBe('plan-back-to-unaltered');
  });
});

describe('an amplifier that is added or exchanged, and “None” counted', () => {
  it.each(['amp-added', 'amp-exchanged'])('is asked about again, %s', (plan) => {
    const { verdict, remedy } = walk({
      'planned-change': plan,
      'wish-mirroring': 'no',
      'unit-kind': 'factory',
      'amp-count': '0',
    });
    expect(verdict).toBe('plan-none-counted');
    expect(remedy.what).toContain(plan === 'amp-added' ? 'is added' : 'is exchanged');
    expect(remedy.demand).toEqual({ kind: 'find-out' });
  });
});

describe('a bike that was built with an amplifier', () => {
  const built: Rig = { ...EXAMPLE_RIGS['fork-fairing'], deliveredAmp: 'yes' };
  it('is promised no full level when the amplifier comes off', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'amp-removed',
      ...noAmp,
      ...rear('none'),
      ...measured,
      'tones-off': 'flat',
      'delivered-amp': 'yes',
      'hidden-amp': 'no',
    });
    expect(verdict).toBe('plan-back-if-stored');
    expect(remedy.what).toMatch(/^Yes, if it can be had: .*it may hold none, and then it stays 6 to 8 dB quieter/);
    expect(remedy.sheet?.parts[0]?.lines.join()).toContain('if this head unit holds such a profile');
  });
  it('gets at least the same EQ where that is wished and no full level is held', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'bass-gone',
      'bass-gone-when': 'at-start',
      'unit-kind': 'factory',
      'amp-count': '0',
      ...rear('none'),
      'delivered-amp': 'yes',
      ...measured,
      'tones-off': 'flat',
      'hidden-amp': 'no',
    });
    expect(verdict).toBe('plan-back-if-stored');
    expect(remedy.demand).toMatchObject({ ifStored: true, orElse: { sameEq: true } });
    expect(remedy.fix.join(' ')).toContain('Then change only this: same EQ with the engine running.');
    expect(remedy.notBuy.join(' ')).not.toContain('without an amplifier that costs level and bass');
    expect(remedy.sheet?.parts[0]?.lines.join(' ')).toContain(
      'if this head unit holds such a profile; if not, only same EQ with the engine running.',
    );
  });
  it('is read first though nobody ever changed it: the lowered level may be what it was built with', () => {
    const { verdict } = walk(
      {
        'planned-change': 'louder',
        'wish-mirroring': 'no',
        'profile-source': 'never',
        'meter-digit': '0.01',
        'tones-off': 'flat',
        'hidden-amp': 'no',
      },
      built,
    );
    expect(verdict).toBe('plan-back-if-stored');
  });
  it('is told of no knobs that a factory amplifier may not have', () => {
    const { text, verdict } = walk({
      'planned-change': 'same-eq',
      'wrong-now': 'no',
      ...factory,
      'amp-count': '1',
      'amp-kind': 'factory',
      ...front('amp'),
      ...rear('amp'),
      'delivered-amp': 'yes',
      ...measured,
      'tones-off': 'flat',
      'tones-running': 'changes',
      'factory-amp-answers': 'yes',
    });
    expect(verdict).toBe('plan-amplified-same');
    expect(text).not.toMatch(/gain of the|gain to minimum|speaker-level range|high-pass 80/i);
    expect(text).not.toContain('set-gain-again');
  });
});

describe('an amplified profile of which only the EQ changes', () => {
  const { verdict, remedy } = walk({
    'planned-change': 'same-eq',
    'wrong-now': 'no',
    ...factory,
    'amp-count': '1',
    'amp-kind': 'add-on',
    'amp-turn-on': 'wire',
    'amp-needs': 'any',
    ...front('amp'),
    ...rear('amp'),
    ...measured,
    'tones-off': 'flat',
    'tones-running': 'changes',
  });
  it('has nothing else selected, and nobody is told that the bass will be gone or the gain set again', () => {
    expect(verdict).toBe('plan-amplified-same');
    expect(remedy.demand).toEqual({ kind: 'select', to: { sameEq: true } });
    expect(remedy.sheet?.parts[0]?.lines.join(' ')).toMatch(
      /Please change: same EQ with the engine running\. Please keep: the rear channels as they are, the level, the bass boost as it is\./,
    );
    expect(remedy.fix.join(' ')).not.toMatch(/bass seems gone|set the gain again|remote input/);
    expect(remedy.cautions).not.toContain('set-gain-again');
  });
});

describe('“it got worse after a reflash”', () => {
  const after = { 'planned-change': 'after-reflash', ...noAmp, ...rear('unit') };
  it.each([
    ['quiet-thin', 'plan-back-to-rear-on', { 'hidden-amp': 'no' }],
    ['rear-silent', 'plan-enable-rear', { 'profile-source': 'unknown' }],
  ])('is answered without a meter by how it did: %s', (how, ends, more) => {
    const { verdict, remedy } = walk({ ...after, 'worse-how': how, ...more });
    expect(verdict).toBe(ends);
    expect(remedy.certainty).toBe('likely');
    expect(remedy.unless?.length).toBeGreaterThan(0);
  });
});

describe('“not yet”', () => {
  const { remedy } = walk({ 'planned-change': 'front-only', ...noAmp, ...rear('none'), 'profile-source': 'unknown' });
  it('says what holds whatever is stored', () => {
    expect(remedy.holds).toContain('No reflash for the speakers themselves.');
  });
  it('says for each possible finding what would follow, who does it and how long it takes', () => {
    expect(remedy.findings?.map(({ follows }) => follows)).toEqual(['no reflash', expect.stringMatching(/full level/)]);
    for (const { who, minutes, follows } of remedy.findings ?? []) {
      expect(who).not.toBe('');
      if (follows !== 'no reflash') expect(minutes).toBeGreaterThan(0);
    }
  });
  it('names the one reading that decides', () => {
    expect(remedy.what).toBe(
      'Not yet: first find out whether the bass boost is in or out. Nothing else separates the answers.',
    );
  });
});

describe('what was read before', () => {
  const saved: Rig = {
    ...EXAMPLE_RIGS['fork-fairing'],
    profileRead: {
      on: '2026-05-03',
      answers: { 'meter-digit': { option: '0.01' }, 'tones-off': { readings: { v400V: '0.50', v80V: '2.20' } } },
    },
  };
  it('is used from “My bike” and not asked again', () => {
    const { verdict, remedy } = ride(isAReflashNeeded, saved, { 'planned-change': 'louder', 'wish-mirroring': 'no' });
    expect(verdict).toBe('plan-stay');
    expect(remedy.certainty).toBe('proved');
    // (2.20 ∓) / (0.50 ±), with what a basic meter states: no finer than its band.
    expect(remedy.sheet?.parts[0]?.lines.join()).toMatch(
      /80 Hz over 400 Hz is 4\.4 times, 3\.9 to 4\.9 possible|4\.0 to 4\.9 possible/,
    );
  });
  it('is asked about where work was done since: a reading from before says nothing of now', () => {
    const { verdict } = ride(isAReflashNeeded, saved, {
      'planned-change': 'after-reflash',
      'worse-how': 'quiet-thin',
      'read-after': 'no',
      'wish-mirroring': 'no',
      'hidden-amp': 'no',
    });
    expect(verdict).toBe('plan-back-to-unaltered');
  });
});
