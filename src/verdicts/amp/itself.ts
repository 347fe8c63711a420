import { is } from '../../steps/outcome.ts';
import type { Verdict } from '../verdict.ts';
import { AMP_REPAIRER, FITTER } from '../who.ts';
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
    // A jumper wakes what is alive: then only the part that listens is dead, and the wire is the way round it. The jumper
    // wakes it without music, though: a supply that gives way when it plays is not ruled out by that.
    const deaf = is(f, 'remote-jumper', 'wakes');
    const unloaded = !deaf && pathsLeft(f).length > 0;
    const left = deaf
      ? [...selectorLeft(f), ...heatLeft(f), ...pathsLeft(f)]
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
        : unloaded
          ? `${ampName(f)} has its plus, its ground and its turn-on while nothing draws current, and stays off: its supply gives way, or it is dead.`
          : `${ampName(f)} has its plus, its ground and its turn-on, and stays off.`,
      certainty:
        left.length > MOST_BESIDES ? 'short list' : !deaf && loaded && told && left.length === 0 ? 'proved' : 'likely',
      howSure: deaf
        ? 'It wakes by the jumper, and what it waits for arrives.'
        : loaded
          ? 'Its supply holds with a 55 W lamp on it.'
          : unloaded
            ? 'Its leads were only read without load. The lamp below tells them from the amplifier.'
            : 'Its leads were bypassed.',
      numbers: [...pathNumbers(f, 'plus'), ...pathNumbers(f, 'ground'), ...(deaf ? remoteNumbers(f) : drawNumbers(f))],
      fix: deaf
        ? [
            'Switch it by a remote wire from a feed that follows the ignition, 1 A fuse, selector to wire.',
            'The wire wakes it; whether it plays as loud as before, listen.',
          ]
        : [
            ...(unloaded
              ? [
                  ...(is(f, 'amp-history', 'comes-and-goes')
                    ? [
                        'It comes and goes: one finger on its rings, its fuse holder and its ground, one after the other. What makes its lamp flicker is the bad contact.',
                      ]
                    : []),
                  'The lamp: a 55 W head lamp bulb across its plus and ground, key on. More lost on either way than stands above? That way is the fault: its ring, its fuse holder, its ground.',
                ]
              : []),
            'Once more, with fresh eyes: its own fuses, its turn-on selector, its power plug biting on insulation.',
            'Water, or a battery connected the wrong way round in the past? Say so to the workshop.',
            unloaded
              ? 'The lamp is bright and little is lost: have the amplifier repaired, or replace it.'
              : loaded
                ? 'Have it repaired, or replace it. The new one goes on the same wires: they are proved.'
                : 'Have it repaired, or replace it. Its own wires are not proved: the 55 W lamp on them before the new one.',
            'Before a new one plays: each speaker run in ohms and to the frame.',
          ],
      tools: deaf ? 'Crimp tool, 1 A fuse' : unloaded ? 'Head lamp bulb on two leads, meter, spanners' : 'Spanners',
      minutes: deaf ? 40 : 60,
      who: deaf ? FITTER : AMP_REPAIRER,
      notBuy: deaf
        ? ['A new amplifier, before it was tried on a wire.']
        : [
            'A reflash: it does not start an amplifier.',
            unloaded
              ? 'An amplifier, before the lamp was on its terminals.'
              : loaded
                ? 'Leads or fuses: they were proved.'
                : 'Leads: with good ones beside them it stayed off.',
          ],
      cautions: deaf
        ? ['key-off', 'wakes-loud']
        : [
            ...(unloaded ? (['plus-probe', 'lamp-hot', 'ground-open'] as const) : []),
            'minus-first',
            'warranty',
            'key-off',
          ],
      proof: deaf
        ? 'It starts and stops with the ignition ten times in a row.'
        : 'The repaired or new amplifier starts on the same wires, and stops with the head unit.',
      ...(left.length > 0 && { mayAlsoBe: left }),
    };
  },
};
