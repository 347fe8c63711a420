import { ampMayBeThere } from '../fitted/amp-there.ts';
import { switchedBy } from '../fitted/switched-by.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { fuseStaysOut } from '../supply/may-fail.ts';
import { showsFault } from './seen-on.ts';

export const signalPlugOut: ChoiceStep<'clears' | 'stays' | 'dark'> = choice({
  place: 'amplifier',
  id: 'signal-plug-out',
  short: 'Fault light without its signal plug',
  ask: 'Key off, signal plug out, key on: is the amplifier’s light normal now?',
  phone: 'Watch the amplifier’s light for a minute: normal now, still the fault colour, or off?',
  how: [
    'The remote wire stays where it is. Is it in the same plug? Then skip this.',
    'Keep the loose plug off metal: its wires carry the head unit’s live outputs.',
    'Watch the light for a minute. Then key off, and push the plug back until it locks.',
  ],
  why: 'A light that clears points to DC or a short on what comes in. One that stays points to the amplifier, its load or its supply.',
  tool: 'none',
  minutes: 4,
  conditions: ['amp-uncovered', 'volume-zero', 'signal-plug-out', 'music-paused'],
  sensible: (f) => ampMayBeThere(f) && !fuseStaysOut(f) && showsFault(f) && (switchedBy(f) ?? 'wire') === 'wire',
  observes: ['unit', 'unit-leads', 'amp-supply', 'amp', 'run', 'speaker'],
  options: { clears: 'Yes, normal now', stays: 'No, still the fault light', dark: 'No, it is off now' },
  outcomes: {
    clears: 'clears without its signal plug',
    stays: 'stays without its signal plug',
    dark: 'off without its signal plug',
  },
  ifCannot: 'Signal and remote in one plug, or out of reach: skip it.',
});
