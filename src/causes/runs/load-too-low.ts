import { coilBandOhm, combinedRatedOhm } from '../../compute/impedance.ts';
import { JOINTS_HEALTHY_OHM } from '../../compute/signal-path.ts';
import { ampEstimate, estimate } from '../../rig/rig.ts';
import type { Findings } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import { type Figure, figureText } from '../figure.ts';
import { ampOf } from '../the-amp.ts';
import { Placed, speakersInQuestion } from '../where.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';
import { lowestRunRead, ratedField } from './run-figures.ts';

const PER_CHANNEL = 2;

/** The ratings that speakers are sold with. Common practice, no published source. */
const RATINGS_OHM = [2, 3, 4, 6, 8] as const;

/** Less than this of the least that two of them read is no coil. An estimate. */
const SHORT_RATIO = 0.5;

/** What a meter shows of two speakers of a rating on one channel, side by side. */
const bandSideBySide = (ratedOhm: number) =>
  coilBandOhm({ ratedOhm: combinedRatedOhm({ ratedOhm, count: PER_CHANNEL, wiring: 'parallel' }) });

/** The rated ohms of one of them: as known, unless two of those cannot read what was read. */
function eachOhm(f: Findings): number {
  const known = estimate(f.rig, ratedField(speakersInQuestion(f))).value;
  const readOhm = lowestRunRead(f)[0]?.value;
  if (typeof readOhm !== 'number') return known;
  const { lowOhm, highOhm } = bandSideBySide(known);
  const isShort = readOhm < SHORT_RATIO * bandSideBySide(Math.min(...RATINGS_OHM)).lowOhm;
  if (isShort || (readOhm >= lowOhm && readOhm <= highOhm + JOINTS_HEALTHY_OHM)) return known;
  const middleOhm = (ratedOhm: number) => {
    const band = bandSideBySide(ratedOhm);
    return (band.lowOhm + band.highOhm) / 2;
  };
  const far = (ratedOhm: number) => Math.abs(Math.log(Math.max(readOhm, 0.1) / middleOhm(ratedOhm)));
  return RATINGS_OHM.toSorted((a, b) => far(a) - far(b))[0] ?? known;
}

/** Two such speakers on one channel, side by side and in a row. */
const togetherOhm = (f: Findings, wiring: 'parallel' | 'series'): number =>
  combinedRatedOhm({ ratedOhm: eachOhm(f), count: PER_CHANNEL, wiring });

/** What a meter shows of both coils in a row. */
function afterwards(f: Findings): Figure {
  const { lowOhm, highOhm } = coilBandOhm({ ratedOhm: togetherOhm(f, 'series') });
  return { id: 'run-afterwards', label: 'That run afterwards, on a meter', value: [lowOhm, highOhm], unit: 'Ω' };
}

const figures = (f: Findings): readonly Figure[] => [
  ...lowestRunRead(f),
  {
    id: 'amp-rated-load',
    label: 'The amplifier is rated into',
    value: ampEstimate(ampOf(f), 'ratedOhm').value,
    unit: 'Ω',
    limit: 'at least',
  },
  { id: 'side-by-side', label: 'Two of these speakers in parallel', value: togetherOhm(f, 'parallel'), unit: 'Ω' },
  { id: 'in-a-row', label: 'The same two in series', value: togetherOhm(f, 'series'), unit: 'Ω' },
  afterwards(f),
];

export const loadTooLow: Cause = {
  id: 'load-too-low',
  title: (f) => Placed(speakersInQuestion(f), 'speakers together too few ohms for the amplifier'),
  faults: ['amp-load-too-low'],
  provedBy: ['amp-runs'],
  split: {
    byMeter:
      'Key off, plugs off, meter on ohms: a run below half of what the amplifier is rated into, while each speaker alone is fine?',
    needs: ['meter-on-ohms'],
    without: 'Count the speakers on one channel. Unplug one of two: does it stay on at the same volume?',
    asStep: { byMeter: 'amp-runs' },
  },
  mends: ['run', 'speaker'],
  article: 'read-a-coil-in-ohms',
  remedy: (f) => ({
    what: 'Together, the speakers on one channel are fewer ohms than this amplifier can drive.',
    background: '“Two on a channel” seems fine until it is loud: then the amplifier limits its current or shuts down.',
    numbers: figures(f),
    repair: [{ do: 'rewire-speakers', where: speakersInQuestion(f), togetherOhm: togetherOhm(f, 'series') }],
    fix: [
      'Look up the lowest ohms per channel in its papers, stereo and bridged.',
      'Key off, speaker plugs off. Two speakers on one channel: wire them in series. Amplifier positive, first speaker, second speaker, amplifier negative.',
      'Only identical speakers in series. Different ones each need a channel of their own.',
      'Before the plug goes back, meter on ohms: the run reads both coils added up, and no wire of it touches the frame.',
    ],
    tools: 'Screwdriver, crimp tool, meter',
    minutes: 40,
    who: YOURSELF_OR_FITTER,
    parts: [],
    notBuy: ['A stronger amplifier, before the load is right.'],
    cautions: ['ohms-dead'],
    proofOfCure: {
      byEar: 'Light normal with all speakers plugged in, and for 30 minutes at the volume that tripped it.',
      byMeter: `Key off, plug apart, cold: that run reads ${figureText(afterwards(f))}, wires on top.`,
    },
  }),
};
