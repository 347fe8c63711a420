import { REMOTE_LOSS_V, REMOTE_ON_HIGHEST_V, REMOTE_ON_LOWEST_V } from '../compute/amp-supply.ts';
import { formatQuantity } from '../compute/quantity.ts';
import { type Findings, is } from '../steps/outcome.ts';
import { batteryV } from '../steps/supply/amp-feed.ts';
import { type Figure, voltsRead } from './figure.ts';

/** The thin wire that switches an amplifier: what it should carry, and how one knows that it does. */

/** Within a volt of the battery, and in any case enough for every amplifier. */
const healthyRemoteV = (f: Findings): number => Math.max(REMOTE_ON_HIGHEST_V, batteryV(f) - REMOTE_LOSS_V);

/** Good where it begins, and too little of it at the amplifier: lost in the wire, and not for want of a feed. */
export const weakAlongTheWire = (f: Findings): boolean =>
  is(f, 'remote-source', 'live') && is(f, 'remote-volts', 'low', 'unclear');

function readRemote(f: Findings): readonly Figure[] {
  const { remoteV } = f.values('remote-volts');
  const { startV } = f.values('remote-source');
  return [
    ...voltsRead('remote-start-read', 'Where the wire starts, as read', startV),
    ...voltsRead('remote-read', 'Remote terminal, as read', remoteV),
  ];
}

export const remoteFigures = (f: Findings): readonly Figure[] => [
  ...readRemote(f),
  {
    id: 'remote-healthy',
    label: 'Remote terminal when on, healthy',
    value: healthyRemoteV(f),
    unit: 'V',
    limit: 'above',
    digits: 3,
  },
  {
    id: 'remote-switches-on',
    label: 'Amplifiers switch on above',
    value: [REMOTE_ON_LOWEST_V, REMOTE_ON_HIGHEST_V],
    unit: 'V',
  },
  { id: 'remote-fuse', label: 'Fuse of the remote wire', value: 1, unit: 'A' },
];

/** “above 11.6 V” */
export const healthyRemoteInWords = (f: Findings): string => `above ${formatQuantity(healthyRemoteV(f), 'V', 3)}`;

export const REMOTE_PARTS = ['Thin wire, sealed crimps, a 1 A fuse with its holder'];
export const TOLD_NOTHING = 'An amplifier: it was never told to come on.';
/** What a feed for the remote wire must do. */
export const SWITCHED_FEED =
  'Run it to the head unit’s remote output, or to a feed that is live only with the ignition on. A 1 A fuse where it starts.';
