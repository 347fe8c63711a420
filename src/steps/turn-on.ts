import {
  REMOTE_LOSS_V,
  REMOTE_NOTHING_BELOW_V,
  REMOTE_ON_HIGHEST_V,
  REMOTE_ON_LOWEST_V,
  SENSE_DC_HIGHEST_V,
  SENSE_DC_LOWEST_V,
  SENSE_HIGHEST_V,
  SENSE_LOWEST_V,
} from '../compute/amp-supply.ts';
import { HALF_SUPPLY_PAIR_DIFFERENCE_V, halfSupplyBandV } from '../compute/half-supply.ts';
import { formatQuantity, formatRange } from '../compute/quantity.ts';
import { batteryV } from './amp-feed.ts';
import { smallestDigitV } from './meter.ts';
import { acReading, UNIT_AC_POSSIBLE_V } from './rear-volts.ts';
import { type Band, choice, measurement, type Situation, type Values } from './step.ts';
import { dcReading, labelIn } from './supply.ts';

/** What wakes an amplifier: its remote wire, or what it hears on its inputs. */

function remoteBands(situation: Situation): readonly Band[] {
  const supplyV = batteryV(situation);
  const healthyV = Math.max(REMOTE_ON_HIGHEST_V, supplyV - REMOTE_LOSS_V);
  return [
    { label: 'nothing', low: -0.5, high: REMOTE_NOTHING_BELOW_V, mood: 'bad' },
    { label: 'too little', low: REMOTE_NOTHING_BELOW_V, high: REMOTE_ON_HIGHEST_V, mood: 'bad' },
    { label: 'enough for most', low: REMOTE_ON_HIGHEST_V, high: healthyV, mood: 'unsure' },
    { label: 'healthy', low: healthyV, high: healthyV + 2, mood: 'good' },
  ];
}
const remoteHealthy = (_: Values, s: Situation) =>
  `Healthy is above ${formatQuantity(batteryV(s) - REMOTE_LOSS_V, 'V', 3)}. Amplifiers switch on above ${formatRange(REMOTE_ON_LOWEST_V, REMOTE_ON_HIGHEST_V, 'V')}.`;

export const remoteVolts = measurement<'ok' | 'low' | 'none' | 'unclear'>({
  id: 'remote-volts',
  short: 'Remote terminal',
  ask: 'Head unit on: what DC voltage is on the amplifier’s remote terminal, against battery minus?',
  phone: 'Black stays on the battery minus post. Red on the thin terminal marked remote, head unit on: number?',
  how: [
    'Head unit on and playing. Black probe on the battery minus post, not on the amplifier’s ground.',
    'Red probe on the remote terminal, the wire in it.',
    'A test lamp with a bulb in the meter’s place would load the wire: use the meter.',
  ],
  why: 'The remote wire is the amplifier’s switch. Without its volts the best supply does nothing.',
  tool: 'meter',
  minutes: 2,
  observes: ['unit', 'unit-leads', 'amp-supply'],
  probes: { red: 'amp-remote', black: 'battery-minus' },
  readings: { remoteV: dcReading('Remote terminal') },
  bands: (_, __, s) => remoteBands(s),
  judge: (values, s) => {
    const label = labelIn(remoteBands(s), values['remoteV'] ?? 0);
    return label === 'healthy' ? 'ok' : label === 'nothing' ? 'none' : label === 'too little' ? 'low' : 'unclear';
  },
  healthy: remoteHealthy,
  outcomes: { ok: 'switched on', low: 'too few volts', none: 'nothing', unclear: 'enough for most amplifiers' },
  ifCannot: 'We try a jumper lead from its own plus instead.',
});

export const remoteSource = measurement<'live' | 'low' | 'dead'>({
  id: 'remote-source',
  short: 'Where the remote wire begins',
  ask: 'What DC voltage is at the other end of the remote wire, where it was tapped?',
  phone: 'Follow the thin wire to its start, at the radio or at a fuse. Red there, black on battery minus: number?',
  how: [
    'Head unit on. Black probe on the battery minus post.',
    'Red probe where the remote wire begins: the head unit’s remote output, or the feed it was tapped from.',
    'Look at the tap: a connector that never bit through the insulation is the usual place.',
  ],
  why: 'Volts here and none at the amplifier: the wire. None here: the point it was tapped from.',
  tool: 'meter',
  minutes: 6,
  observes: ['unit', 'unit-leads', 'amp-supply'],
  cautions: ['data'],
  probes: { red: 'remote-start', black: 'battery-minus' },
  readings: { startV: dcReading('Start of the remote wire') },
  bands: (_, __, s) => remoteBands(s),
  judge: (values, s) => {
    const label = labelIn(remoteBands(s), values['startV'] ?? 0);
    return label === 'nothing' ? 'dead' : label === 'too little' ? 'low' : 'live';
  },
  healthy: remoteHealthy,
  outcomes: { live: 'volts at its start', low: 'too few volts at its start', dead: 'none at its start either' },
  givenUnder: ['remote-volts'],
  ifCannot: 'It begins behind the fairing? We name both, likeliest first.',
});

export const remoteKeyOff = measurement<'dead' | 'live'>({
  id: 'remote-key-off',
  short: 'Remote terminal, key off',
  ask: 'Key off for ten minutes: what DC voltage is on the remote terminal now?',
  phone: 'Key off, take it out, wait ten minutes. Red on the thin remote terminal, black on battery minus: number?',
  how: [
    'Key off and out. Wait ten minutes: some modules keep power for a while.',
    'Black probe on the battery minus post, red on the remote terminal.',
  ],
  why: 'A remote wire on a feed that never goes off keeps the amplifier awake day and night, and that empties the battery.',
  tool: 'meter',
  minutes: 12,
  observes: ['unit-leads', 'amp-supply'],
  probes: { red: 'amp-remote', black: 'battery-minus' },
  readings: { remoteV: dcReading('Remote terminal, key off') },
  bands: () => [
    { label: 'off', low: -0.5, high: 0.5, mood: 'good' },
    { label: 'not quite off', low: 0.5, high: REMOTE_NOTHING_BELOW_V, mood: 'unsure' },
    { label: 'still on', low: REMOTE_NOTHING_BELOW_V, high: 15, mood: 'bad' },
  ],
  judge: (values) => ((values['remoteV'] ?? 0) < REMOTE_NOTHING_BELOW_V ? 'dead' : 'live'),
  healthy: () => 'Healthy is below 0.5 V.',
  outcomes: { dead: 'off', live: 'still on with the key off' },
});

export const remoteJumper = choice<'wakes' | 'dead' | 'fault' | 'no-terminal'>({
  id: 'remote-jumper',
  short: 'Jumper from plus to remote',
  ask: 'Join the amplifier’s own plus to its remote terminal through a 1 A fuse for five seconds. Does it wake?',
  phone:
    'Pull the thin remote wire off first and tape it. Then the little fused lead, amplifier plus to remote, five seconds. Lamp?',
  how: [
    'Head unit’s volume at zero. Remote wire off its terminal, its end insulated.',
    'A turn-on selector stands on sensing? Set it to wire for this, key off.',
    'Fused lead, 1 A: amplifier plus to remote terminal, five seconds. Watch the lamp. Take it off.',
    'Then the remote wire and the selector go back.',
  ],
  why: 'If it wakes, its supply, its ground and itself are good enough to start. The fault is in what should wake it.',
  tool: 'jumper',
  minutes: 3,
  observes: ['amp-supply', 'amp', 'run', 'speaker'],
  cautions: ['jumper', 'wakes-loud', 'ground-open'],
  options: {
    wakes: 'Yes, it wakes',
    dead: 'No, it stays off',
    fault: 'It shows its fault lamp',
    'no-terminal': 'It has no remote terminal',
  },
  outcomes: {
    wakes: 'wakes by the jumper',
    dead: 'stays off',
    fault: 'fault lamp by the jumper',
    'no-terminal': 'no remote terminal',
  },
});

export const remoteLamp = choice<'lit' | 'dark'>({
  id: 'remote-lamp',
  short: 'LED lamp on the remote terminal',
  ask: 'An LED test lamp between the remote terminal and battery minus, head unit on: does it light?',
  phone: 'Clip of the LED lamp on battery minus, its tip on the thin remote terminal. Radio on: does it light?',
  how: [
    'An LED test lamp. One with a bulb loads the thin wire and tells nothing.',
    'Clip on the battery minus post, tip on the remote terminal, head unit on.',
  ],
  why: 'Without a meter this tells whether any volts arrive. It cannot tell eight from twelve.',
  tool: 'test-lamp',
  minutes: 2,
  observes: ['unit', 'unit-leads', 'amp-supply'],
  options: { lit: 'It lights', dark: 'It stays dark' },
  outcomes: { lit: 'lights', dark: 'dark' },
});

export const remoteStartLamp = choice<'lit' | 'dark'>({
  id: 'remote-start-lamp',
  short: 'LED lamp where the wire begins',
  ask: 'The same lamp where the remote wire begins: does it light there?',
  phone: 'Now the tip of the LED lamp at the start of the thin wire, at the radio or the tap. Does it light?',
  how: ['Clip on the battery minus post, head unit on.', 'Tip where the remote wire begins.'],
  why: 'Light here and none at the amplifier: the wire. None here: the feed it was tapped from.',
  tool: 'test-lamp',
  minutes: 5,
  observes: ['unit', 'unit-leads', 'amp-supply'],
  cautions: ['data'],
  options: { lit: 'It lights', dark: 'It stays dark' },
  outcomes: { lit: 'lights at its start', dark: 'dark at its start' },
  givenUnder: ['remote-lamp'],
});

export const adapterLook = choice<'gap' | 'through'>({
  id: 'adapter-look',
  short: 'The remote pin of the adapter',
  ask: 'At the adapter of the replaced head unit: is the remote wire on both sides of its plug?',
  phone: 'Look at the adapter plug behind the radio. The remote wire on the radio side: does it have a partner pin?',
  how: [
    'Key off, plug apart.',
    'Find the remote output of the replaced unit, usually blue with a white stripe. Its papers say.',
    'Is the same place on the other half of the adapter fitted with a pin and a wire?',
  ],
  why: 'An adapter made for another bike often leaves the remote wire out. At the amplifier that looks like a broken wire.',
  tool: 'none',
  minutes: 5,
  observes: ['unit-leads'],
  cautions: ['key-off', 'data'],
  options: { gap: 'No, the place is empty', through: 'Yes, it goes through' },
  outcomes: { gap: 'the place is empty', through: 'it goes through' },
  givenUnder: ['unit-kind'],
});

export const inputPlug = choice<'cured' | 'no-change'>({
  id: 'input-plug',
  short: 'The amplifier’s signal plug',
  ask: 'Pull the signal plug at the amplifier, look at its pins, push it home: does it wake now?',
  phone: 'Key off. Pull the thin signal plug at the amplifier, look inside, push it till it clicks. Key on: lamp?',
  how: [
    'Key off. Pull the signal plug, look for bent, pushed-back or green pins, push it home until it locks.',
    'Key on, music at your usual volume, wait ten seconds.',
  ],
  why: 'An amplifier that listens sleeps on when its plug is off. Nothing is cheaper to try.',
  tool: 'none',
  minutes: 3,
  observes: ['unit-leads', 'amp'],
  cautions: ['key-off', 'wakes-loud'],
  options: { cured: 'Yes, it wakes', 'no-change': 'No change' },
  outcomes: { cured: 'wakes after pushing home', 'no-change': 'no change' },
});

function dcBands(supplyV: number): readonly Band[] {
  const { lowV, highV } = halfSupplyBandV({ supplyV });
  return [
    { label: 'no DC', low: -0.5, high: SENSE_DC_LOWEST_V, mood: 'bad' },
    { label: 'depends on the amplifier', low: SENSE_DC_LOWEST_V, high: lowV, mood: 'unsure' },
    { label: 'half the supply', low: lowV, high: highV, mood: 'good' },
    { label: 'too high', low: highV, high: supplyV + 1, mood: 'bad' },
  ];
}

/** What an amplifier that waits for half the supply gets to see. */
export const senseDc = measurement<'half' | 'zero' | 'one-odd' | 'unclear'>({
  id: 'sense-dc',
  short: 'DC on its input wires',
  ask: 'Music paused: what DC voltage is on both wires of one input pair, against battery minus?',
  phone: 'Pause the music. Black on the battery minus post, red on one thin input wire, then on its partner. Numbers?',
  how: [
    'Head unit on, music paused. Black probe on the battery minus post.',
    'Red probe on both wires of one input pair where they enter the amplifier, plug fitted.',
    'Left and right, if the first pair reads nothing.',
  ],
  why: 'This amplifier wakes on the DC that rests on a speaker wire. Behind a transformer, a capacitor or a line output there is none.',
  tool: 'meter',
  minutes: 5,
  observes: ['unit', 'unit-leads'],
  cautions: ['bridge'],
  probes: { red: 'amp-in-plus', black: 'battery-minus' },
  readings: { plusV: dcReading('One wire of the pair'), minusV: dcReading('The other wire') },
  bands: (_, __, s) => dcBands(batteryV(s)),
  judge: (values, s) => {
    const { plusV = 0, minusV = 0 } = values;
    const labels = [plusV, minusV].map((valueV) => labelIn(dcBands(batteryV(s)), valueV));
    if (labels.every((label) => label === 'no DC')) return 'zero';
    if (Math.abs(plusV - minusV) > HALF_SUPPLY_PAIR_DIFFERENCE_V || labels.includes('too high')) return 'one-odd';
    return labels.every((label) => label === 'half the supply') ? 'half' : 'unclear';
  },
  healthy: (_, s) => {
    const { lowV, highV } = halfSupplyBandV({ supplyV: batteryV(s) });
    return `Healthy is ${formatRange(lowV, highV, 'V')} on each wire. Amplifiers of this kind wake above ${formatRange(SENSE_DC_LOWEST_V, SENSE_DC_HIGHEST_V, 'V')}.`;
  },
  outcomes: { half: 'half the supply', zero: 'no DC at all', 'one-odd': 'one wire is off', unclear: 'unclear' },
  article: 'half-the-supply-on-a-speaker-wire',
});

export const betweenLook = choice<'box' | 'direct'>({
  id: 'between-look',
  short: 'Between head unit and amplifier',
  ask: 'Is there a box, a converter or a line-level lead between the head unit and the amplifier?',
  phone:
    'Follow the thin signal wires from the amplifier. Do they come straight from speaker wires, or from a little box?',
  how: [
    'Follow the signal wires from the amplifier toward the head unit.',
    'A converter is a small box with plugs on both sides. A line-level lead has round shielded plugs.',
  ],
  why: 'A converter or a line output lets sound through and keeps the DC back, and this amplifier waits for the DC.',
  tool: 'none',
  minutes: 3,
  observes: ['unit-leads'],
  options: { box: 'Yes, something is in between', direct: 'No, straight speaker wires' },
  outcomes: { box: 'a converter or a line lead', direct: 'straight speaker wires' },
});

/** Below this an AC reading at an input is nothing: half as much again as the last digit, and never under 10 mV. */
const nothingV = (situation: Situation) => Math.max(0.01, 1.5 * smallestDigitV(situation.facts));

function levelBands(values: Values, situation: Situation): readonly Band[] {
  const leastV = nothingV(situation);
  const { papersV } = values;
  const lowV = Math.max(leastV, papersV ?? SENSE_LOWEST_V);
  const enoughV = Math.max(lowV, papersV ?? SENSE_HIGHEST_V);
  return [
    { label: 'nothing', low: 0, high: leastV, mood: 'bad' },
    { label: 'too little', low: leastV, high: lowV, mood: 'bad' },
    { label: 'depends on the amplifier', low: lowV, high: enoughV, mood: 'unsure' },
    { label: 'enough', low: enoughV, high: UNIT_AC_POSSIBLE_V[1], mood: 'good' },
  ];
}

/** What an amplifier that waits for sound gets to hear: at the rider's level, and well above it. */
export const senseLevel = measurement<'ok' | 'low' | 'none' | 'unclear'>({
  id: 'sense-level',
  short: 'Sound at its inputs',
  ask: '400 Hz tone: what AC voltage is across one input pair at your usual volume, and three quarters up?',
  phone:
    'Play the 400 tone at your usual volume. Meter on AC, one probe on each wire of an input pair: number? Then three quarters up?',
  how: [
    'Key off, speakers off the amplifier, key on: it may wake.',
    'Play the 400 Hz tone. One probe on each wire of an input pair at the amplifier, plug fitted.',
    'Read at the volume you usually ride with, then at about three quarters of the scale.',
    'Its papers name the level it wakes at? Type that, too.',
  ],
  why: 'Sound that arrives but stays under the threshold leaves it asleep. Sound that never arrives is another fault.',
  tool: 'meter',
  minutes: 6,
  observes: ['settings', 'profile', 'unit', 'unit-leads'],
  cautions: ['bridge', 'loud-tone', 'amp-output'],
  tones: ['400hz'],
  probes: { red: 'amp-in-plus', black: 'amp-in-minus' },
  readings: {
    usualV: acReading('At your usual volume'),
    loudV: acReading('Three quarters up'),
    papersV: {
      ...acReading('Threshold in its papers', true),
      possible: [0.01, 5],
      impossible: 'Thresholds lie between 0.01 and 5 V. Leave it empty if you are not sure.',
    },
  },
  unusable: (values) =>
    (values['usualV'] ?? 0) > (values['loudV'] ?? Infinity)
      ? { reading: 'loudV', message: 'Three quarters up must read more than your usual volume. Take both again.' }
      : null,
  bands: (reading, values, s) => (reading === 'usualV' ? levelBands(values, s) : null),
  judge: (values, s) => {
    if ((values['loudV'] ?? 0) < nothingV(s)) return 'none';
    const label = labelIn(levelBands(values, s), values['usualV'] ?? 0);
    return label === 'enough' ? 'ok' : label === 'depends on the amplifier' ? 'unclear' : 'low';
  },
  healthy: ({ papersV }) =>
    papersV === undefined
      ? `Amplifiers wake above ${formatRange(SENSE_LOWEST_V, SENSE_HIGHEST_V, 'V')}: above ${SENSE_HIGHEST_V} V is enough for any.`
      : `Healthy is above ${formatQuantity(papersV, 'V', 2)}, as its papers say.`,
  outcomes: {
    ok: 'enough to wake it',
    low: 'too little',
    none: 'nothing arrives',
    unclear: 'depends on the amplifier',
  },
  article: 'amplifiers-that-listen',
  givenUnder: ['meter-digit'],
});
