import { mayBeOff } from '../amplifier/seen-on.ts';
import { ampMayBeThere } from '../fitted/amp-there.ts';
import { switchedBy } from '../fitted/switched-by.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { fuseStaysOut } from '../supply/may-fail.ts';

export const wakesWhenLoud: ChoiceStep<'awake' | 'wakes' | 'wakes-silent' | 'blinks' | 'fault' | 'stays-off'> = choice({
  place: 'turn-on',
  id: 'wakes-when-loud',
  short: 'Turned up for a moment',
  ask: 'Turn it up slowly, with music that never pauses. Does the amplifier’s light come on, and do its speakers play then?',
  phone:
    'No speech, steady music. Come up one step at a time, well above your usual volume, and down again as soon as the amplifier’s light comes on. Does it come on, stay off, blink or show its fault colour? Or was it on already? And do its speakers play then?',
  how: [
    'Amplifier gain down first, if you can reach it: it may wake at full blast.',
    'Steady music at your usual volume first: look at the light. Then come up one step at a time, ten seconds a step.',
    'Turn it down again as soon as the light comes on, whatever the colour.',
  ],
  why: 'An amplifier that wakes by sound has a threshold. If only high volume wakes it, too little signal reaches it: its wiring is fine.',
  tool: 'ears',
  minutes: 2,
  conditions: ['head-unit-playing'],
  sensible: (f) =>
    !fuseStaysOut(f) &&
    ampMayBeThere(f) &&
    mayBeOff(f) &&
    switchedBy(f) !== 'dc' &&
    (switchedBy(f) !== 'wire' || is(f, 'remote-volts', 'ok', 'unclear')),
  observes: ['settings', 'profile', 'unit', 'unit-leads', 'amp-supply', 'amp', 'run', 'speaker'],
  cautions: ['loud-tone', 'wakes-loud'],
  options: {
    wakes: 'It wakes, and its speakers play',
    'wakes-silent': 'It wakes, but its speakers stay silent',
    blinks: 'It comes on briefly and goes off again',
    fault: 'Its fault light comes on',
    'stays-off': 'No, it stays off',
    awake: 'It is on already, at my usual volume',
  },
  outcomes: {
    awake: 'on already at the usual volume',
    wakes: 'wakes when loud, and plays',
    'wakes-silent': 'wakes when loud, and stays silent',
    blinks: 'on for a moment when loud',
    fault: 'fault light when loud',
    'stays-off': 'stays off',
  },
  article: 'amplifiers-that-listen',
});
