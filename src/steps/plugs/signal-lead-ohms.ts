import { ampMayBeThere } from '../fitted/amp-there.ts';
import { is } from '../outcome.ts';
import { ohmReading } from '../runs/ohms.ts';
import { readsThrough, THROUGH_BANDS, type Through } from '../runs/through.ts';
import { measurement, type ReadingStep } from '../step.ts';

/** Whether the wires between the head unit and the amplifier are whole, plugs and all settings left out of it. */
export const signalLeadOhms: ReadingStep<Through> = measurement({
  place: 'unit',
  id: 'signal-lead-ohms',
  short: 'Signal lead in ohms',
  ask: 'The two wires of each pair joined at the amplifier’s end: what is the highest reading across a pair at the head unit’s end?',
  phone:
    'At the amplifier’s end, join the two wires of one pair with a clip. At the radio’s end, on the bike’s side, one probe on each wire of that pair: what number? Then the next pair. What was the highest number?',
  how: [
    'A wiring diagram shows which two are a pair. Clip them together at the amplifier’s end, read across them at the head unit’s end, loom side.',
    'A converter in between? Read from its output to the amplifier, and from the head unit to its input.',
    'Pair by pair. “OL” is a reading too: a wire of that pair is open. Take the clip off again.',
  ],
  why: 'Out there and back: a pair that reads next to nothing is whole. What is lost then is lost in a plug, a setting or the head unit.',
  tool: 'meter',
  minutes: 9,
  conditions: ['key-off', 'panel-off', 'unit-plug-apart', 'signal-plug-out', 'meter-on-ohms'],
  sensible: (f) => ampMayBeThere(f) && !is(f, 'amp-in', 'ok'),
  observes: ['unit-leads'],
  probes: 'not drawn',
  readings: { loopOhm: ohmReading('Highest of the pairs') },
  bands: () => THROUGH_BANDS,
  judge: ({ loopOhm = 0 }) => readsThrough(loopOhm),
  formula: 'out and back = the meter’s leads + a few tenths of an ohm of thin wire',
  healthy: () => 'Healthy is below 2 Ω on every pair: your probes and some metres of thin wire. OL is an open wire.',
  outcomes: { through: 'all pairs are whole', unclear: 'a few ohms too many', open: 'a pair is open' },
  article: 'how-the-signal-travels',
});
