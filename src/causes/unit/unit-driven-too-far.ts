import { formatQuantity } from '../../compute/quantity.ts';
import { ampDriving } from '../../rig/rig.ts';
import { type Findings, is } from '../../steps/outcome.ts';
import { cleanFrontV } from '../../steps/unit/unit-at-top.ts';
import type { Cause } from '../cause.ts';
import { YOURSELF } from '../who.ts';
import { boostFigures, cleanFigures, readAtTop } from './clean-limits.ts';

const hasAmp = (f: Findings): boolean => ampDriving(f.rig, 'rear') !== undefined || f.rig.frontFedBy === 'amp';

/** Where an amplifier drives a pair, it runs out of volts at the same steps. */
const limitInWords = (f: Findings): string =>
  hasAmp(f)
    ? 'The volume is turned past the step up to which head unit and amplifier are clean.'
    : 'The volume is turned past the step up to which the head unit is clean.';

const moreLoudness = (f: Findings): readonly string[] =>
  hasAmp(f)
    ? ['Still too quiet there? Speakers that make more of a watt: 3 dB more sensitive is as much as twice the power.']
    : [
        'Still too quiet there? First bass in the tone setting back by some steps: the boost takes the room of all the rest.',
        'Then an amplifier, or speakers that make more of a watt. A reflash makes nothing louder.',
      ];

export const unitDrivenTooFar: Cause = {
  id: 'unit-driven-too-far',
  title: 'Volume past what it can play clean',
  faults: ['unit-output-driven-too-far'],
  split: {
    byMeter:
      'Speakers off an amplifier, 80 Hz tone, one step after the other: does a step near the top add less volts than the one before?',
    needs: ['tone-80'],
    touches: ['unit-front-plus'],
    without: 'Two or three steps lower: clean, and as loud as such a bike should be?',
  },
  mends: ['settings'],
  article: 'where-it-turns-ugly',
  remedy: (f) => ({
    what: limitInWords(f),
    background:
      'At its limit the wave is cut flat. It carries up to twice the power then, and much of it in the treble: that burns tweeters and coils.',
    numbers: [...readAtTop(f), ...cleanFigures(f), ...(hasAmp(f) ? [] : boostFigures(f))],
    repair: [{ do: 'turn-down' }],
    fix: [
      'Find the first ugly step with a track that you know, one step at a time. Go one step back: that is the top.',
      'Note its number, or mark it. Phone volume stays full, the head unit does the rest.',
      ...moreLoudness(f),
      'Wind covers music from about 60 mph on. Earplugs take the wind away, not the music.',
    ],
    tools: 'None',
    minutes: 5,
    who: YOURSELF,
    parts: [],
    notBuy: [
      'New speakers because of the sound up there: they play what they get.',
      ...(hasAmp(f)
        ? ['A stronger amplifier, before gain and range were read.']
        : ['A reflash to an amplified profile: without an amplifier it is quieter.']),
    ],
    ifDoneAnyway: is(f, 'clean-enough', 'quiet')
      ? 'Played on up there, coils and tweeters burn: a clipped wave carries up to twice the power of a clean one.'
      : 'Played on up there, tweeters go first, then coils.',
    cautions: ['loud-listening'],
    proofOfCure: {
      byEar: 'Clean at the marked step, bass and voices.',
      byMeter: `80 Hz tone at the marked step: a front pair reads no more than ${formatQuantity(cleanFrontV(f.rig).highV, 'V', 2)}, engine off.`,
      needs: ['tone-80'],
      touches: ['unit-front-plus'],
    },
  }),
};
