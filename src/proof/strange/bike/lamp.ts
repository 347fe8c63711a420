import type { Answer } from '../../../steps/step.ts';
import { stepName } from '../../../steps/subject.ts';
import { withAmp } from '../../../world/faults/kit.ts';
import { LOUD_VOLUME, type Moment } from '../../../world/moment.ts';
import type { World } from '../../../world/state.ts';
import { type Ridden, ridden } from '../../../world/symptoms/index.ts';
import { happens, type Oddity, pick } from '../oddity.ts';
import { type Given, instead, optionIn, saying, swapped } from '../person/saying.ts';

/* Lamps of amplifiers that do not show what most do. What the amplifier does is the same. */

const JUMPED: Partial<Moment> = { jumper: true, toneHz: null, apart: ['remote'] };
/** Some volts are there, and too few: what shows the fault colour, blinks as it starts again and again, or stays lit. */
const SOME_V = 3;
function starves({ world, at }: Ridden, moment: Partial<Moment>): boolean {
  const { now } = at(moment);
  if (!now.ok || world.about === null) return false;
  const amp = now.amps[world.about];
  return amp?.why === 'undervoltage' || (amp?.why === 'no-supply' && amp.supplyV > SOME_V);
}
const starvesAtAll = (world: World): boolean => {
  const bike = ridden(world);
  return [{}, { hot: true }, { volumeRatio: LOUD_VOLUME }, JUMPED].some((moment) => starves(bike, moment));
};

/** When the lamp is looked at, by step. */
const LOOKS: Readonly<Record<string, Partial<Moment>>> = {
  'amp-light': {},
  'speakers-unplugged': { apart: ['amp-outputs'] },
  'wakes-when-loud': { volumeRatio: LOUD_VOLUME },
  'remote-jumper': JUMPED,
};
const starvesAt = ({ step, bike }: Given): boolean => {
  const moment = LOOKS[stepName(step)];
  return moment !== undefined && starves(bike, moment);
};

const DARK_AT: Readonly<Record<string, string>> = {
  'amp-light': 'off',
  'speakers-unplugged': 'dark',
  'wakes-when-loud': 'stays-off',
  'remote-jumper': 'dead',
};
/**
 * The bike’s own lamp shows low volts from about half of them on, and while it is told to be on. Others do so from 3 V
 * on, told or not. Where a step has no word for a lamp that blinks, it is said to show its fault.
 */
function showsIt(given: Given): Answer {
  const { step, bike, answer } = given;
  const told = optionIn(answer);
  if (told !== 'blinks' && (told !== DARK_AT[stepName(step)] || !starvesAt(given))) return answer;
  const blinks = bike.world.amps[bike.world.about ?? -1]?.lampBelow === 'blinks';
  return instead(given, ...(blinks ? ['blinks'] : []), 'fault', 'stays');
}
const LIT = swapped({
  'amp-light': { off: 'normal' },
  'speakers-unplugged': { dark: 'clears', stays: 'clears' },
  'wakes-when-loud': { 'stays-off': 'wakes-silent' },
  'remote-jumper': { dead: 'wakes' },
});

/** Of an amplifier without a lamp some say that there is none lit, and some that they cannot tell. */
const LAMP_ONLY = ['amp-light', 'speakers-unplugged', 'recover', 'remote-jumper'];

export const LAMP: readonly Oddity[] = [
  {
    id: 'lamp-red-at-low-volts',
    says: 'a lamp that blinks or turns red when the volts are too low',
    class: 'lamp',
    fits: starvesAtAll,
    bike: (world, draw) => withAmp(world, { lampBelow: pick(draw, ['fault', 'blinks'] as const) }),
    person: saying(showsIt),
  },
  {
    id: 'lamp-lit-at-low-volts',
    says: 'a lamp that stays lit as usual when the volts are too low to play',
    class: 'lamp',
    // To the bike a lamp that is lit is an amplifier that is on, so it is only told.
    fits: starvesAtAll,
    person: saying((given) => (starvesAt(given) ? LIT(given) : given.answer)),
  },
  {
    id: 'no-lamp',
    says: 'an amplifier without a lamp',
    class: 'lamp',
    fits: ({ about }) => about !== null,
    person: (observe, draw) => {
      const saysOff = happens(draw, 0.5);
      return saying((given) => {
        if (!LAMP_ONLY.includes(stepName(given.step))) return given.answer;
        if (saysOff && stepName(given.step) === 'amp-light') return instead(given, 'off');
        return { cannot: true };
      })(observe);
    },
  },
  {
    id: 'slow-to-wake',
    says: 'an amplifier that listens for ten seconds before it wakes, and somebody who looks at once',
    class: 'lamp',
    fits: ({ rig, about }) => about !== null && rig.amps[about]?.turnOn === 'signal',
    person: saying((given) =>
      stepName(given.step) === 'amp-light' && given.before === 0 && optionIn(given.answer) === 'normal'
        ? instead(given, 'off')
        : given.answer,
    ),
  },
];
