import { describe, expect, it } from 'vitest';
import { coilRubbing } from '../../../src/causes/speakers/coil-rubbing.ts';
import { onBike } from '../on-bike.ts';

/* A coil that rubs scrapes where it travels far, which a low tone does not ask of it. Common practice, no published source. */
describe('the proof that a speaker rubs no more', () => {
  it('is a low tone, and then music at the usual volume', () => {
    const { proofOfCure } = coilRubbing.remedy(onBike({}));
    expect(proofOfCure.byEar).toMatch(/80 Hz tone, low.*[Tt]hen music .*usual volume/);
  });
});
