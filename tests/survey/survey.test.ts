import { describe, expect, it } from 'vitest';
import { FAULT_FLOWS } from '../../src/case/flows.ts';
import { CAUSES } from '../../src/causes/all.ts';
import { lookOver } from '../../src/survey/survey.ts';
import { causeOfFault, surveyOf } from '../../src/survey/survey-of.ts';
import { keyOf } from '../../src/world/faults/index.ts';
import { healthyWorld } from '../../src/world/healthy.ts';

/** A fault for each step that is easily forgotten: it stands in for another, which everybody can do in the survey. */
const SHOWN_BY: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'no-rear-sound': { 'pop-run': 'coil-open@both-rear', 'bulb-to-frame': 'coil-open@both-rear' },
  'amp-wont-turn-on': {
    'amp-signs': 'amp-dead',
    'bulb-to-frame': 'speaker-wire-to-frame@both-rear',
    'remote-lamp': 'remote-wire-open',
    'temporary-leads': 'amp-ground-open',
    'spare-fuse': 'wire-chafed@plus-lead',
    'amp-terminals': 'wire-chafed@plus-lead',
  },
};

describe.each(FAULT_FLOWS)('the survey for %s', (id, listed) => {
  it('looks at what stands in for a reading, or for a lamp, although both can be read', async () => {
    const what = surveyOf(listed, await listed.load(), CAUSES, 1);
    const shown = SHOWN_BY[id] ?? {};
    const faults = what.faults.filter((fault) => Object.values(shown).includes(keyOf(fault)));
    const seen = new Set(lookOver({ ...what, faults }).flatMap(({ counts }) => [...counts.keys()]));
    expect(Object.keys(shown).filter((step) => !seen.has(step))).toEqual([]);
  }, 20_000);
});

describe('the bikes of the survey', () => {
  it.each(FAULT_FLOWS)('can have, together, every fault that a cause stands for: %s', async (_, listed) => {
    const { rigs, faults } = surveyOf(listed, await listed.load(), CAUSES);
    const sound = rigs.map(healthyWorld);
    const missed = faults.filter((fault) => causeOfFault(CAUSES, fault) && !sound.some((bike) => fault.fits(bike)));
    expect(missed.map(keyOf)).toEqual([]);
  });
});
