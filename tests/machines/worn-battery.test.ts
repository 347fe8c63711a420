import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../machines/amp-wont-turn-on.ts';
import { type Answers, caseOn, give, stand } from '../journey.ts';

/* A battery that is worn shows at the starter before it shows anywhere else: common practice, no published source. */

const LOUD: Answers = {
  ...Object.fromEntries(ampWontTurnOn.inOrder.map(({ id }) => [id, null])),
  'which-amp': 'rear',
  'amp-history': 'comes-and-goes',
  'last-change': 'nothing',
  'fuses-blown': 'none',
  'tried-already': 'nothing',
  'amp-light': 'normal',
  'amp-goes-off': 'loud',
  'what-else': 'nothing',
};
const shareWith = (answers: Answers) =>
  stand(ampWontTurnOn, give(caseOn(ampWontTurnOn), { ...LOUD, ...answers })).decided?.reckoning?.shares.find(
    ({ cause }) => cause === 'battery-worn',
  )?.shareRatio ?? expect.fail('battery-worn is not reckoned with');

describe('an amplifier that cuts out when it is loud', () => {
  it('is put down to the battery by a slow starter, and kept from it by a brisk one, before any meter is out', () => {
    expect(shareWith({ 'starter-turns': 'slow' })).toBeGreaterThan(2 * shareWith({}));
    expect(shareWith({ 'starter-turns': 'brisk' })).toBeLessThan(0.3 * shareWith({}));
  });
});
