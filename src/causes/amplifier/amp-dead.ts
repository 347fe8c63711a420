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
    byMeter: `${LAMP_ON}: positive to ground within 0.5 V of the battery, remote terminal within 1 V, and still off?`,
    ...LAMP_NEEDS,
    without: `${LAMP_ON}: the lamp bright, a jumper with a 1 A fuse from positive to remote for five seconds, and still off?`,
    cautions: ['lamp-hot', 'live-clip', 'ground-open', 'capacitors', 'jumper'],
  },
  mends: ['amp'],
  article: 'why-an-amplifier-protects-itself',
  remedy: (f) => ({
    what: `${AmpName(f)} is dead: positive, ground and turn-on are all good, and it does not start.`,
    background: 'Few amplifiers called dead really are: 12 V on a meter with no load does not prove a lead.',
    numbers: [healthyFigure(f, 'plus'), healthyFigure(f, 'ground'), ...remoteFigures(f)],
    repair: [{ do: 'repair-amp' }],
    fix: [
      'Look again with fresh eyes: its own small fuses, its turn-on selector, its terminals clamped on insulation.',
      'If not done yet, the 55 W lamp on its positive and ground: bright, and battery volts at its terminals?',
      'Key off, main fuse out, battery negative off. Amplifier out, bare positive end taped.',
      'Ask a workshop what a repair costs. Tell them positive, ground and remote read good with a 55 W lamp on. Was there water, or a battery fitted the wrong way round? Tell them that too.',
      'Before it plays again: each speaker run in ohms and to the frame.',
    ],
    tools: 'Spanners, a 55 W lamp on two leads',
    minutes: 60,
    who: AMP_REPAIRER,
    parts: [],
    notBuy: [
      'Another amplifier, before a workshop has quoted for the repair.',
      'A reflash: it does not start an amplifier.',
      'Leads or fuses: its supply is good.',
    ],
    cautions: ['lamp-hot', 'live-clip', 'ground-open', 'ohms-dead'],
    proofOfCure: {
      byEar: `On the same wires ${ampName(f)} starts and stops with the head unit ten times in a row.`,
      byMeter: `Head unit on: ${healthyRemoteInWords(f)} on the remote terminal, and positive to ground within 0.5 V of the battery.`,
      needs: ['head-unit-playing'],
      touches: ['amp-plus'],
    },
  }),
};
