import { describe, expect, it } from 'vitest';
import { drawFrom } from '../../src/observe/draw.ts';
import { observe } from '../../src/observe/index.ts';
import { bikesOf, type Present } from '../../src/proof/bikes.ts';
import { provedFlow } from '../../src/proof/flows.ts';
import { type Observe, play } from '../../src/proof/play.ts';
import { falseAnswers, unableTo, withoutMeter } from '../../src/proof/rider.ts';
import { listedFaults, tooWide } from '../../src/proof/stands-for.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { outcomeOf } from '../../src/steps/outcome.ts';
import type { Remedy } from '../../src/verdicts/verdict.ts';
import { FAULTS, keyOf, severityAt } from '../../src/world/faults/index.ts';
import { EXACT_METER } from '../../src/world/meter.ts';

/* A rider on one bike, start to cure. Which verdict belongs to which fault: common practice, no published source. */

const REAR = provedFlow('no-rear-sound');
/** Two amplifiers; that of the rear is switched by a remote wire. */
const [FRONT_AMP, REAR_AMP] = EXAMPLE_RIGS.trunk.amps;
const ON_WIRE: Rig = { ...EXAMPLE_RIGS.trunk, amps: [FRONT_AMP, { ...REAR_AMP, turnOn: 'wire' }] };

const present = (key: string): Present => {
  const fault = FAULTS.find((one) => keyOf(one) === key) ?? expect.fail(`no fault ${key}`);
  return { fault, severity: severityAt(fault, 0.5) };
};
const careful: Observe = (step, bike, situation) =>
  observe(step, bike, situation, { meter: EXACT_METER, draw: drawFrom('play', step.id) });
const ridden = (faults: readonly string[], sees: Observe = careful, rig = ON_WIRE) =>
  play({ proved: REAR, bikes: bikesOf(rig), believed: rig, faults: faults.map(present), observe: sees });

describe('a case that is played', () => {
  it('ends with one fix where one fault is there', () => {
    const { rounds, cured } = ridden(['coil-open@both-rear']);
    expect(rounds.map(({ verdict, met }) => [verdict, met])).toEqual([['coil-open', 'fix']]);
    expect(cured).toBe(true);
  });
  it('follows a hand-over to the other flow, and asks nothing there that is known', () => {
    const { rounds, cured } = ridden(['main-fuse-open']);
    expect(rounds.map(({ flow, verdict, met }) => [flow, verdict, met])).toEqual([
      ['no-rear-sound', 'amp-off', 'hand-over'],
      ['amp-wont-turn-on', 'main-fuse-open', 'fix'],
    ]);
    expect(cured).toBe(true);
    const [first, second] = rounds.map(({ asked }) => asked);
    const known = new Set(first?.map(({ step }) => step.id));
    const again = second?.filter(({ step, fresh }) => fresh && known.has(step.id)).map(({ step }) => step.id);
    expect(again).toEqual([]);
  });
  it('finds two faults one after the other, and keeps what the first repair cannot have altered', () => {
    const { rounds, cured } = ridden(['fader-or-balance-off@fader', 'coil-open@both-rear']);
    expect(rounds.map(({ verdict, met }) => [verdict, met])).toEqual([
      ['coil-open', 'fix'],
      ['fader-or-balance-off', 'fix'],
    ]);
    expect(cured).toBe(true);
    expect(rounds[1]?.asked.find(({ step }) => step.id === 'rear-history')?.fresh).toBe(false);
    expect(rounds[1]?.asked.find(({ step }) => step.id === 'fader-centre')?.fresh).toBe(true);
  });
  it('says “I can’t” to every measurement without a meter, and to one step only where one is in the way', () => {
    const without = ridden(['coil-open@both-rear'], withoutMeter(careful)).rounds.flatMap(({ asked }) => asked);
    expect(without.filter(({ answer }) => 'readings' in answer)).toEqual([]);
    const unable = ridden(['coil-open@both-rear'], unableTo('run-ohms', careful)).rounds.flatMap(({ asked }) => asked);
    const refused = unable.filter(({ answer }) => 'cannot' in answer).map(({ step }) => step.id);
    expect(refused).toContain('run-ohms');
  });
});

describe('a false answer', () => {
  const { asked } = ridden(['coil-open@both-rear']).rounds[0] ?? expect.fail('no round');
  it.each(asked.map((one) => [one.step.id, one] as const))('to %s means something else, and can be used', (_, one) => {
    const facts = Object.fromEntries(asked.map(({ step, answer }) => [step.id, answer]));
    const situation = { rig: ON_WIRE, facts };
    const false_ = falseAnswers(one.step, one.answer, situation);
    const meanings = false_.map((answer) =>
      outcomeOf(one.step, { rig: ON_WIRE, facts: { ...facts, [one.step.id]: answer } }),
    );
    expect(meanings).not.toContain(one.outcome);
    expect(meanings).not.toContain(undefined);
    expect(new Set(meanings).size).toBe(meanings.length);
    if (one.outcome !== 'cannot') expect(false_.length).toBeGreaterThan(0);
  });
});

describe('what a verdict names', () => {
  const remedy = (certainty: Remedy['certainty']) => ({ certainty }) as Remedy;
  it('is found by the title of a suspect or by the words of a list', () => {
    expect(listedFaults(REAR, 'Rear coils open')).toEqual(['coil-open']);
    expect(listedFaults(REAR, 'A wire on the frame')).toEqual(['speaker-wire-to-frame']);
    expect(listedFaults(REAR, 'Something that nobody has written down')).toBeUndefined();
  });
  it('is a class of three at most, and four in a short list', () => {
    expect(tooWide({ own: ['a'], listed: [['b'], ['c']] }, remedy('likely'))).toBeNull();
    expect(tooWide({ own: ['a'], listed: [['b'], ['c'], ['d']] }, remedy('likely'))).toBe('in a class of 4');
    expect(tooWide({ own: ['a', 'b'], listed: [['b'], ['a'], ['c']] }, remedy('proved'))).toBeNull();
    expect(tooWide({ own: [], listed: [['a'], ['b'], ['c'], ['d']] }, remedy('short list'))).toBeNull();
    expect(tooWide({ own: [], listed: [['a'], ['b'], ['c'], ['d'], ['e']] }, remedy('short list'))).toBe(
      'in a short list of 5',
    );
  });
});
