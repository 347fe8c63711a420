/** Where cases and the bike are kept on this device: one open case per flow. */
export const CASE_KEY = 'sidestand.case.';
export const BIKE_KEY = 'sidestand.bike';

/** The fragment of an address that asks for a new case. */
export const NEW_CASE = 'new';
