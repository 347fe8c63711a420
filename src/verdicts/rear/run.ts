import { coilBandOhm } from '../../compute/impedance.ts';
import { formatQuantity, formatRange } from '../../compute/quantity.ts';
import { copperResistanceOhm } from '../../compute/wire.ts';
import { ampDriving, estimate } from '../../rig/rig.ts';
import type { StepId } from '../../steps/ids.ts';
import type { Findings } from '../../steps/outcome.ts';
import type { RemedyNumber, Verdict } from '../verdict.ts';
import { FITTER, YOURSELF, YOURSELF_OR_FITTER } from '../who.ts';

/** Faults between whatever drives the rear and the cone: plugs, leads, coils. */

function runNumbers({ rig }: Findings): readonly RemedyNumber[] {
  const rated = estimate(rig, 'rearRatedOhm');
  const { lowOhm } = coilBandOhm({ ratedOhm: rated.low });
  const { highOhm } = coilBandOhm({ ratedOhm: rated.high });
  const wireOhm =
    2 * copperResistanceOhm({ lengthM: estimate(rig, 'rearRunM').value, sectionM2: estimate(rig, 'rearRunM2').value });
  return [
    { label: 'One coil, cold', value: formatRange(lowOhm, highOhm, 'Ω') },
    { label: 'Both wires of the run', value: formatQuantity(wireOhm, 'Ω', 2) },
  ];
}

const PROOF_OHMS =
  'The rear plays, and stays while you move every lid. With a meter, plug apart, key off: the run reads coil plus wires.';
const byReading = (f: Findings, ...steps: readonly StepId[]) =>
  steps.some((step) => f.outcome(step) !== undefined && f.outcome(step) !== 'cannot');

/** A wire that touches metal in one position of the lid comes and goes just like a lead that breaks. */
const TOUCHES_THE_LID = {
  what: 'A rear speaker wire on the frame',
  split: 'Key off, plug apart, meter on ohms: each rear wire to bare metal while the lid moves, above 100 kΩ?',
};

export const rearPlugOff: Verdict = {
  id: 'rear-plug-off',
  title: 'The rear plug was not home',
  faults: ['rear-plug-off'],
  evidence: ['lid-check', 'contacts-look', 'last-change'],
  mends: ['run'],
  remedy: (f) => ({
    what: 'The plug of the rear loom, the lid or the case was not pushed home.',
    certainty: f.outcome('lid-check') === 'cured' && f.outcome('contacts-look') !== 'cannot' ? 'proved' : 'likely',
    howSure:
      f.outcome('lid-check') === 'cured'
        ? 'Pushing the plug home brought the rear back.'
        : 'The plug was apart or not locked, and the sound comes and goes there.',
    numbers: runNumbers(f),
    fix: [
      'Push the plug home until it locks.',
      'Tie the lead so that nothing pulls on it.',
      'Ride once, then listen again.',
    ],
    tools: 'None',
    minutes: 5,
    who: YOURSELF,
    notBuy: ['Speakers, an amplifier or a reflash.'],
    cautions: ['key-off'],
    proof: 'The rear still plays after a ride and after opening the lid ten times.',
    mayAlsoBe: [
      {
        what: 'Dirty contacts in that plug',
        split: 'Look for a grey or green film. If it comes back after a wash, clean and grease the contacts.',
      },
    ],
  }),
};

export const lidContactsDirty: Verdict = {
  id: 'lid-contacts-dirty',
  title: 'The plug’s contacts are dirty',
  faults: ['lid-contacts-dirty'],
  evidence: ['lid-check', 'contacts-look', 'run-ohms', 'run-split'],
  mends: ['run'],
  article: 'read-a-coil-in-ohms',
  remedy: (f) => {
    const proved = f.outcome('run-split') === 'contacts';
    const film = f.outcome('contacts-look') === 'film';
    return {
      what: film
        ? 'The contacts of a rear plug have a film of dirt or water on them.'
        : 'The contacts of a rear plug do not touch well: dirt, water or a loose socket.',
      certainty: proved ? 'proved' : 'likely',
      howSure: proved
        ? 'The coil is there from the lid half, and is lost through the plug.'
        : film
          ? 'The film is there, and the sound comes and goes with the plug. It is proved when cleaning cures it.'
          : byReading(f, 'run-ohms')
            ? 'The run reads many more ohms than coil and wires explain.'
            : 'The sound comes and goes with the plug. Cleaning harms nothing and cures only this.',
      numbers: [...runNumbers(f), { label: 'Too much, so a bad contact', value: 'more than 1 Ω above that' }],
      fix: [
        'Key off, plug apart.',
        'Clean with contact cleaner and a lint-free cloth. No abrasive on plated contacts.',
        'Dry, re-tension loose sockets, protect with contact grease.',
      ],
      tools: 'Contact cleaner, contact grease',
      minutes: 20,
      who: YOURSELF,
      notBuy: ['Speakers, before the contacts are clean.', 'A reflash.'],
      cautions: ['key-off'],
      proof: `${PROOF_OHMS} Within 0.3 Ω of the coil.`,
      ...(proved
        ? f.outcome('lid-check') === 'cannot' || f.outcome('lid-check') === undefined
          ? {
              mayAlsoBe: [
                {
                  what: 'Rear plug not home',
                  split: 'Key off, push it home until it locks, before you clean anything.',
                },
              ],
            }
          : {}
        : {
            mayAlsoBe: [
              {
                what: 'A lead breaking inside its insulation',
                split: 'Clean the contacts first. Still too many ohms with the lid held still: the lead.',
              },
              ...(f.outcome('lid-check') === 'reacts' ? [TOUCHES_THE_LID] : []),
            ],
          }),
    };
  },
};

export const lidLeadBroken: Verdict = {
  id: 'lid-lead-broken',
  title: 'The lead into the lid is broken inside',
  faults: ['lid-lead-broken'],
  evidence: ['lid-check', 'contacts-look', 'run-ohms', 'coil-ohms', 'run-split'],
  mends: ['run'],
  remedy: (f) => {
    const proved = f.outcome('run-split') === 'lid-side';
    return {
      what: 'Strands of the rear lead are broken inside the insulation, most likely at the hinge.',
      certainty: proved ? 'proved' : 'likely',
      howSure: proved
        ? 'The run is open even from the lid half of the plug, and the coil is good.'
        : 'The sound comes and goes as the lid moves, and the plug is clean.',
      numbers: runNumbers(f),
      fix: [
        'Fit a new flexible lead through the hinge, with a loop.',
        'Strain relief on both sides of the hinge.',
        'Check that no strand touches the lid’s metal.',
      ],
      tools: 'Crimp tool, flexible lead, cable ties',
      minutes: 45,
      who: FITTER,
      notBuy: ['Speakers: the coils were not the trouble.', 'A reflash.'],
      cautions: ['key-off', 'bridge'],
      proof: PROOF_OHMS,
      ...(proved
        ? {}
        : {
            mayAlsoBe: [
              { what: 'Dirty contacts in the plug', split: 'Clean the contacts first: it cures only that.' },
              TOUCHES_THE_LID,
            ],
          }),
    };
  },
};

/** The coil was read by itself, or from the lid's half of the plug. */
const coilIsThere = (f: Findings) =>
  byReading(f, 'coil-ohms', 'pop-speaker') || ['bike-side', 'contacts'].includes(f.outcome('run-split') ?? '');

export const speakerWireOpen: Verdict = {
  id: 'speaker-wire-open',
  title: 'A rear speaker wire is open',
  faults: ['speaker-wire-open'],
  evidence: ['run-ohms', 'coil-ohms', 'pop-run', 'pop-speaker', 'run-split', 'wiggle'],
  mends: ['run'],
  remedy: (f) => ({
    what: 'One wire between the coil and what feeds it is open.',
    certainty: byReading(f, 'run-ohms') && coilIsThere(f) && byReading(f, 'lid-check') ? 'proved' : 'likely',
    howSure:
      f.outcome('wiggle') === 'rear-run'
        ? 'A rear plug, lead or lid reacts to a finger: there is the bad place.'
        : ['no-effect', 'no-plug'].includes(f.outcome('lid-check') ?? '')
          ? 'The run is open, the coil is good, and pushing the plugs home changed nothing.'
          : 'The run is open and the coil is good. Nobody looked at the plugs on the way yet: do that first.',
    numbers: runNumbers(f),
    fix: [
      'Key off. Push every plug of the run home until it locks, and listen.',
      'Key off. Follow the run from the speaker back: terminals, crimps, where it passes the seat and the frame.',
      'Re-make the joint with a sealed crimp or solder and sleeve.',
    ],
    tools: 'Meter, crimp tool',
    minutes: 45,
    who: FITTER,
    notBuy: [coilIsThere(f) ? 'Speakers: the coils are good.' : 'Speakers, before the run is whole.', 'A reflash.'],
    cautions: ['key-off', 'bridge'],
    proof: PROOF_OHMS,
    ...(f.outcome('wiggle') === 'rear-run'
      ? { mayAlsoBe: [TOUCHES_THE_LID] }
      : byReading(f, 'run-ohms')
        ? {}
        : {
            mayAlsoBe: [
              {
                what: 'A shorted run or coil',
                split: 'A cell does not click through a short either. Plug apart, meter on ohms: near zero, or open?',
              },
            ],
          }),
  }),
};

const tried = (f: Findings) => byReading(f, 'coil-ohms', 'pop-speaker');

export const coilOpen: Verdict = {
  id: 'coil-open',
  title: 'A rear coil is open',
  faults: ['coil-open'],
  evidence: ['run-ohms', 'run-split', 'coil-ohms', 'pop-run', 'pop-speaker'],
  mends: ['speaker'],
  article: 'read-a-coil-in-ohms',
  remedy: (f) => ({
    what: tried(f)
      ? 'A rear coil is open: that speaker itself is dead. Measure the other one, too.'
      : 'The rear is open behind the lid’s plug: most likely a coil, perhaps the lead to it.',
    certainty: tried(f) ? 'proved' : 'likely',
    howSure: tried(f)
      ? 'The coil was tried at the speaker’s own tabs, with nothing else in the way.'
      : 'The run is open from the lid’s half of the plug on, and moving the lid changed nothing.',
    background:
      'Two coils rarely die at once by age. Too much power or clipping kills them: find that first, or the new pair follows.',
    numbers: runNumbers(f),
    fix: [
      tried(f)
        ? 'Measure the other rear coil at its own tabs.'
        : 'Before you buy anything: grille off, one wire off, both rear coils at their own tabs. In the band above? Then it is the lead, not the coil.',
      ...(ampDriving(f.rig, 'rear')
        ? [
            'Before a new speaker goes in, speakers off the amplifier, music paused: DC across each rear output under 0.05 V. More: the amplifier first.',
            'Then find what burnt it: gain too high, no high-pass, or the bass boost of an unaltered profile into the amplifier.',
            'Replace the rear speakers as a pair, same rated ohms. High-pass on at 80 to 100 Hz before they play loud.',
          ]
        : [
            'Before a new speaker goes in: the two wires of that run must not read DC between them, music paused. Half the supply on each against battery minus is normal.',
            'Then find what burnt it: volume past the point where it gets harsh, or bass turned up.',
            'Replace the rear speakers as a pair, same rated ohms or more.',
          ]),
    ],
    tools: 'Screwdriver, meter',
    minutes: 60,
    who: YOURSELF_OR_FITTER,
    notBuy: ['New speakers before the cause is found.', 'A reflash: it cannot mend a coil.'],
    cautions: ['key-off', 'cone', 'loud-tone', 'warranty'],
    proof: 'Each new coil reads in the band above, and both play clean up to your usual top step.',
    ...(!tried(f) && {
      mayAlsoBe: [
        {
          what: 'A lead breaking inside its insulation',
          split: 'The coil at the speaker’s own tabs: there is one? Then the lead between plug and speaker is broken.',
        },
      ],
    }),
  }),
};

export const rearLoomOpen: Verdict = {
  id: 'rear-loom-open',
  title: 'A plug or joint before the measured place is open',
  faults: [],
  evidence: ['rear-pair', 'rear-pair-again', 'rear-pair-place', 'rear-history', 'last-change'],
  mends: ['unit-leads'],
  article: 'measure-a-speaker-pair',
  remedy: (f) => ({
    what: 'The rear signal is lost between the head unit and the place where you measured, or the head unit sends none.',
    certainty: 'likely',
    howSure:
      f.outcome('rear-history') === 'comes-and-goes'
        ? 'A stored profile does not come and go. A plug or a joint does.'
        : 'The rear played before and nobody touched the stored profile. A plug or a joint opens by itself.',
    numbers: [{ label: 'Rear over front at the head unit’s own plug, healthy', value: '0.7 to 1.4' }],
    fix: [
      'Key off. Push home each plug between the head unit and where you measured, one after the other, until it locks.',
      'Listen after each one.',
      'Still silent: measure the same pairs at the head unit’s own plug. A signal there: follow the wires from there. None: change the answer “Where it was measured”.',
    ],
    tools: 'None, then the meter',
    minutes: 20,
    who: YOURSELF_OR_FITTER,
    notBuy: ['A reflash, before the head unit’s own plug was measured.'],
    cautions: ['key-off', 'bridge', 'data'],
    proof: 'The rear plays, and stays after a ride.',
    mayAlsoBe: [
      {
        what: 'The rear outputs of the head unit are off, dead or protect themselves',
        split: '400 Hz at the head unit’s own plug: nothing across the rear pairs there either.',
      },
    ],
  }),
};

export const wireOnFrame: Verdict = {
  id: 'speaker-wire-to-frame',
  title: 'A rear speaker wire touches the frame',
  faults: ['speaker-wire-to-frame'],
  evidence: ['amp-light', 'wire-to-frame', 'rear-pair', 'lid-check'],
  mends: ['run'],
  article: 'half-the-supply-on-a-speaker-wire',
  remedy: () => ({
    what: 'A rear speaker wire touches metal. The output that drives it rests at half the supply and is shorted to ground.',
    certainty: 'proved',
    howSure: 'The meter shows the wire joined to the frame with the plug apart.',
    numbers: [
      { label: 'Wire to frame, healthy', value: 'above 100 kΩ' },
      { label: 'Wire to frame, touching', value: 'below 100 Ω' },
    ],
    fix: [
      'Leave it off: do not start again and again into the short.',
      'Look under grilles, at lid hinges, under the seat, at bare terminals on metal.',
      'Free the wire, insulate it, and re-route it with slack.',
    ],
    tools: 'Meter, insulating tape, sleeve',
    minutes: 45,
    who: YOURSELF_OR_FITTER,
    notBuy: ['An amplifier or a head unit, before the short is gone and they were tried again.'],
    cautions: ['bridge', 'key-off', 'hot'],
    proof:
      'Every rear wire above 100 kΩ to the frame while lids, steering and seat move. Then the rear plays again after key off and on.',
  }),
};

export const pairShorted: Verdict = {
  id: 'speaker-pair-shorted',
  title: 'The two wires of a rear run touch each other',
  faults: ['speaker-pair-shorted'],
  evidence: ['run-ohms', 'coil-ohms'],
  mends: ['run', 'speaker'],
  article: 'read-a-coil-in-ohms',
  remedy: (f) => ({
    what: 'Plus and minus of a rear run touch, or the coil is burnt to a short.',
    certainty: 'proved',
    howSure:
      f.outcome('coil-ohms') === 'low'
        ? 'The coil itself reads far fewer ohms than it can have.'
        : 'The run reads far fewer ohms than a coil can have.',
    numbers: runNumbers(f),
    fix: [
      'Leave it off: do not start again into the short.',
      'Pull the wires off the speaker and measure again. Still low: the run. Now open: the coil.',
      'Re-terminate the run, or replace the speakers as a pair.',
    ],
    tools: 'Meter, crimp tool',
    minutes: 45,
    who: YOURSELF_OR_FITTER,
    notBuy: ['An amplifier, before the short is gone and it was tried again.'],
    cautions: ['key-off', 'ohms-dead'],
    proof: PROOF_OHMS,
  }),
};
