import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { isAReflashNeeded } from '../../../machines/is-a-reflash-needed.ts';
import { whatIsInTheHeadUnit } from '../../../machines/what-is-in-the-head-unit.ts';
import { replayRows } from '../../../src/case/replay-rows.ts';
import type { Terminal } from '../../../src/case/standing.ts';
import { fromMyBike, Wire } from '../../../src/components/flow/Wire.tsx';
import { findingsOver } from '../../../src/steps/outcome.ts';
import type { Facts, Step } from '../../../src/steps/step.ts';
import { rearPair } from '../../../src/steps/unit/rear-pair.ts';
import { caseOn, give } from '../../journey.ts';

const terminal: Terminal = {
  step: rearPair as unknown as Step,
  answer: { readings: { frontV: '2', leftV: '0,02 V', rightV: '' } },
  outcome: 'none',
};

describe('an answered row', () => {
  const html = renderToString(
    <Wire known={[]} root="/" terminals={[terminal]} situation={{ rig: {}, facts: {} }} onReopen={() => undefined} />,
  );
  it('is one button, whole, that opens the answer again', () => {
    expect(html.match(/<button/g)).toHaveLength(1);
    const inside = /<button[^>]*>(.*)<\/button><\/li>/.exec(html)?.[1] ?? '';
    expect(inside.replace(/<[^>]+>/g, '')).toBe(
      'Answer again: Rear pairs at the head unit nothing comes out (2 V, 0,02 V)',
    );
  });
  it('has no word at its end that asks to be tapped', () => expect(html).not.toMatch(/change/i));
});

describe('what “my bike” says', () => {
  it('is named where a flow would have asked for it, until it is answered', () => {
    const on = (facts: Facts) =>
      fromMyBike(
        whatIsInTheHeadUnit,
        {
          rig: { unitKind: 'factory' },
          facts,
          findings: findingsOver(whatIsInTheHeadUnit.steps)({ rig: { unitKind: 'factory' }, facts }),
        },
        caseOn(whatIsInTheHeadUnit, { unitKind: 'factory' }),
      );
    expect(on({})).toEqual(['head unit: factory']);
    expect(on({ 'unit-kind': { option: 'replaced' } })).toEqual([]);
  });
  it('is not what an answer of this case says of the bike: a plan for rear speakers has them', () => {
    const it_ = give(caseOn(isAReflashNeeded), { 'planned-change': 'rear-on-unit' });
    const standing = replayRows(isAReflashNeeded, it_);
    expect(standing.rig.rearFedBy).toBe('unit');
    expect(fromMyBike(isAReflashNeeded, standing, it_)).toEqual([]);
  });
});
