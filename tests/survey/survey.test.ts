import { describe, expect, it } from 'vitest';
import { FAULT_FLOWS } from '../../src/case/flows.ts';
import { CAUSES } from '../../src/causes/all.ts';
import { type Found, gathered, lookOver, type Survey } from '../../src/survey/survey.ts';
import { causeOfFault, surveyOf } from '../../src/survey/survey-of.ts';
import { UNLISTED } from '../../src/survey/unlisted.ts';
import { type Fault, keyOf } from '../../src/world/faults/index.ts';
import { even } from '../../src/world/faults/kit.ts';
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

/** What is told of the time before it failed. */
const PAST = new Set(['last-change', 'rear-history', 'amp-history', 'tone-history', 'harsh-history']);

describe.each(FAULT_FLOWS)('the survey for %s', (id, listed) => {
  it('looks at what stands in for a reading, or for a lamp, although both can be read', async () => {
    const what = surveyOf(listed, await listed.load(), CAUSES, 1);
    const shown = SHOWN_BY[id] ?? {};
    const faults = what.faults.filter((fault) => Object.values(shown).includes(keyOf(fault)));
    const seen = new Set(lookOver({ ...what, faults }).flatMap(({ counts }) => [...counts.keys()]));
    expect(Object.keys(shown).filter((step) => !seen.has(step))).toEqual([]);
  }, 120_000);
  // Most faults come with no event that anybody knows of: common practice, no published source.
  it('knows nothing of the past of what nobody thought of, so that “nothing I know of” does not speak for it', async () => {
    const flow = await listed.load();
    const what = surveyOf(listed, flow, CAUSES, 4);
    const seen = lookOver({ ...what, faults: UNLISTED });
    expect(seen.length).toBeGreaterThan(0);
    const told = seen.flatMap(({ counts }) => [...counts.keys()].filter((step) => PAST.has(step)));
    expect([...new Set(told)]).toEqual([]);
  }, 120_000);
});

describe('the bikes of the survey', () => {
  it.each(FAULT_FLOWS)('can have, together, every fault that a cause stands for: %s', async (_, listed) => {
    const { rigs, faults } = surveyOf(listed, await listed.load(), CAUSES);
    const sound = rigs.map(healthyWorld);
    const missed = faults.filter((fault) => causeOfFault(CAUSES, fault) && !sound.some((bike) => fault.fits(bike)));
    expect(missed.map(keyOf)).toEqual([]);
  });
});

describe('what was found, gathered', () => {
  const fault = (id: string, weight: number, severity: Fault['severity'] = null): Fault => ({
    id,
    title: id,
    severity,
    weights: { 'no-rear-sound': weight },
    fits: () => true,
    apply: (world) => world,
  });
  const what: Survey = {
    steps: [],
    complaints: { 'no-rear-sound': 1 },
    faults: [fault('fuse', 3), fault('lead', 1, even('ohm', 1, 2))],
    rigs: [],
    kindSteps: [],
    causeOf: ({ id }) => id,
  };
  const found = (bike: string, id: string): Found => ({
    complaint: 'no-rear-sound',
    bike,
    cause: id,
    fault: id,
    kind: '',
    counts: new Map(),
  });
  const share = (looks: readonly Found[], id: string) =>
    gathered(what, looks).reduce((sum, seen) => (seen.cause === id ? sum + seen.weight : sum), 0);

  // By hand: half the callers have each bike. The first can have both, 3 to 1, the second nothing but the lead.
  it('gives each bike its callers first, and then each fault that it can have its share of them', () => {
    const both = [found('0', 'fuse'), ...[0, 1, 2].map(() => found('0', 'lead'))];
    const looks = [...both, ...[0, 1, 2].map(() => found('1', 'lead'))];
    expect(share(looks, 'fuse')).toBeCloseTo(0.5 * 0.75, 12);
    expect(share(looks, 'lead')).toBeCloseTo(0.5 * 0.25 + 0.5, 12);
  });
  it('lets a fault that complains in some of its degrees only be rarer by that', () => {
    // One degree of three: 3 against 1/3.
    expect(share([found('0', 'fuse'), found('0', 'lead')], 'lead')).toBeCloseTo(1 / 3 / (3 + 1 / 3), 12);
  });
  it('counts a fault of one side for both, since each bike shows it on one of them', () => {
    const sided: Survey = { ...what, faults: [fault('fuse', 3), { ...fault('wire', 1), side: 'left' }] };
    const wire = gathered(sided, [found('0', 'fuse'), found('0', 'wire')]).find(({ cause }) => cause === 'wire');
    expect(wire?.weight).toBeCloseTo(2 / (3 + 2), 12);
  });
});
