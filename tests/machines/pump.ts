import { elsewhere } from '../../machines/elsewhere.ts';
import { before, flow, type Plan } from '../../machines/kit.ts';
import type { Late } from '../../machines/machine.ts';
import type { Opening } from '../../machines/opening.ts';
import type { Cause } from '../../src/causes/cause.ts';
import { type Row, type Table, UNTHOUGHT_SOUND } from '../../src/inference/table.ts';
import { outcomeNamed } from '../../src/steps/outcome.ts';
import { choice, measurement, rigQuestion } from '../../src/steps/step.ts';
import { toolsAtHand } from '../../src/steps/tools/tools-at-hand.ts';

/*
 * A garden pump that does not start: small enough to see every way through it. Nothing of it is in the site; its ids are
 * its own, its actions are borrowed.
 */

const WORDS = { phone: 'P?', how: ['Look.'], why: 'Because.' } as const;

export const outlet = rigQuestion<'wall' | 'lead'>({
  ...WORDS,
  place: 'fitted',
  tool: 'none',
  minutes: 0.2,
  observes: [],
  id: 'outlet',
  short: 'Outlet',
  ask: 'Where is it plugged in?',
  options: { wall: 'The wall', lead: 'A lead' },
  outcomes: { wall: 'the wall', lead: 'a lead' },
  known: ({ unitKind }) => (unitKind === undefined ? undefined : unitKind === 'factory' ? 'wall' : 'lead'),
  learn: (at, rig) => ({ ...rig, unitKind: at === 'wall' ? 'factory' : 'replaced' }),
});
export const stood = choice<'winter' | 'used'>({
  ...WORDS,
  place: 'told',
  tool: 'none',
  minutes: 0.2,
  observes: [],
  id: 'stood',
  short: 'Stood',
  ask: 'Did it stand all winter?',
  options: { winter: 'All winter', used: 'In use' },
  outcomes: { winter: 'all winter', used: 'in use' },
});
export const hum = choice<'hums' | 'silent'>({
  ...WORDS,
  place: 'ears',
  tool: 'ears',
  minutes: 1,
  observes: ['amp'],
  id: 'hum',
  short: 'Hum',
  ask: 'Does it hum?',
  options: { hums: 'Yes', silent: 'No' },
  outcomes: { hums: 'hums', silent: 'silent' },
});
export const float = choice<'cured' | 'no-change'>({
  ...WORDS,
  place: 'settings',
  tool: 'none',
  minutes: 2,
  observes: ['settings'],
  id: 'float',
  short: 'Float lifted',
  ask: 'Lift the float: does it start?',
  options: { cured: 'It starts', 'no-change': 'No change' },
  outcomes: { cured: 'cured', 'no-change': 'no change' },
});
/** Makes sense only where there is a lead. */
export const leadLook = choice<'whole' | 'cut'>({
  ...WORDS,
  place: 'plugs',
  tool: 'none',
  minutes: 3,
  observes: ['unit-leads'],
  id: 'lead-look',
  short: 'Lead looked at',
  ask: 'Is the lead cut anywhere?',
  options: { whole: 'Whole', cut: 'Cut' },
  outcomes: { whole: 'whole', cut: 'cut' },
  sensible: (f) => outcomeNamed(f, 'outlet') === 'lead',
});
export const volts = measurement<'live' | 'dead'>({
  ...WORDS,
  place: 'supply',
  tool: 'meter',
  minutes: 6,
  observes: ['amp-supply'],
  id: 'volts',
  short: 'Volts',
  ask: 'How many volts at the pump?',
  probes: { red: 'frame', black: 'battery-minus' },
  readings: { pumpV: { label: 'Pump', unit: 'V', possible: [0, 16], impossible: 'Really?' } },
  bands: () => null,
  judge: ({ pumpV = 0 }) => (pumpV >= 10 ? 'live' : 'dead'),
  formula: 'volts of the outlet = volts of the mains',
  healthy: () => 'Healthy is 10 V and more.',
  outcomes: { live: 'live', dead: 'dead' },
  givenUnder: ['tools-at-hand'],
});
/** Quicker than the volts and worth more, and still dangerous before they are known. */
export const winding = measurement<'sound' | 'open'>({
  ...WORDS,
  place: 'supply',
  tool: 'meter',
  minutes: 1,
  observes: ['speaker'],
  id: 'winding',
  short: 'Winding',
  ask: 'How many ohms has the winding?',
  probes: { red: 'frame', black: 'battery-minus' },
  readings: { windingOhm: { label: 'Winding', unit: 'Ω', possible: [0, Infinity], impossible: 'Really?' } },
  bands: () => null,
  judge: ({ windingOhm = 0 }) => (windingOhm > 100 ? 'open' : 'sound'),
  formula: 'ohms of the winding = ρ · l ÷ A',
  healthy: () => 'Healthy is below 100 Ω.',
  outcomes: { sound: 'sound', open: 'open' },
});

const cause = (id: string, more: Pick<Cause, 'mends'> & { readonly repair: ReturnType<Cause['remedy']>['repair'] }) =>
  ({
    id,
    title: `It is ${id}`,
    faults: [id],
    split: { byMeter: 'Measure.', without: 'Look.' },
    mends: more.mends,
    remedy: ({ rig }) => ({
      what: `${id}, on ${rig.unitKind ?? 'some'} outlet`,
      numbers: [],
      repair: more.repair,
      fix: ['Mend it.'],
      tools: 'None',
      minutes: 5,
      who: 'You',
      parts: [],
      notBuy: [],
      cautions: [],
      proofOfCure: { byEar: 'It runs.' },
    }),
  }) satisfies Cause as Cause;

const CAUSES = [
  cause('jammed', { mends: ['amp'], repair: [{ do: 'cool-amp' }] }),
  cause('float-stuck', { mends: ['settings'], repair: [{ do: 'centre-fader' }] }),
  cause('lead-cut', { mends: ['unit-leads'], repair: [{ do: 'renew-wire', wire: 'remote' }] }),
  cause('winding-open', { mends: ['amp', 'speaker'], repair: [{ do: 'repair-amp' }] }),
  cause('outlet-dead', { mends: ['amp-supply'], repair: [{ do: 'renew-fuse', fuse: 'main' }] }),
];
const causesOf = (...ids: readonly string[]): Late['causes'] =>
  Object.fromEntries(CAUSES.filter(({ id }) => ids.includes(id)).map((one) => [one.id, one]));

/** A row by the outcome that comes first at each step, where it is not the usual one. */
const row = (named: string, weight: number, odd: Readonly<Record<string, readonly number[]>>): Row => ({
  cause: named,
  weight,
  looks: 100,
  shows: {
    outlet: [0.7, 0.3],
    stood: [0.3, 0.7],
    hum: [0, 1],
    float: [0, 1],
    'lead-look': [1, 0],
    volts: [1, 0],
    winding: [1, 0],
    ...odd,
  },
});

export const pumpTable: Table = {
  steps: {
    outlet: ['wall', 'lead'],
    stood: ['winter', 'used'],
    hum: ['hums', 'silent'],
    float: ['cured', 'no-change'],
    'lead-look': ['whole', 'cut'],
    volts: ['live', 'dead'],
    winding: ['sound', 'open'],
  },
  rows: [
    row('jammed', 40, { stood: [0.9, 0.1], hum: [1, 0] }),
    row('float-stuck', 20, { float: [1, 0] }),
    row('lead-cut', 10, { outlet: [0, 1], 'lead-look': [0.1, 0.9], volts: [0, 1] }),
    row('winding-open', 15, { winding: [0, 1] }),
    row(elsewhere('mains'), 15, { volts: [0, 1] }),
    row(UNTHOUGHT_SOUND, 1, {}),
  ],
};

export const pumpOpening: Opening = {
  id: 'pump',
  title: 'The pump does not start',
  fitted: [outlet],
  told: [stood],
};
export const pumpPlan: Plan = {
  look: [hum, float, leadLook, toolsAtHand],
  measure: [volts, winding],
  safe: [before(winding, volts)],
  causes: ['jammed', 'float-stuck', 'lead-cut', 'winding-open'],
  handsOver: [
    {
      flow: 'mains',
      title: 'No power at the outlet',
      because: 'Nothing reaches the pump.',
      causes: ['outlet-dead'],
      told: { 'breaker-look': { option: 'off' } },
    },
  ],
};
export const pump = flow(pumpOpening, pumpPlan);
export const pumpLate: Late = {
  table: pumpTable,
  causes: causesOf('jammed', 'float-stuck', 'lead-cut', 'winding-open'),
};

export const breakerLook = choice<'off' | 'on'>({
  ...WORDS,
  place: 'supply',
  tool: 'none',
  minutes: 1,
  observes: ['amp-supply'],
  id: 'breaker-look',
  short: 'Breaker',
  ask: 'Is the breaker off?',
  options: { off: 'Off', on: 'On' },
  outcomes: { off: 'off', on: 'on' },
});

/** The flow that the pump's is handed on to: it asks for the same volts, and hands back what is the pump's own. */
export const mains = flow(
  { id: 'mains', title: 'No power', fitted: [], told: [stood] },
  {
    look: [breakerLook, toolsAtHand],
    measure: [volts],
    safe: [],
    causes: ['outlet-dead'],
    handsOver: [
      {
        flow: 'pump',
        title: 'The pump itself',
        because: 'There is power.',
        causes: ['jammed', 'float-stuck', 'lead-cut', 'winding-open'],
      },
    ],
  },
);
const atMains = (named: string, weight: number, off: number, live: number): Row => ({
  cause: named,
  weight,
  looks: 100,
  shows: { stood: [0.5, 0.5], 'breaker-look': [off, 1 - off], volts: [live, 1 - live] },
});
export const mainsLate: Late = {
  table: {
    steps: { stood: ['winter', 'used'], 'breaker-look': ['off', 'on'], volts: ['live', 'dead'] },
    rows: [atMains('outlet-dead', 50, 0.8, 0), atMains(elsewhere('pump'), 50, 0, 1), atMains(UNTHOUGHT_SOUND, 1, 0, 1)],
  },
  causes: causesOf('outlet-dead'),
};

/** What is loaded late, by flow. */
export const PUMP_LATE: Readonly<Record<string, Late>> = { pump: pumpLate, mains: mainsLate };
