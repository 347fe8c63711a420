import { is } from '../outcome.ts';
import { type ChoiceStep, choice, EVERY_PART } from '../step.ts';

export const howItSounds: ChoiceStep<'rough' | 'changes' | 'thin' | 'quiet' | 'noise' | 'gaps'> = choice({
  place: 'ears',
  id: 'how-it-sounds',
  short: 'What is wrong with the sound',
  ask: 'All of them play: what is it about the sound that is wrong?',
  phone:
    'Say it in your own words. Is it rough, harsh or rattling? Does it change with the engine, or on the road? Is bass or treble missing? Is it too quiet? Is there a whine, a hum, a hiss or a ticking? Or does it cut out now and then?',
  how: ['More than one fits? Take the one that bothers you most.'],
  why: 'Rough, thin, noisy and cutting out have nothing in common but the word “wrong”: each begins somewhere else.',
  tool: 'none',
  minutes: 0.5,
  sensible: (f) => is(f, 'what-plays', 'all'),
  observes: EVERY_PART,
  options: {
    rough: 'Rough, harsh, or something rattles',
    changes: 'It changes with the engine, or on the road',
    thin: 'Thin or dull: bass or treble is missing',
    quiet: 'Too quiet, even turned up',
    noise: 'A whine, hum, hiss or ticking',
    gaps: 'It cuts out now and then',
  },
  outcomes: {
    rough: 'rough or rattling',
    changes: 'changes with the engine',
    thin: 'thin or dull',
    quiet: 'too quiet',
    noise: 'a noise',
    gaps: 'cuts out',
  },
  article: 'talk-a-caller-through',
});
