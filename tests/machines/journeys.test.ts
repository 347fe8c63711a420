import { describe, expect, it } from 'vitest';
import type { FlowId } from '../../src/case/flows.ts';
import { bikesOf } from '../../src/proof/bikes.ts';
import { rideOf } from '../../src/proof/modes.ts';
import { type Played, play } from '../../src/proof/play.ts';
import { steady } from '../../src/proof/riders.ts';
import { loadStages } from '../../src/proof/stages.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import type { WholeRig } from '../../src/survey/random-rig.ts';
import { FAULTS, keyOf, severityAt } from '../../src/world/faults/index.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import type { ComplaintId } from '../../src/world/symptoms/index.ts';

/*
 * What becomes of riders, told by how it ends. Which questions lead there is the inference's, and may be others tomorrow.
 * Each rider answers for a bike of the model, does what the verdict says, and listens again.
 */

const FRAME = EXAMPLE_RIGS['frame-fairing'];
const [AMP] = FRAME.amps;
const BIKES = {
  'the head unit drives everything': { ...FRAME, frontFedBy: 'unit', rearFedBy: 'unit', amps: [] },
  'one amplifier drives everything': FRAME,
  'one amplifier drives the rear': { ...FRAME, frontFedBy: 'unit', amps: [{ ...AMP, drives: 'rear' }] },
  'a trunk on an amplifier that listens': EXAMPLE_RIGS.trunk,
  'speakers whose leads run through the hinge without a plug': { ...FRAME, rearPlug: 'no' },
} as const satisfies Readonly<Record<string, Rig>>;

interface Journey {
  readonly rider: string;
  readonly starts: FlowId & ComplaintId;
  readonly bike: keyof typeof BIKES;
  /** As the catalogue of faults has it, with its variant. */
  readonly fault: string;
  readonly ends: string;
  /** Which of the model's riders he is: what was done last is remembered by most, not by all. */
  readonly remembers?: string;
  /** The flow that it ends in, where it is another one. */
  readonly in?: FlowId;
}
const REAR = 'no-rear-sound';
const STAYS_OFF = 'amp-wont-turn-on';
const JOURNEYS: readonly Journey[] = [
  {
    rider: 'a rider whose lead is broken in the hinge, with no plug to blame',
    starts: REAR,
    bike: 'speakers whose leads run through the hinge without a plug',
    fault: 'lid-lead-broken@both-rear',
    ends: 'lid-lead-broken',
  },
  {
    rider: 'a rider whose fader stands at the front',
    starts: REAR,
    bike: 'one amplifier drives everything',
    fault: 'fader-or-balance-off@fader',
    ends: 'fader-or-balance-off',
  },
  {
    rider: 'a rider whose passenger turned the rear down',
    starts: REAR,
    bike: 'the head unit drives everything',
    fault: 'rear-control-off',
    ends: 'rear-control-off',
  },
  {
    rider: 'a rider whose rear plug is off',
    starts: REAR,
    bike: 'the head unit drives everything',
    fault: 'rear-plug-off@both-rear',
    ends: 'rear-plug-off',
  },
  {
    rider: 'a rider whose rear channels were never switched on',
    starts: REAR,
    bike: 'a trunk on an amplifier that listens',
    fault: 'rear-channels-disabled',
    ends: 'rear-channels-disabled',
  },
  {
    rider: 'a rider whose dealer put the old profile back',
    starts: REAR,
    bike: 'one amplifier drives the rear',
    fault: 'profile-reverted',
    ends: 'profile-reverted',
    remembers: 'the dealer',
  },
  {
    rider: 'a rider whose speaker wire lies on the frame',
    starts: REAR,
    bike: 'the head unit drives everything',
    fault: 'speaker-wire-to-frame@both-rear',
    ends: 'speaker-wire-to-frame',
  },
  {
    rider: 'a rider whose speakers are burnt through',
    starts: REAR,
    bike: 'one amplifier drives everything',
    fault: 'coil-open@both-rear',
    ends: 'coil-open',
  },
  {
    rider: 'a rider whose amplifier lost its signal plug',
    starts: REAR,
    bike: 'one amplifier drives the rear',
    fault: 'amp-input-plug-off',
    ends: 'amp-input-plug-off',
  },
  {
    rider: 'a rider whose rear is silent for a blown main fuse',
    starts: REAR,
    bike: 'a trunk on an amplifier that listens',
    fault: 'main-fuse-open',
    ends: 'main-fuse-open',
    in: STAYS_OFF,
  },
  {
    rider: 'a rider whose amplifier sleeps behind a fader that stands at the front',
    starts: STAYS_OFF,
    bike: 'a trunk on an amplifier that listens',
    fault: 'fader-or-balance-off@fader',
    ends: 'fader-or-balance-off',
    in: REAR,
  },
  {
    rider: 'a rider whose amplifier lost its ground',
    starts: STAYS_OFF,
    bike: 'one amplifier drives everything',
    fault: 'amp-ground-open',
    ends: 'amp-ground-open',
  },
  {
    rider: 'a rider whose remote wire is broken',
    starts: STAYS_OFF,
    bike: 'one amplifier drives the rear',
    fault: 'remote-wire-open',
    ends: 'remote-wire-open',
  },
  {
    rider: 'a rider whose amplifier is too hot',
    starts: STAYS_OFF,
    bike: 'one amplifier drives everything',
    fault: 'amp-heat-protect',
    ends: 'amp-too-hot',
  },
];

const stages = await loadStages();

function ridden({ starts, bike, fault: key, remembers = 'journey' }: Journey): Played {
  const rig: Rig = BIKES[bike];
  const fault = FAULTS.find((one) => keyOf(one) === key) ?? expect.fail(`no fault ${key}`);
  const bikes = bikesOf(healthyWorld(rig).rig);
  const present = { fault, severity: severityAt(fault, 0.6) };
  expect(bikes.complains(starts, [])).toBe(false);
  expect(bikes.complains(starts, [present])).toBe(true);
  const subject = { name: bike, complaint: starts, paper: rig as WholeRig, bikes, faults: [present] };
  return play(rideOf({ flow: starts, stages, turns: 1 }, subject, [present], rig, steady([remembers, key])));
}

describe.each(JOURNEYS)('$rider', (journey) => {
  const played = ridden(journey);
  const last = played.rounds.at(-1) ?? expect.fail('no end');

  it(`ends with ${journey.ends}, and is cured by it`, () => {
    expect(last.named[last.right.indexOf(true)]).toBe(journey.ends);
    expect(last.flow).toBe(journey.in ?? journey.starts);
    expect(played.cured).toBe(true);
  });
  it('buys nothing in vain, and does no harm', () => {
    expect(played.rounds.flatMap(({ part, harms }) => [part, ...harms])).toEqual(played.rounds.map(() => false));
  });
  it('is asked no more than twenty-eight questions, none of them twice but to be sure', () => {
    expect(played.asked.length).toBeLessThanOrEqual(28);
    expect(new Set(played.asked).size).toBe(played.asked.length);
  });
});
