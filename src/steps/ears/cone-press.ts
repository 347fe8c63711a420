import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { mayBeOneSpeaker, ONE_CORNER } from './where-harsh.ts';

export const conePress: ChoiceStep<'smooth' | 'scrapes' | 'loose'> = choice({
  place: 'ears',
  id: 'cone-press',
  short: 'Cone and frame by hand',
  ask: 'Grille off: does the cone move without scraping, and is its frame tight all round?',
  phone:
    'Key off, grille off the worst speaker. Two thumbs either side of the centre, press evenly, two millimetres: scraping like sand, or smooth? Any tear? Then push at the frame: loose, or a gap?',
  how: [
    'Look for tears in cone and surround, and for a gap around the frame.',
    'Two thumbs, evenly either side of the centre, press two or three millimetres in. Listen: it must be silent.',
    'Push at the frame all round, and at whatever is screwed on next to it.',
  ],
  why: 'You can hear a rubbing coil, a torn cone or a loose frame at any volume once you know the sound. No meter finds them.',
  tool: 'none',
  minutes: 8,
  conditions: ['grille-open'],
  sensible: mayBeOneSpeaker,
  observes: ['speaker'],
  options: {
    smooth: 'Smooth, whole and tight',
    scrapes: 'It scrapes, or cone or surround is torn',
    loose: 'The frame or something next to it is loose, or there is a gap',
  },
  outcomes: { smooth: 'smooth and tight', scrapes: 'scrapes or torn', loose: 'loose, or a gap' },
  ifCannot: 'Grille won’t come off? A low hum at low volume and a hand on the grille will give a rattle away too.',
});

export const isOneSpeaker = (f: Parameters<typeof is>[0]): boolean => is(f, 'where-harsh', ...ONE_CORNER);
