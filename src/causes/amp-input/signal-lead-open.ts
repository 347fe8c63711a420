import type { Cause } from '../cause.ts';
import { ampOf, capital } from '../the-amp.ts';
import { halfSupplyHealthy, PAIR_DIFFERENCE_HEALTHY, pairDcRead, pairRestsAlike } from '../unit/half-supply.ts';
import { channelThatIsSilent, placed } from '../where.ts';
import { FITTER } from '../who.ts';
import { arrives, arrivesFigures } from './arrives.ts';

export const oneInputLeadOpen: Cause = {
  id: 'one-input-lead-open',
  title: (f) => {
    const where = channelThatIsSilent(f, 'amp-in');
    return where === 'rear' || where === 'all'
      ? 'One wire of an input pair open'
      : capital(`one wire of the ${placed(where, 'input open')}`);
  },
  faults: ['one-input-lead-open'],
  split: {
    byMeter:
      'Music paused, each wire of the input pair against battery negative: one at half the supply, the other not?',
    needs: ['music-paused'],
    touches: ['amp-in-plus'],
    without: 'Key off, pull gently at each wire of the signal lead, at both ends: does one pull out of its crimp?',
  },
  mends: ['unit-leads'],
  article: 'half-the-supply-on-a-speaker-wire',
  remedy: (f) => ({
    what: 'One wire of an input pair is open between the head unit and the amplifier.',
    background: 'The other wire alone carries about half the signal, or a hum.',
    numbers:
      ampOf(f).input === 'line'
        ? arrivesFigures(f)
        : [...pairDcRead(f), halfSupplyHealthy(f), PAIR_DIFFERENCE_HEALTHY, ...arrivesFigures(f)],
    repair: [{ do: 'renew-wire', wire: 'signal', where: channelThatIsSilent(f, 'amp-in') }],
    fix: [
      'Key off, plugs apart at both ends, meter on ohms: each wire of the pair to the frame, above 100 kΩ. One touching metal kills an output: free it first.',
      'Each wire from end to end: next to nothing. The open one is broken at a crimp, a tap or a bend.',
      'Remake the joint: a sealed crimp, or solder and sleeve. Keep the two wires together as a pair.',
      'Plugs home, loom tied so that nothing pulls on it.',
    ],
    tools: 'Meter, crimp tool',
    minutes: 30,
    who: FITTER,
    parts: [],
    notBuy: ['A reflash, an amplifier or a head unit: a joint is open.'],
    cautions: ['ohms-dead'],
    proofOfCure:
      ampOf(f).input === 'line' ? arrives(f) : { ...arrives(f), byMeter: pairRestsAlike(f), needs: ['music-paused'] },
  }),
};
