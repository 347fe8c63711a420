import { flow } from '../../../machines/kit.ts';
import type { Late } from '../../../machines/machine.ts';
import { answered, confirmed } from '../../../src/case/change.ts';
import type { Case } from '../../../src/case/events.ts';
import { replayStaged } from '../../../src/case/replay-staged.ts';
import type { Cause, Remedy } from '../../../src/causes/cause.ts';
import { viewOf } from '../../../src/components/fault/view.ts';
import { type Row, type Table, UNTHOUGHT_SOUND } from '../../../src/inference/table.ts';
import { choice, measurement, type Step } from '../../../src/steps/step.ts';
import { toolsAtHand } from '../../../src/steps/tools/tools-at-hand.ts';
import { type Short, toAnswer } from '../../short-answers.ts';

/* A fan that does not turn: a fault flow small enough to see what each of its screens must say. */

const WORDS = { phone: 'P?', how: ['Look.'], why: 'Because.', minutes: 1, observes: ['amp'] } as const;

export const hum = choice<'hums' | 'silent'>({
  ...WORDS,
  place: 'ears',
  tool: 'ears',
  id: 'hum',
  short: 'Hum',
  ask: 'Does it hum?',
  options: { hums: 'Yes', silent: 'No' },
  outcomes: { hums: 'hums', silent: 'silent' },
});
export const shaft = choice<'free' | 'stuck'>({
  ...WORDS,
  place: 'plugs',
  tool: 'none',
  id: 'shaft',
  short: 'Shaft',
  ask: 'Does the shaft turn by hand?',
  options: { free: 'It turns', stuck: 'It is stuck' },
  outcomes: { free: 'turns', stuck: 'stuck' },
  sensible: (f) => f.facts['hum'] !== undefined,
});
export const socket = measurement<'live' | 'dead'>({
  ...WORDS,
  place: 'supply',
  tool: 'meter',
  id: 'socket',
  short: 'Socket',
  ask: 'How many volts has the socket?',
  probes: { red: 'battery-plus', black: 'battery-minus' },
  readings: { socketV: { label: 'Socket', unit: 'V', possible: [0, 16], impossible: 'Really?' } },
  bands: () => null,
  judge: ({ socketV = 0 }) => (socketV >= 10 ? 'live' : 'dead'),
  formula: 'socket = battery',
  healthy: () => 'Healthy is above 10 V.',
  outcomes: { live: 'live', dead: 'dead' },
});

export const fan = flow(
  { id: 'fan', title: 'The fan does not turn', fitted: [], told: [] },
  {
    look: [hum, shaft, toolsAtHand] as unknown as readonly Step[],
    measure: [socket],
    safe: [],
    causes: ['breaker-off', 'rotor-stuck', 'motor-dead'],
    handsOver: [
      {
        flow: 'ducts',
        title: 'It blows nowhere',
        because: 'The fan is sound, the duct is not.',
        causes: ['duct-shut'],
      },
    ],
  },
);

const REMEDY: Remedy = {
  what: 'The breaker is off.',
  numbers: [],
  repair: [{ do: 'centre-fader' }],
  fix: ['Switch it on.'],
  tools: 'None',
  minutes: 2,
  who: 'You.',
  parts: [],
  notBuy: [],
  cautions: [],
  proofOfCure: { byEar: 'It runs.' },
};
const cause = (id: string, title: string, remedy: Partial<Remedy>): Cause => ({
  id,
  title,
  faults: [],
  split: { byMeter: `${title}: by meter?`, without: `${title}: by eye?` },
  mends: ['amp'],
  remedy: () => ({ ...REMEDY, ...remedy }),
});

const row = (id: string, weight: number, shows: Row['shows']): Row => ({ cause: id, weight, looks: 1e6, shows });

const table: Table = {
  steps: { hum: ['hums', 'silent'], shaft: ['free', 'stuck'], socket: ['live', 'dead'] },
  rows: [
    row('breaker-off', 3, { hum: [0, 1], shaft: [1, 0], socket: [0, 1] }),
    row('rotor-stuck', 3, { hum: [1, 0], shaft: [0, 1], socket: [1, 0] }),
    row('motor-dead', 2, { hum: [0, 1], shaft: [1, 0], socket: [1, 0] }),
    row('elsewhere: ducts', 2, { hum: [1, 0], shaft: [1, 0], socket: [1, 0] }),
    row(UNTHOUGHT_SOUND, 1, { hum: [1, 0], shaft: [1, 0], socket: [1, 0] }),
  ],
};

export const late: Late = {
  table,
  causes: {
    'breaker-off': cause('breaker-off', 'Breaker off', {}),
    'rotor-stuck': cause('rotor-stuck', 'Rotor stuck', { what: 'The rotor is stuck.', fix: ['Free it.'] }),
    'motor-dead': cause('motor-dead', 'Motor dead', {
      what: 'The motor is dead.',
      repair: [{ do: 'repair-amp' }],
      fix: ['Put in another motor.'],
      parts: ['A motor of 200 W'],
      notBuy: ['A bigger breaker.'],
      ifDoneAnyway: 'It opens again.',
      numbers: [{ id: 'windingOhm', label: 'Winding', value: 12.345, unit: 'Ω', limit: 'above' }],
      background: 'Motors wear.',
      cautions: ['fuse', 'key-off'],
      minutes: 60,
    }),
  },
};

export const begun: Case = { flow: fan.id, events: [{ type: 'rig', rig: {} }] };

/** A case with these answers, each given twice, so that none is in doubt. */
export const surely = (answers: Readonly<Record<string, Short>>): Case =>
  Object.keys(answers).reduce((so, id) => confirmed(so, id), given(answers));

export const given = (answers: Readonly<Record<string, Short>>): Case =>
  Object.entries(answers).reduce((it, [step, short]) => answered(it, step, toAnswer(short)), begun);

export const view = (it: Case) => viewOf(fan, replayStaged(fan, it, late), late);

/** The visible words of a piece of markup, in its order, without what is said on the phone. */
export const words = (html: string): string =>
  allWords(html.replace(/<div class="say seat-only-phone">.*?<\/div>/g, ''));
export const allWords = (html: string): string =>
  html
    .replace(/<[^>]+>/g, ' ')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&')
    .replace(/\s+/g, ' ')
    .trim();
