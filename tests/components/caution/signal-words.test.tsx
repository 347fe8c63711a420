import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { Cautions } from '../../../src/components/caution/Cautions.tsx';
import { byWord, SIGNAL_WORDS } from '../../../src/components/caution/signal-words.ts';
import { CAUTIONS, type CautionId } from '../../../src/steps/cautions.ts';

const ids = Object.keys(CAUTIONS) as CautionId[];

describe('the signal words', () => {
  it('are a notice where only things are at stake, and never where people are', () => {
    const hurts =
      /\bkills\b|burn your|hurt your|hurt ears|painfully|full blast|no sparks|airbag|hundreds of (amps|degrees)/;
    for (const id of ids) if (hurts.test(CAUTIONS[id])) expect([id, SIGNAL_WORDS[id]]).not.toEqual([id, 'Notice']);
  });
  it('are danger where somebody dies of it, and nowhere else', () => {
    for (const id of ids)
      expect([id, SIGNAL_WORDS[id] === 'Danger']).toEqual([id, /\bkills\b|while riding/.test(CAUTIONS[id])]);
  });
  it('go by what can happen: somebody dies, something burns or bursts, somebody is hurt a little, or only things are', () => {
    const MAY = [
      ['Danger', /\bkills\b|while riding/],
      ['Caution', /burn your skin|ears|painfully|full blast/],
      [
        'Warning',
        /\bgas\b|acid|spark|starter|airbag|fuse|amplifier’s current|degrees|negative comes off|swollen|amps are/,
      ],
    ] as const;
    for (const id of ids) {
      const [word = 'Notice'] = MAY.find(([, may]) => may.test(CAUTIONS[id])) ?? [];
      expect([id, SIGNAL_WORDS[id]]).toEqual([id, word]);
    }
  });
  it('put the gravest first, as safety signs do, and each caution once', () => {
    expect(byWord(['key-off', 'hot', 'riding', 'fuse', 'hot', 'key-off'])).toEqual([
      ['Danger', ['riding']],
      ['Warning', ['fuse']],
      ['Caution', ['hot']],
      ['Notice', ['key-off']],
    ]);
  });
});

describe('cautions on the screen', () => {
  it('lose none of what they are given', () => {
    const html = renderToString(<Cautions ids={ids} />);
    for (const id of ids) expect(html.replaceAll('&quot;', '"')).toContain(CAUTIONS[id]);
    expect([...html.matchAll(/class="signal">(\w+)</g)].map(([, word]) => word)).toEqual([
      'Danger',
      'Warning',
      'Caution',
      'Notice',
    ]);
  });
});
