import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { mayBeOneSpeaker, ONE_CORNER } from './where-harsh.ts';

export const conePress: ChoiceStep<'smooth' | 'scrapes' | 'loose'> = choice({
  place: 'ears',
  id: 'cone-press',
  short: 'Cone and frame by hand',
  ask: 'Grille off: does the cone move without scraping, and does its frame sit tight all round?',
  phone:
    'Key off, grille off the ugliest speaker. Two thumbs left and right of the centre, press both evenly two millimetres: scraping like sand? Any tear? Then push at the frame: loose, or a gap?',
  how: [
    'Look for tears in cone and surround, and for a gap around the frame.',
    'Two thumbs, evenly left and right of the centre, two or three millimetres in. Listen: it must be silent.',
    'Push at the frame on all sides, and at whatever is screwed on beside it.',
  ],
  why: 'A coil that rubs, a torn cone and a loose frame are heard at any volume once you know the sound, and no meter finds them.',
  tool: 'none',
  minutes: 8,
  conditions: ['grille-open'],
  sensible: mayBeOneSpeaker,
  observes: ['speaker'],
  options: {
    smooth: 'Smooth, whole and tight',
    scrapes: 'It scrapes, or cone or surround is torn',
    loose: 'The frame or something beside it is loose, or there is a gap',
  },
  outcomes: { smooth: 'smooth and tight', scrapes: 'scrapes or torn', loose: 'loose, or a gap' },
  ifCannot: 'Grille not to be had off? A low hum at low volume and a hand on the grille tell a rattle, too.',
});

export const isOneSpeaker = (f: Parameters<typeof is>[0]): boolean => is(f, 'where-harsh', ...ONE_CORNER);
