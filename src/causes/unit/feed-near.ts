import { FEED_LOSES_AT_MOST_V } from '../../compute/unit-feed.ts';
import type { Figure } from '../figure.ts';

export const FEED_NEAR: Figure = {
  id: 'unit-feed-near',
  label: 'Each feed below the battery by',
  value: FEED_LOSES_AT_MOST_V,
  unit: 'V',
  limit: 'at most',
};
