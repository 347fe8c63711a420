import { describe, expect, it } from 'vitest';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import { answered, confirmed, revised } from '../../src/case/change.ts';
import { replay } from '../../src/case/replay.ts';
import { offered } from '../../src/steps/outcome.ts';
import { type Answers, caseOn, give, LATE, openIn, stand } from '../journey.ts';

/* Who says that a part is not there is believed, once it is cleared up who was wrong: by reason alone. */

const FITTED: Answers = {
  'unit-kind': 'factory',
  'rear-drive': 'amp',
  'front-drive': 'unit',
  'rear-inputs': 'own',
  'rear-amp-turn-on': 'wire',
};
const TOLD: Answers = {
  'which-silent': 'both',
  'rear-history': 'stopped',
  'when-silent': 'always',
  'last-change': 'nothing',
  'tried-already': 'nothing',
};
const asked = give(caseOn(noRearSound), { ...FITTED, ...TOLD });
const denied = give(asked, { 'amp-light': 'no-amp' });

describe('an amplifier that was said to be there, and is not', () => {
  it('can be said to be missing where its light is asked for', () => {
    expect(openIn(stand(noRearSound, asked))).toBe('amp-light?');
  });
  it('is asked for once more, with the two answers that do not fit', () => {
    const { open } = stand(noRearSound, denied);
    expect(open).toMatchObject({
      kind: 'doubt',
      step: { id: 'rear-drive' },
      because: { deniedBy: { id: 'amp-light' } },
    });
  });
  it('is gone where the answer is changed, with all that is asked of one', () => {
    const standing = stand(noRearSound, revised(denied, 'rear-drive', { option: 'unit' }));
    expect(standing.rig.amps ?? []).toEqual([]);
    expect(openIn(standing)).not.toMatch(/amp|input-plug|hiss/);
  });
  it('has its light looked at once more where it is there after all', () => {
    expect(openIn(stand(noRearSound, confirmed(denied, 'rear-drive')))).toBe('amp-light?');
    const again = answered(confirmed(denied, 'rear-drive'), 'amp-light', { option: 'no-amp' });
    expect(stand(noRearSound, again).open.kind).toBe('step');
  });
  it('is no answer where “my bike” knows of it', () => {
    const rig = { amps: [{ drives: 'rear', turnOn: 'wire' }] } as const;
    const {
      open,
      rig: known,
      facts,
    } = replay(noRearSound, give(caseOn(noRearSound, rig), TOLD), LATE['no-rear-sound']);
    const step = noRearSound.steps.get('amp-light');
    expect(open.kind).toBe('step');
    expect(step && offered(step, { rig: known, facts }).map(([option]) => option)).not.toContain('no-amp');
  });
});
