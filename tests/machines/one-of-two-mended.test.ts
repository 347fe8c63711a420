import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../machines/amp-wont-turn-on.ts';
import { confirmed, repaired } from '../../src/case/change.ts';
import type { Case } from '../../src/case/events.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { caseOn, give, stand } from '../journey.ts';

/*
 * Whoever mended one thing and still has no sound goes on where he is, as long as something of that part fits what he
 * sees. Common practice, no published source.
 */
const RIG: Rig = {
  unitKind: 'factory',
  deliveredWith: 'four',
  frontFedBy: 'amp',
  rearFitted: 'no',
  batteryKind: 'lead',
  deliveredAmp: 'no',
  amps: [
    { kind: 'add-on', drives: 'front', fedFrom: 'own', input: 'speaker', turnOn: 'dc', needs: 'any', channels: 4 },
  ],
};
const FED = { batteryV: '12.28', plusV: '12.28', groundV: '0' };
const TOLD = { 'last-change': 'nothing', 'tried-already': 'plugs', 'pin-look': 'level', 'tools-at-hand': 'meter' };
const AMP = { 'which-amp': 'front', 'amp-history': 'stopped', 'fuses-blown': 'none', 'amp-light': 'off' };

describe('an amplifier whose ground was mended, and that stays dark with everything reaching it', () => {
  const { events } = give(caseOn(ampWontTurnOn, RIG), TOLD);
  const came: Case = {
    flow: ampWontTurnOn.id,
    events: [...events, { type: 'handOver', flow: ampWontTurnOn.id, by: ['no-sound-at-all'] }],
  };
  const open = give(came, { ...AMP, 'amp-terminals': { ...FED, groundV: '11.9' }, 'rings-look': 'ground' });
  const mended = give(repaired(open, 'amp-ground-open'), {
    ...AMP,
    'amp-terminals': FED,
    'lowest-volts': { lowestV: '12.28' },
    'remote-jumper': 'dead',
    'body-fuse': 'whole',
    'amp-ohms': { insideOhm: '12000' },
    'temporary-leads': 'neither',
  });
  const settle = (it: Case): Case => {
    const { open: asks } = stand(ampWontTurnOn, it);
    return asks.kind === 'doubt' ? settle(confirmed(it, asks.step.id)) : it;
  };

  it('is not sent back to where the case began: the amplifier itself is named', () => {
    const { open: end } = stand(ampWontTurnOn, settle(mended));
    const named = end.kind === 'cause' ? [end.cause] : end.kind === 'list' ? end.causes : [];
    expect(named[0]).toBe('amp-dead');
  });
});
