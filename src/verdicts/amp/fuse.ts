import { theAmp } from '../../steps/fitted/the-amp.ts';
import type { Findings } from '../../steps/outcome.ts';
import { mainFuseAtMost } from '../main-fuse.ts';
import type { Verdict } from '../verdict.ts';
import { AMP_REPAIRER, FITTER, YOURSELF, YOURSELF_OR_FITTER } from '../who.ts';
import { ampName, fuseNumbers } from './numbers.ts';

/** A main fuse that is open, and what opened it. */

const CAME_ON = 'The lamp lights, and the same fuse is still whole after ten minutes of loud music.';
const NO_BIGGER = 'A bigger fuse: it protects the lead, not the amplifier, and the lead would burn.';
const atMost = (f: Findings) => mainFuseAtMost(theAmp(f));

export const mainFuseOpen: Verdict = {
  id: 'main-fuse-open',
  title: 'The main fuse is open',
  faults: ['main-fuse-open'],
  evidence: ['amp-light', 'amp-terminals', 'fuse-sides', 'fuse-look', 'fuse-lamp', 'spare-fuse'],
  mends: ['amp-supply'],
  remedy: (f) => {
    const noShort = f.outcome('fuse-lamp') === 'dark' || ['wakes', 'holds'].includes(f.outcome('spare-fuse') ?? '');
    return {
      what: `${ampName(f)} gets no plus: its main fuse is open.`,
      certainty: noShort ? 'proved' : 'likely',
      howSure: noShort
        ? 'The fuse is open, and nothing behind it is shorted while it is switched off.'
        : 'Volts come in and none come out. Whether a short opened it is still open.',
      background:
        'A fuse opens for a reason: too small for the bass, a short while something was fitted, or a lead that chafes now and then.',
      numbers: fuseNumbers(f),
      fix: [
        'Look along the whole plus lead for a worn place: at the seat, the frame, the steering.',
        `Key off. Fit one fuse of the old rating, and never above ${atMost(f)}: a thinner lead takes a smaller one.`,
        'Key on, low volume. Then ten minutes loud, a hand near the holder: hand-warm, not hot.',
      ],
      tools: 'A fuse of the same rating',
      minutes: 15,
      who: YOURSELF,
      notBuy: [NO_BIGGER, 'An amplifier or a reflash: it was not asked yet.'],
      cautions: ['fuse', 'minus-first', 'hot'],
      proof: CAME_ON,
      mayAlsoBe: [
        {
          what: 'A lead that touches the frame only when moved',
          split: 'A lamp in place of the fuse again: move the lead along its way, look for a flicker.',
        },
        {
          what: 'A short that shows only when it is switched on',
          split:
            'The new fuse opens with the remote wire or a speaker back on? That is the one: amplifier, or that run.',
        },
      ],
    };
  },
};

export const wireChafed: Verdict = {
  id: 'wire-chafed',
  title: 'The plus lead is chafed or broken',
  faults: ['wire-chafed'],
  evidence: ['amp-terminals', 'fuse-sides', 'fuse-look', 'fuse-lamp', 'lead-off-amp'],
  mends: ['amp-supply'],
  remedy: (f) => {
    const touches = f.outcome('lead-off-amp') === 'bright';
    return {
      what: touches
        ? 'The plus lead touches the frame between the fuse and the amplifier. That is what opened the fuse.'
        : 'The plus lead is open between the fuse and the amplifier.',
      certainty: 'proved',
      howSure: touches
        ? 'The lamp in the fuse’s place stays bright with the lead off the amplifier.'
        : 'Both sides of the fuse carry the battery’s volts, and none of it reaches the amplifier.',
      numbers: fuseNumbers(f),
      fix: [
        'Battery minus off, fuse out.',
        touches
          ? 'Follow the lead: seat pan, frame edges, steering, under the tank. The worn place is where metal is near.'
          : 'Follow the lead to the amplifier: crimps, splices, the power plug itself.',
        'Join copper to copper with a sealed crimp, sleeve it, and route it with slack and a grommet at each edge.',
        `New fuse of the same rating, at most ${atMost(f)}. Fuse within a hand’s width of the battery.`,
      ],
      tools: 'Crimp tool, sleeve, cable ties',
      minutes: 45,
      who: FITTER,
      notBuy: [NO_BIGGER, 'An amplifier: it was not the trouble.'],
      ifDoneAnyway: 'With a bigger fuse the lead itself becomes the fuse, beside a fuel tank.',
      cautions: ['minus-first', 'fuse', 'hot'],
      proof: `${CAME_ON} Steering from lock to lock and the seat loaded: no flicker.`,
      ...(touches
        ? {}
        : {
            mayAlsoBe: [
              {
                what: 'A fuse holder that passes volts but no current',
                split:
                  'A 55 W lamp across the amplifier’s plus and ground: dark, and the battery’s volts across the holder.',
              },
            ],
          }),
    };
  },
};

export const ampShortedInside: Verdict = {
  id: 'amp-shorted-inside',
  title: 'The amplifier is shorted inside',
  faults: ['amp-dead'],
  evidence: ['fuse-sides', 'fuse-look', 'fuse-lamp', 'lead-off-amp'],
  mends: ['amp', 'amp-supply'],
  remedy: (f) => ({
    what: `${ampName(f)} is shorted inside, and that is what opens the main fuse.`,
    certainty: 'proved',
    howSure: 'The lamp in the fuse’s place is bright with the amplifier on the lead, and dark without it.',
    numbers: fuseNumbers(f),
    fix: [
      'Leave the fuse out and the plus lead insulated until the amplifier is off the bike.',
      'Ask a workshop what a repair costs before you buy. Say: shorted supply input, fuse opens with the remote wire off.',
      'Before the next one goes in: each speaker run in ohms and to the frame. A short there may have killed this one.',
      `New fuse of the old rating, at most ${atMost(f)}.`,
    ],
    tools: 'Meter, spanners',
    minutes: 60,
    who: AMP_REPAIRER,
    notBuy: ['A bigger fuse.', 'A new amplifier before the speaker runs were measured.'],
    cautions: ['minus-first', 'fuse', 'hot', 'warranty'],
    proof: 'With the repaired or new amplifier the lamp in the fuse’s place glows briefly and goes dark.',
  }),
};

/** The end for whoever has no lamp: two causes that a second fuse would not tell apart. */
export const fuseOpensAgain: Verdict = {
  id: 'fuse-opens-again',
  title: 'Something behind the main fuse is shorted',
  faults: ['wire-chafed', 'amp-dead'],
  evidence: ['fuse-look', 'fuse-lamp', 'spare-fuse'],
  mends: ['amp-supply', 'amp'],
  remedy: (f) => ({
    what: 'Something behind the main fuse is shorted: its plus lead touches the frame, or the amplifier is shorted inside.',
    certainty: 'short list',
    howSure: 'Speakers and remote wire were off, and it still opened the fuse or kept the lamp bright.',
    numbers: fuseNumbers(f),
    fix: [
      'Stop here with fuses. Leave the fuse out.',
      'Battery minus off. Plus lead off the amplifier, its end insulated. Battery minus on.',
      'A 21 to 55 W lamp in the fuse’s place: bright is the lead, dark is the amplifier.',
      'No lamp: meter on ohms, fuse out, lead off the amplifier: lead to the frame. A beep is the lead.',
    ],
    tools: 'A 12 V lamp on two leads, or a meter',
    minutes: 15,
    who: YOURSELF_OR_FITTER,
    notBuy: ['A third fuse, and never a bigger one.', 'An amplifier before the lead was tried without it.'],
    cautions: ['fuse', 'minus-first', 'lamp-hot'],
    proof: CAME_ON,
    mayAlsoBe: [
      { what: 'The plus lead touches the frame', split: 'Lead off the amplifier: the lamp is still bright.' },
      { what: 'The amplifier is shorted inside', split: 'Lead off the amplifier: the lamp goes dark.' },
    ],
  }),
};

export const ampBodyFuseOpen: Verdict = {
  id: 'amp-body-fuse-open',
  title: 'A fuse in the amplifier itself is open',
  faults: ['amp-body-fuse-open'],
  evidence: ['amp-terminals', 'body-fuse', 'remote-volts', 'remote-jumper'],
  mends: ['amp-supply', 'amp'],
  remedy: (f) => ({
    what: `${ampName(f)} has volts at its terminals, and the fuse in its own case is open.`,
    certainty: 'proved',
    howSure: 'Its strip is burnt through.',
    numbers: fuseNumbers(f),
    fix: [
      'Key off. Speakers and remote wire off the amplifier.',
      'One new fuse of the number printed beside its holder.',
      'Key on: does it hold? Then the remote wire, then the speakers one at a time, key off for each.',
      'It opens again: stop. The amplifier needs a workshop.',
    ],
    tools: 'A fuse of the same rating',
    minutes: 10,
    who: YOURSELF,
    notBuy: ['An amplifier, before one fuse was tried.', 'A bigger fuse.'],
    cautions: ['fuse', 'key-off', 'hot'],
    proof: CAME_ON,
  }),
};
