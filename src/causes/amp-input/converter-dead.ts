import { unloadedFullV } from '../../rig/levels.ts';
import type { Cause } from '../cause.ts';
import { readsForGain } from '../read-first.ts';
import { ampName } from '../the-amp.ts';
import { ampChannels } from '../where.ts';
import { FITTER } from '../who.ts';
import { arrives, arrivesFigures } from './arrives.ts';
import { GAIN_TOOLS, gainSteps, setGain, settingFigures } from './gain.ts';

export const converterDead: Cause = {
  id: 'converter-dead',
  title: (f) => `Converter before ${ampName(f)} dead`,
  faults: ['converter-dead'],
  split: {
    byMeter:
      '400 Hz tone: across the speaker pair that goes into the converter, then across its line output. Volts in, none out?',
    needs: ['tone-400'],
    touches: ['unit-rear-plus'],
    without: 'Key off, plug a phone into the amplifier’s line-level inputs instead, volume low: does it play?',
  },
  mends: ['unit-leads'],
  article: 'half-the-supply-on-a-speaker-wire',
  remedy: (f) => ({
    what: 'The converter that turns the head unit’s speaker signal into line level gives nothing.',
    numbers: [
      { id: 'converter-takes', label: 'It must take, clean, engine running', value: unloadedFullV(f.rig), unit: 'V' },
      ...arrivesFigures(f, 'line'),
      ...settingFigures(f, 'line'),
    ],
    readFirst: readsForGain(f),
    repair: [{ do: 'replace-converter' }, setGain(f, ampChannels(f))],
    fix: [
      'Key off. Check that its plugs are home, and its fuse and feed if it has them: battery volts there with the key on?',
      'Fit another converter made for bridge outputs: both wires of each pair into it, none to ground.',
      ...gainSteps(f, 'line'),
    ],
    tools: `Crimp tool. ${GAIN_TOOLS}`,
    minutes: 60,
    who: FITTER,
    parts: ['Converter from speaker level to line level, made for bridge outputs, as many channels as the old one'],
    notBuy: ['An amplifier or a reflash: the sound is lost in the box in between.'],
    ifDoneAnyway: 'A converter with a grounded negative shorts the output of the head unit.',
    proofOfCure: arrives(f, 'line'),
  }),
};
