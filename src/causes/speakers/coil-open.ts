import { OUTPUT_DC_HEALTHY_V } from '../../compute/amp-supply.ts';
import { formatQuantity } from '../../compute/quantity.ts';
import { CORNERS } from '../../rig/corner.ts';
import { ampDriving } from '../../rig/rig.ts';
import type { CautionId } from '../../steps/cautions.ts';
import { type Findings, is } from '../../steps/outcome.ts';
import { withSubject } from '../../steps/subject.ts';
import type { Cause } from '../cause.ts';
import { runFigures } from '../runs/run-figures.ts';
import { isFront, onePlaced, Placed, runThatIsOpen } from '../where.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';

type Axle = 'front' | 'rear';
const axleOf = (f: Findings): Axle => (isFront(runThatIsOpen(f)) ? 'front' : 'rear');
const onAmp = (f: Findings): boolean => ampDriving(f.rig, axleOf(f)) !== undefined;

/** What burns coils, looked for before the next one goes in. */
const findWhatBurntIt = (f: Findings): readonly string[] =>
  onAmp(f)
    ? [
        `Key off, speakers off the amplifier. Key on, music paused: DC across each of its outputs below ${formatQuantity(OUTPUT_DC_HEALTHY_V, 'V')}. Higher? Deal with the amplifier first.`,
        'Then check gain, high-pass and the bass boost of an unaltered profile: clipping or too much bass burns the next one too. High-pass on at 80 to 100 Hz.',
      ]
    : [
        'Key on, music paused: no DC between the two wires of that run. Half the supply on each against battery negative is normal.',
        'Bass back to the middle, and volume below where it distorts: that would burn the next one too.',
      ];

const ratedInWords = (f: Findings): string => {
  const ratedOhm = axleOf(f) === 'front' ? f.rig.frontRatedOhm : f.rig.rearRatedOhm;
  return ratedOhm === undefined
    ? 'the ohms printed on the old one’s magnet'
    : `${formatQuantity(ratedOhm, 'Ω')}, or what is printed on the old one’s magnet`;
};

const readOpen = (f: Findings): boolean =>
  (['silent', ...CORNERS] as const).some((one) => is(f, withSubject('coil-ohms', one, 'silent'), 'open'));

const AMP_CAUTIONS: readonly CautionId[] = ['amp-output'];

export const coilOpen: Cause = {
  id: 'coil-open',
  title: (f) => Placed(runThatIsOpen(f), 'speaker dead: coil open'),
  faults: ['coil-open'],
  split: (f) => ({
    // What was read open is read once more where the usual mistakes are left out: film on the tabs, a lead that flexes.
    byMeter: readOpen(f)
      ? 'Key off, both tabs scraped bright, meter on ohms: still open while the cone is pressed gently in and out?'
      : 'Key off, grille off, one wire off, meter on ohms at the speaker’s own tabs: open?',
    needs: ['meter-on-ohms'],
    without: 'A 1.5 V cell for half a second on the speaker’s own tabs, one wire off: no click and no movement?',
    cautions: ['cell'],
    // Read open once, the coil is read again in another way.
    asStep: { byMeter: 'coil-ohms', without: 'pop-speaker' },
  }),
  mends: ['speaker'],
  article: 'read-a-coil-in-ohms',
  remedy: (f) => ({
    what: `${onePlaced(runThatIsOpen(f), 'speaker')} is dead: its voice coil is open.`,
    background: 'A coil seldom dies of age. Too much power or a clipped signal burns it.',
    numbers: runFigures(f),
    repair: [{ do: 'replace-speaker', where: runThatIsOpen(f) }],
    fix: [
      `Key off, grille off, one wire off: both ${axleOf(f)} coils in ohms at their own tabs. If a coil reads as a healthy one does, it is fine, and the fault is its lead.`,
      ...findWhatBurntIt(f),
      'Replace the open one with the same speaker, same rated ohms. If you can’t get the same one, replace both sides so that left and right match.',
      'Positive to positive. No terminal on bare metal.',
    ],
    tools: 'Screwdriver, meter',
    minutes: 60,
    who: YOURSELF_OR_FITTER,
    parts: [`A speaker of the same size and kind, ${ratedInWords(f)}`],
    notBuy: ['New speakers, before you know what burnt the old one.', 'A reflash: it can’t mend a coil.'],
    ifDoneAnyway: 'The new speaker will go the same way as the old one.',
    cautions: ['ohms-dead', 'warranty', ...(onAmp(f) ? AMP_CAUTIONS : [])],
    proofOfCure: {
      byEar: 'Both sides play clean up to your usual top step.',
      byMeter: `Key off, plug apart: each ${axleOf(f)} run reads coil plus wires, left and right alike.`,
    },
  }),
};
