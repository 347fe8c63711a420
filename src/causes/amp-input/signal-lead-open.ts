import { upperFirst } from '../../compute/first-letter.ts';
import type { Findings } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import { ampName, ampOf } from '../the-amp.ts';
import { halfSupplyHealthy, PAIR_DIFFERENCE_HEALTHY, pairDcRead, pairRestsAlike } from '../unit/half-supply.ts';
import { channelThatIsSilent, inputInQuestion, isOfOneSpeaker, placed } from '../where.ts';
import { FITTER } from '../who.ts';
import { arrives, arrivesFigures } from './arrives.ts';

/** Whose wires they are: of the one silent speaker or side, or of all that the lead carries, whichever pair it feeds. */
const where = (f: Findings) => {
  const side = channelThatIsSilent(f, 'amp-in');
  return side.includes('-') ? side : inputInQuestion(f);
};
/** Of one side it is one wire of its pair: half of the signal still comes through, or a hum. Of both it is the lead. */
const isOneWire = (f: Findings): boolean => isOfOneSpeaker(f) || where(f).includes('-');

export const signalLeadOpen: Cause = {
  id: 'signal-lead-open',
  title: (f) => {
    if (!isOneWire(f)) return `Signal lead to ${ampName(f)} open`;
    return where(f).includes('-')
      ? upperFirst(`one wire of the ${placed(where(f), 'input open')}`)
      : 'One wire of an input pair open';
  },
  faults: ['signal-lead-open'],
  split: {
    byMeter: 'Key off, the signal lead’s plugs apart at both ends, meter on ohms: does a wire read OL from end to end?',
    needs: ['meter-on-ohms'],
    without: 'Key off, pull gently at each wire of the signal lead, at both ends: does one pull out of its crimp?',
    asStep: { byMeter: 'signal-lead-ohms', without: 'signal-lead-tug' },
  },
  mends: ['unit-leads'],
  article: 'half-the-supply-on-a-speaker-wire',
  remedy: (f) => ({
    what: isOneWire(f)
      ? 'One wire of an input pair is open between the head unit and the amplifier.'
      : 'The signal lead is open between the head unit and the amplifier: what the head unit sends does not get there.',
    background: isOneWire(f)
      ? 'The other wire alone carries about half the signal, or a hum.'
      : 'It runs under tank and seat, with a joint at the head unit, and often one more where a loom was lengthened.',
    numbers:
      ampOf(f).input === 'line'
        ? arrivesFigures(f)
        : [...pairDcRead(f), halfSupplyHealthy(f), PAIR_DIFFERENCE_HEALTHY, ...arrivesFigures(f)],
    repair: [{ do: 'renew-wire', wire: 'signal', where: where(f) }],
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
