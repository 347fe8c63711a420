import type { Cause } from '../cause.ts';
import { ampName, ampOf } from '../the-amp.ts';
import { YOURSELF } from '../who.ts';
import { CHANNELS_ALIKE } from './gain.ts';

export const channelModeWrong: Cause = {
  id: 'channel-mode-wrong',
  title: (f) => `Input selector of ${ampName(f)} wrong`,
  faults: ['channel-mode-wrong'],
  split: {
    byMeter:
      'Speakers off, 400 Hz tone: two outputs read, the other two nothing, and nothing at the inputs that feed those?',
    needs: ['tone-400'],
    touches: ['amp-out-plus'],
    without: 'Read the amplifier’s input selector: is it set to something else than the plugs that are in?',
    asStep: { without: 'amp-switches' },
  },
  mends: ['amp'],
  article: 'impedance',
  remedy: (f) => ({
    what: 'The amplifier’s input selector does not match its wiring: it feeds channels from inputs with nothing on them.',
    background: 'Selectors hide under a cover or a rubber plug, and often stay as they came out of the box.',
    numbers: [],
    repair: [{ do: 'set-selector', selector: 'input-mode', to: 'as-wired' }],
    fix: [
      'Key off, amplifier gain down.',
      'Set the input selector to the number of pairs that are plugged in.',
      ...(ampOf(f).fedFrom === 'front'
        ? [
            'The fader will do nothing afterwards: everything comes from the front pair. That is the wiring, not a fault.',
          ]
        : []),
      'Key on, volume low, then gain back to where it was.',
    ],
    tools: 'Small screwdriver',
    minutes: 5,
    who: YOURSELF,
    parts: [],
    notBuy: ['Speakers, an amplifier or a reflash: a switch is set wrong.'],
    proofOfCure: { byEar: 'All its speakers play, one corner after the other.', ...CHANNELS_ALIKE },
  }),
};
