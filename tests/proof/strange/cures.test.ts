import { describe, expect, it } from 'vitest';
import { CAUSES } from '../../../src/causes/all.ts';
import type { RepairAction } from '../../../src/causes/repair-action.ts';
import { onceEach } from '../../../src/compute/once-each.ts';
import { drawFrom } from '../../../src/observe/draw.ts';
import { STRANGE_FAULTS, type StrangeFault, strangeSeverity } from '../../../src/proof/strange/index.ts';
import { findingsOver } from '../../../src/steps/outcome.ts';
import { keyOf } from '../../../src/world/faults/index.ts';
import { withRepairs } from '../../../src/world/repair.ts';
import type { World } from '../../../src/world/state.ts';
import { COMPLAINTS, type ComplaintId, ridden } from '../../../src/world/symptoms/index.ts';
import { careful, rigOf, STEPS, saidBy, soundWorld } from './bikes.ts';

const BIKES = 20;
const complains = (complaint: ComplaintId, world: World): boolean => COMPLAINTS[complaint](ridden(world)) === 'yes';

interface Bad {
  readonly nth: number;
  readonly world: World;
  readonly complaints: readonly ComplaintId[];
}
/** Bikes on which a fault shows, with what they complain of by it. */
const badBikes = onceEach((fault: StrangeFault): readonly Bad[] =>
  Array.from({ length: BIKES }, (_, nth): readonly Bad[] => {
    const sound = soundWorld(nth);
    if (!fault.fits(sound)) return [];
    const world = fault.apply(sound, strangeSeverity(drawFrom(fault.id, nth), fault));
    const complaints = (Object.keys(fault.weights) as ComplaintId[]).filter(
      (one) => complains(one, world) && !complains(one, sound),
    );
    return complaints.length > 0 ? [{ nth, world, complaints }] : [];
  }).flat(),
);

const isCured = ({ world, complaints }: Bad, repair: readonly RepairAction[]): boolean => {
  const after = withRepairs(world, repair);
  return !complaints.some((one) => complains(one, after));
};

/** Whoever came because of the rear is not asked which of his amplifiers stays off. */
const stepsOf = (complaints: readonly ComplaintId[]) =>
  STEPS.filter(({ id }) => id !== 'which-amp' || !complaints.includes('no-rear-sound'));

/** All that a careful person finds on the bikes of a fault. */
const factsOf = onceEach((fault: StrangeFault) =>
  onceEach(({ world }: Bad) => Object.fromEntries(saidBy(fault.person?.(careful) ?? careful, ridden(world)))),
);

/** What a verdict would have done: the fix of a cause, by all that a careful person finds on that bike. */
function fixOf(id: string, fault: StrangeFault, bad: Bad): readonly RepairAction[] {
  const { nth, complaints } = bad;
  const cause = CAUSES.find((one) => one.id === id) ?? expect.fail(`no cause ${id}`);
  const facts = factsOf(fault)(bad);
  const findings = findingsOver(new Map(stepsOf(complaints).map((step) => [step.id, step])));
  return cause.remedy(findings({ rig: rigOf(nth), facts })).repair;
}

/** Right by what a fitter would do with that verdict in hand, and not by what its actions do to the bike of the model. */
const NOT_CURED: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'shared-feed-joint': {
    'battery-lug-loose':
      'the model has no joint ahead of both rings: the ohms of the clamp are among the battery’s own',
  },
  'unit-pins-unlatched': {
    'input-pin-pushed-back': 'it renews the pins at the amplifier; the same pins sit in the other plug of that lead',
    'adapter-without-rear': 'it adds the wires that are missing, and these are there',
  },
  'unit-pins-unlatched@one-pair': {
    'input-pin-pushed-back': 'it renews the pins at the amplifier; the same pins sit in the other plug of that lead',
    'adapter-without-rear': 'it adds the wires that are missing, and these are there',
  },
  'leftover-adapter': { 'looms-unjoined': 'it joins the rear loom, and the adapter sits in front of that' },
  'line-screen-open': { 'signal-lead-open': 'a hum of the model stays where its lead is mended' },
};

const PAIRS = STRANGE_FAULTS.flatMap((fault) =>
  fault.rightCauses.map((cause) => [keyOf(fault), cause, fault] as const),
);

describe('the repair of a cause that is right', () => {
  it.each(PAIRS)('of %s by %s takes the complaint away on every bike, or is known not to on any', (key, id, fault) => {
    const bikes = badBikes(fault);
    expect(bikes.length).toBeGreaterThan(0);
    const cures = NOT_CURED[key]?.[id] === undefined;
    const others = bikes.filter((bad) => isCured(bad, fixOf(id, fault, bad)) !== cures).map(({ nth }) => nth);
    expect({ cures, others }).toEqual({ cures, others: [] });
  });
  it('is known to cure nothing only of causes that are right', () => {
    const listed = Object.entries(NOT_CURED).flatMap(([key, causes]) =>
      Object.keys(causes).map((id) => `${key} ${id}`),
    );
    expect(listed.filter((one) => !PAIRS.some(([key, id]) => one === `${key} ${id}`))).toEqual([]);
  });
});

describe('a repair that only looks right', () => {
  const WRONG: readonly (readonly [fault: string, why: string, repair: readonly RepairAction[]])[] = [
    ['shared-feed-joint', 'no charge makes a clamp sound', [{ do: 'charge-battery' }]],
    ['amp-terminal-corroded', 'green copper is no loose plug', [{ do: 'seat-plug', plug: 'amp-power' }]],
    ['lead-of-few-strands', 'the strands are in the lead', [{ do: 'tighten-joint', at: 'amp-terminal' }]],
    ['unit-pins-unlatched', 'they slip back', [{ do: 'seat-plug', plug: 'unit' }]],
    ['leftover-adapter', 'a wire is missing', [{ do: 'renew-pin', plug: 'unit' }]],
    ['amp-rear-inputs-dead', 'no knob wakes it', [{ do: 'set-gain', axle: 'rear', outputV: 15 }]],
  ];
  it.each(WRONG)('leaves %s as it was: %s', (key, _, repair) => {
    const fault = STRANGE_FAULTS.find((one) => keyOf(one) === key) ?? expect.fail(`no fault ${key}`);
    const bikes = badBikes(fault);
    expect(bikes.length).toBeGreaterThan(0);
    expect(bikes.filter((bad) => isCured(bad, repair)).map(({ nth }) => nth)).toEqual([]);
  });
});
