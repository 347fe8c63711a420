import type { Answer, CertainFacts, PlanFacts, ProfileAnswer } from './decision.ts';
import { STORED_PROFILES } from './profile/profile.ts';

/** The decision table. Read from the top, the first match wins. Common practice, no published source. */

export interface EarlyRow {
  readonly id: string;
  readonly when: (facts: PlanFacts) => boolean;
  readonly answer: Answer;
}
export interface ProfileRow {
  readonly id: string;
  readonly when: (facts: CertainFacts) => boolean;
  readonly answer: ProfileAnswer;
}

const early = (id: string, when: EarlyRow['when'], answer: Answer): EarlyRow => ({ id, when, answer });
const row = (id: string, when: ProfileRow['when'], answer: ProfileAnswer): ProfileRow => ({ id, when, answer });

/** What is answered before the stored profile matters. */
export const EARLY_ROWS: readonly EarlyRow[] = [
  early('nothing-wrong-nothing-wished', (f) => f.nothingToDo, 'nothing-to-do'),
  early('bass-masked', (f) => f.bassGone === 'riding', 'bass-masked'),
  early('speed-volume', (f) => f.bassGone === 'with-speed', 'speed-volume'),
  early('unit-unknown', (f) => f.unit === 'unknown', 'find-the-unit'),
  early('unit-replaced', (f) => f.unit === 'replaced', 'replaced-unit'),
  early('rear-missed-without-rear', (f) => f.rearMissed && f.rear === 'none', 'which-rear'),
  early('dc-on-line-level', (f) => f.clashes.includes('dc-on-line-level'), 'dc-on-line-level'),
  early('none-counted', (f) => f.clashes.includes('none-counted'), 'none-counted'),
  early('amp-overlooked', (f) => f.clashes.includes('amp-overlooked'), 'amp-overlooked'),
  early(
    'fed-by-no-amp',
    (f) => (f.amp === 'none' && (f.front === 'amp' || f.rear === 'amp')) || f.clashes.includes('driven-by-none'),
    'on-no-amp',
  ),
  early(
    'amp-feeds-nothing',
    (f) => f.amp !== 'none' && f.front === 'unit' && (f.rear === 'none' || f.rear === 'unit'),
    'amp-feeds-nothing',
  ),
  early('amp-unknown', (f) => f.amp === 'unknown', 'find-the-amp'),
  early(
    'dealer-without-factory-amp',
    (f) => f.clashes.includes('dealer-without-factory-amp'),
    'dealer-without-factory-amp',
  ),
  early('factory-amp-silent', (f) => f.clashes.includes('factory-amp-silent'), 'factory-amp-silent'),
  early('told-against-meter', (f) => f.toldAgainstMeter, 'told-against-meter'),
  early('no-profile-fits', (f) => f.profiles.length === 0, 'no-such-profile'),
];

const noAmp = (f: CertainFacts) => f.amp === 'none';
const needsUnaltered = (f: CertainFacts) => f.amp === 'unaltered';
const lowered = (f: CertainFacts) => STORED_PROFILES[f.profile].lowered;
const rearClosed = (f: CertainFacts) => f.profile === 'unaltered';
const takesRearOutputs = (f: CertainFacts) => f.rear === 'amp' && f.inputs === 'own';
const allOnAmp = (f: CertainFacts) => f.front === 'amp' && f.rear !== 'unit';
const frontOnUnit = (f: CertainFacts) => f.front === 'unit';

/** What the stored profile decides, for a build that can exist and an amplifier that is known. */
export const PROFILE_ROWS: readonly ProfileRow[] = [
  row('from-new-amp-gone-lowered', (f) => f.fromNew && noAmp(f) && lowered(f), 'back-if-stored'),
  row('from-new-amp-for-unaltered-lowered', (f) => f.fromNew && needsUnaltered(f) && lowered(f), 'back-if-stored'),

  row('front-only-lowered', (f) => noAmp(f) && f.rear === 'none' && lowered(f), 'back-to-unaltered'),
  row('front-only-rear-closed', (f) => noAmp(f) && f.rear === 'none' && rearClosed(f), 'stay'),
  row('front-only-rear-open', (f) => noAmp(f) && f.rear === 'none', 'stay'),
  row('rear-on-unit-lowered', (f) => noAmp(f) && lowered(f), 'back-to-rear-on'),
  row('rear-on-unit-closed', (f) => noAmp(f) && rearClosed(f), 'enable-rear'),
  row('rear-on-unit-open', noAmp, 'stay'),

  row(
    'unaltered-amp-and-rear-on-unit-lowered',
    (f) => needsUnaltered(f) && f.rear === 'unit' && lowered(f),
    'back-to-rear-on',
  ),
  row(
    'unaltered-amp-and-rear-on-unit-closed',
    (f) => needsUnaltered(f) && f.rear === 'unit' && rearClosed(f),
    'enable-rear',
  ),
  row('unaltered-amp-and-rear-on-unit-open', (f) => needsUnaltered(f) && f.rear === 'unit', 'stay'),
  row(
    'unaltered-amp-on-rear-outputs-lowered',
    (f) => needsUnaltered(f) && takesRearOutputs(f) && lowered(f),
    'back-to-rear-on',
  ),
  row(
    'unaltered-amp-on-rear-outputs-closed',
    (f) => needsUnaltered(f) && takesRearOutputs(f) && rearClosed(f),
    'enable-rear',
  ),
  row('unaltered-amp-lowered', (f) => needsUnaltered(f) && lowered(f), 'back-to-unaltered'),
  row('unaltered-amp-full', needsUnaltered, 'stay'),

  row('all-on-amp-full-same-eq', (f) => allOnAmp(f) && !lowered(f) && f.sameEqWanted, 'amplified-same'),
  row('all-on-amp-full', (f) => allOnAmp(f) && !lowered(f), 'amplified-any'),
  row('all-on-amp-same-eq', (f) => allOnAmp(f) && f.profile === 'amplified-same', 'stay'),
  row('all-on-amp-eq-changes-unwanted', (f) => allOnAmp(f) && f.sameEqWanted, 'amplified-same'),
  row('all-on-amp-eq-changes', allOnAmp, 'stay'),

  row('front-on-unit-lowered', (f) => frontOnUnit(f) && lowered(f), 'move-or-back'),
  row('front-on-unit-amp-inputs-closed', (f) => frontOnUnit(f) && rearClosed(f) && takesRearOutputs(f), 'enable-rear'),
  row('front-on-unit-amp-on-front-pair', (f) => frontOnUnit(f) && rearClosed(f), 'stay'),
  row('front-on-unit-rear-open', frontOnUnit, 'stay'),
  row('rear-on-unit-front-on-amp-lowered', lowered, 'move-or-back'),
  row('rear-on-unit-front-on-amp-closed', rearClosed, 'enable-rear'),
  row('rear-on-unit-front-on-amp-open', () => true, 'stay'),
];
