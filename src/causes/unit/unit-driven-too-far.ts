import { formatQuantity } from '../../compute/quantity.ts';
import { ampDriving } from '../../rig/rig.ts';
import { type Findings, is } from '../../steps/outcome.ts';
import { cleanFrontV } from '../../steps/unit/unit-at-top.ts';
import type { Cause } from '../cause.ts';
import { isWithoutAmp } from '../the-amp.ts';
import { YOURSELF } from '../who.ts';
import { boostFigures, cleanFigures, readAtTop } from './clean-limits.ts';

const hasAmp = (f: Findings): boolean => ampDriving(f.rig, 'rear') !== undefined || f.rig.frontFedBy === 'amp';

/** Where an amplifier drives a pair, it runs out of volts at the same steps. */
const limitInWords = (f: Findings): string =>
  hasAmp(f)
    ? 'The volume is past the point where head unit and amplifier stay clean.'
    : 'The volume is past the point where the head unit stays clean.';

const moreLoudness = (f: Findings): readonly string[] =>
  hasAmp(f)
    ? ['Still too quiet there? Get more sensitive speakers: 3 dB more is worth twice the power.']
    : [
        'Still too quiet there? First turn the bass down a few steps: the boost eats the headroom.',
        'Then an amplifier, or more sensitive speakers. A reflash makes nothing louder.',
      ];

export const unitDrivenTooFar: Cause = {
  id: 'unit-driven-too-far',
  title: 'Volume past what it can play cleanly',
  faults: ['unit-output-driven-too-far'],
  split: (f) => ({
    byMeter: `${isWithoutAmp(f) ? '' : 'Speakers off an amplifier, '}80 Hz tone, one step at a time: does a step near the top add fewer volts than the one before?`,
    needs: ['tone-80'],
    touches: ['unit-front-plus'],
    without: 'Two or three steps lower: clean, and as loud as a bike like this should be?',
  }),
  mends: ['settings'],
  article: 'where-it-turns-ugly',
  remedy: (f) => ({
    what: limitInWords(f),
    background:
      'At its limit the wave clips flat. It then carries up to twice the power, much of it treble, and that burns tweeters and coils.',
    numbers: [...readAtTop(f), ...cleanFigures(f), ...(hasAmp(f) ? [] : boostFigures(f))],
    repair: [{ do: 'turn-down' }],
    fix: [
      'With a track you know, come up one step at a time to the first that distorts. Go back one: that is the top.',
      'Note its number, or mark it. Phone volume stays full, the head unit does the rest.',
      ...moreLoudness(f),
      'Wind drowns music from about 60 mph. Earplugs take away the wind, not the music.',
    ],
    tools: 'None',
    minutes: 5,
    who: YOURSELF,
    parts: [],
    notBuy: [
      'New speakers because of the sound up there: they only play what they are given.',
      ...(hasAmp(f)
        ? ['A stronger amplifier, before gain and range have been checked.']
        : ['A reflash to an amplified profile: without an amplifier it is quieter.']),
    ],
    ifDoneAnyway: is(f, 'clean-enough', 'quiet')
      ? 'Keep playing it up there and coils and tweeters burn: a clipped wave carries up to twice the power of a clean one.'
      : 'Keep playing it up there and the tweeters go first, then the coils.',
    cautions: ['loud-listening'],
    proofOfCure: {
      byEar: 'Clean at the marked step, bass and voices.',
      byMeter: `80 Hz tone at the marked step: a front pair reads no more than ${formatQuantity(cleanFrontV(f.rig).highV, 'V', 2)}, engine off.`,
      needs: ['tone-80'],
      touches: ['unit-front-plus'],
    },
  }),
};
