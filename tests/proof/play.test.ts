import { describe, expect, it } from 'vitest';
import type { Late } from '../../machines/machine.ts';
import type { Cause } from '../../src/causes/cause.ts';
import type { RepairAction } from '../../src/causes/repair-action.ts';
import { bikesOf } from '../../src/proof/bikes.ts';
import { rideOf } from '../../src/proof/modes.ts';
import type { Observe } from '../../src/proof/observe.ts';
import { play, type Ride, type Stages } from '../../src/proof/play.ts';
import { steady } from '../../src/proof/riders.ts';
import { loadStages } from '../../src/proof/stages.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import { conditionOf } from '../../src/steps/conditions.ts';
import type { WholeRig } from '../../src/survey/random-rig.ts';
import { withSettings } from '../../src/world/change.ts';
import { FAULTS, severityAt } from '../../src/world/faults/index.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import { ridden } from '../../src/world/symptoms/index.ts';
import { type Answers, toAnswer } from '../journey.ts';
import { mains, mainsLate, pump, pumpLate } from '../machines/pump.ts';

/*
 * A rider of the throw-away pump, on a real bike of the model: what is wrong with it is its fader, the fix of a stuck float
 * is to centre it, and he is content as soon as it stands in the middle.
 */

const healthy = healthyWorld(EXAMPLE_RIGS['frame-fairing']);
const FADED = ridden(withSettings(healthy, { fader: 1 }));

/** Says the same to each step whenever it is asked; what is not in the list he cannot do. */
const saying = (answers: Answers, again: Answers = {}): Observe =>
  (() => {
    const asked = new Set<string>();
    return ({ id }) => {
      const short = asked.has(id) && id in again ? again[id] : answers[id];
      asked.add(id);
      return toAnswer(short ?? null);
    };
  })();

const FLOAT: Answers = { outlet: 'wall', stood: 'used', hum: 'silent', float: 'cured' };
const JAM: Answers = { outlet: 'wall', stood: 'winter', hum: 'hums' };
const STAGES: Stages = { pump: { flow: pump, late: pumpLate }, mains: { flow: mains, late: mainsLate } };

const rideOn = (more: Partial<Ride> & Pick<Ride, 'observe'>): Ride => ({
  stages: STAGES,
  start: 'pump',
  believed: {},
  bike: FADED,
  complains: ({ world }) => world.settings.fader !== 0,
  right: new Set(['float-stuck']),
  rightByIds: false,
  ...more,
});

/** The pump with another fix for one of its causes. */
function mendedBy(id: string, ...repair: readonly RepairAction[]): Stages {
  const cause = pumpLate.causes[id] ?? expect.fail(`no cause ${id}`);
  const other: Cause = { ...cause, remedy: (f) => ({ ...cause.remedy(f), repair }) };
  const late: Late = { ...pumpLate, causes: { ...pumpLate.causes, [id]: other } };
  return { ...STAGES, pump: { flow: pump, late } };
}

describe('a rider', () => {
  it('is cured by a right verdict: its repair is done to the bike, and the complaint is gone', () => {
    const { rounds, cured } = play(rideOn({ observe: saying(FLOAT) }));
    expect(cured).toBe(true);
    expect(rounds).toHaveLength(1);
    expect(rounds[0]).toMatchObject({ named: ['float-stuck'], right: [true], vain: false, part: false, harms: [] });
  });
  it('does in vain what a wrong verdict says, tells so, and goes on', () => {
    const { rounds, cured, case: played } = play(rideOn({ observe: saying(JAM) }));
    expect(rounds[0]).toMatchObject({
      named: ['jammed'],
      certainty: 'proved',
      right: [false],
      vain: true,
      part: false,
    });
    expect(played.events).toContainEqual({ type: 'repair', verdict: 'jammed' });
    expect(rounds.length).toBeGreaterThan(1);
    expect(cured).toBe(rounds.some(({ right, vain }) => right.includes(true) && !vain));
  });
  it('buys no part on the word of one witness: it is only likely, and checked first', () => {
    const stages = mendedBy('jammed', { do: 'repair-amp' });
    const [first] = play(rideOn({ stages, observe: saying(JAM) })).rounds;
    expect(first).toMatchObject({ named: ['jammed'], certainty: 'likely', vain: false, part: false });
  });
  it('checks first what is only likely and costs money: “not it” costs nothing', () => {
    const OPEN: Answers = {
      outlet: 'wall',
      stood: 'used',
      hum: 'silent',
      float: 'no-change',
      'tools-at-hand': 'meter',
      volts: { pumpV: '12' },
      winding: { windingOhm: 'OL' },
    };
    const { rounds, case: played } = play(rideOn({ observe: saying(OPEN) }));
    expect(rounds[0]).toMatchObject({ certainty: 'likely', vain: false, part: false });
    expect(rounds[0]?.named[0]).toBe('winding-open');
    expect(played.events).toContainEqual({ type: 'repair', verdict: 'winding-open', result: 'not-it' });
  });
  it('checks each entry of a list in its order, and mends the one that it is', () => {
    const NOTHING: Answers = { 'tools-at-hand': 'none' };
    const { rounds, cured } = play(rideOn({ observe: saying(NOTHING) }));
    expect(rounds).toHaveLength(1);
    expect(rounds[0]).toMatchObject({ certainty: 'short list', vain: false, part: false });
    expect(rounds[0]?.named.slice(0, 2)).toEqual(['jammed', 'float-stuck']);
    expect(rounds[0]?.right.slice(0, 2)).toEqual([false, true]);
    expect(cured).toBe(true);
  });
  it('finds no part right that replaced a sound one, also where the complaint went away with it', () => {
    const stages = mendedBy('jammed', { do: 'repair-amp' }, { do: 'centre-fader' });
    const [first] = play(rideOn({ stages, observe: saying(JAM) })).rounds;
    expect(first).toMatchObject({ named: ['jammed'], right: [false], part: false });
    const byHand = mendedBy('jammed', { do: 'centre-fader' });
    expect(play(rideOn({ stages: byHand, observe: saying(JAM) })).rounds[0]?.right).toEqual([true]);
  });
  it('is told of harm by what the repair did to the bike', () => {
    // 100 A is more than any lead of the table of fuses carries.
    const stages = mendedBy('jammed', { do: 'renew-fuse', fuse: 'main', fuseA: 100 });
    expect(play(rideOn({ stages, observe: saying(JAM) })).rounds[0]?.harms).toEqual(['jammed: fuse-above-lead']);
  });
  it('mends one after the other where two are wrong', () => {
    const two = rideOn({
      observe: saying({ ...JAM, float: 'cured' }),
      right: new Set(['jammed', 'float-stuck']),
      rightByIds: true,
    });
    const { rounds, cured } = play(two);
    expect(rounds[0]).toMatchObject({ right: [true], vain: false });
    expect(rounds.length).toBeGreaterThan(1);
    expect(cured).toBe(true);
  });
  it('looks again where he is asked to, and what he sees then counts', () => {
    const slipped = { outlet: 'wall', stood: 'winter', hum: 'hums', float: 'no-change' } as const;
    const twice: Answers = { ...slipped, stood: 'used', float: 'cured' };
    const kept = play(rideOn({ observe: saying(twice) }));
    expect(kept.asked).toContain('again float');
    expect(kept.case.events).toContainEqual({ type: 'confirm', step: 'float' });
    const put = play(rideOn({ observe: saying(twice, { float: 'no-change' }) }));
    expect(put.case.events).toContainEqual({ type: 'revise', step: 'float', answer: { option: 'no-change' } });
  });
  it('goes on in the flow that is better at it', () => {
    const DEAD: Answers = {
      outlet: 'wall',
      stood: 'used',
      hum: 'silent',
      float: 'no-change',
      'tools-at-hand': 'meter',
      volts: { pumpV: '0' },
      winding: { windingOhm: '5' },
      'breaker-look': 'off',
    };
    const { rounds, case: played } = play(rideOn({ observe: saying(DEAD), right: new Set(['outlet-dead']) }));
    expect(rounds[0]).toMatchObject({ flow: 'mains', named: ['outlet-dead'] });
    expect(played.flow).toBe('mains');
  });
  it('loses patience after six rounds', () => {
    const never = rideOn({ observe: saying(JAM), complains: () => true, right: new Set() });
    const { rounds, cured } = play(never);
    expect(rounds.length).toBeLessThanOrEqual(6);
    expect(cured).toBe(false);
  });
  it('does the same whenever it is played', () => {
    const once = play(rideOn({ observe: saying(FLOAT) }));
    expect(play(rideOn({ observe: saying(FLOAT) }))).toEqual(once);
  });
});

describe('the minutes of a case', async () => {
  const stages = await loadStages();
  const { rig } = healthy;
  const bikes = bikesOf(rig);
  const fault = FAULTS.find(({ id }) => id === 'amp-channel-dead') ?? expect.fail('no such fault');
  const present = { fault, severity: severityAt(fault, 0.5) };
  const subject = { name: 'x', complaint: 'no-rear-sound', paper: rig as WholeRig, bikes, faults: [present] } as const;
  const { asked, minutes } = play(
    rideOf({ flow: 'no-rear-sound', stages, turns: 1 }, subject, [present], rig, steady(['minutes'])),
  );
  const steps = new Map(Object.values(stages).flatMap(({ flow }) => [...flow.steps]));
  const firstLooks = asked.flatMap((id) => steps.get(id) ?? []);
  const secondLooks = asked.flatMap((id) => (id.startsWith('again ') ? (steps.get(id.slice(6)) ?? []) : []));

  it('are those of its steps, each condition paid once, and a little for a second look', () => {
    const conditions = firstLooks.flatMap((step) => step.conditions ?? []);
    const saved = conditions.filter((id, i) => conditions.indexOf(id) < i);
    const sum = (of: readonly number[]) => of.reduce((so, one) => so + one, 0);
    expect(sum(saved.map((id) => conditionOf(id).minutes))).toBeGreaterThan(0);
    // A second look takes three tenths of the step, a minute at most. Judged.
    const expected =
      sum(firstLooks.map((step) => step.minutes)) -
      sum(saved.map((id) => conditionOf(id).minutes)) +
      sum(secondLooks.map((step) => Math.min(1, 0.3 * step.minutes)));
    expect(minutes).toBeCloseTo(expected, 9);
  });
});
