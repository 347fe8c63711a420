/** What can take the supply of an amplifier away, or most of it, in the order of the way from the battery. */
export const SUPPLY_CAUSES = [
  'main-fuse-open',
  'fuse-holder-bad',
  'breaker-trips-hot',
  'plus-lead-too-thin',
  'plus-lead-broken',
  'plus-lead-chafed',
  'battery-lug-loose',
  'amp-terminal-loose',
  'amp-ground-open',
  'amp-ground-resistive',
  'ground-lead-too-thin',
  'shared-ground-screw',
  'both-leads-bad',
] as const;
