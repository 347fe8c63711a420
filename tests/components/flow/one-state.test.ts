import { describe, expect, it } from 'vitest';
import { answered } from '../../../src/case/change.ts';
import type { Case } from '../../../src/case/events.ts';
import { FLOW_LIST } from '../../../src/case/flows.ts';
import { readyFor } from '../../../src/components/flow/ready.ts';
import { EXAMPLE_RIGS } from '../../../src/rig/examples.ts';
import type { Step } from '../../../src/steps/step.ts';
import { plainly } from '../../steps/words.ts';

/* A bike has one state: what contradicts is never said together, and what is to end is said to end. Common sense, no published source. */

const BIKES = [{}, ...Object.values(EXAMPLE_RIGS).slice(0, 2)].map((rig) => ({ rig, facts: {} }));
const FLOWS = await Promise.all(FLOW_LIST.map(([, flow]) => flow.load()));
const needs = (step: Step, id: string) => step.conditions?.some((one) => one === id) === true;
/** What somebody is told to do in a step, once it is begun. */
const told = (step: Step): string =>
  [plainly(step.phone), ...(typeof step.how === 'function' ? step.how({ rig: {}, facts: {} }) : step.how)].join(' ');
const ENGINE_OFF = /\bengine off\b/i;
const ENGINE_ON = /\bengine on\b|\bengine running\b|start the engine and let it idle/i;

/** What needs the bike in some state; the key is turned in one that names none. */
const isAtTheBike = (step: Step) => (step.conditions ?? []).length > 0 || step.id === 'key-positions';

/** Each step of a flow after each other one, on a few bikes, with the lines of a seat that come before it. */
function* pairs() {
  const seen = new Set<string>();
  for (const { steps } of FLOWS)
    for (const one of steps.values())
      for (const then of steps.values()) {
        const name = `${one.id}, ${then.id}`;
        if (seen.has(name) || !isAtTheBike(then)) continue;
        seen.add(name);
        const begun: Case = { flow: '', events: [] };
        for (const situation of BIKES) {
          const ready = readyFor(then, answered(begun, one.id, { option: 'any' }), steps, situation);
          yield { name, one, then, ready, seats: [ready.bike, ready.phone] };
        }
      }
}
const PAIRS = [...pairs()];

describe('the engine, in each step after each other one', () => {
  it('is never said to be off and to run before the same question', () => {
    let running = 0;
    for (const { name, then, ready, seats } of PAIRS) {
      if (!needs(then, 'engine-running')) continue;
      running++;
      for (const lines of seats) {
        const said = [...lines, ...ready.standing].join(' ');
        const beginsOff = ENGINE_OFF.test(told(then));
        expect(said, name).not.toMatch(beginsOff ? ENGINE_ON : ENGINE_OFF);
      }
    }
    expect(running).toBeGreaterThan(500);
  });
  it('is stopped first where it ran and the next step has no use for it', () => {
    let stopped = 0;
    for (const { name, one, then, ready, seats } of PAIRS) {
      if (!needs(one, 'engine-running')) continue;
      const runs = needs(then, 'engine-running') && !ENGINE_OFF.test(told(then));
      if (runs) continue;
      stopped++;
      expect(ready.standing, name).not.toContain('engine running');
      for (const [first = ''] of seats) expect(first, name).toMatch(/\bengine off\b|^Key off\b/i);
    }
    expect(stopped).toBeGreaterThan(400);
  });
  it('takes with it what plays by the key, so none of that is said to stand', () => {
    for (const { name, one, then, ready } of PAIRS)
      if (needs(one, 'engine-running') && !needs(then, 'engine-running'))
        expect(ready.standing.join(', '), name).not.toMatch(/music|tone on|key on|distorts/);
  });
  it('does not run on under a line that turns the key off', () => {
    for (const { name, ready, seats } of PAIRS)
      for (const lines of seats)
        if (lines.some((line) => /^Key off\b/.test(line)))
          expect(ready.standing.join(', '), name).not.toMatch(/engine running|music|tone on|key on|distorts/);
  });
});

describe('the battery negative, in each step after one that took it off', () => {
  it('is said to go back on wherever the next one does not need it off, and last of what goes back', () => {
    let back = 0;
    for (const { name, one, then, seats } of PAIRS) {
      if (!needs(one, 'minus-off') || needs(then, 'minus-off')) continue;
      back++;
      for (const lines of seats) {
        expect(lines, name).toContain('Battery negative back on, last of all.');
        const at = lines.indexOf('Battery negative back on, last of all.');
        for (const line of lines.slice(at)) expect(line, name).not.toMatch(/\b(back in|home until|plugged in again)\b/);
      }
    }
    expect(back).toBeGreaterThan(100);
  });
});

describe('a hot lamp, in each step after one that clipped it on', () => {
  it('is said to come off wherever the next one does not need it', () => {
    let off = 0;
    for (const { name, one, then, seats } of PAIRS)
      for (const lamp of ['lamp-on', 'lamp-for-fuse']) {
        if (!one.conditions?.some((id) => id.startsWith(lamp)) || then.conditions?.some((id) => id.startsWith(lamp)))
          continue;
        off++;
        for (const lines of seats) expect(lines.join(' '), name).toMatch(/\blamp (out|off)\b/);
      }
    expect(off).toBeGreaterThan(100);
  });
});
