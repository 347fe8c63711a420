import { describe, expect, it } from 'vitest';
import { oneSpeakerOrSideDead } from '../../machines/one-speaker-or-side-dead.ts';
import { confirmed } from '../../src/case/change.ts';
import type { Case } from '../../src/case/events.ts';
import { replay } from '../../src/case/replay.ts';
import { polaritySwapped } from '../../src/causes/runs/polarity-swapped.ts';
import { late } from '../../src/likelihoods/one-speaker-or-side-dead.ts';
import { type Answers, caseOn, give, openIn } from '../journey.ts';

/* Two equal sources against each other leave nothing of the bass; either alone is whole. That the balance tells: common practice. */

const THIN: Answers = {
  'which-corner': 'thin',
  'unit-kind': 'factory',
  'last-change': 'front',
  'tried-already': 'nothing',
};
const stand = (it: Case) => replay(oneSpeakerOrSideDead, it, late);
const settled = (it: Case): Case => {
  const { open } = stand(it);
  return open.kind === 'doubt' ? settled(confirmed(it, open.step.id)) : it;
};

describe('a bike on which all play, and the bass is thin', () => {
  it('is asked for the ends of fader and balance before anything is touched', () => {
    expect(openIn(stand(give(caseOn(oneSpeakerOrSideDead), THIN)))).toBe('ends-compare?');
  });
  it.each([
    ['front', 'front', /^One front speaker pushes/],
    ['rear', 'rear', /^One rear speaker pushes/],
    ['between', 'rear', /^The rear pair pushes while the front pair pulls/],
  ] as const)('has it back at the ends, %s: wires are swapped %s', (end, where, what) => {
    const standing = stand(settled(give(caseOn(oneSpeakerOrSideDead), { ...THIN, 'ends-compare': end })));
    expect(openIn(standing)).toBe('polarity-swapped');
    const remedy = polaritySwapped.remedy(standing.findings);
    expect(remedy.what).toMatch(what);
    expect(remedy.repair).toEqual([{ do: 'turn-polarity', where }]);
  });
});
