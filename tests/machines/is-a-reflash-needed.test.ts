import { describe, expect, it } from 'vitest';
import { initialTransition } from 'xstate';
import { isAReflashNeeded } from '../../machines/is-a-reflash-needed.ts';
import { whatIsInTheHeadUnit } from '../../machines/what-is-in-the-head-unit.ts';
import { assumedFor } from '../../src/causes/assumed.ts';
import { fitting } from '../../src/plan/demand.ts';
import { EVERY_PROFILE, PROPERTIES, PROPERTY_QUESTIONS, STORED_PROFILES } from '../../src/plan/profile/profile.ts';
import { PLAN_VERDICTS } from '../../src/plan/verdicts.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import { NOTHING_KNOWN, type Rig } from '../../src/rig/rig.ts';
import { ride } from '../case/ride.ts';
import { known } from '../plan/known.ts';
import {
  AMPLIFIED_CHANGES,
  AMPLIFIED_SAME,
  answerOf,
  factory,
  give,
  listeningAmp,
  measured,
  never,
  noAmp,
  oneAmp,
  openStep,
  paper,
  SAMPLE,
  twoAmps,
  walk,
  wireAmp,
} from '../plan/routes.ts';

const { machine, states, steps } = isAReflashNeeded;

describe('is a reflash needed', () => {
  it('says after two questions that there is nothing to do when nothing is wrong and nothing wished', () => {
    const { verdict, asked } = walk({ 'planned-change': 'nothing', 'wrong-now': 'no' });
    expect({ verdict, asked: asked.length }).toEqual({ verdict: 'plan-nothing-to-do', asked: 2 });
  });

  it('calls no reflash most likely for new front speakers on a head unit that nobody changed, and has it read', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'front-only',
      ...noAmp,
      'rear-build': 'none',
      'profile-source': 'never',
    });
    expect(verdict).toBe('plan-likely-stay');
    expect(remedy.what).toBe('Most likely no reflash. One reading decides: whether the bass boost is in or out.');
    expect(remedy.findings?.map(({ when, follows }) => `${when}: ${follows}`)).toEqual([
      'bass boost in: no reflash',
      'bass boost out: have the full level and the bass boost selected again',
    ]);
    expect(remedy.certainty).toBe('likely');
    expect(remedy.ifDoneAnyway).toMatch(/6 to 8 dB quieter/);
  });

  it('counts one fifth of the power for an amplified profile without an amplifier, in the figures of a known bike', () => {
    const { remedy } = walk(
      { 'planned-change': 'front-only', 'wish-mirroring': 'no', ...measured, 'tones-off': 'boosted' },
      EXAMPLE_RIGS['fork-fairing'],
    );
    expect(remedy.ifDoneAnyway).toContain('18 W a channel become 3.59 W, 20 % of the power');
    expect(remedy.ifDoneAnyway).toContain('The bass falls by 20 dB');
    expect(remedy.numbers).toContainEqual({
      label: 'Loudest clean, full level, into 4 Ω',
      value: '8.49 V · 18 W',
    });
    expect(remedy.numbers).toContainEqual({
      label: 'Loudest clean, amplified profile',
      value: '3.79 V · 3.59 W',
    });
  });

  it('sends new front speakers back to unaltered when an amplified profile was measured', () => {
    const { verdict, remedy, asked } = walk({
      'planned-change': 'front-only',
      ...noAmp,
      'rear-build': 'none',
      ...measured,
      'tones-off': 'flat',
      'hidden-amp': 'no',
    });
    expect(verdict).toBe('plan-back-to-unaltered');
    expect(remedy.certainty).toBe('proved');
    expect(remedy.cautions).not.toContain('back-to-full');
    expect(asked.slice(-2)).toEqual(['tones-off', 'hidden-amp']);
  });

  it('has only the rear channels switched on for rear speakers on a head unit that nobody changed', () => {
    const { verdict, remedy } = walk({ 'planned-change': 'rear-on-unit', ...noAmp, ...never });
    expect(verdict).toBe('plan-enable-rear');
    expect(remedy.who).toMatch(/^A dealer or/);
    expect(remedy.notBuy.join()).toContain('An amplifier, only to get sound from the rear');
    expect(remedy.fix[0]).toMatch(/^First fit and wire the rear speakers/);
  });

  it('most likely leaves a bike alone that was built with rear speakers and gets new ones on the head unit', () => {
    const answers = { 'planned-change': 'rear-on-unit', ...noAmp, ...never, 'delivered-with': 'four' };
    expect(walk(answers).verdict).toBe('plan-likely-stay');
  });

  it('goes back to full level with the rear channels on when rear speakers hang on a lowered head unit', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'rear-on-unit',
      ...noAmp,
      ...AMPLIFIED_SAME,
      'hidden-amp': 'no',
    });
    expect(verdict).toBe('plan-back-to-rear-on');
    expect(remedy.fix.join()).toContain('plain unaltered can switch them off');
  });

  it('selects an amplified profile of either kind for an added amplifier that is switched by a wire', () => {
    const { verdict, remedy, asked } = walk({
      'planned-change': 'amp-added',
      ...wireAmp,
      'front-build': 'amp',
      'rear-build': 'amp',
      'profile-source': 'never',
    });
    expect(verdict).toBe('plan-amplified-any');
    expect(remedy.who).toMatch(/^An independent specialist/);
    expect(remedy.cautions).toContain('set-gain-again');
    expect(remedy.fix[0]).toMatch(/^First fit and wire the amplifier/);
    expect(asked).not.toContain('delivered-with');
  });

  it('selects the same EQ where that is wished, and lets the dealer do it for a factory amplifier', () => {
    const { verdict, remedy, asked } = walk({
      'planned-change': 'amp-added',
      ...factory,
      'amp-count': '1',
      'amp-kind': 'factory',
      'front-build': 'amp',
      'rear-build': 'none',
      'wish-same-eq': 'yes',
      'profile-source': 'never',
      'factory-amp-answers': 'yes',
    });
    expect(verdict).toBe('plan-amplified-same');
    expect(remedy.who).toMatch(/^A dealer or/);
    expect(asked).not.toContain('amp-turn-on');
  });

  it('measures only the two tones, engine off and running, when only the EQ matters', () => {
    const { verdict, asked } = walk({
      'planned-change': 'same-eq',
      'wrong-now': 'no',
      ...oneAmp,
      'amp-turn-on': 'wire',
      'amp-needs': 'any',
      'front-build': 'amp',
      'rear-build': 'amp',
      ...measured,
      'tones-off': 'flat',
      'tones-running': 'same',
    });
    expect(verdict).toBe('plan-stay');
    expect(asked.slice(-2)).toEqual(['tones-off', 'tones-running']);
  });

  it('leaves an amplified profile alone when every speaker is on the amplifier', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'nothing',
      'wrong-now': 'other',
      ...wireAmp,
      'front-build': 'amp',
      'rear-build': 'amp',
      ...measured,
      'tones-off': 'flat',
    });
    expect(verdict).toBe('plan-stay');
    expect(remedy.fix.at(-1)).toMatch(/start with the complaint itself/);
  });

  it('keeps the unaltered output for an amplifier that is made for it, and asks nothing about a second one', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'amp-added',
      ...factory,
      ...twoAmps,
      'amp-front-kind': 'add-on',
      'amp-front-turn-on': 'signal',
      'amp-front-needs': 'unaltered',
      'wish-same-eq': 'no',
      'rear-inputs': 'front',
      'profile-source': 'never',
    });
    expect(verdict).toBe('plan-likely-stay');
    expect(remedy.ifDoneAnyway).toMatch(/stays asleep/);
  });

  it('says so when an amplifier counts as needing the unaltered output only because nobody knows', () => {
    const { remedy } = walk({
      'planned-change': 'amp-added',
      ...listeningAmp,
      'amp-needs': 'cannot',
      'front-build': 'amp',
      'rear-build': 'none',
      'profile-source': 'never',
    });
    expect(remedy.background).toContain('Until proved otherwise');
    expect(remedy.howSure).toMatch(/^What the front amplifier was made for is only assumed/);
  });

  it('goes back to unaltered for such an amplifier that died after a reflash, gain down first', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'after-reflash',
      ...listeningAmp,
      'front-build': 'amp',
      'rear-build': 'none',
      ...measured,
      'tones-off': 'flat',
    });
    expect(verdict).toBe('plan-back-to-unaltered');
    expect(remedy.cautions).toContain('back-to-full');
    expect(remedy.fix[0]).toMatch(/^Before the visit: gain of the front amplifier to minimum/);
  });

  it('enables only the rear for an amplifier on the lids that takes the rear outputs', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'amp-added',
      ...wireAmp,
      'front-build': 'unit',
      'rear-build': 'amp',
      ...never,
      'rear-inputs': 'own',
    });
    expect(verdict).toBe('plan-enable-rear');
    expect(remedy.fix.join()).toContain('high-pass at 80 to 100 Hz');
  });

  it('most likely needs nothing when that amplifier is fed from the front pair', () => {
    const { verdict, asked } = walk({
      'planned-change': 'amp-added',
      ...wireAmp,
      'front-build': 'unit',
      'rear-build': 'amp',
      'profile-source': 'never',
      'rear-inputs': 'front',
    });
    expect(verdict).toBe('plan-likely-stay');
    expect(asked).not.toContain('delivered-with');
  });

  it('lets the rider move the starved pair or go back in a mixed build with an amplified profile', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'after-reflash',
      ...wireAmp,
      'front-build': 'amp',
      'rear-build': 'unit',
      ...AMPLIFIED_CHANGES,
      'paper-by': 'specialist',
    });
    expect(verdict).toBe('plan-move-or-back');
    expect(remedy.what).toMatch(
      /^Yes, if the paper is right, one of two: move the rear pair to an amplifier, which needs no reflash, or go back/,
    );
    expect(remedy.cautions).toContain('back-to-full');
  });

  it('puts the new amplifier in before the profile is touched when one is exchanged', () => {
    const { remedy } = walk({
      'planned-change': 'amp-exchanged',
      ...wireAmp,
      'front-build': 'amp',
      'rear-build': 'none',
      'profile-source': 'never',
    });
    expect(remedy.fix[0]).toMatch(/^Leave the profile as it is until the new amplifier is in/);
  });

  it('ends at once for another head unit, which has nothing to reflash', () => {
    expect(walk({ 'planned-change': 'unit-replaced' }).verdict).toBe('plan-replaced-unit');
  });

  it('asks first which head unit it is when nobody knows', () => {
    const answers = { 'planned-change': 'louder', 'wish-mirroring': 'no', 'unit-kind': 'cannot' };
    expect(walk(answers).verdict).toBe('plan-find-the-unit');
  });

  it('has only the headset module set for phone mirroring', () => {
    const answers = { 'planned-change': 'mirroring', 'wrong-now': 'no', 'unit-kind': 'factory' };
    const { verdict, remedy } = walk(answers);
    expect(verdict).toBe('plan-mirroring-only');
    expect(remedy.fix.join()).toContain('Keep: the output profile');
  });

  it('tells a replaced head unit’s owner that mirroring is its own setting', () => {
    const answers = { 'planned-change': 'mirroring', 'wrong-now': 'no', 'unit-kind': 'replaced' };
    const { verdict, remedy } = walk(answers);
    expect(verdict).toBe('plan-replaced-unit');
    expect(remedy.fix.join()).toContain('Phone mirroring is a setting of the replaced head unit');
  });

  it('adds mirroring to the answer about the sound and leaves that as it is', () => {
    const answers = { 'planned-change': 'rear-on-unit', ...noAmp, ...never };
    const [without, with_] = [walk(answers), walk({ ...answers, 'wish-mirroring': 'yes' })];
    expect(with_.verdict).toBe(without.verdict);
    expect(with_.remedy.fix).toEqual(expect.arrayContaining([...without.remedy.fix]));
    expect(with_.remedy.fix.join()).toContain('only the setting of the headset module');
  });

  it('advises against the same EQ without an amplifier, once it is read that the full level is stored', () => {
    const { verdict } = walk({
      'planned-change': 'same-eq',
      'wrong-now': 'no',
      ...noAmp,
      'rear-build': 'none',
      ...measured,
      'tones-off': 'boosted',
    });
    expect(verdict).toBe('plan-same-eq-without-amp');
  });

  it('says that the same EQ is not to be had even where the stored profile is not known', () => {
    const told = { 'planned-change': 'same-eq', 'wrong-now': 'no', ...noAmp, 'rear-build': 'none' };
    for (const [source, verdict] of [
      ['never', 'plan-likely-stay'],
      ['unknown', 'plan-measure-first'],
    ] as const) {
      const end = walk({ ...told, 'profile-source': source });
      expect(end.verdict).toBe(verdict);
      expect(end.remedy.what).toContain('The same EQ comes only with an amplified profile, and without an amplifier');
    }
  });

  it('says that the same EQ and an amplifier made for the unaltered output exclude each other', () => {
    const { verdict } = walk({
      'planned-change': 'amp-added',
      ...listeningAmp,
      'wish-same-eq': 'yes',
      'front-build': 'amp',
      'rear-build': 'none',
      ...measured,
      'tones-off': 'boosted',
    });
    expect(verdict).toBe('plan-same-eq-unaltered-amp');
  });

  it('wants every pair on an amplifier before the same EQ', () => {
    const { verdict } = walk({
      'planned-change': 'amp-added',
      ...wireAmp,
      'wish-same-eq': 'yes',
      'front-build': 'amp',
      'rear-build': 'unit',
      'delivered-with': 'four',
      ...measured,
      'tones-off': 'boosted',
    });
    expect(verdict).toBe('plan-same-eq-mixed');
  });

  it('still has the rear channels switched on where the same EQ cannot be had, and says not to pay for that', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'same-eq',
      'wrong-now': 'rear-silent',
      ...noAmp,
      'rear-build': 'unit',
      ...never,
    });
    expect(verdict).toBe('plan-enable-rear');
    expect(remedy.notBuy.join()).toContain('A profile for the same EQ');
  });

  it('asks again when speakers hang on an amplifier and none was counted', () => {
    expect(walk({ 'planned-change': 'louder', ...noAmp, 'rear-build': 'amp' }).verdict).toBe('plan-on-no-amp');
  });

  it('asks what an amplifier feeds when every speaker hangs on the head unit', () => {
    const { verdict } = walk({
      'planned-change': 'nothing',
      'wrong-now': 'other',
      ...oneAmp,
      'amp-turn-on': 'wire',
      'amp-needs': 'any',
      'front-build': 'unit',
      'rear-build': 'unit',
    });
    expect(verdict).toBe('plan-amp-feeds-nothing');
  });

  it('asks which rear is meant when it is silent and there is none', () => {
    const answers = { 'planned-change': 'nothing', 'wrong-now': 'rear-silent', ...noAmp, 'rear-build': 'none' };
    expect(walk(answers).verdict).toBe('plan-which-rear');
  });

  it('finds out what the amplifier needs before anything is paid for', () => {
    const { verdict } = walk({
      'planned-change': 'amp-added',
      ...oneAmp,
      'amp-turn-on': 'cannot',
      'amp-needs': 'cannot',
      'front-build': 'amp',
      'rear-build': 'none',
    });
    expect(verdict).toBe('plan-find-the-amp');
  });

  it('follows the wires when nobody knows what drives the front', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'amp-added',
      ...wireAmp,
      'front-build': 'cannot',
      'rear-build': 'amp',
    });
    expect(verdict).toBe('plan-follow-the-wires');
    expect(remedy.what).toBe('Not yet: first find out what drives the front speakers.');
  });

  it('names the one thing to measure when the profile is unknown and there is no meter', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'louder',
      ...noAmp,
      'rear-build': 'none',
      'profile-source': 'unknown',
    });
    expect(verdict).toBe('plan-measure-first');
    expect(remedy.what).toContain('whether the bass boost is in or out.');
    expect(remedy.notBuy.join()).toContain('A reflash to play louder');
  });

  it('reads the level instead when the tones are unclear', () => {
    const { verdict } = walk({
      'planned-change': 'louder',
      ...noAmp,
      'rear-build': 'none',
      ...measured,
      'tones-off': 'unclear',
      'top-step': 'full',
    });
    expect(verdict).toBe('plan-stay');
  });

  it('refuses a paper that describes a profile nobody stored, and says what to check again', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'louder',
      ...noAmp,
      'rear-build': 'none',
      ...paper('yes', 'yes', 'yes', 'silent'),
    });
    expect(verdict).toBe('plan-no-such-profile');
    expect(remedy.what).toMatch(/lowered level and the bass boost/);
  });

  it('goes on with readings where a paper leaves something open', () => {
    const answers = {
      'planned-change': 'louder',
      ...noAmp,
      'rear-build': 'unit',
      ...paper('silent', 'no', 'silent', 'silent'),
      'delivered-with': 'two',
      'meter-digit': '0.01',
      'rear-pair': 'none',
    };
    expect(walk(answers).verdict).toBe('plan-enable-rear');
  });

  it('asks which counts where a paper and a meter disagree, and goes by the answer', () => {
    const known = {
      'meter-digit': answerOf('meter-digit', '0.01'),
      'tones-off': answerOf('tones-off', 'boosted'),
      'profile-source': answerOf('profile-source', 'record'),
      'paper-rear': answerOf('paper-rear', 'yes'),
      'paper-lowered': answerOf('paper-lowered', 'yes'),
      'paper-boosted': answerOf('paper-boosted', 'no'),
      'paper-same-eq': answerOf('paper-same-eq', 'silent'),
    };
    const rig: Rig = { unitKind: 'factory', deliveredWith: 'two', deliveredAmp: 'no', amps: [] };
    const start = initialTransition(machine, { rig, facts: known })[0];
    const asked = ['louder', 'no', 'none'].reduce(give, start);
    expect(openStep(asked)).toBe('told-or-read');
    expect(give(asked, 'read').output?.verdict).toBe('plan-stay');
    expect(give(give(asked, 'told'), 'no').output?.verdict).toBe('plan-back-to-unaltered');
    const open = give(asked, 'cannot').output;
    expect(open?.verdict).toBe('plan-told-against-meter');
    expect(open?.remedy.what).toBe(
      'Not yet: the paper and the meter disagree about whether the bass boost is in or out.',
    );
  });

  it('asks nothing about the profile when a reading of this bike has settled it', () => {
    const readings = { 'meter-digit': answerOf('meter-digit', '0.01'), 'tones-off': answerOf('tones-off', 'flat') };
    let [snapshot] = initialTransition(machine, { rig: EXAMPLE_RIGS['fork-fairing'], facts: readings });
    for (const option of ['louder', 'no', 'no']) snapshot = give(snapshot, option);
    expect(snapshot.output?.verdict).toBe('plan-back-to-unaltered');
  });

  it('asks a known bike only for what the plan changes', () => {
    const { asked } = walk(
      { 'planned-change': 'louder', 'wish-mirroring': 'no', 'wish-same-eq': 'no', 'profile-source': 'never' },
      EXAMPLE_RIGS['frame-fairing'],
    );
    expect(asked).toEqual(['planned-change', 'wish-mirroring', 'wish-same-eq', 'profile-source']);
  });

  it('asks again about the amplifiers of a known bike when one is added', () => {
    const { asked } = walk(
      {
        'planned-change': 'amp-added',
        'wish-mirroring': 'no',
        'amp-count': '1',
        'amp-kind': 'add-on',
        'amp-turn-on': 'wire',
        'amp-needs': 'any',
        'front-build': 'amp',
        'rear-build': 'none',
        'wish-same-eq': 'no',
        'profile-source': 'never',
      },
      EXAMPLE_RIGS['fork-fairing'],
    );
    expect(asked).toContain('front-build');
  });

  it('forgets the third amplifier when the count is changed to one', () => {
    const facts = Object.fromEntries(
      Object.entries({ 'planned-change': 'amp-added', 'amp-count': '1', 'amp-rear-kind': 'factory' }).map(
        ([step, option]) => [step, answerOf(step, option)],
      ),
    );
    const [snapshot] = initialTransition(machine, { rig: NOTHING_KNOWN, facts });
    expect(snapshot.context.rig.amps).toHaveLength(1);
  });
});

/** Answers that send a build with two amplifiers through every question about them. */
const frontAny = { 'amp-front-kind': 'add-on', 'amp-front-turn-on': 'wire', 'amp-front-needs': 'any' };
const rearUnaltered = { 'amp-rear-kind': 'add-on', 'amp-rear-turn-on': 'signal', 'amp-rear-needs': 'unaltered' };
const allOnOne = { 'front-build': 'amp', 'rear-build': 'amp' };
/** Protection from the bass boost: common practice, no published source. */
const PROTECTION = /speaker-level input range, high-pass at 80 to 100 Hz, its bass control at zero/;

describe('an amplifier', () => {
  it('with a remote wire is asked what it was made for, and keeps the unaltered output if it needs it', () => {
    const { verdict, asked } = walk({
      'planned-change': 'amp-added',
      ...wireAmp,
      'amp-needs': 'unaltered',
      'front-build': 'amp',
      'rear-build': 'none',
      'profile-source': 'never',
    });
    expect(asked).toContain('amp-needs');
    expect(verdict).toBe('plan-likely-stay');
  });
  it('with a remote wire counts as taking any source where nobody knows, and the verdict says so', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'amp-added',
      ...wireAmp,
      'amp-needs': 'cannot',
      ...allOnOne,
      'profile-source': 'never',
    });
    expect(verdict).toBe('plan-amplified-any');
    expect(remedy.certainty).toBe('likely');
    expect(remedy.howSure).toMatch(/^What the amplifier for all four was made for is only assumed/);
    expect(remedy.fix.join()).toContain('find out what the amplifier for all four was made for');
  });
  it('beside one that needs the unaltered output is protected from its boost, by name', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'amp-added',
      ...factory,
      ...twoAmps,
      ...frontAny,
      ...rearUnaltered,
      'wish-same-eq': 'no',
      'profile-source': 'never',
      'rear-inputs': 'front',
    });
    expect(verdict).toBe('plan-likely-stay');
    const lines = remedy.fix.filter((line) => PROTECTION.test(line));
    expect(lines).toEqual([expect.stringMatching(/^The front amplifier: /)]);
  });
  it('of which the need is only assumed is protected as well, unless its papers say otherwise', () => {
    const { text } = walk({
      'planned-change': 'amp-added',
      ...listeningAmp,
      'amp-needs': 'cannot',
      'front-build': 'amp',
      'rear-build': 'none',
      'profile-source': 'never',
    });
    expect(text).toMatch(
      /The front amplifier, unless its papers say that it takes the boost out itself: speaker-level/,
    );
  });
  it('that takes the boost out itself is not told to', () => {
    const { text } = walk({
      'planned-change': 'amp-added',
      ...listeningAmp,
      'front-build': 'amp',
      'rear-build': 'none',
      'profile-source': 'never',
    });
    expect(text).not.toMatch(PROTECTION);
  });
  it('is never called by a number', () => {
    const { text } = walk({
      'planned-change': 'amp-added',
      ...factory,
      ...twoAmps,
      ...frontAny,
      ...rearUnaltered,
      'amp-rear-needs': 'any',
      'wish-same-eq': 'no',
      'profile-source': 'never',
    });
    expect(text).toContain('the front amplifier and the rear amplifier');
    expect(text).not.toMatch(/amplifier (number )?[123]/i);
  });
  it('that waits for the lowered output is kept quiet and protected until the visit, whichever kind is selected', () => {
    for (const [wish, verdict] of [
      ['no', 'plan-amplified-any'],
      ['yes', 'plan-amplified-same'],
    ] as const) {
      const end = walk({
        'planned-change': 'amp-added',
        ...wireAmp,
        'wish-same-eq': wish,
        ...allOnOne,
        'profile-source': 'never',
      });
      expect(end.verdict).toBe(verdict);
      expect(end.remedy.fix.join()).toMatch(
        /Until then, on the amplifier for all four: speaker-level range, high-pass 80–100 Hz, bass control at zero, volume low/,
      );
    }
  });
  it('on the rear has its gain at minimum before the rear is switched on, and only its inputs may share a pair', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'amp-added',
      ...wireAmp,
      'front-build': 'unit',
      'rear-build': 'amp',
      ...never,
      'rear-inputs': 'own',
    });
    expect(verdict).toBe('plan-enable-rear');
    const [minimum, change] = [/gain of the rear amplifier to minimum/, /^Change: rear channels on/].map((words) =>
      remedy.fix.findIndex((line) => words.test(line)),
    );
    expect(minimum).toBeGreaterThanOrEqual(0);
    expect(minimum).toBeLessThan(change ?? -1);
    expect(remedy.fix.join()).toContain(
      'Only the amplifier’s inputs, never the speakers: a second speaker across a head-unit pair halves its ohms.',
    );
  });
  it('that comes off is taken out before the level goes up again', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'amp-removed',
      ...noAmp,
      'rear-build': 'none',
      ...measured,
      'tones-off': 'flat',
      'hidden-amp': 'no',
    });
    expect(verdict).toBe('plan-back-to-unaltered');
    expect(remedy.fix[0]).toMatch(/^First take the amplifier out/);
    expect(remedy.cautions).toContain('minus-first');
  });
});

describe('the EQ with the engine running', () => {
  const keeps = (answers: Readonly<Record<string, string>>) =>
    walk({ 'planned-change': 'nothing', 'wrong-now': 'other', ...wireAmp, ...allOnOne, ...answers }).text;
  it('may still change where nobody read it, and the verdict says how to read it', () => {
    const text = keeps({ ...measured, 'tones-off': 'flat' });
    expect(text).toMatch(/EQ may still change when the engine starts. “What is in this head unit now\?” reads that/);
    expect(text).not.toContain('EQ stays the same');
  });
  it('is called the same on the word of a paper, which nobody has read back', () => {
    expect(keeps({ ...AMPLIFIED_SAME, 'paper-by': 'specialist' })).toContain('By the paper the EQ stays the same');
  });
  it('is called the same where it was read', () => {
    const { text } = walk({
      'planned-change': 'nothing',
      'wrong-now': 'other',
      ...wireAmp,
      'wish-same-eq': 'yes',
      ...allOnOne,
      ...measured,
      'tones-off': 'flat',
      'tones-running': 'same',
    });
    expect(text).toContain('The EQ stays the same with the engine running: you read that');
  });
});

/** Contradictions that the trade knows: common practice, no published source. */
describe('answers that cannot all be true', () => {
  const backToFull = { 'planned-change': 'louder', ...noAmp, 'rear-build': 'none', ...measured, 'tones-off': 'flat' };
  it('stop the full level from going into an amplifier that nobody counted', () => {
    const { verdict, remedy } = walk({ ...backToFull, 'hidden-amp': 'yes' });
    expect(verdict).toBe('plan-amp-overlooked');
    expect(remedy.fix.join()).toContain('At the battery, look for a lead with its own fuse');
  });
  it('are asked about a hidden amplifier only where the level would go up again', () => {
    const verdicts = SAMPLE.filter(({ asked }) => asked.includes('hidden-amp')).map(({ verdict }) => verdict);
    expect(verdicts.filter((id) => !/^plan-(back-|amp-overlooked)/.test(id ?? ''))).toEqual([]);
  });
  it('show that a line-level lead never wakes an amplifier that waits for DC', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'amp-added',
      ...oneAmp,
      'amp-turn-on': 'dc',
      'amp-signal': 'line',
    });
    expect(verdict).toBe('plan-dc-on-line-level');
    expect(remedy.fix.join()).toContain('Never feed DC into an input');
  });
  it('doubt a paper on which a dealer selected an amplified profile without a factory amplifier', () => {
    const answers = { 'planned-change': 'nothing', 'wrong-now': 'other', ...wireAmp, ...allOnOne, ...AMPLIFIED_SAME };
    const { verdict, remedy } = walk({ ...answers, 'paper-by': 'dealer' });
    expect(verdict).toBe('plan-dealer-without-factory-amp');
    expect(remedy.background).toContain('only the rear channels');
    expect(walk({ ...answers, 'paper-by': 'dealer-factory-amp' }).verdict).toBe('plan-likely-stay');
    expect(walk({ ...answers, 'paper-by': 'cannot' }).verdict).toBe('plan-likely-stay');
  });
  it('send a factory amplifier that does not answer to be mended before any reflash', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'same-eq',
      'wrong-now': 'no',
      ...factory,
      'amp-count': '1',
      'amp-kind': 'factory',
      ...allOnOne,
      'profile-source': 'never',
      'factory-amp-answers': 'no',
    });
    expect(verdict).toBe('plan-factory-amp-silent');
    expect(remedy.cautions).toContain('data');
  });
  it('miss an amplifier for a pair that none of two drives', () => {
    const { verdict, remedy } = walk({
      'planned-change': 'amp-added',
      ...factory,
      'amp-count': '2',
      'amp-layout': 'front',
      ...frontAny,
      'rear-build': 'amp',
    });
    expect(verdict).toBe('plan-on-no-amp');
    expect(remedy.what).toContain('the rear speakers');
  });
});

describe('every route', () => {
  it('ends in a verdict of this flow and asks nothing twice', () => {
    const verdicts = Object.values(PLAN_VERDICTS).map(({ id }) => id);
    for (const { verdict } of SAMPLE) expect(verdicts).toContain(verdict);
  });

  it.each(Object.keys(states).filter((state) => !/^(decide|again)$/.test(Object.keys(states[state] ?? {})[0] ?? '')))(
    'can pass %s',
    (state) => {
      expect(SAMPLE.some(({ visited }) => visited.includes(state))).toBe(true);
    },
  );

  it('ends with whole sentences: what, how sure, who, what to do, and how to check it', () => {
    for (const { remedy } of SAMPLE) {
      const sentences = [remedy.what, remedy.howSure, remedy.who, remedy.proof, ...remedy.fix, ...remedy.notBuy];
      for (const sentence of sentences) expect(sentence).toMatch(/[.?]$/);
      expect(remedy.fix.length).toBeGreaterThan(0);
      expect(JSON.stringify(remedy)).not.toMatch(/undefined|NaN|Infinity/);
    }
  });
});

const KEPT_WORDS = {
  rear: 'the rear channels',
  lowered: 'the level',
  boosted: 'the bass boost',
  sameEq: 'the EQ',
} as const;

describe('the words of a verdict', () => {
  const words = (text: string) => text.split(/\s+/).filter((word) => /[\p{L}\d]/u.test(word)).length;
  it('begin with the answer: no reflash, yes, most likely no reflash, or not yet', () => {
    for (const { remedy } of SAMPLE) expect(remedy?.what).toMatch(/^(No reflash|Yes|Most likely no reflash|Not yet)\b/);
  });
  it('have the whole answer within the first 60 words, in every verdict, and in that of a reading', () => {
    const READING = {
      'tools-at-hand': 'meter',
      'meter-digit': '0.1',
      'tones-off': null,
      'rear-pair': null,
      'top-step': null,
    };
    const ends = [
      ...SAMPLE.flatMap(({ verdict, remedy }) => (verdict && remedy ? [{ verdict, remedy }] : [])),
      ride(whatIsInTheHeadUnit, EXAMPLE_RIGS['fork-fairing'], READING),
      ride(whatIsInTheHeadUnit, { unitKind: 'replaced' }, {}),
    ];
    const verdicts = new Set(ends.map(({ verdict }) => verdict));
    for (const { id } of Object.values(PLAN_VERDICTS)) expect(verdicts).toContain(id);
    for (const { remedy } of ends) expect(words(remedy.what), remedy.what).toBeLessThanOrEqual(60);
  });
  it('say no reflash where nothing is to be selected, yes where something is, and not yet where that is open', () => {
    const SAYS = {
      nothing: /^No reflash\b/,
      select: /^Yes\b/,
      'find-out': /^(Not yet: |Most likely no reflash\. )/,
    } as const;
    for (const { remedy } of SAMPLE) expect(remedy?.what).toMatch(SAYS[remedy?.demand?.kind ?? 'find-out']);
  });
  it('say no reflash only where no profile that may be stored would need one', () => {
    let [plain, likely] = [0, 0];
    for (const { verdict, remedy } of SAMPLE) {
      if (verdict === 'plan-stay' || verdict?.startsWith('plan-same-eq')) {
        plain += 1;
        expect(remedy?.unless).toEqual([]);
        expect(remedy?.what).not.toMatch(/No reflash, (if|most)/);
      }
      if (verdict !== 'plan-likely-stay') continue;
      likely += 1;
      const [first, ...others] = remedy?.findings ?? [];
      expect([first, ...others].some((one) => one?.demand.kind === 'nothing')).toBe(true);
      expect([first, ...others].some((one) => one?.demand.kind !== 'nothing')).toBe(true);
    }
    expect(plain).toBeGreaterThan(20);
    expect(likely).toBeGreaterThan(20);
  });
  it('have the same words for a reading that decides in the headline, on paper and for whoever selects the profile', () => {
    for (const { verdict, remedy } of SAMPLE) {
      if (verdict !== 'plan-likely-stay') continue;
      const decides = Object.values(PROPERTY_QUESTIONS).filter((words_) => remedy?.what.includes(words_));
      expect(decides.length).toBeGreaterThan(0);
      const [reader] = remedy?.sheet?.parts ?? [];
      for (const one of decides) expect(reader?.lines[1]).toContain(one);
      for (const { when } of remedy?.findings ?? [])
        expect(reader?.lines.some((line) => line.toLowerCase().startsWith(when.toLowerCase()))).toBe(true);
    }
  });
  it('name who does it, where something is to be selected', () => {
    for (const { remedy } of SAMPLE)
      if (remedy?.demand?.kind === 'select' && !remedy.demand.orMove) expect(remedy.what).toMatch(/[Ss]pecialist/);
  });
  it('come to what to do within 90 words, without the background that is folded away', () => {
    for (const { remedy } of SAMPLE) {
      const numbers = remedy?.numbers.map(({ label, value }) => `${label} ${value}`) ?? [];
      expect(words([remedy?.what, remedy?.howSure, ...numbers].join(' '))).toBeLessThanOrEqual(90);
    }
  });
  it('keep “tone” for a test tone, and call the head unit by its whole name', () => {
    for (const { remedy } of SAMPLE) {
      expect(JSON.stringify(remedy)).not.toMatch(
        /the tone (should|changes|jumps|must|stays)|set the tone|tone control/i,
      );
      expect(JSON.stringify(remedy)).not.toMatch(/\bthis unit\b|same eq\b(?<!EQ)/);
    }
  });
  it('list nothing as assumed of which they give no number', () => {
    const { remedy } = walk({
      'planned-change': 'front-only',
      ...noAmp,
      'rear-build': 'none',
      'profile-source': 'unknown',
    });
    expect(JSON.stringify(remedy)).not.toMatch(/\d dB|\d V\b|\d W\b/);
    const build = {
      'front-build': 'unit',
      'rear-build': 'none',
      'planned-change': 'front-only',
      'profile-source': 'unknown',
    };
    const open = known(build, { unitKind: 'factory', amps: [], deliveredAmp: 'no' });
    expect(assumedFor((findings) => PLAN_VERDICTS['measure-first'].remedy(findings), open)).toEqual([]);
    expect(assumedFor((findings) => PLAN_VERDICTS.stay.remedy(findings), open).join()).toContain(
      'Supply, engine running',
    );
  });
  it('ask to keep nothing that no stored profile has with what is asked for', () => {
    for (const { remedy } of SAMPLE) {
      if (remedy?.demand?.kind !== 'select') continue;
      const { to } = remedy.demand;
      const keeps = /Please keep: ([^.]*)\./.exec(remedy.sheet?.parts[0]?.lines.join(' ') ?? '')?.[1] ?? '';
      const asked = PROPERTIES.filter((property) => keeps.includes(KEPT_WORDS[property]));
      expect(asked.filter((property) => to[property] !== undefined)).toEqual([]);
      const stays = EVERY_PROFILE.some((now) =>
        fitting(to).some((other) => asked.every((one) => STORED_PROFILES[other][one] === STORED_PROFILES[now][one])),
      );
      expect(stays, keeps).toBe(true);
      if (to.lowered === false && keeps.includes('EQ'))
        expect(remedy.sheet?.parts[0]?.lines.join(' ')).not.toContain('The EQ will change');
    }
  });
  it('take no amplifier out before somebody has said that the head unit holds a full level', () => {
    const { remedy } = walk({
      'planned-change': 'amp-removed',
      ...noAmp,
      'rear-build': 'none',
      'delivered-amp': 'yes',
      ...measured,
      'tones-off': 'flat',
      'hidden-amp': 'no',
    });
    const at = (words_: RegExp) => remedy.fix.findIndex((line) => words_.test(line));
    expect(at(/^Ask before the amplifier comes off/)).toBe(0);
    expect(at(/take the amplifier out/)).toBeGreaterThan(0);
    expect(at(/Change: full level/)).toBeGreaterThan(at(/take the amplifier out/));
  });
  it('say each thing once', () => {
    for (const { remedy } of SAMPLE) {
      const lines = [...(remedy?.fix ?? []), ...(remedy?.notBuy ?? [])];
      expect(new Set(lines).size).toBe(lines.length);
      expect(JSON.stringify(remedy)).not.toMatch(/With nothing done: With/);
    }
  });
});

describe('the verdicts', () => {
  it('have ids of their own', () => {
    const ids = Object.values(PLAN_VERDICTS).map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });
  it('name only steps of this flow as evidence', () => {
    for (const { evidence } of Object.values(PLAN_VERDICTS)) {
      expect(evidence.filter((step) => !steps.has(step))).toEqual([]);
    }
  });
});
