/** What keeps the head unit from sending anything to the rear. */
export const REAR_NOT_SENT = [
  'fader-or-balance-off',
  'rear-control-off',
  'rear-channels-disabled',
  'profile-reverted',
  'replaced-unit-setting',
  'adapter-without-rear',
] as const;

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
