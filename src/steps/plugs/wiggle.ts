import { ampDriving } from '../../rig/rig.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { concernsAxle, silentOnes } from '../told/silent-side.ts';

export const wiggle: ChoiceStep<'amp-input' | 'rear-run' | 'amp-supply' | 'unit-plug' | 'no-effect'> = choice({
  place: 'plugs',
  id: 'wiggle',
  short: 'Press and move the plugs',
  ask: (s) => `Music low: does pressing a plug or a lead with one finger make ${silentOnes(s, 'the rear')} come or go?`,
  phone: (s) =>
    `Bike on its stand. Press each plug and lead gently with one finger, no tools, nothing hot. Which one makes ${silentOnes(s, 'the back')} crackle, play or stop, or has come out? Or none?`,
  how: (s) => [
    ...(!concernsAxle(s, 'rear')
      ? [
          'Press and move: the front speaker’s plug and lead, the loom at the steering, the head unit’s plug, and any amplifier’s plugs.',
        ]
      : s.rig.rearFedBy === 'unit'
        ? [
            'Press and move: the rear loom plug, lid leads at the hinge, the head unit’s loom. Leads under the seat: have somebody sit down.',
          ]
        : [
            'Press and move: the signal plug at the amplifier, its power leads, the rear speaker plug, lid leads at the hinge, the head unit’s loom. Leads under the seat: have somebody sit down.',
          ]),
    'A plug or a wire that has come out is an answer: name it, and leave it out until the key is off.',
    'Only what you can reach. No metal tools. Nothing hot.',
  ],
  why: 'Where it reacts to a finger, the contact is bad. No reaction proves nothing.',
  tool: 'ears',
  minutes: 5,
  conditions: ['head-unit-playing'],
  sensible: (f) => !is(f, 'which-corner', 'thin'),
  observes: ['unit-leads', 'amp-supply', 'run'],
  cautions: ['riding', 'hot'],
  options: {
    'no-effect': 'Nothing reacts',
    'amp-input': 'The amplifier’s signal plug, or it has come out',
    'rear-run': 'A speaker plug, lead or lid, or one has come out',
    'amp-supply': 'A power lead, fuse holder or remote wire, or one has come out',
    'unit-plug': 'The plug of the head unit, or its loom',
  },
  leftOut: (s) =>
    (concernsAxle(s, 'rear') ? s.rig.rearFedBy === 'unit' && !ampDriving(s.rig, 'rear') : s.rig.frontFedBy === 'unit')
      ? ['amp-input', 'amp-supply']
      : [],
  outcomes: {
    'no-effect': 'nothing reacts',
    'amp-input': 'signal plug reacts, or is out',
    'rear-run': 'speaker lead reacts, or is out',
    'amp-supply': 'power lead reacts, or is out',
    'unit-plug': 'head unit’s plug reacts',
  },
});
