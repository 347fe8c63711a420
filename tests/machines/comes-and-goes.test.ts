import { describe, expect, it } from 'vitest';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import { oneSpeakerOrSideDead } from '../../machines/one-speaker-or-side-dead.ts';
import { answered } from '../../src/case/change.ts';
import { replay } from '../../src/case/replay.ts';
import { late as sideLate } from '../../src/likelihoods/one-speaker-or-side-dead.ts';
import { type Answers, caseOn, give, stand, toAnswer } from '../journey.ts';

const TOLD: Answers = {
  'unit-kind': 'factory',
  'rear-drive': 'amp',
  'front-drive': 'same',
  'rear-inputs': null,
  'rear-amp-turn-on': null,
  'which-silent': 'both',
  'last-change': 'nothing',
  'tried-already': 'nothing',
};
const ON_BUMPS: Answers = { ...TOLD, 'rear-history': 'comes-and-goes', 'when-silent': 'bumps' };
const ALWAYS: Answers = { ...TOLD, 'rear-history': 'stopped', 'when-silent': 'always' };
const PLAYS_NOW: Answers = {
  'fader-centre': 'plays',
  'rear-control': 'plays',
  'lid-check': 'plays',
  'four-corners': 'all',
};

const shareOf = (cause: string, answers: Answers) =>
  stand(noRearSound, give(caseOn(noRearSound), answers)).decided?.reckoning?.shares.find((one) => one.cause === cause)
    ?.shareRatio ?? expect.fail(`${cause} is not reckoned with`);

/** The steps that are asked, each answered from a list, or with “I can’t”. */
function askedOf(answers: Answers): readonly string[] {
  const asked: string[] = [];
  let it = caseOn(noRearSound);
  for (let open = stand(noRearSound, it).open; open.kind === 'step'; open = stand(noRearSound, it).open) {
    asked.push(open.step.id);
    it = answered(it, open.step.id, toAnswer(answers[open.step.id] ?? null));
  }
  return asked;
}

// A joint that a bump opens is whole at the stand: common practice, no published source.
describe('a rear that comes and goes on bumps, and plays just now', () => {
  it('clears no contact by playing', () => {
    const { 'fader-centre': _, 'rear-control': __, ...heard } = PLAYS_NOW;
    for (const cause of ['lid-contacts-dirty', 'lid-lead-broken'])
      expect(shareOf(cause, { ...ON_BUMPS, ...heard })).toBeCloseTo(shareOf(cause, ON_BUMPS), 6);
  });
  it('clears a setting that had been right before, and no contact by it', () => {
    const after = { ...ON_BUMPS, ...PLAYS_NOW };
    expect(shareOf('fader-or-balance-off', after)).toBeLessThan(0.2 * shareOf('fader-or-balance-off', ON_BUMPS));
    for (const cause of ['lid-contacts-dirty', 'lid-lead-broken'])
      expect(shareOf(cause, after)).toBeGreaterThan(0.6 * shareOf(cause, ON_BUMPS));
  });
  it('clears nothing of its amplifier by a light that is lit and a hiss that is heard meanwhile', () => {
    const meanwhile = { ...ON_BUMPS, ...PLAYS_NOW, 'amp-light': 'normal', 'rear-hiss': 'hiss' };
    for (const cause of ['elsewhere: amp-wont-turn-on', 'lid-lead-broken'])
      expect(shareOf(cause, meanwhile)).toBeCloseTo(shareOf(cause, { ...ON_BUMPS, ...PLAYS_NOW }), 6);
  });
  it('is told much by a light that is lit while it is silent', () => {
    const cause = 'elsewhere: amp-wont-turn-on';
    const silent = { ...ON_BUMPS, 'fader-centre': 'no-change' };
    expect(shareOf(cause, { ...silent, 'amp-light': 'normal' })).toBeLessThan(0.7 * shareOf(cause, silent));
  });
  it('is asked to press the plugs, and not which corners play', () => {
    const asked = askedOf({ ...ON_BUMPS, ...PLAYS_NOW, 'amp-light': 'normal' });
    expect(asked).toContain('wiggle');
    expect(asked.slice(asked.indexOf('fader-centre'))).not.toContain('four-corners');
  });
});

describe('a rear that is silent always', () => {
  it('is told much by four corners that play', () => {
    const cause = 'fader-or-balance-off';
    expect(shareOf(cause, { ...ALWAYS, 'four-corners': 'all' })).toBeGreaterThan(2 * shareOf(cause, ALWAYS));
  });
});

// Nobody knows whether it played before the plugs were touched: common practice, no published source.
describe('a side that comes and goes', () => {
  const SIDE: Answers = {
    'which-corner': 'front-left',
    'unit-kind': 'factory',
    'front-fed': 'amp',
    'last-change': 'nothing',
    'tried-already': 'nothing',
  };
  const at = (answers: Answers) => replay(oneSpeakerOrSideDead, give(caseOn(oneSpeakerOrSideDead), answers), sideLate);
  it('is not cured by plugs that changed places while both play', () => {
    const goes = { ...SIDE, 'rear-history': 'comes-and-goes', 'when-silent': 'bumps' };
    const shares = (answers: Answers) => at(answers).decided?.reckoning?.shares.map(({ shareRatio }) => shareRatio);
    const told = shares(goes) ?? expect.fail('nothing is reckoned');
    for (const id of ['swap-sides-in', 'swap-sides-out']) {
      const swapped = { ...goes, [id]: 'plays' };
      expect(at(swapped).open.kind, id).toBe('step');
      expect(shares(swapped), id).toEqual(told);
    }
  });
  it('is, where it was silent until then', () => {
    const silent = { ...SIDE, 'rear-history': 'stopped', 'when-silent': 'always' };
    const { open } = at({ ...silent, 'how-quiet': 'dead', 'swap-sides-in': 'plays' });
    expect(open.kind === 'cause' && open.cause).toBe('amp-input-plug-off');
  });
});
