import { upperFirst } from '../compute/first-letter.ts';
import { bringsAbout, reads } from './acts.ts';
import { FOR_FULL_LEVEL, namesOf, needsUnaltered, settingsForBoost } from './amp-names.ts';
import { needIsProved } from './amp-need.ts';
import { expectRear, expectTones } from './expect.ts';
import type { PlanCase } from './facts.ts';
import type { Figures } from './figures.ts';
import { planVerdict } from './plan-verdict.ts';
import {
  eqOfAmplified,
  eqOfFullLevel,
  harmOfAmplified,
  harmOfBoost,
  levels,
  NOBODY,
  PRACTICE,
  sureness,
  YOU,
} from './wording.ts';

/** Answers that need nothing selected in the head unit. */

export const nothingToDo = planVerdict({
  id: 'plan-nothing-to-do',
  title: 'Nothing to do',
  remedy: (_, f) => ({
    what: 'No reflash: nothing is wrong and you want nothing more, so nothing needs to be done to the head unit.',
    certainty: 'proved',
    howSure: 'That holds whatever is stored in the head unit.',
    fix: [
      'Leave the head unit as it is.',
      'Ask whoever said it what exactly you would hear afterwards. If you want that, come back with it.',
    ],
    who: NOBODY,
    notBuy: ['A reflash as a precaution. It adds no power, and it can take level, bass or the rear away.'],
    ifDoneAnyway: `Without an amplifier, an amplified profile leaves ${f.shareLeft} of the power and takes ${f.boostDb} of bass boost out. With one, every gain has to be set again.`,
    proof: 'Nothing changes, so it sounds tomorrow as it sounds today.',
  }),
});

type Why = (c: PlanCase) => string;
const full: Why = () => 'The unaltered level is the loudest that the head unit gives.';
const forAmps: Why = () => 'Level and bass are already made for an amplifier.';
const WHY_STAY: Readonly<Record<string, Why>> = {
  'front-only-rear-closed': full,
  'front-only-rear-open': () =>
    'Level and boost are those of the unaltered profile. Rear outputs that nobody uses do no harm.',
  'rear-on-unit-open': () => 'The rear channels are on, and the head unit plays at its full level.',
  'unaltered-amp-full': (c) =>
    needIsProved(c.findings.rig.amps ?? [])
      ? `${upperFirst(namesOf(c, needsUnaltered))} was made for the unaltered output.`
      : `${upperFirst(namesOf(c, needsUnaltered))} wakes by what is on its inputs, so it counts as one that needs the unaltered output.`,
  'unaltered-amp-and-rear-on-unit-open': (c) =>
    `${upperFirst(namesOf(c, needsUnaltered))} gets the unaltered output, and the rear channels are on.`,
  'all-on-amp-same-eq': forAmps,
  'all-on-amp-eq-changes': forAmps,
  'front-on-unit-amp-on-front-pair': () =>
    'The amplifier gets its signal from the front pair. An amplified profile would starve the front speakers.',
  'front-on-unit-rear-open': () =>
    'The rear outputs feed the amplifier already. An amplified profile would starve the front speakers.',
  'rear-on-unit-front-on-amp-open': () =>
    'The rear channels are on. An amplified profile would starve the rear speakers.',
};

export const isAmplified = (c: PlanCase) => c.decision.row.startsWith('all-on-amp');

/** Rear outputs that are on, and perhaps wires on them that end nowhere. */
const looseRear = (c: PlanCase) => c.decision.rows.includes('front-only-rear-open');

/** What to keep in mind about a profile that stays. */
function keep(c: PlanCase): readonly string[] {
  if (isAmplified(c)) {
    return [
      `Keep: the amplified profile. Set the gain of ${namesOf(c)} to it.`,
      eqOfAmplified(c),
      'Its outputs are still speaker outputs with half the supply on both wires: no grounded plug on them.',
    ];
  }
  return [
    `Keep: the full level and the bass boost${c.facts.rear === 'unit' ? ', and the rear channels on' : ''}.`,
    ...settingsForBoost(c),
    ...(looseRear(c) ? ['Insulate rear wires that nothing is connected to.'] : []),
    eqOfFullLevel(c),
  ];
}

/** What another profile does to a build that has the right one. */
export const stayHarm = (c: PlanCase, f: Figures) =>
  isAmplified(c) ? `Back to the unaltered profile it would be wrong. ${harmOfBoost(f)}` : harmOfAmplified(c, f);

export const stay = planVerdict({
  id: 'plan-stay',
  title: 'No reflash: leave it as it is',
  remedy: (c, f) => ({
    what: `No reflash. ${WHY_STAY[c.decision.row]?.(c) ?? full(c)}`,
    ...sureness(c),
    background: PRACTICE,
    numbers: levels(c, f),
    fix: ['Change: nothing in the head unit.', ...keep(c)],
    who: NOBODY,
    notBuy: [isAmplified(c) ? 'A second reflash. Level and bass are right already.' : 'An amplified profile.'],
    ifDoneAnyway: stayHarm(c, f),
    acts: [
      ...(!isAmplified(c) && settingsForBoost(c).length > 0 ? FOR_FULL_LEVEL : []),
      ...(looseRear(c) ? ([{ do: 'renew-wire', wire: 'speaker-run', where: 'rear' }] as const) : []),
    ],
    proofActs: reads(!isAmplified(c) && c.facts.rear === 'unit' ? 'rear' : 'boosted'),
    proof: isAmplified(c)
      ? `Flat: ${expectTones(c)}`
      : c.facts.rear === 'unit'
        ? `Rear on: ${expectRear(c)}`
        : `Boosted: ${expectTones(c)}`,
  }),
});

export const replacedUnit = planVerdict({
  id: 'plan-replaced-unit',
  title: 'A replaced head unit has nothing to reflash',
  faults: ['replaced-unit-setting'],
  remedy: () => ({
    what: 'No reflash: a replaced head unit has no stored factory profile that could be selected.',
    certainty: 'proved',
    howSure: 'Stored output profiles belong to the head unit the bike was built with.',
    background: 'If somebody names a profile for this bike, it belonged to the old head unit. It went with it.',
    fix: [
      'Change: in the menu of the replaced head unit set its own outputs, filters, rear and equaliser.',
      'Keep: everything else. The bike’s other modules need nothing for the sound.',
      'Phone mirroring is a setting of the replaced head unit, too.',
    ],
    who: YOU,
    notBuy: ['A reflash, or a visit for one. Nothing on this bike can take it.'],
    ifDoneAnyway: 'You pay for a visit that can change nothing.',
    acts: [{ do: 'set-unit-menu' }],
    proof: 'Fader, rear and bass follow the menu of the replaced head unit.',
    minutes: 15,
  }),
});

export const mirroringOnly = planVerdict({
  id: 'plan-mirroring-only',
  title: 'Only the headset module’s setting',
  faults: ['mirroring-needs-headset'],
  remedy: () => ({
    what: 'No reflash: only the setting of the headset module for phone mirroring has to change. Usually a specialist or a dealer does it.',
    certainty: 'likely',
    howSure: 'You want nothing else, nothing is wrong with the sound, and no profile touches mirroring.',
    background: 'When mirroring may start and how the sound leaves the head unit are two separate things.',
    fix: [
      'First try it with a headset connected. If mirroring starts then, this setting is what is missing.',
      'Change: the headset module’s setting for phone mirroring, nothing else.',
      'Keep: the output profile.',
    ],
    who: 'Who has the tool for that module, usually a specialist or a dealer. Ask before you go.',
    notBuy: ['Another output profile. It changes the sound and not the mirroring.'],
    ifDoneAnyway: 'The sound is another one afterwards, and mirroring still waits for a headset.',
    acts: [{ do: 'allow-without-headset' }],
    proof: 'Headset off, phone plugged in: mirroring starts. The sound is the same as before.',
    minutes: 30,
  }),
});

const STANDSTILL = 'Outdoors, standing still, one song, volume untouched: the same with the engine off and idling.';

export const bassMasked = planVerdict({
  id: 'plan-bass-masked',
  title: 'Wind and engine cover the bass',
  article: 'what-a-reflash-is',
  remedy: () => ({
    what: 'No reflash: standing still the bass stays, so nothing is switched. On the road wind and engine noise cover it, whatever is stored.',
    certainty: 'likely',
    howSure: 'You heard it stay as the engine started. Two tones, engine off and running, prove it.',
    background: 'Noise at speed is mostly low, and covers low sounds first. No profile takes that away.',
    fix: [
      'Change: nothing in the head unit.',
      'More bass on the road: speed volume one step up, a taller or better sealed screen, or more cone area and power.',
      'Set bass and treble on the road at your usual speed, stopped each time you touch them.',
    ],
    who: YOU,
    notBuy: ['A reflash for bass on the road.', 'A second reflash because the first changed nothing.'],
    ifDoneAnyway:
      'The bass is as covered as before, and without an amplifier an amplified profile leaves even less of it.',
    mayAlsoBe: [
      {
        what: 'Thin standing still as well',
        split:
          'Then an amplified profile may be stored where no amplifier is. “What is in this head unit now?” reads that.',
      },
    ],
    acts: [{ do: 'set-unit-menu' }],
    proofActs: bringsAbout('head-unit-playing', 'engine-running'),
    proof: STANDSTILL,
    minutes: 10,
  }),
});

export const speedVolume = planVerdict({
  id: 'plan-speed-volume',
  title: 'Speed volume, a setting',
  remedy: () => ({
    what: 'No reflash: loudness that follows your speed is a setting of the head unit, often called speed volume. Set it in the sound menu.',
    certainty: 'likely',
    howSure: 'No stored profile follows the speed. Profiles change as the engine starts, not as you ride.',
    fix: [
      'Change: speed volume in the sound menu, off first, then one step at a time.',
      'Keep: the stored profile.',
      'Still the same with it off? Then look at the phone: some follow noise around them.',
    ],
    who: YOU,
    notBuy: ['A reflash for it. It would change the sound at all speeds.'],
    ifDoneAnyway: 'The loudness still follows the speed.',
    acts: [{ do: 'set-unit-menu' }],
    proof: 'Speed volume off, the same road at the same speed: the loudness stays.',
    minutes: 5,
  }),
});
