import { is } from '../../steps/outcome.ts';
import type { Verdict } from '../verdict.ts';
import { AMP_REPAIRER } from '../who.ts';
import {
  batteryLeft,
  bodyFuseLeft,
  heatLeft,
  MOST_BESIDES,
  pathsLeft,
  protectionLeft,
  selectorLeft,
  wakingLeft,
} from './left.ts';
import { ampName, drawNumbers, pathNumbers, remoteNumbers } from './numbers.ts';

/** Readings that say that what should wake it is there. */
const ARRIVES = [
  ['remote-volts', 'ok'],
  ['sense-dc', 'half'],
  ['sense-level', 'ok'],
] as const;

export const ampDead: Verdict = {
  id: 'amp-dead',
  title: 'The amplifier itself does not start',
  faults: ['amp-dead'],
  evidence: [
    'amp-terminals',
    'remote-volts',
    'remote-jumper',
    'amp-switches',
    'body-fuse',
    'supply-under-load',
    'temporary-leads',
  ],
  mends: ['amp'],
  remedy: (f) => {
    const loaded = is(f, 'supply-under-load', 'ok');
    const told = is(f, 'remote-jumper', 'dead') || ARRIVES.some(([step, outcome]) => is(f, step, outcome));
    // A jumper wakes what is alive: then only the part that listens is dead, and the wire is the way round it.
    const deaf = is(f, 'remote-jumper', 'wakes');
    const left = deaf
      ? [...selectorLeft(f), ...heatLeft(f)]
      : [
          ...protectionLeft(f),
          ...selectorLeft(f),
          ...bodyFuseLeft(f),
          ...wakingLeft(f),
          ...pathsLeft(f),
          ...batteryLeft(f),
        ];
    return {
      what: deaf
        ? `${ampName(f)} is alive, and deaf: it hears enough and does not wake by it.`
        : `${ampName(f)} has its plus, its ground and its turn-on, and stays off.`,
      certainty:
        left.length > MOST_BESIDES ? 'short list' : !deaf && loaded && told && left.length === 0 ? 'proved' : 'likely',
      howSure: deaf
        ? 'It wakes by the jumper, and what it waits for arrives.'
        : loaded
          ? 'Its supply holds with a 55 W lamp on it.'
          : 'Its leads were bypassed or only read without load.',
      numbers: [...pathNumbers(f, 'plus'), ...pathNumbers(f, 'ground'), ...(deaf ? remoteNumbers(f) : drawNumbers(f))],
      fix: deaf
        ? [
            'Switch it by a remote wire from a feed that follows the ignition, 1 A fuse, selector to wire.',
            'The wire wakes it; whether it plays as loud as before, listen.',
          ]
        : [
            'Once more, with fresh eyes: its own fuses, its turn-on selector, its power plug biting on insulation.',
            'Water, or a battery connected the wrong way round in the past? Say so to the workshop.',
            'Have it repaired, or replace it. The new one goes on the same wires: they are proved.',
            'Before a new one plays: each speaker run in ohms and to the frame.',
          ],
      tools: deaf ? 'Crimp tool, 1 A fuse' : 'Spanners',
      minutes: deaf ? 40 : 60,
      who: AMP_REPAIRER,
      notBuy: deaf
        ? ['A new amplifier, before it was tried on a wire.']
        : ['A reflash: it does not start an amplifier.', 'Leads or fuses: they were proved.'],
      cautions: deaf ? ['key-off', 'wakes-loud'] : ['minus-first', 'warranty', 'key-off'],
      proof: deaf
        ? 'It starts and stops with the ignition ten times in a row.'
        : 'The repaired or new amplifier starts on the same wires, and stops with the head unit.',
      ...(left.length > 0 && { mayAlsoBe: left }),
    };
  },
};
