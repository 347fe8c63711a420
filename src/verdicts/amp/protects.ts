import { DENSE_MUSIC_AVERAGE_RATIO } from '../../compute/amp-current.ts';
import { OUTPUT_DC_BAD_V, OUTPUT_DC_HEALTHY_V } from '../../compute/amp-supply.ts';
import { coilBandOhm } from '../../compute/impedance.ts';
import { powerW } from '../../compute/level.ts';
import { formatQuantity, formatRange } from '../../compute/quantity.ts';
import { ampEstimate, estimate } from '../../rig/rig.ts';
import { ampPair, theAmp } from '../../steps/fitted/the-amp.ts';
import { type Findings, is } from '../../steps/outcome.ts';
import { channelsOf, EFFICIENCY_RATIO } from '../../steps/supply/amp-feed.ts';
import type { RemedyNumber, Verdict } from '../verdict.ts';
import { AMP_REPAIRER, YOURSELF_OR_FITTER } from '../who.ts';
import { type Left, MOST_BESIDES } from './left.ts';
import { ampName } from './numbers.ts';

/** An amplifier that switched itself off to protect something: what, and why. */

const LAMP_NORMAL = 'Lamp normal with all speakers plugged in, and for 30 minutes at the volume that tripped it.';
const NOT_YET = 'An amplifier, before the short is gone and this one was tried again.';

/** The speakers that hang on the amplifier of this case. */
const rated = (f: Findings) => estimate(f.rig, ampPair(f) === 'front' ? 'frontRatedOhm' : 'rearRatedOhm');
function coilNumbers(f: Findings): readonly RemedyNumber[] {
  const { low, high } = rated(f);
  return [
    {
      label: 'One coil, cold',
      value: formatRange(coilBandOhm({ ratedOhm: low }).lowOhm, coilBandOhm({ ratedOhm: high }).highOhm, 'Ω'),
    },
  ];
}
const lowestRun = (f: Findings): readonly RemedyNumber[] => {
  const { lowestOhm, leadsOhm = 0 } = f.values('amp-runs');
  return lowestOhm === undefined || lowestOhm === Infinity
    ? []
    : [{ label: 'Lowest run, less your leads', value: formatQuantity(Math.max(0, lowestOhm - leadsOhm), 'Ω', 2) }];
};

export const wireOnFrame: Verdict = {
  id: 'speaker-wire-to-frame',
  title: 'A speaker wire touches the frame',
  faults: ['speaker-wire-to-frame'],
  evidence: ['amp-light', 'recover', 'speakers-unplugged', 'amp-wires-to-frame'],
  mends: ['run'],
  article: 'half-the-supply-on-a-speaker-wire',
  remedy: (f) => ({
    what: `A speaker wire of ${ampName(f).toLowerCase()} touches metal. It must never do that: it shorts the output.`,
    certainty: 'proved',
    howSure: is(f, 'speakers-unplugged', 'clears')
      ? 'The lamp clears without the speakers, and the meter shows the wire joined to the frame.'
      : `${is(f, 'amp-goes-off', 'bumps') ? 'It goes off on bumps' : 'It shows its fault lamp'}, and the meter shows the wire joined to the frame.`,
    numbers: [
      ...(f.values('amp-wires-to-frame')['lowestOhm'] === undefined
        ? []
        : [
            {
              label: 'Lowest to the frame, as read',
              value: formatQuantity(f.values('amp-wires-to-frame')['lowestOhm'] ?? 0, 'Ω', 2),
            },
          ]),
      { label: 'Healthy', value: 'above 100 kΩ' },
    ],
    fix: [
      'Leave that run off. Look under its grille, at the lid hinge, under the seat, at bare terminals on metal.',
      'Free the wire, insulate it, and re-route it with slack.',
      'All wires of all runs to the frame once more, before the plug goes back.',
    ],
    tools: 'Meter, insulating sleeve',
    minutes: 45,
    who: YOURSELF_OR_FITTER,
    notBuy: [NOT_YET],
    cautions: ['bridge', 'key-off', 'into-a-short'],
    proof: `Every wire above 100 kΩ to the frame while lids, steering and seat move. ${LAMP_NORMAL}`,
  }),
};

export const pairShorted: Verdict = {
  id: 'speaker-pair-shorted',
  title: 'The two wires of a speaker run touch each other',
  faults: ['speaker-pair-shorted'],
  evidence: ['amp-light', 'recover', 'speakers-unplugged', 'amp-wires-to-frame', 'amp-runs'],
  mends: ['run', 'speaker'],
  article: 'read-a-coil-in-ohms',
  remedy: (f) => ({
    what: 'Plus and minus of a speaker run touch, or its coil is burnt to a short.',
    certainty: is(f, 'amp-runs', 'low') ? 'proved' : 'likely',
    howSure: is(f, 'amp-runs', 'low')
      ? `${is(f, 'speakers-unplugged', 'clears') ? 'The lamp clears without the speakers' : 'It shows its fault lamp'}, and one run reads far fewer ohms than a coil can have.`
      : 'The lamp clears without the speakers, and no speaker wire is on the frame.',
    numbers: [...lowestRun(f), ...coilNumbers(f)],
    fix: [
      ...(is(f, 'amp-runs', 'low')
        ? []
        : ['Plugs off, meter on ohms: the two wires of each run. The run that reads next to nothing is the one.']),
      'Leave that run off. Pull the wires off its speaker and measure again. Still low: the run. Now open: the coil.',
      'Re-terminate the run, no loose strands. Or replace the speakers as a pair, same rated ohms.',
    ],
    tools: 'Meter, crimp tool',
    minutes: 45,
    who: YOURSELF_OR_FITTER,
    notBuy: [NOT_YET],
    cautions: ['key-off', 'ohms-dead', 'into-a-short'],
    proof: `Each run reads coil plus wires. ${LAMP_NORMAL}`,
    ...(is(f, 'amp-runs', 'low')
      ? {}
      : {
          mayAlsoBe: [
            {
              what: 'A load that is too heavy',
              split: 'Plugs off, meter on ohms: no run shorted, and one below what the amplifier is rated into?',
            },
          ],
        }),
  }),
};

export const runTrips: Verdict = {
  id: 'run-trips-it',
  title: 'One speaker run trips the amplifier',
  faults: ['speaker-wire-to-frame', 'speaker-pair-shorted'],
  evidence: ['amp-light', 'speakers-unplugged', 'one-by-one', 'amp-runs'],
  mends: ['run', 'speaker'],
  remedy: (f) => ({
    what: 'One speaker run shorts the amplifier: a wire on the frame, or its two wires on each other.',
    certainty: 'likely',
    howSure: 'The fault lamp comes back with that one plug, and not with the others.',
    numbers: [{ label: 'Each wire to the frame, healthy', value: 'above 100 kΩ' }, ...coilNumbers(f)],
    fix: [
      'Leave that run off: the rest may play meanwhile.',
      'Follow it with your fingers: grille, hinge, seat, bare terminals on metal, loose strands at the speaker.',
      'Free, insulate, re-terminate. Nothing to see: its speaker’s coil is burnt to a short.',
    ],
    tools: 'Insulating sleeve, crimp tool; a meter makes it quicker',
    minutes: 45,
    who: YOURSELF_OR_FITTER,
    notBuy: [NOT_YET],
    cautions: ['into-a-short', 'key-off', 'bridge'],
    proof: LAMP_NORMAL,
    mayAlsoBe: [
      {
        what: 'A wire on the frame',
        split: 'Plug off, meter on ohms: each of its wires to bare frame metal, above 100 kΩ?',
      },
      {
        what: 'Its two wires on each other, or a burnt coil',
        split: 'Plug off, meter on ohms: does it read like the other side?',
      },
    ],
  }),
};

export const loadTooLow: Verdict = {
  id: 'amp-load-too-low',
  title: 'Too many speakers on one channel',
  faults: ['amp-load-too-low'],
  evidence: ['amp-light', 'recover', 'speakers-unplugged', 'amp-runs', 'one-by-one'],
  mends: ['run', 'speaker'],
  remedy: (f) => {
    const ampOhm = ampEstimate(theAmp(f), 'ratedOhm').value;
    return {
      what: 'The speakers on one channel together have fewer ohms than this amplifier can drive.',
      certainty: 'likely',
      howSure:
        f.outcome('amp-runs') === 'heavy'
          ? 'The lowest run reads fewer ohms than it should, and more than two wires that touch.'
          : 'No single run trips it, only all of them together or more volume.',
      numbers: [
        ...lowestRun(f),
        { label: 'The amplifier is rated into', value: formatQuantity(ampOhm, 'Ω') },
        { label: 'Two such speakers side by side', value: formatQuantity(rated(f).value / 2, 'Ω', 2) },
      ],
      fix: [
        ...(is(f, 'amp-runs', 'heavy')
          ? ['Only one speaker on that run? Wires off it, measure it alone. Still so few ohms: its coil is half burnt.']
          : []),
        'Look in its papers for the least ohms of a channel, stereo and bridged.',
        'Two speakers on one channel: wire them in series, amplifier plus, first speaker, second speaker, amplifier minus. Their ohms add up. Or give each a channel of its own.',
        'Only alike speakers in series. Different ones get different shares.',
      ],
      tools: 'Screwdriver, crimp tool',
      minutes: 40,
      who: YOURSELF_OR_FITTER,
      notBuy: ['A stronger amplifier, before the load is right.'],
      cautions: ['key-off', 'hot'],
      proof: LAMP_NORMAL,
      mayAlsoBe: [
        {
          what: 'A shorted run or coil',
          split: 'Wires off each speaker of that run: does each one alone read its coil?',
        },
        // What it is rated into may be told wrongly, and a worn lead was read.
        ...(is(f, 'supply-under-load', 'unclear')
          ? [
              {
                what: 'A weak contact in its power or ground',
                split: 'One speaker on that channel, loud: does it still go off? Then it is a lead.',
              },
            ]
          : []),
      ],
    };
  },
};

/** What else keeps the fault lamp on without speakers: each stays until the step that clears it was done. */
function notFromItself(f: Findings): Left {
  const supplyGood = is(f, 'amp-terminals', 'ok') && is(f, 'supply-under-load', 'ok');
  const seenToReturn = is(f, 'recover', 'key-cycle', 'stays') || is(f, 'amp-goes-off', 'always');
  const speakersCleared = is(f, 'speakers-unplugged', 'stays') || is(f, 'amp-runs', 'ok');
  return [
    ...(speakersCleared
      ? []
      : [
          {
            what: 'A speaker run that is shorted, or too few ohms',
            split: 'Key off, all speaker plugs off the amplifier, key on: is its lamp normal?',
          },
        ]),
    ...(seenToReturn
      ? []
      : [
          {
            what: 'Heat',
            split: 'Key off for half an hour, case cool, key on: is its lamp normal until it is hot again?',
          },
        ]),
    ...(supplyGood
      ? []
      : [
          {
            what: 'Supply that is too low or too high while it starts',
            split: 'A 55 W lamp across its plus and ground: within 0.5 V of the battery, and the battery below 15 V?',
          },
        ]),
  ];
}

export const outputDc: Verdict = {
  id: 'amp-output-dc',
  title: 'The amplifier’s output stage is damaged',
  faults: ['amp-output-dc'],
  evidence: [
    'amp-light',
    'amp-goes-off',
    'recover',
    'remote-jumper',
    'wakes-when-loud',
    'speakers-unplugged',
    'amp-runs',
    'amp-dc',
    'amp-terminals',
    'supply-under-load',
  ],
  mends: ['amp'],
  remedy: (f) => {
    const { highestV } = f.values('amp-dc');
    const seen = f.outcome('amp-dc') === 'offset';
    const left = notFromItself(f);
    const unplugged = is(f, 'speakers-unplugged', 'stays');
    const speakersCleared = unplugged || is(f, 'amp-runs', 'ok');
    const { value: ratedOhm } = rated(f);
    return {
      what: seen
        ? 'DC stands across an output of the amplifier: its output stage is damaged.'
        : !speakersCleared
          ? 'The amplifier protects itself: from a speaker run, from heat, from its supply, or from its own output.'
          : `The amplifier protects itself${left.length === 0 ? ' from itself: no speaker, no heat and no supply is to blame' : ', and no speaker is to blame: most likely its own output stage is'}.`,
      certainty: seen ? 'proved' : left.length > MOST_BESIDES ? 'short list' : 'likely',
      howSure: seen
        ? 'It was read with the speakers off.'
        : unplugged
          ? 'The fault lamp stays with all speakers off. A stage that is shut down shows no DC.'
          : speakersCleared
            ? 'No speaker run is shorted. A stage that is shut down shows no DC.'
            : 'It was not seen without its speakers. The first check below clears them.',
      numbers: [
        ...(highestV === undefined
          ? []
          : [{ label: 'DC across an output, as read', value: formatQuantity(highestV, 'V', 2) }]),
        { label: 'Healthy', value: `below ${formatQuantity(OUTPUT_DC_HEALTHY_V, 'V')}` },
        { label: 'Suspect', value: `above ${formatQuantity(OUTPUT_DC_BAD_V, 'V')}` },
        ...(seen && highestV !== undefined
          ? [
              {
                label: 'Heat that it would leave in a coil',
                value: formatQuantity(powerW({ levelV: highestV, loadOhm: coilBandOhm({ ratedOhm }).lowOhm }), 'W', 2),
              },
            ]
          : []),
      ],
      fix: [
        ...(speakersCleared
          ? []
          : [
              'Before you pay anybody: all speaker plugs off, then the jumper or the volume once more. Lamp normal? Then it is a speaker: plug in one at a time, key off between.',
            ]),
        'Leave the speakers off this amplifier.',
        `${speakersCleared ? 'Have' : 'Fault lamp without speakers, too: have'} it repaired, or replace it.${unplugged ? ' Say: fault lamp with all speakers off.' : ''}`,
        'Before new speakers or a new amplifier: each run in ohms and to the frame. A short there may have done it.',
      ],
      tools: 'Meter, spanners',
      minutes: 60,
      who: AMP_REPAIRER,
      notBuy: ['Speakers before DC and gain were measured on the next amplifier.', 'A reflash.'],
      cautions: ['key-off', 'warranty', 'hot'],
      proof: `Speakers off, music paused: below ${formatQuantity(OUTPUT_DC_HEALTHY_V, 'V')} across each output. ${LAMP_NORMAL}`,
      ...(!seen && left.length > 0 && { mayAlsoBe: left }),
    };
  },
};

export const tooHot: Verdict = {
  id: 'amp-heat-protect',
  title: 'The amplifier gets too hot',
  faults: ['amp-heat-protect'],
  evidence: ['amp-light', 'amp-goes-off', 'recover'],
  mends: ['amp'],
  remedy: (f) => {
    const outW = DENSE_MUSIC_AVERAGE_RATIO * channelsOf(f) * ampEstimate(theAmp(f), 'powerW').value;
    return {
      what: `${ampName(f)} switches off because its case gets too hot, and comes back when it has cooled.`,
      certainty: f.outcome('recover') === 'after-minutes' ? 'proved' : 'likely',
      howSure:
        f.outcome('recover') === 'after-minutes'
          ? 'It came back by itself after minutes. Only heat takes that long.'
          : 'It goes off when it is hot.',
      numbers: [
        {
          label: 'Heat it has to get rid of with dense loud music',
          value: formatQuantity(outW * (1 / EFFICIENCY_RATIO - 1), 'W', 2),
        },
        { label: 'Amplifiers switch off at a case of', value: '75 to 90 °C' },
        { label: 'And come back when cooler by', value: '10 to 20 °C' },
      ],
      fix: [
        'Free its fins: no carpet, no foam, no rain cover on it. A hand’s width of air on the finned side.',
        'Stand it on spacers, fins upright, out of the closed bag or with holes for the air.',
        'Gain down to what the speakers need, high-pass on: what they cannot play is only heat.',
        'Still too hot: a small fan on its own fused feed, through a relay that the remote wire switches.',
      ],
      tools: 'Spacers, screwdriver',
      minutes: 40,
      who: YOURSELF_OR_FITTER,
      notBuy: ['A bigger amplifier for the same closed bag.'],
      cautions: ['hot', 'key-off'],
      proof: 'Thirty minutes at the volume and in the heat that failed before, bag closed as on the road.',
      mayAlsoBe: [
        { what: 'A load that is too heavy', split: 'How many speakers hang on a channel, of how many ohms?' },
        {
          what: 'A contact that opens when it is hot',
          split: 'Feel the fuse holder, not only the amplifier: hotter than the leads?',
        },
      ],
    };
  },
};
