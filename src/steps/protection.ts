import { OUTPUT_DC_BAD_V, OUTPUT_DC_HEALTHY_V } from '../compute/amp-supply.ts';
import { coilBandOhm } from '../compute/impedance.ts';
import { formatQuantity } from '../compute/quantity.ts';
import { ampEstimate, estimate } from '../rig/rig.ts';
import { LEADS_OHM, ohmReading, SHORTED_RATIO, wireToFrame } from './ohms.ts';
import { type Band, choice, measurement, type Situation, type Values } from './step.ts';
import { labelIn } from './supply.ts';
import { ampPair, theAmp } from './which-amp.ts';

/** What an amplifier with its fault lamp on protects itself from: heat, its supply, its load, or itself. */

export const recover = choice<'at-once' | 'after-minutes' | 'key-cycle' | 'stays'>({
  id: 'recover',
  short: 'How it comes back',
  ask: 'How does the amplifier come back: at once by itself, after minutes, after key off and on, or not at all?',
  phone: 'Feel its case. Then wait and tell me when it returns. Only after ten minutes try the key.',
  how: [
    'Back of a hand near its case first: too hot to leave there means heat.',
    'Turn the volume down and wait, up to ten minutes.',
    'Not back: key off for a minute, key on.',
  ],
  why: 'Volts that dip come back at once. Heat needs minutes. A short holds until the key is turned, and comes again.',
  tool: 'none',
  minutes: 4,
  observes: ['amp-supply', 'amp', 'run', 'speaker'],
  cautions: ['hot', 'into-a-short'],
  options: {
    'at-once': 'By itself within seconds, again and again',
    'after-minutes': 'By itself after minutes, when cooler',
    'key-cycle': 'Only after key off and on, if at all',
    stays: 'Fault lamp at once, each time',
  },
  outcomes: {
    'at-once': 'back at once',
    'after-minutes': 'back when cooler',
    'key-cycle': 'only by the key',
    stays: 'fault lamp each time',
  },
});

export const speakersUnplugged = choice<'clears' | 'stays' | 'dark'>({
  id: 'speakers-unplugged',
  short: 'All speakers off the amplifier',
  ask: 'Key off, all speaker plugs off the amplifier, key on: is its lamp normal now?',
  phone: 'Key off. Pull every thick speaker plug off the amplifier. Key on: lamp normal, or still the fault?',
  how: [
    'Key off. Mark the speaker plugs and pull all of them off the amplifier. Keep loose ends off metal.',
    'Key on, music playing, look at the lamp. No lamp to see: a click or a soft thump that was not there is normal.',
  ],
  why: 'A lamp that clears without speakers points to a run or a coil. One that stays points to the amplifier or its supply.',
  tool: 'none',
  minutes: 4,
  observes: ['amp-supply', 'amp', 'run', 'speaker'],
  cautions: ['key-off', 'bridge'],
  options: { clears: 'Yes, normal now', stays: 'No, still the fault lamp', dark: 'No, it is dark now' },
  // A fault lamp that goes dark had a load to trip on, and has no supply or no turn-on to start with.
  leftOut: ({ facts }) => {
    const lamp = facts['amp-light'];
    return lamp && 'option' in lamp && lamp.option === 'fault' ? [] : ['dark'];
  },
  outcomes: { clears: 'clears without speakers', stays: 'stays without speakers', dark: 'dark without speakers' },
});

export const ampWiresToFrame = measurement<'clear' | 'shorted' | 'unclear'>({
  id: 'amp-wires-to-frame',
  short: 'Its speaker wires to the frame',
  ask: 'Plugs off: how many ohms from each speaker wire of this amplifier to the frame, at the least?',
  phone:
    'Plugs still off. One probe on a bare bolt, the other on each speaker wire in turn. The lowest number, or a beep?',
  how: [
    'Key off, speaker plugs off the amplifier, meter on ohms.',
    'Black probe on bare bright metal of the frame, red on each wire of each run in turn.',
    'Move lids, steering and seat while you look. Type the lowest number; OL is a reading, too.',
  ],
  why: 'No wire of its outputs may touch metal, plus or minus: it shorts the output.',
  tool: 'meter',
  minutes: 6,
  observes: ['run', 'speaker'],
  cautions: ['ohms-dead', 'key-off', 'bridge'],
  probes: { red: 'run-plus', black: 'frame' },
  readings: {
    lowestOhm: ohmReading('Lowest of all its speaker wires'),
  },
  bands: (reading, values, s) => wireToFrame.bands(reading, values, s),
  judge: (values, s) => wireToFrame.judge(values, s),
  healthy: (values, s) => wireToFrame.healthy(values, s),
  outcomes: { clear: 'clear of the frame', shorted: 'a wire touches the frame', unclear: 'unclear, perhaps damp' },
});

/** Two speakers of the ohms that an amplifier is rated into, side by side, read less than this share of them. Common practice, no published source. */
const HEAVY_RATIO = 0.45;

/** The fewest ohms that the speakers on one channel can be rated at, on what is known of this bike. */
function leastRatedOhm(situation: Situation): number {
  const { rig } = situation;
  const rear = estimate(rig, 'rearRatedOhm').low;
  const count = rig.rearWiring === 'series' ? 1 : Math.max(1, Math.round(rig.rearPerChannel ?? 2));
  const perRear = rig.rearWiring === 'single' ? rear : rear / count;
  const front = estimate(rig, 'frontRatedOhm').low;
  if (ampPair(situation) === 'front') return front;
  return theAmp(situation).drives === 'both' ? Math.min(front, perRear) : perRear;
}

/** Two wires that touch, or a coil burnt to a lump, read less than this. Two coils side by side read more. Common practice, no published source. */
const TOUCHING_OHM = 0.5;

function runBands(situation: Situation): readonly Band[] {
  const tooFewOhm = SHORTED_RATIO * coilBandOhm({ ratedOhm: leastRatedOhm(situation) }).lowOhm;
  const shortedOhm = Math.min(TOUCHING_OHM, tooFewOhm);
  const rated = ampEstimate(theAmp(situation), 'ratedOhm').low;
  const heavyOhm = Math.max(tooFewOhm, HEAVY_RATIO * rated);
  return [
    { label: 'shorted', low: 0, high: shortedOhm, mood: 'bad' },
    { label: 'too few ohms', low: shortedOhm, high: heavyOhm, mood: 'bad' },
    { label: 'not shorted', low: heavyOhm, high: Infinity, mood: 'good' },
  ];
}
const withoutLeads = ({ lowestOhm = Infinity, leadsOhm = 0 }: Values) => Math.max(0, lowestOhm - leadsOhm);

export const ampRuns = measurement<'ok' | 'low' | 'heavy'>({
  id: 'amp-runs',
  short: 'Its speaker runs in ohms',
  ask: 'Plugs off: how many ohms does each speaker run of this amplifier show, at the least?',
  phone: 'Probes held together: number? Then the two wires of each speaker run in turn. The lowest number?',
  how: [
    'Key off, speaker plugs off the amplifier, meter on ohms. Hold the probes together: that is your leads.',
    'One probe on each wire of a run. All runs of this amplifier, front and rear if it drives both.',
    'Type the lowest number.',
  ],
  why: 'Two wires that touch, or a burnt coil, leave next to no ohms, and the amplifier switches off to save itself.',
  tool: 'meter',
  minutes: 5,
  observes: ['run', 'speaker'],
  cautions: ['ohms-dead', 'key-off'],
  probes: { red: 'run-plus', black: 'run-minus' },
  readings: {
    leadsOhm: LEADS_OHM,
    lowestOhm: ohmReading('Lowest of its runs'),
  },
  bands: (reading, { leadsOhm = 0 }, s) =>
    reading === 'lowestOhm'
      ? runBands(s).map((band) => ({
          ...band,
          low: band.low === 0 ? 0 : band.low + leadsOhm,
          high: band.high + leadsOhm,
        }))
      : null,
  judge: (values, s) => {
    const label = labelIn(runBands(s), withoutLeads(values));
    return label === 'shorted' ? 'low' : label === 'too few ohms' ? 'heavy' : 'ok';
  },
  healthy: (_, s) =>
    `Healthy is above ${formatQuantity(runBands(s)[2]?.low ?? 0, 'Ω', 2)}, after taking off your leads. A tweeter behind a capacitor reads open and is healthy.`,
  outcomes: { ok: 'no run is shorted', low: 'a run is shorted', heavy: 'too few ohms' },
  article: 'read-a-coil-in-ohms',
});

export const oneByOne = choice<'one' | 'together' | 'none'>({
  id: 'one-by-one',
  short: 'Speakers back one at a time',
  ask: 'Plug the speakers back in one at a time, key off for each: which one brings the fault lamp?',
  phone: 'One speaker plug at a time, key off each time, low volume. Which one makes the fault lamp come back?',
  how: [
    'Plug in one speaker. Key on, low volume: fault lamp? Key off, pull it, try the next.',
    'The one that trips it: leave it off, try the others.',
    'No single one? Then all of them together, and a little louder.',
  ],
  why: 'The run that trips it alone has the short. If only all together do, the load is too heavy.',
  tool: 'none',
  minutes: 8,
  observes: ['run', 'speaker', 'amp'],
  cautions: ['key-off', 'into-a-short', 'bridge'],
  options: {
    one: 'One of them brings it back',
    together: 'Only all together, or only when louder',
    none: 'It no longer comes back',
  },
  outcomes: { one: 'one run trips it', together: 'only together', none: 'no longer trips' },
});

export const ampDc = measurement<'ok' | 'offset' | 'unclear'>({
  id: 'amp-dc',
  short: 'DC across its outputs',
  ask: 'Speakers off, music paused: what DC voltage is across each output of the amplifier, at the most?',
  phone:
    'Speakers still off, music paused. Meter on DC, one probe on each screw of an output, all of them. The highest?',
  how: [
    'Key off, speakers off the amplifier, key on, music paused.',
    'Meter on DC volts, one probe on each screw of one output. Every output. Type the highest, without its sign.',
  ],
  why: 'A healthy output has next to no DC across it. A damaged one pushes the coil to one side, and protection steps in.',
  tool: 'meter',
  minutes: 4,
  observes: ['amp'],
  cautions: ['amp-output', 'bridge'],
  probes: { red: 'amp-out-plus', black: 'amp-out-minus' },
  readings: {
    highestV: {
      label: 'Highest of its outputs',
      unit: 'V',
      possible: [0, 60],
      impossible: 'Without its sign, and on DC volts: no output on a 12 V bike has more than 60 V.',
    },
  },
  bands: () => [
    { label: 'healthy', low: 0, high: OUTPUT_DC_HEALTHY_V, mood: 'good' },
    { label: 'unclear', low: OUTPUT_DC_HEALTHY_V, high: OUTPUT_DC_BAD_V, mood: 'unsure' },
    { label: 'DC on it', low: OUTPUT_DC_BAD_V, high: 4 * OUTPUT_DC_BAD_V, mood: 'bad' },
  ],
  judge: ({ highestV = 0 }) =>
    highestV < OUTPUT_DC_HEALTHY_V ? 'ok' : highestV < OUTPUT_DC_BAD_V ? 'unclear' : 'offset',
  healthy: () =>
    'Healthy is below 50 mV. Above 0.3 V the output is damaged. While it protects itself it may show none.',
  outcomes: { ok: 'no DC', offset: 'DC on an output', unclear: 'a little DC' },
});
