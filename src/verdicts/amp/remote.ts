import { formatQuantity } from '../../compute/quantity.ts';
import { estimate } from '../../rig/rig.ts';
import { type Findings, is } from '../../steps/outcome.ts';
import type { Verdict } from '../verdict.ts';
import { FITTER, YOURSELF_OR_FITTER } from '../who.ts';
import { heatLeft, selectorLeft } from './left.ts';
import { IDLE_A, remoteNumbers } from './numbers.ts';

/** The wire that switches the amplifier, and what feeds it. */

const PROOF_REMOTE =
  'Head unit on: the remote terminal reads what stands above. It starts and stops with the head unit ten times in a row.';
const NOT_THE_AMP = 'An amplifier: it was never told to come on.';

export const remoteWireOpen: Verdict = {
  id: 'remote-wire-open',
  title: 'The remote wire is open',
  faults: ['remote-wire-open'],
  evidence: ['remote-volts', 'remote-source', 'remote-lamp', 'remote-start-lamp', 'remote-jumper', 'supply-wiggle'],
  mends: ['amp-supply', 'unit-leads'],
  remedy: (f) => {
    const moved = f.outcome('supply-wiggle') === 'remote';
    const startLive = f.outcome('remote-source') === 'live' || f.outcome('remote-start-lamp') === 'lit';
    const unitKind = f.outcome('unit-kind');
    const adapterUnseen = !moved && unitKind !== 'factory' && f.outcome('adapter-look') !== 'through';
    const proved = moved || (startLive && !adapterUnseen);
    const left = [
      ...(moved || startLive
        ? []
        : [
            {
              what: 'The feed it was tapped from is dead',
              split: 'Head unit on: the start of the wire against battery minus.',
            },
          ]),
      ...(adapterUnseen
        ? [
            {
              what: 'Adapter of the replaced head unit without the remote wire',
              split: 'Look at both sides of the adapter’s plug: is the remote wire on both?',
            },
          ]
        : []),
    ];
    return {
      what: 'The thin remote wire is broken, or its tap makes no contact. Nothing tells the amplifier to come on.',
      certainty: proved ? 'proved' : 'likely',
      howSure: moved
        ? 'The lamp follows the remote wire when it is moved.'
        : startLive
          ? 'Volts at its start, none at the amplifier.'
          : 'Nothing arrives at the remote terminal. Where the wire begins was not read.',
      numbers: remoteNumbers(f),
      fix: [
        'Key off. Look at the tap first: a connector that never bit through the insulation is the usual place.',
        'Then where it bends: steering, seat hinge, grommets.',
        'Solder or sealed crimp, sleeve, strain relief. A 1 A fuse at its start.',
      ],
      tools: 'Crimp tool, thin wire, 1 A fuse',
      minutes: 30,
      who: FITTER,
      notBuy: [NOT_THE_AMP, 'A reflash: it does not switch a wire.'],
      cautions: ['key-off', 'data'],
      proof: PROOF_REMOTE,
      ...(left.length > 0 && { mayAlsoBe: left }),
    };
  },
};

export const remoteSourceDead: Verdict = {
  id: 'remote-source-dead',
  title: 'The remote wire is tapped from a dead or wrong feed',
  faults: ['remote-source-dead'],
  evidence: ['key-positions', 'remote-source', 'remote-start-lamp', 'what-else', 'last-change'],
  mends: ['amp-supply', 'unit-leads', 'unit'],
  remedy: (f) => {
    const wrongFeed = f.outcome('key-positions') === 'some';
    const atTimes = is(f, 'amp-light', 'normal') || is(f, 'amp-signs', 'alive') || is(f, 'amp-goes-off', 'bumps');
    const readDead = is(f, 'remote-source', 'dead') || is(f, 'remote-start-lamp', 'dark');
    // A hot amplifier comes back while somebody turns the key through its positions.
    const left = wrongFeed
      ? [
          ...heatLeft(f),
          // Few volts may be enough in the position of the key in which the battery gives a little more.
          {
            what: 'Too few volts on the remote wire',
            split: 'Head unit on: the remote terminal within 1 V of the battery?',
          },
        ]
      : [];
    return {
      what: wrongFeed
        ? 'The remote wire is on a feed that does not follow the head unit: live in some other position of the key.'
        : atTimes
          ? 'The feed that the remote wire is tapped from gives way at times: a loose accessory fuse, or its plug.'
          : 'The point that the remote wire is tapped from carries no volts: a blown accessory fuse, or the wrong pin.',
      certainty: left.length > 0 || !readDead ? 'likely' : 'proved',
      howSure: wrongFeed
        ? 'It comes on in another position, so supply, ground and amplifier are good.'
        : readDead
          ? 'Not even the start of the wire carries volts with the head unit on.'
          : `Something else on the bike ${atTimes ? 'goes off' : 'died'} with it: they share a feed or a fuse.`,
      numbers: remoteNumbers(f),
      fix: [
        wrongFeed
          ? 'Key off. Find out which feed it was tapped from, and take it off there.'
          : atTimes
            ? 'Key off. Press the accessory fuse of that feed home, and its plug. Look at both for heat and green.'
            : 'Look at the accessory fuse of that feed first. Did a socket or a charger die with it?',
        'Take the remote wire to the head unit’s remote output, or to a feed that is live only with the ignition on.',
        'A 1 A fuse at its start. More than one amplifier or a relay on it: a relay of its own.',
      ],
      tools: 'Meter or LED lamp, crimp tool, 1 A fuse',
      minutes: 40,
      who: YOURSELF_OR_FITTER,
      notBuy: [NOT_THE_AMP],
      ifDoneAnyway: 'Straight to the battery it works at once, and empties the battery in a night or two.',
      cautions: ['key-off', 'data', 'fuse'],
      proof: `${PROOF_REMOTE} Key off: below 0.5 V after ten minutes.`,
      ...(left.length > 0 && { mayAlsoBe: left }),
    };
  },
};

export const remoteVoltsLow: Verdict = {
  id: 'remote-volts-low',
  title: 'Too few volts on the remote wire',
  faults: ['remote-volts-low'],
  evidence: ['remote-volts', 'remote-source', 'remote-lamp', 'remote-jumper'],
  mends: ['amp-supply', 'unit-leads'],
  remedy: (f) => {
    const readLow = f.outcome('remote-volts') === 'low' || f.outcome('remote-source') === 'low';
    // For the jumper the selector stood on wire, so one that stands elsewhere is not cleared by it.
    const left = readLow ? [] : [...selectorLeft(f), ...heatLeft(f)];
    return {
      what: is(f, 'amp-light', 'normal')
        ? 'The remote terminal gets so few volts that the amplifier lets go when its supply dips.'
        : 'The remote terminal gets volts, but too few to switch this amplifier on.',
      certainty: readLow ? 'proved' : 'likely',
      howSure: readLow
        ? 'It was read, and lies under what amplifiers switch on at.'
        : 'Some volts arrive, yet only the jumper from its own plus wakes it.',
      background:
        'The usual reasons: a splice that corrodes, a dimmed lamp feed that pulses, or one small output that feeds several devices.',
      numbers: remoteNumbers(f),
      fix: [
        'The battery below 12 V? Charge it first, and read the wire again.',
        'Is the wire joined to a lamp that can be dimmed? Move it. A meter cannot show that it flickers.',
        'Use a full 12 V feed that follows the ignition, with a 1 A fuse.',
        'Several devices on one output: let it switch a relay, and the relay the amplifiers.',
      ],
      tools: 'Meter, crimp tool, relay if needed',
      minutes: 40,
      who: FITTER,
      notBuy: [NOT_THE_AMP],
      cautions: ['key-off', 'data'],
      proof: `${PROOF_REMOTE} It holds that while the music is loud.`,
      ...(left.length > 0 && { mayAlsoBe: left }),
    };
  },
};

export const adapterWithoutRemote: Verdict = {
  id: 'replaced-unit-adapter-gap',
  title: 'The adapter of the replaced head unit leaves the remote wire out',
  faults: ['replaced-unit-adapter-gap'],
  evidence: ['unit-kind', 'remote-volts', 'remote-source', 'remote-start-lamp', 'adapter-look'],
  mends: ['unit-leads', 'amp-supply'],
  remedy: (f) => ({
    what: 'The replaced head unit switches its remote output, and the adapter behind it has no pin for it.',
    certainty: 'proved',
    howSure: 'The place of the remote wire in the adapter’s plug is empty.',
    numbers: remoteNumbers(f),
    fix: [
      'Key off. Fit the missing pin, or join the remote output past the adapter with a sealed crimp.',
      'A 1 A fuse at its start. Its papers say how much the output may give.',
      'While the plug is apart: are the rear pairs fitted?',
    ],
    tools: 'Crimp tool, pin, 1 A fuse',
    minutes: 30,
    who: FITTER,
    notBuy: [NOT_THE_AMP, 'A reflash: a replaced head unit has no stored profile.'],
    cautions: ['key-off', 'data'],
    proof: PROOF_REMOTE,
  }),
};

/** Half of the charge may go before a battery suffers. Common practice, no published source. */
const HALF = 0.5;
const nightsH = (f: Findings) => (estimate(f.rig, 'batteryAh').value * HALF) / IDLE_A;

export const remoteOnPermanent: Verdict = {
  id: 'remote-on-permanent',
  title: 'The remote wire never goes off and emptied the battery',
  faults: ['remote-on-permanent'],
  evidence: ['amp-terminals', 'remote-key-off', 'last-change'],
  mends: ['amp-supply'],
  remedy: (f) => ({
    what: 'The remote wire is on a feed that never goes off. The amplifier stayed awake, emptied the battery, and now has too few volts.',
    certainty: f.outcome('remote-key-off') === 'live' ? 'proved' : 'likely',
    howSure:
      'The remote terminal still carries volts ten minutes after the key is off, and the battery is nearly empty.',
    numbers: [
      { label: 'An amplifier that stays awake takes about', value: formatQuantity(IDLE_A, 'A') },
      { label: 'It takes half the battery in about', value: `${Math.round(nightsH(f))} hours` },
      ...remoteNumbers(f),
    ],
    fix: [
      'Take the remote wire to the head unit’s remote output, or to a feed that goes off with the key. 1 A fuse.',
      'Charge the battery fully with the right charger. Then four hours’ rest: at least 12.7 V for lead-acid.',
      'Judge the battery only after that: one deep discharge can have hurt it.',
    ],
    tools: 'Crimp tool, charger, meter',
    minutes: 60,
    who: FITTER,
    notBuy: ['A battery before this one was charged and tried.', 'An amplifier.'],
    cautions: ['battery-gas', 'key-off'],
    proof: 'Ten minutes after key off the remote terminal reads below 0.5 V, and the amplifier’s lamp is off.',
  }),
};
