import { CHARGING_MOST_V, KEY_ON_FLAT_V, KEY_ON_HEALTHY_V, OVERVOLTAGE_CUT_HIGHEST_V } from '../compute/amp-supply.ts';
import { formatQuantity, formatRange } from '../compute/quantity.ts';
import { dropV } from '../compute/wire.ts';
import { BATTERY_OHM, batteryV, cuttingOutOhm, healthyPathOhm, LAMP_A } from './amp-feed.ts';
import { numberIn } from './outcome.ts';
import { type Band, bandOf, measurement, type Reading, type Situation, type Values } from './step.ts';

/** Volts on the way to the amplifier and back: at its terminals, at its fuse, and under load. */

const MOST_V = 20;
export const dcReading = (label: string): Reading => ({
  label,
  unit: 'V',
  possible: [-0.5, MOST_V],
  impossible: 'A 12 V bike has no such voltage. Is the meter on DC volts?',
});
const BATTERY: Reading = {
  label: 'Battery plus',
  unit: 'V',
  possible: [8, MOST_V],
  impossible: 'A battery that runs the head unit reads 8 V or more. Is the meter on DC volts, black on the minus post?',
};

/** The name of the band that a value falls in. A scale ends where nothing new begins: what lies beyond is in its last band. */
export const labelIn = (bands: readonly Band[], value: number): string | undefined =>
  (bandOf(bands, value) ?? (value > 0 ? bands.at(-1) : bands[0]))?.label;

const BATTERY_BANDS: readonly Band[] = [
  { label: 'nearly empty', low: 0, high: KEY_ON_FLAT_V, mood: 'bad' },
  { label: 'low', low: KEY_ON_FLAT_V, high: KEY_ON_HEALTHY_V, mood: 'unsure' },
  { label: 'healthy', low: KEY_ON_HEALTHY_V, high: CHARGING_MOST_V, mood: 'good' },
  { label: 'too high', low: CHARGING_MOST_V, high: OVERVOLTAGE_CUT_HIGHEST_V, mood: 'bad' },
];

/** What a terminal without load may lie from the battery: the meter and the leads of a healthy one lose less. An estimate. */
const NEAR_V = 0.5;
/** Two readings one after the other may differ by so much. An estimate. */
const DRIFT_V = 0.3;

function plusBands(supplyV: number): readonly Band[] {
  return [
    { label: 'no supply', low: -0.5, high: supplyV / 2, mood: 'bad' },
    { label: 'loses volts', low: supplyV / 2, high: supplyV - NEAR_V, mood: 'unsure' },
    { label: 'healthy', low: supplyV - NEAR_V, high: supplyV + DRIFT_V, mood: 'good' },
  ];
}
function groundBands(supplyV: number): readonly Band[] {
  return [
    { label: 'healthy', low: -0.5, high: NEAR_V, mood: 'good' },
    { label: 'lifted', low: NEAR_V, high: supplyV / 2, mood: 'unsure' },
    { label: 'open', low: supplyV / 2, high: supplyV + DRIFT_V, mood: 'bad' },
  ];
}

const aboveTheBattery = (readings: readonly string[]) => (values: Values) => {
  const supplyV = values['batteryV'] ?? Infinity;
  const reading = readings.find((name) => (values[name] ?? 0) > supplyV + DRIFT_V);
  return reading === undefined
    ? null
    : { reading, message: 'No terminal can be above the battery. Take all readings again, one right after the other.' };
};

/** Plus and ground at the amplifier, against the one reference that cannot be at fault. */
export const ampTerminals = measurement<
  'ok' | 'unclear' | 'plus-open' | 'ground-open' | 'battery-low' | 'battery-high'
>({
  id: 'amp-terminals',
  short: 'Plus and ground at the amplifier',
  ask: 'What do battery plus, amplifier plus and amplifier ground read, against the battery minus post?',
  phone:
    'Black on the battery minus post, and it stays there. Red on battery plus: number? On the amplifier’s thick plus: number? On its ground: number?',
  how: [
    'Head unit on and playing, engine off. Meter on DC volts.',
    'Black probe on the battery minus post for all three. The post is too far? A long test lead.',
    'Red probe: battery plus post, then the amplifier’s plus terminal, then its ground terminal.',
  ],
  why: 'Measured against its own ground, a good plus looks dead when the ground is the fault. The battery minus post never lies.',
  tool: 'meter',
  minutes: 3,
  observes: ['amp-supply'],
  cautions: ['plus-probe', 'flat-battery'],
  probes: { red: 'amp-plus', black: 'battery-minus' },
  readings: {
    batteryV: BATTERY,
    plusV: dcReading('Amplifier plus'),
    groundV: dcReading('Amplifier ground'),
  },
  unusable: aboveTheBattery(['plusV', 'groundV']),
  bands: (reading, { batteryV: supplyV }) => {
    if (reading === 'batteryV') return BATTERY_BANDS;
    if (supplyV === undefined) return null;
    return reading === 'plusV' ? plusBands(supplyV) : groundBands(supplyV);
  },
  judge: (values) => {
    const supplyV = values['batteryV'] ?? KEY_ON_HEALTHY_V;
    const plus = labelIn(plusBands(supplyV), values['plusV'] ?? 0);
    const ground = labelIn(groundBands(supplyV), values['groundV'] ?? 0);
    const battery = labelIn(BATTERY_BANDS, supplyV);
    // What is open is open on an empty battery, too, and hours of testing empty one.
    if (plus === 'no supply') return 'plus-open';
    if (ground === 'open') return 'ground-open';
    if (battery === 'nearly empty') return 'battery-low';
    if (battery === 'too high') return 'battery-high';
    return plus === 'healthy' && ground === 'healthy' ? 'ok' : 'unclear';
  },
  healthy: ({ batteryV: supplyV }) =>
    supplyV === undefined
      ? `Healthy: battery ${formatRange(KEY_ON_HEALTHY_V, CHARGING_MOST_V, 'V')}, plus within ${NEAR_V} V of it, ground below ${NEAR_V} V.`
      : `Healthy: plus ${formatRange(supplyV - NEAR_V, supplyV + DRIFT_V, 'V')}, ground below ${NEAR_V} V. Without load even a bad contact looks good.`,
  outcomes: {
    ok: 'both are there',
    unclear: 'volts are lost',
    'plus-open': 'no plus',
    'ground-open': 'ground is open',
    'battery-low': 'battery nearly empty',
    'battery-high': 'battery voltage too high',
  },
  article: 'voltage-drop-under-load',
  ifCannot: 'We go on with the fuse and a jumper lead instead.',
});

/** Both sides of the main fuse, while it sits in its holder. */
export const fuseSides = measurement<'whole' | 'open' | 'no-feed'>({
  id: 'fuse-sides',
  short: 'Both sides of the main fuse',
  ask: 'What DC voltage is on each side of the amplifier’s main fuse?',
  phone:
    'The fuse stays in. Black on the battery minus post, red on the metal at one end of the fuse, then at the other.',
  how: [
    'The fuse sits in the plus lead, a hand’s width from the battery. It stays in.',
    'Black probe on the battery minus post.',
    'Red probe on the battery side of the holder, then on the amplifier side.',
  ],
  why: 'A fuse that looks whole can be open at its cap. Two readings tell whether volts come in and whether they come out.',
  tool: 'meter',
  minutes: 3,
  observes: ['amp-supply'],
  cautions: ['plus-probe', 'hot'],
  probes: { red: 'fuse-out', black: 'battery-minus' },
  readings: { inV: dcReading('Battery side'), outV: dcReading('Amplifier side') },
  bands: (_, __, s) => plusBands(batteryV(s)),
  judge: (values, s) => {
    const bands = plusBands(batteryV(s));
    const dead = (reading: string) => labelIn(bands, values[reading] ?? 0) === 'no supply';
    return dead('inV') ? 'no-feed' : dead('outV') ? 'open' : 'whole';
  },
  healthy: (_, s) => `Healthy is ${formatRange(batteryV(s) - NEAR_V, batteryV(s) + DRIFT_V, 'V')} on both sides.`,
  outcomes: { whole: 'volts on both sides', open: 'volts come in, none come out', 'no-feed': 'no volts come in' },
  givenUnder: ['amp-terminals'],
  ifCannot: 'Key off, pull the fuse and look at it instead.',
});

/** So little over a sound lead is the last digit of a meter, and no wear. */
const LAST_DIGIT_V = 0.02;

/** What plus and ground may lose together at the current of the lamp, before the amplifier goes off on full bass. */
const cuttingOutV = (supplyV: number, situation: Situation): number =>
  dropV({ currentA: LAMP_A, resistanceOhm: cuttingOutOhm(situation, supplyV) });

/** The drops at which a path is healthy, and at which it cuts the amplifier off, at the current of the lamp. */
function dropBands(healthyOhm: number, supplyV: number, situation: Situation): readonly Band[] {
  const healthyV = dropV({ currentA: LAMP_A, resistanceOhm: healthyOhm }) + LAST_DIGIT_V;
  const cutsOutV = Math.max(1.5 * healthyV, cuttingOutV(supplyV, situation));
  return [
    { label: 'healthy', low: -0.5, high: healthyV, mood: 'good' },
    { label: 'worn, but not the reason', low: healthyV, high: cutsOutV, mood: 'unsure' },
    { label: 'cuts the amplifier off', low: cutsOutV, high: 3 * cutsOutV, mood: 'bad' },
  ];
}
const DROPS = { plusDropV: 'plusOhm', groundDropV: 'groundOhm' } as const;
type Drop = keyof typeof DROPS;
const isDrop = (reading: string): reading is Drop => Object.hasOwn(DROPS, reading);
const bandsOfDrop = (drop: Drop, values: Values, situation: Situation) =>
  dropBands(healthyPathOhm(situation)[DROPS[drop]], values['batteryV'] ?? KEY_ON_HEALTHY_V, situation);

function togetherCutsOut(values: Values, situation: Situation): boolean {
  const { batteryV: supplyV = KEY_ON_HEALTHY_V, plusDropV = 0, groundDropV = 0 } = values;
  return plusDropV + groundDropV > cuttingOutV(supplyV, situation);
}

/** What adds up must add up: the battery is what is left at the amplifier and what is lost on both ways. */
function notAdding({ batteryV: wholeV, ampV, plusDropV, groundDropV }: Values) {
  if (wholeV === undefined || ampV === undefined || plusDropV === undefined || groundDropV === undefined) return null;
  const offV = Math.abs(wholeV - ampV - plusDropV - groundDropV);
  if (offV <= DRIFT_V) return null;
  return {
    reading: 'ampV',
    message: `Amplifier, plus and ground must add up to the battery; they are ${formatQuantity(offV, 'V', 2)} off. Leave the lamp on for all four, and take them again.`,
  };
}

/** Battery, amplifier, plus path and ground path with a known current through both. */
export const supplyUnderLoad = measurement<'ok' | 'unclear' | 'plus-drop' | 'ground-drop' | 'battery-sags'>({
  id: 'supply-under-load',
  short: 'Supply with a 55 W lamp on it',
  ask: 'With a 55 W lamp on its plus and ground: how much is lost on the way there and back?',
  phone:
    'Clip the lamp to the amplifier’s thick plus and ground. Then four numbers: battery, amplifier, plus to plus, ground to minus. Say them slowly.',
  how: [
    'Key on, engine off. A 55 W head lamp bulb on two leads, to the amplifier’s plus and ground terminals.',
    'Battery: plus post to minus post. Amplifier: plus to ground terminal.',
    'Lost on plus: battery plus post to amplifier plus. Lost on ground: amplifier ground to battery minus post.',
    'Take the lamp off again. It is very hot.',
  ],
  why: 'An open lead shows at once. A bad contact shows only when current flows, and a lamp is a load that you know.',
  tool: 'meter',
  minutes: 10,
  observes: ['amp-supply'],
  cautions: ['plus-probe', 'lamp-hot', 'ground-open'],
  probes: { red: 'battery-plus', black: 'amp-plus' },
  readings: {
    batteryV: BATTERY,
    ampV: dcReading('Amplifier plus to its ground'),
    plusDropV: dcReading('Lost on the plus way'),
    groundDropV: dcReading('Lost on the ground way'),
  },
  unusable: notAdding,
  bands: (reading, values, s) => {
    if (reading === 'batteryV') return BATTERY_BANDS;
    return isDrop(reading) ? bandsOfDrop(reading, values, s) : null;
  },
  judge: (values, s) => {
    if ((values['batteryV'] ?? 0) < KEY_ON_FLAT_V) return 'battery-sags';
    const label = (drop: Drop) => labelIn(bandsOfDrop(drop, values, s), values[drop] ?? 0);
    const [plus, ground] = [label('plusDropV'), label('groundDropV')];
    const cuts = 'cuts the amplifier off';
    if (plus === cuts && (ground !== cuts || (values['plusDropV'] ?? 0) >= (values['groundDropV'] ?? 0)))
      return 'plus-drop';
    if (ground === cuts) return 'ground-drop';
    // Two ways that are half bad cut it off together. The one that is worse for its size is mended first.
    if (plus !== 'healthy' && ground !== 'healthy' && togetherCutsOut(values, s)) {
      const { plusOhm, groundOhm } = healthyPathOhm(s);
      return (values['plusDropV'] ?? 0) / plusOhm >= (values['groundDropV'] ?? 0) / groundOhm
        ? 'plus-drop'
        : 'ground-drop';
    }
    return plus === 'healthy' && ground === 'healthy' ? 'ok' : 'unclear';
  },
  healthy: (values, s) => {
    const most = (drop: Drop) => formatQuantity(bandsOfDrop(drop, values, s)[0]?.high ?? 0, 'V', 2);
    return `At the lamp’s ${LAMP_A} A, healthy leads of this size lose at most ${most('plusDropV')} on plus and ${most('groundDropV')} on ground.`;
  },
  outcomes: {
    ok: 'both ways are good',
    unclear: 'worn, but not the reason',
    'plus-drop': 'lost on the plus way',
    'ground-drop': 'lost on the ground way',
    'battery-sags': 'the battery gives way',
  },
  article: 'voltage-drop-under-load',
  ifCannot: 'We bypass the leads with temporary ones instead.',
});

/** What the battery itself loses when the lamp is on, in volts; undefined where it was not read with and without. */
export function lostInBatteryV({ facts }: Situation): number | undefined {
  const restV = numberIn(facts[ampTerminals.id], 'batteryV', 'V');
  const loadedV = numberIn(facts[supplyUnderLoad.id], 'batteryV', 'V');
  return restV === undefined || loadedV === undefined ? undefined : restV - loadedV;
}

/** A sound battery falls by so much between two readings, by the lamp and by the minutes with the key on. From memory. */
const BATTERY_FALLS_V = 0.2;

/** The part of the supply that loses the most over a sound one with the lamp on; null where all are sound. */
export function weakestPart(situation: Situation): 'battery' | 'plus' | 'ground' | null {
  const read = (drop: Drop) => numberIn(situation.facts[supplyUnderLoad.id], drop, 'V') ?? 0;
  const { plusOhm, groundOhm } = healthyPathOhm(situation);
  const over = (lostV: number, resistanceOhm: number) => lostV - dropV({ currentA: LAMP_A, resistanceOhm });
  const batteryLostV = lostInBatteryV(situation) ?? 0;
  const excessV = {
    plus: over(read('plusDropV'), plusOhm),
    ground: over(read('groundDropV'), groundOhm),
    battery: batteryLostV < BATTERY_FALLS_V ? 0 : over(batteryLostV, BATTERY_OHM),
  };
  const parts = Object.keys(excessV) as (keyof typeof excessV)[];
  const [worst] = parts.toSorted((a, b) => excessV[b] - excessV[a]);
  return worst && excessV[worst] > LAST_DIGIT_V ? worst : null;
}

const lostOnPlusV = ({ facts }: Situation): number => numberIn(facts[supplyUnderLoad.id], 'plusDropV', 'V') ?? 0;

/** Which part of the plus way loses the volts. */
export const plusPath = measurement<'ring' | 'holder' | 'lead'>({
  id: 'plus-path',
  short: 'Where the plus way loses',
  ask: 'Lamp on again: how much is lost at the battery ring, and how much across the fuse holder?',
  phone:
    'Lamp back on. Red on the battery post itself, black on the holder’s battery side: number? Then across the holder?',
  how: [
    'Lamp on as before.',
    'Ring: battery plus post itself to the metal of the holder on the battery side.',
    'Holder: one side of the fuse holder to the other, the fuse in it.',
  ],
  why: 'A bad contact loses its volts within a hand’s width. What neither ring nor holder loses is lost in the lead.',
  tool: 'meter',
  minutes: 4,
  observes: ['amp-supply'],
  cautions: ['plus-probe', 'lamp-hot', 'hot'],
  probes: { red: 'battery-plus', black: 'fuse-in' },
  readings: { ringV: dcReading('Post to holder'), holderV: dcReading('Across the holder') },
  bands: () => null,
  judge: (values, s) => {
    const { ringV = 0, holderV = 0 } = values;
    const leadV = lostOnPlusV(s) - ringV - holderV;
    if (leadV > ringV && leadV > holderV) return 'lead';
    return ringV > holderV ? 'ring' : 'holder';
  },
  healthy: (_, s) =>
    `The whole plus way lost ${formatQuantity(lostOnPlusV(s), 'V', 2)}. Whichever part has most of it is the bad one.`,
  outcomes: { ring: 'at the battery ring', holder: 'in the fuse holder', lead: 'in the lead itself' },
  givenUnder: ['supply-under-load'],
});
