import { powerRatio } from '../../compute/decibel.ts';
import { formatQuantity } from '../../compute/quantity.ts';
import { UNIT_LEAST_LOAD_OHM } from '../../compute/signal-path.ts';
import { fullLevel, type Level, lowered, rearLoadOhm, unloadedFullV } from '../../rig/levels.ts';
import { ampDriving, estimate, type Rig } from '../../rig/rig.ts';
import type { CautionId } from '../../steps/cautions.ts';
import { type Findings, is } from '../../steps/outcome.ts';
import { AFTER_THE_VISIT, gainSteps, setGain, settingFigures } from '../amp-input/gain.ts';
import type { Remedy } from '../cause.ts';
import type { Figure } from '../figure.ts';
import { type ReadFirst, readsForGain } from '../read-first.ts';
import type { RepairAction } from '../repair-action.ts';
import { DEALER_OR_SPECIALIST } from '../who.ts';
import { REAR_AS_LOUD_AS_FRONT, REAR_OVER_FRONT_HEALTHY } from './rear-over-front.ts';

/** A visit that switches the rear channels of a head unit on: what it gives, and what has to be right before and after. */

const onAmp = (rig: Rig): boolean => ampDriving(rig, 'rear') !== undefined;

/** Every speaker hangs on an amplifier, so the level may be lowered for them all. */
export const allOnAmp = (rig: Rig): boolean => onAmp(rig) && rig.frontFedBy === 'amp';

const levelFigures = (id: string, label: string, { levelV, powerW }: Level): readonly Figure[] => [
  { id: `${id}-level`, label, value: levelV, unit: 'V' },
  { id: `${id}-power`, label: `${label}, into the speaker`, value: powerW, unit: 'W' },
];

/** Whether somebody said what hangs on a rear channel, and it is less than an output of a head unit is made for. */
const tooLittleLoad = (rig: Rig): boolean =>
  !onAmp(rig) && rig.rearRatedOhm !== undefined && rearLoadOhm(rig) < UNIT_LEAST_LOAD_OHM;

/** Into an amplifier an output drives no load: volts only, and a little more of them. */
const frontFigures = (rig: Rig): readonly Figure[] =>
  rig.frontFedBy === 'amp'
    ? [{ id: 'front-level', label: 'Front output, clean, into an amplifier', value: unloadedFullV(rig), unit: 'V' }]
    : levelFigures('front', 'Front output, clean, engine running', fullLevel(rig, 'front'));

function rearFigures(rig: Rig): readonly Figure[] {
  if (tooLittleLoad(rig)) {
    return [
      { id: 'rear-load', label: 'Rear load', value: rearLoadOhm(rig), unit: 'Ω' },
      {
        id: 'unit-least-load',
        label: 'A head unit output needs',
        value: UNIT_LEAST_LOAD_OHM,
        unit: 'Ω',
        limit: 'at least',
      },
    ];
  }
  const after = fullLevel(rig, 'rear');
  return [
    ...levelFigures('rear', 'Rear output afterwards', after),
    ...levelFigures('amplified', 'With an amplified profile instead', lowered(rig, 'rear')),
    { id: 'lowered-by', label: 'That would be quieter by', value: estimate(rig, 'loweredByDb').value, unit: 'dB' },
  ];
}

const beforeTheVisit = (rig: Rig): string =>
  `Before the visit: amplifier gain to minimum, ${
    ampDriving(rig, 'rear')?.input === 'line' ? '' : 'speaker-level range, '
  }high-pass on at 80 to 100 Hz, bass control at zero. It may get full level and bass.`;

const loadWarning = (rig: Rig): readonly string[] =>
  tooLittleLoad(rig)
    ? [
        `The rear load is ${formatQuantity(rearLoadOhm(rig), 'Ω', 2)}, too little for a head unit output: loud, it runs hot or shuts down. Keep the volume down until 4 Ω speakers or an amplifier are fitted.`,
      ]
    : [];

/** What to ask for, on an amplifier and without one. */
export interface Asked {
  readonly selection: RepairAction;
  /** What the selection hangs on. */
  readonly reads?: readonly ReadFirst[];
  readonly inWords: string;
}

type RearSwitchedOn = Omit<Remedy, 'what' | 'background'>;

const VISIT = { tools: 'A dealer’s or a specialist’s tool', minutes: 30, who: DEALER_OR_SPECIALIST, parts: [] };

const BRING = 'Bring the bike with the rear speakers plugged in.';

/** A reading of ten minutes comes before a visit that costs. */
const readFirst = (f: Findings): readonly string[] =>
  is(f, 'rear-pair', 'none')
    ? []
    : [
        'A visit, before 400 Hz has been measured across the rear pair and compared with the front pair. Ten minutes with a meter.',
      ];

const ON_UNIT_CAUTIONS: readonly CautionId[] = ['key-off', 'bridge', 'ohms-dead'];

const intoAmp = (f: Findings, asked: Asked): RearSwitchedOn => ({
  ...VISIT,
  numbers: [...frontFigures(f.rig), ...settingFigures(f), REAR_OVER_FRONT_HEALTHY],
  readFirst: [...(asked.reads ?? []), ...readsForGain(f)],
  repair: [asked.selection, setGain(f, 'rear')],
  fix: [
    beforeTheVisit(f.rig),
    asked.inWords,
    'Have the job card say what the setting does: rear on, and which level and bass you keep.',
    BRING,
    AFTER_THE_VISIT,
    ...gainSteps(f),
  ],
  notBuy: [...readFirst(f), 'A new amplifier or new speakers: they get no signal while the rear is off.'],
  proofOfCure: REAR_AS_LOUD_AS_FRONT,
});

const intoSpeakers = (f: Findings, asked: Asked): RearSwitchedOn => ({
  ...VISIT,
  numbers: [...frontFigures(f.rig), ...rearFigures(f.rig), REAR_OVER_FRONT_HEALTHY],
  repair: [asked.selection],
  fix: [
    ...loadWarning(f.rig),
    'Before the visit, key off, rear plug apart, meter on ohms: no rear wire touching the frame, and each run reads its coil. A short would silence the enabled channel again.',
    asked.inWords,
    'Have the job card say what the setting does: rear on, level full, bass as before.',
    BRING,
  ],
  notBuy: [
    ...readFirst(f),
    'An amplified profile: without an amplifier it only makes the bike quieter.',
    'An amplifier just to get the rear to play: the head unit drives it.',
  ],
  ifDoneAnyway: `With an amplified profile and no amplifier the rear plays, but everything gets about ${formatQuantity(
    100 * powerRatio({ gainDb: -estimate(f.rig, 'loweredByDb').value }),
    '%',
    2,
  )} of the power, and the bass boost is gone.`,
  cautions: ON_UNIT_CAUTIONS,
  proofOfCure: REAR_AS_LOUD_AS_FRONT,
});

export const rearSwitchedOn = (f: Findings, asked: { readonly amp: Asked; readonly unit: Asked }): RearSwitchedOn =>
  onAmp(f.rig) ? intoAmp(f, asked.amp) : intoSpeakers(f, asked.unit);
