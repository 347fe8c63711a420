import type { DeliveredWith, ProfileNow, Property } from './profile.ts';

/** What no stored profile does at the same time. Common practice of the trade, no published source. */

export interface ProfileClash {
  readonly properties: readonly Property[];
  /** What cannot both be true. */
  readonly says: string;
  readonly likely: string;
  readonly check: string;
}

type ClashRow = ProfileClash & { readonly needs: Partial<ProfileNow>; readonly deliveredWith?: DeliveredWith };

const clash = (
  needs: Partial<ProfileNow>,
  says: string,
  likely: string,
  check: string,
  deliveredWith?: DeliveredWith,
): ClashRow => ({
  needs,
  properties: Object.keys(needs) as Property[],
  says,
  likely,
  check,
  ...(deliveredWith && { deliveredWith }),
});

const REPEAT_TONES =
  'Take the two tones again at a low level: bass and treble controls flat, loudness and speed volume off, phone equaliser off.';
const REPEAT_TOP =
  'Find the loudest clean step again with the 80 Hz tone, phone volume full, and compare it with the supply.';
const REPEAT_REAR = 'Put the fader in the middle, play a tone and read the rear pairs at the head unit again.';

const CLASHES: readonly ClashRow[] = [
  clash(
    { lowered: 'yes', boosted: 'yes' },
    'A lowered level and the bass boost. No stored profile has both.',
    'A bass control or loudness lifts the bass, or the loudest step was not reached, or the profile went back unseen.',
    `${REPEAT_TONES} ${REPEAT_TOP}`,
  ),
  clash(
    { lowered: 'no', boosted: 'no' },
    'The full level and no bass boost. No stored profile has both.',
    'A bass control cuts the bass, or the 80 Hz reading was so close to the limit that clipping hid the boost.',
    REPEAT_TONES,
  ),
  clash(
    { lowered: 'no', sameEq: 'yes' },
    'The full level and the same EQ with the engine running. No stored profile is known to have both.',
    'The tones were too close to the limit, a treble control cut what changes, or the change lies above the tones that were read.',
    'Take all tones again at a low level, engine off and running, 1 kHz and 4 kHz as well.',
  ),
  clash(
    { boosted: 'yes', sameEq: 'yes' },
    'The bass boost and the same EQ with the engine running. No stored profile is known to have both.',
    'The volume step moved when the engine started, or the change lies above the tones that were read.',
    'Take all tones again at a low level, engine off and running, 1 kHz and 4 kHz as well.',
  ),
  clash(
    { lowered: 'yes', rear: 'no' },
    'A lowered level and rear channels that are off. Every amplified profile has them on.',
    'The fader is at the front, a rear plug is off, or the level only looks low.',
    `${REPEAT_REAR} ${REPEAT_TOP}`,
  ),
  clash(
    { boosted: 'no', rear: 'no' },
    'No bass boost and rear channels that are off. Every amplified profile has them on.',
    'The fader is at the front, or a bass control cuts the bass.',
    `${REPEAT_REAR} ${REPEAT_TONES}`,
  ),
  clash(
    { sameEq: 'yes', rear: 'no' },
    'The same EQ with the engine running and rear channels that are off. No stored profile has both.',
    'The fader is at the front, a rear plug is off, or the tones were too close to the limit.',
    `${REPEAT_REAR} ${REPEAT_TONES}`,
  ),
  clash(
    { rear: 'no' },
    'Rear channels that are off on a bike built with rear speakers. As delivered they are on.',
    'The fader is at the front, a rear plug is off, or the head unit comes from another bike and remembers that one.',
    REPEAT_REAR,
    'four',
  ),
];

/** Which of the known properties no stored profile has together, the most telling first. Empty when one fits. */
export const whyNoProfile = (now: ProfileNow, deliveredWith?: DeliveredWith): readonly ProfileClash[] =>
  CLASHES.filter(
    (row) =>
      (row.deliveredWith === undefined || row.deliveredWith === deliveredWith) &&
      row.properties.every((property) => now[property] === row.needs[property]),
  );
