import { choice } from './step.ts';

/** Ways on without a meter: exchange a known good half, and see which side the fault moves to. */

export const swapInputs = choice<'plays' | 'silent'>({
  id: 'swap-inputs',
  short: 'Front plugs into the rear inputs',
  ask: 'Put the front signal plugs into the amplifier’s rear inputs. Do the rear speakers play now?',
  phone:
    'Key off, pull the thin rear plugs at the amplifier and put the front ones in their place. Key on, low volume. Does the back play now?',
  how: [
    'Key off. Mark the plugs.',
    'Put the front signal plugs into the rear inputs.',
    'Key on, low volume, listen at the rear. Then put everything back.',
  ],
  why: 'The front signal is known to be good. If the rear plays with it, the fault is before the amplifier.',
  tool: 'ears',
  minutes: 6,
  observes: ['amp-supply', 'amp', 'run', 'speaker'],
  cautions: ['key-off', 'loud-tone'],
  options: { plays: 'Yes, the rear plays', silent: 'No, still silent' },
  outcomes: { plays: 'rear plays', silent: 'rear still silent' },
  ifCannot: 'The plugs are not alike or out of reach, or the front is not on this amplifier: go on without.',
});

export const swapOutputs = choice<'plays' | 'silent'>({
  id: 'swap-outputs',
  short: 'Front output onto the rear speakers',
  ask: 'Put the amplifier’s front output onto the rear speaker run. Do the rear speakers play now?',
  phone: 'Key off, put the thick rear speaker plug where the front one was, key on, low volume. Does the back play?',
  how: [
    'Key off. Mark the plugs.',
    'Rear speaker run onto the front output.',
    'Key on, low volume, listen. Then put everything back.',
  ],
  why: 'The front output is known to work. If the rear speakers play on it, their run and coils are good.',
  tool: 'ears',
  minutes: 8,
  observes: ['run', 'speaker'],
  cautions: ['key-off', 'short-suspected'],
  options: { plays: 'Yes, they play', silent: 'No, still silent' },
  outcomes: { plays: 'rear speakers play', silent: 'still silent' },
  ifCannot: 'The plugs are not alike or out of reach, or the front is not on this amplifier: go on without.',
});

export const popRun = choice<'moves' | 'dead'>({
  id: 'pop-run',
  short: '1.5 V cell on the rear run',
  ask: 'Touch a 1.5 V cell to the two wires of a rear run, plug apart. Does the speaker click?',
  phone: 'Key off, pull the rear speaker plug. Touch the little battery to the two wires for half a second. A click?',
  how: [
    'Key off. Pull the plug that feeds the rear speakers: at the amplifier, or else the plug of the rear loom.',
    'A single 1.5 V cell, half a second, one wire on each end.',
    'Listen at the speaker, or let a helper watch the cone. Both sides.',
  ],
  why: 'A click proves wire and coil in one go, without a meter.',
  tool: 'cell',
  minutes: 6,
  observes: ['run', 'speaker'],
  cautions: ['key-off', 'cell'],
  options: { moves: 'Both click', dead: 'No click on one or both' },
  outcomes: { moves: 'clicks', dead: 'no click' },
});

export const popSpeaker = choice<'moves' | 'dead'>({
  id: 'pop-speaker',
  short: '1.5 V cell on the speaker itself',
  ask: 'Grille off, one wire off: touch the cell to the speaker’s own tabs. Does the cone move?',
  phone: 'Now at the speaker itself, one wire pulled off: touch the little battery to its two tabs. A click?',
  how: ['Key off. One wire off the speaker.', 'The cell on the two tabs, half a second.', 'Watch the cone.'],
  why: 'A cone that moves here but not from the far end of the run: the wire between is broken.',
  tool: 'cell',
  minutes: 8,
  observes: ['speaker'],
  cautions: ['cell', 'cone', 'warranty'],
  options: { moves: 'Yes, it moves', dead: 'No, nothing' },
  outcomes: { moves: 'cone moves', dead: 'nothing' },
});
