import { ampDriving, withAmpKnown } from '../../rig/rig.ts';
import { type RigStep, rigQuestion } from '../step.ts';
import { rearAmpMayBeThere } from './amp-there.ts';

/** What "more" stands for when currents are worked out: six or eight are sold, six is the usual one. From memory. */
const MORE = 6;

export const ampChannels: RigStep<'2' | '4' | 'more'> = rigQuestion({
  place: 'fitted',
  id: 'amp-channels',
  short: 'Amplifier channels',
  ask: 'How many channels does the amplifier have?',
  phone: 'Count the pairs of thick speaker terminals on that amplifier: two, four, or more than four?',
  how: [
    'One pair of speaker terminals is one channel. Its label or papers say so too.',
    'Two bridged into one for more power still count as two.',
  ],
  why: 'Twice the channels draw twice the current, and lead, fuse and ground must be up to it.',
  tool: 'none',
  minutes: 0.5,
  sensible: rearAmpMayBeThere,
  observes: [],
  givenUnder: ['rear-drive', 'amps-drive'],
  options: { '2': 'Two, or one', '4': 'Four, or three', more: 'More than four' },
  outcomes: { '2': 'two', '4': 'four', more: 'more than four' },
  ifCannot: 'We assume two, or four where it drives front and rear.',
  known: (rig) => {
    const channels = ampDriving(rig, 'rear')?.channels;
    return channels === undefined ? undefined : channels <= 2 ? '2' : channels <= 4 ? '4' : 'more';
  },
  learn: (channels, rig) => withAmpKnown(rig, 'rear', { channels: channels === 'more' ? MORE : Number(channels) }),
});
