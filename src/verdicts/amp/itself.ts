import type { Verdict } from '../verdict.ts';
import { AMP_REPAIRER } from '../who.ts';
import { ampName, drawNumbers, pathNumbers, remoteNumbers } from './numbers.ts';

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
    const loaded = f.outcome('supply-under-load') === 'ok';
    const told = f.outcome('remote-volts') === 'ok' || f.outcome('remote-jumper') === 'dead';
    // A jumper wakes what is alive: then only the part that listens is dead, and the wire is the way round it.
    const deaf = f.outcome('remote-jumper') === 'wakes';
    return {
      what: deaf
        ? `${ampName(f)} is alive, and deaf: it hears enough and does not wake by it.`
        : `${ampName(f)} has its plus, its ground and its turn-on, and stays off.`,
      certainty: !deaf && loaded && told ? 'proved' : 'likely',
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
      ...(deaf || (loaded && told)
        ? {}
        : {
            mayAlsoBe: [
              {
                what: 'A supply that gives way under load',
                split: 'A 55 W lamp across its plus and ground: bright, and within 0.5 V of the battery?',
              },
              {
                what: 'A battery below 12.2 V or above 15 V',
                split: 'Key on: what do the battery posts read, engine off and at about 3000 rpm outdoors?',
              },
              { what: 'Its turn-on selector', split: 'Read it: does it stand on what is wired?' },
            ],
          }),
    };
  },
};
