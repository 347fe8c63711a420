import { describe, expect, it } from 'vitest';
import { titleOf } from '../../../src/causes/cause.ts';
import { lidContactsDirty } from '../../../src/causes/plugs/lid-contacts-dirty.ts';
import { loomsUnjoined } from '../../../src/causes/plugs/looms-unjoined.ts';
import { rearPairsCrossed } from '../../../src/causes/plugs/rear-pairs-crossed.ts';
import { rearPlugOff } from '../../../src/causes/plugs/rear-plug-off.ts';
import { secondConnectorDirty } from '../../../src/causes/plugs/second-connector-dirty.ts';
import { failsRatio } from '../../../src/causes/repair-action.ts';
import { figuresOf, ON_AMP, onBike } from '../on-bike.ts';

const LEFT_OPEN = onBike(ON_AMP, {}, { 'run-ohms': { leadsOhm: 0.2, leftOhm: 900, rightOhm: 3.5 } });

describe('a plug of the rear loom', () => {
  it('has its side in the title where one run reads far more than the other', () => {
    expect(titleOf(rearPlugOff, LEFT_OPEN)).toBe('Rear left plug not home');
    expect(titleOf(lidContactsDirty, LEFT_OPEN)).toBe('Rear left plug with bad contacts');
    expect(titleOf(rearPlugOff, onBike(ON_AMP))).toBe('Rear plug not home');
  });
  it('is looked for before it is pushed home by somebody who found none', () => {
    const { fix } = rearPlugOff.remedy(onBike(ON_AMP, { 'lid-check': 'no-plug' }));
    expect(fix[0]).toMatch(/^Found no plug/);
    expect(rearPlugOff.remedy(onBike(ON_AMP, { 'lid-check': 'no-effect' })).fix[0]).not.toMatch(/found no plug/);
  });
  it.each([lidContactsDirty, secondConnectorDirty])('$id: is pushed home before it is cleaned', (cause) => {
    const { repair } = cause.remedy(LEFT_OPEN);
    expect(repair.map((action) => action.do)).toEqual(['seat-plug', 'clean-contacts']);
    expect(repair[0]).toMatchObject({ where: 'rear-left' });
    // Contacts that were wiped fail more often than a plug that was only off.
    expect(failsRatio(repair)).toBeGreaterThan(failsRatio(rearPlugOff.remedy(LEFT_OPEN).repair));
  });
  it('adds more than 1 Ω when it is dirty: common practice, no published source', () => {
    expect(figuresOf(lidContactsDirty, onBike(ON_AMP))).toMatchObject({ 'bad-contact': 'above 1 Ω' });
  });
});

describe('rear pairs that are crossed', () => {
  it('are told by a coil between wires that do not belong together: 2.8 to 3.8 Ω of a 4 Ω speaker', () => {
    expect(figuresOf(rearPairsCrossed, onBike(ON_AMP))).toEqual({ 'coil-cold': '2.8 to 3.8 Ω' });
    expect(rearPairsCrossed.remedy(onBike(ON_AMP)).repair).toEqual([{ do: 'uncross-pairs' }]);
  });
});

describe('halves of a loom that were never joined', () => {
  it('are joined, and nothing is bought', () => {
    expect(loomsUnjoined.remedy(onBike(ON_AMP))).toMatchObject({
      repair: [{ do: 'join-looms', where: 'rear' }],
      parts: [],
    });
  });
});
