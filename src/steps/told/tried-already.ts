import { type ChoiceStep, choice } from '../step.ts';

export const triedAlready: ChoiceStep<'nothing' | 'plugs' | 'lead' | 'fuse' | 'speakers' | 'amp' | 'reflash'> = choice({
  place: 'told',
  id: 'tried-already',
  short: 'Already tried',
  ask: 'What has been tried already, without success?',
  phone:
    'What has anybody tried that did not help: plugs pushed home, another cable, a new fuse, other speakers, another amplifier, a reflash, or nothing?',
  how: ['Several things? Name the biggest: the one that took most work or cost most.'],
  why: 'A part that was swapped without any change is seldom at fault. It shifts the odds but rules nothing out: swaps go wrong too.',
  tool: 'none',
  minutes: 0.5,
  observes: [],
  options: {
    nothing: 'Nothing, or something that is not on this list',
    plugs: 'Plugs pulled and pushed home',
    lead: 'Another cable or lead',
    fuse: 'A new fuse',
    speakers: 'Speakers swapped or new ones fitted',
    amp: 'Amplifier swapped, or bypassed',
    reflash: 'A reflash of the head unit',
  },
  outcomes: {
    nothing: 'nothing',
    plugs: 'plugs pushed home',
    lead: 'another cable or lead',
    fuse: 'a new fuse',
    speakers: 'other speakers',
    amp: 'another amplifier, or none',
    reflash: 'a reflash',
  },
});
