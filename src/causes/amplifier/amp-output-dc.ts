import { OUTPUT_DC_BAD_V, OUTPUT_DC_HEALTHY_V } from '../../compute/amp-supply.ts';
import { upperFirst } from '../../compute/first-letter.ts';
import { coilBandOhm } from '../../compute/impedance.ts';
import { powerW } from '../../compute/level.ts';
import { formatQuantity } from '../../compute/quantity.ts';
import { estimate } from '../../rig/rig.ts';
import type { Findings } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import type { Figure } from '../figure.ts';
import { AmpName, ampName, pairOf } from '../the-amp.ts';
import { AMP_REPAIRER } from '../who.ts';

const BELOW = `below ${formatQuantity(OUTPUT_DC_HEALTHY_V, 'V')}`;

/** What was read, and the heat that it would leave in the coldest coil that hangs there. */
function readDc(f: Findings): readonly Figure[] {
  const { highestV } = f.values('amp-dc');
  if (highestV === undefined) return [];
  const ratedOhm = estimate(f.rig, pairOf(f) === 'front' ? 'frontRatedOhm' : 'rearRatedOhm').value;
  const heatW = powerW({ levelV: highestV, loadOhm: coilBandOhm({ ratedOhm }).lowOhm });
  return [
    { id: 'dc-read', label: 'DC across an output, as read', value: highestV, unit: 'V', digits: 3 },
    { id: 'dc-heat', label: 'Heat it would put into a coil', value: heatW, unit: 'W' },
  ];
}

export const ampOutputDc: Cause = {
  id: 'amp-output-dc',
  title: (f) => `The output stage of ${ampName(f)} is damaged`,
  faults: ['amp-output-dc'],
  split: {
    byMeter: `Key off, all speakers off it, key on, music paused: ${formatQuantity(OUTPUT_DC_HEALTHY_V, 'V')} of DC or more across an output?`,
    needs: ['music-paused'],
    touches: ['amp-out-plus'],
    without: 'Key off, all speaker plugs off it, key on, cold: is its fault light still on?',
    asStep: { byMeter: 'amp-dc', without: 'speakers-unplugged' },
  },
  mends: ['amp'],
  article: 'why-an-amplifier-protects-itself',
  remedy: (f) => ({
    what: `The output stage of ${ampName(f)} is damaged: it puts DC on an output, or shuts itself down before it can.`,
    background: 'While it protects itself there may be no DC to read. DC pushes a coil to one side and heats it.',
    numbers: [
      ...readDc(f),
      {
        id: 'dc-healthy',
        label: 'DC across an output, healthy',
        value: OUTPUT_DC_HEALTHY_V,
        unit: 'V',
        limit: 'below',
      },
      { id: 'dc-suspect', label: 'Suspect', value: OUTPUT_DC_BAD_V, unit: 'V', limit: 'above' },
    ],
    repair: [{ do: 'repair-amp' }],
    fix: [
      'Key off, all speakers off it. They stay off.',
      'Before you pay anybody: signal plug out as well, key on. Light normal now? Then the DC or short comes in from the head unit side.',
      'Ask a workshop what a repair costs. Tell them: fault light or DC with all speakers and the signal plug off.',
      'Before the speakers go back on: each run in ohms and to the frame. A short there may have caused it.',
      `${AmpName(f)} back in: DC across each output first, speakers off, music paused. ${upperFirst(BELOW)}? Then plug them in.`,
    ],
    tools: 'Meter, spanners',
    minutes: 60,
    who: AMP_REPAIRER,
    parts: [],
    notBuy: [
      'Speakers, before DC has been measured across the outputs they go on.',
      'Another amplifier, before a workshop has quoted for the repair.',
      'A reflash: it won’t mend an output.',
    ],
    cautions: ['amp-output', 'bridge', 'into-a-short', 'ohms-dead'],
    proofOfCure: {
      byEar: 'Light normal with all speakers plugged in, and for thirty minutes at the volume that tripped it.',
      byMeter: `Speakers off, music paused: ${BELOW} of DC across each output.`,
      needs: ['music-paused'],
    },
  }),
};
