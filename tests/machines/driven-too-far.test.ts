import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../machines/amp-wont-turn-on.ts';
import { distortionAtVolume } from '../../machines/distortion-at-volume.ts';
import { elsewhere } from '../../machines/elsewhere.ts';
import { type Late, type StagedFlow, toldBy } from '../../machines/machine.ts';
import { confirmed, handedOver } from '../../src/case/change.ts';
import type { Case } from '../../src/case/events.ts';
import { replay } from '../../src/case/replay.ts';
import { late as ampLate } from '../../src/likelihoods/amp-wont-turn-on.ts';
import { late as distortionLate } from '../../src/likelihoods/distortion-at-volume.ts';
import { BUILD_KINDS, fixedRigs } from '../../src/survey/fixed-rigs.ts';
import { FAULTS, severityAt } from '../../src/world/faults/index.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import { COMPLAINTS, ridden } from '../../src/world/symptoms/index.ts';
import { type Answers, caseOn, give, openIn } from '../journey.ts';

/*
 * An amplifier that is driven too far goes off when it is loud, and one that lacks volts sounds ugly: which of the two it
 * is, is asked in both flows. Common practice, no published source.
 */

const stand = (flow: StagedFlow, late: Late, it: Case) => replay(flow, it, late);
/** With whatever comes first left unsaid. */
const atAmp = (answers: Answers) =>
  give(caseOn(ampWontTurnOn), { ...Object.fromEntries(ampWontTurnOn.inOrder.map(({ id }) => [id, null])), ...answers });
/** What is open once everything that is doubted was looked at again. */
function settled(flow: StagedFlow, late: Late, it: Case): string {
  const standing = stand(flow, late, it);
  return standing.open.kind === 'doubt' ? settled(flow, late, confirmed(it, standing.open.step.id)) : openIn(standing);
}

describe('an amplifier that stays on', () => {
  it('and only sounds bad when loud is looked into where that is the complaint', () => {
    expect(settled(ampWontTurnOn, ampLate, atAmp({ 'amp-light': 'normal', 'amp-goes-off': 'ugly' }))).toBe(
      'to distortion-at-volume',
    );
  });
  it('is not looked into a second time by the flow that said so', () => {
    const it_ = atAmp({ 'amp-light': 'normal', 'amp-goes-off': 'ugly' });
    const sure = confirmed(it_, 'amp-goes-off');
    const { events } = handedOver(sure, stand(ampWontTurnOn, ampLate, sure), distortionAtVolume.id);
    const { decided } = stand(distortionAtVolume, distortionLate, { flow: distortionAtVolume.id, events });
    const isNot = { type: 'repair', verdict: elsewhere(ampWontTurnOn.id), result: 'not-it' };
    expect(events.filter(({ type }) => type === 'repair')).toEqual([isNot]);
    expect(decided?.decision.kind).not.toBe('hand over');
  });
  it('and is only silent is looked into where that is the complaint', () => {
    expect(settled(ampWontTurnOn, ampLate, atAmp({ 'amp-light': 'normal', 'amp-goes-off': 'stays-on' }))).toBe(
      'to no-rear-sound',
    );
  });
});

describe('an amplifier that stays on, of a case that another flow sent', () => {
  it.each(['eq-changes-when-engine-starts', 'no-sound-at-all'])(
    'is not what somebody called about: it goes on in %s',
    (from) => {
      const { events } = atAmp({ 'amp-light': 'normal', 'amp-goes-off': 'stays-on' });
      const came = { type: 'handOver' as const, flow: ampWontTurnOn.id, by: [from] };
      const it_: Case = { flow: ampWontTurnOn.id, events: [...events.slice(0, 1), came, ...events.slice(1)] };
      expect(settled(ampWontTurnOn, ampLate, it_)).toBe(`to ${from}`);
    },
  );
});

describe('an amplifier that goes off when it is loud, and not with its gain down', () => {
  const { isIt } =
    ampWontTurnOn.handsOver.find(({ flow }) => flow === 'distortion-at-volume') ?? expect.fail('no such');
  const isDrivenTooFar = (lowestV: string, more: Answers = {}) =>
    isIt?.when(
      stand(
        ampWontTurnOn,
        ampLate,
        atAmp({
          'amp-light': 'normal',
          'amp-goes-off': 'loud',
          'gain-down': 'stays-on',
          'amp-terminals': { batteryV: '12.6', plusV: '12.6', groundV: '0' },
          'supply-under-load': { batteryV: '12.3', ampV: '12.26', plusDropV: '0.02', groundDropV: '0.02' },
          'amp-runs': { leadsOhm: '0.2', lowestOhm: '4.2' },
          'lowest-volts': { lowestV },
          ...more,
        }),
      ).findings,
    );
  it('is driven too far where its supply holds at the loudest', () => {
    expect(isDrivenTooFar('11.8')).toBe(true);
  });
  it('is driven too far whatever its gain, where it stays on without its speakers and none of their wires is on the frame', () => {
    const load = { 'speakers-unplugged': 'clears', 'amp-wires-to-frame': { lowestOhm: 'OL' } };
    for (const gain of ['goes-off', null]) {
      expect(isDrivenTooFar('11.8', { 'gain-down': gain, ...load })).toBe(true);
      expect(isDrivenTooFar('11.8', { 'gain-down': gain })).toBe(false);
    }
  });
  it('may have a worn battery where it does not: with less gain that lasts, too', () => {
    expect(isDrivenTooFar('9.8')).toBe(false);
  });
});

describe('distortion that is an amplifier’s', () => {
  const { handsOver } = distortionAtVolume;
  const to = handsOver[0] ?? expect.fail('hands over to nobody');
  const told = (amps: readonly { drives: 'front' | 'rear' }[], facts: Answers) => {
    const it = give(caseOn(distortionAtVolume, { amps }), facts);
    return toldBy(to, stand(distortionAtVolume, distortionLate, it).findings);
  };
  const TWO = [{ drives: 'front' }, { drives: 'rear' }] as const;

  it('is told of as going off when loud only where its lamp was seen to go', () => {
    const only = { 'which-amp': { option: 'rear' } };
    expect(told([{ drives: 'rear' }], { 'lamp-at-volume': 'goes' })).toEqual({
      ...only,
      'amp-goes-off': { option: 'loud' },
    });
    expect(told([{ drives: 'rear' }], { 'lamp-at-volume': 'none' })).toEqual(only);
  });
  it('is that of the speakers that are ugly, of two', () => {
    expect(told(TWO, { 'where-harsh': 'front-left' })).toEqual({ 'which-amp': { option: 'front' } });
    expect(told(TWO, { 'where-harsh': 'rear' })).toEqual({ 'which-amp': { option: 'rear' } });
    expect(told(TWO, { 'where-harsh': 'all' })).toEqual({});
  });
  it('is not looked for on a bike without one', () => {
    const findings = stand(distortionAtVolume, distortionLate, caseOn(distortionAtVolume, { amps: [] })).findings;
    expect(to.sensible?.(findings)).toBe(false);
    const unsaid = stand(distortionAtVolume, distortionLate, caseOn(distortionAtVolume)).findings;
    expect(to.sensible?.(unsaid)).toBe(true);
  });
});

describe('of two amplifiers', () => {
  const rigs = BUILD_KINDS.flatMap((kind) => fixedRigs(kind, 4)).filter(({ amps }) => amps.length === 2);
  const tooHigh = FAULTS.find(({ id, variant }) => id === 'gain-too-high' && !variant) ?? expect.fail('no such fault');

  it('nobody who hears distortion means the one whose speakers are clean', () => {
    let meant = 0;
    for (const rig of rigs)
      for (const about of [0, 1]) {
        const bad = tooHigh.apply({ ...healthyWorld(rig), about }, severityAt(tooHigh, 0.3));
        const distorts = (one: number) => COMPLAINTS['distortion-at-volume'](ridden({ ...bad, about: one })) === 'yes';
        if (!distorts(about)) continue;
        meant++;
        expect(distorts(1 - about)).toBe(false);
      }
    expect(meant).toBeGreaterThan(0);
  });
});
