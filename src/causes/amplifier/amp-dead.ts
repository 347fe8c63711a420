import type { Cause } from '../cause.ts';
import { healthyRemoteInWords, remoteFigures } from '../remote-wire.ts';
import { healthyFigure, LAMP_NEEDS, LAMP_ON } from '../supply-ways.ts';
import { AmpName, ampName } from '../the-amp.ts';
import { AMP_REPAIRER } from '../who.ts';

export const ampDead: Cause = {
  id: 'amp-dead',
  title: (f) => `${AmpName(f)} itself does not start`,
  faults: ['amp-dead@'],
  split: {
    byMeter: `${LAMP_ON}: plus to ground within 0.5 V of the battery, remote terminal within 1 V, and still off?`,
    ...LAMP_NEEDS,
    without: `${LAMP_ON}: the lamp bright, a jumper with a 1 A fuse from plus to remote for five seconds, and still off?`,
    cautions: ['lamp-hot', 'live-clip', 'ground-open', 'capacitors', 'jumper'],
  },
  mends: ['amp'],
  article: 'why-an-amplifier-protects-itself',
  remedy: (f) => ({
    what: `${AmpName(f)} is dead: it does not start, whatever plus, ground and turn-on it gets.`,
    background: 'Few amplifiers that are called dead are dead: 12 V on a meter without a load proves no lead.',
    numbers: [healthyFigure(f, 'plus'), healthyFigure(f, 'ground'), ...remoteFigures(f)],
    repair: [{ do: 'repair-amp' }],
    fix: [
      'Once more, with fresh eyes: its own small fuses, its turn-on selector, its power plug biting on insulation.',
      'The 55 W lamp on its plus and ground again, if that was not done: bright, and the battery’s volts at its terminals?',
      'Key off, main fuse out, battery minus off. Amplifier out, the bare plus end taped.',
      'Ask a workshop what a repair costs. Say: plus, ground and remote read well with a 55 W lamp on. Was there water, or a battery the wrong way round? Say that, too.',
      'Before it plays again: each speaker run in ohms and to the frame.',
    ],
    tools: 'Spanners, a 55 W lamp on two leads',
    minutes: 60,
    who: AMP_REPAIRER,
    parts: [],
    notBuy: [
      'Another amplifier, before a workshop said what the repair costs.',
      'A reflash: it does not start an amplifier.',
      'Leads or fuses.',
    ],
    cautions: ['lamp-hot', 'live-clip', 'ground-open', 'ohms-dead'],
    proofOfCure: {
      byEar: `On the same wires ${ampName(f)} starts and stops with the head unit ten times in a row.`,
      byMeter: `The same, with ${healthyRemoteInWords(f)} on the remote terminal and plus to ground within 0.5 V of the battery.`,
    },
  }),
};
