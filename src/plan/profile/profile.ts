import type { BikeValues } from '../../rig/fields.ts';
import type { StepId } from '../../steps/ids.ts';
import type { Findings } from '../../steps/outcome.ts';
import { workedOn } from '../../steps/plan/profile-source.ts';

/** What the stored profiles do is common practice of the trade, no published source. */

export type Tri = 'yes' | 'no' | 'unknown';

/** What a profile is known by: rear channels on, level lowered, bass boost in, EQ the same with the engine running. */
export type Property = 'rear' | 'lowered' | 'boosted' | 'sameEq';
export type ProfileNow = Readonly<Record<Property, Tri>>;

/** The properties, the one that is quickest to measure first. */
export const PROPERTIES: readonly Property[] = ['boosted', 'rear', 'sameEq', 'lowered'];

/** What each property is called when it has to be found out. */
export const PROPERTY_QUESTIONS: Readonly<Record<Property, string>> = {
  rear: 'whether the rear channels are on',
  lowered: 'whether the level is full or lowered',
  boosted: 'whether the bass boost is in or out',
  sameEq: 'whether the EQ stays the same when the engine runs',
};

type Does = Readonly<Record<Property, boolean>>;

/** The stored profiles, by what they do. That rear-on keeps the changing EQ is assumed. */
export const STORED_PROFILES = {
  unaltered: { rear: false, lowered: false, boosted: true, sameEq: false },
  'rear-on': { rear: true, lowered: false, boosted: true, sameEq: false },
  'amplified-same': { rear: true, lowered: true, boosted: false, sameEq: true },
  'amplified-changes': { rear: true, lowered: true, boosted: false, sameEq: false },
} as const satisfies Record<string, Does>;
export type StoredProfile = keyof typeof STORED_PROFILES;
export const EVERY_PROFILE = Object.keys(STORED_PROFILES) as readonly StoredProfile[];

export type DeliveredWith = BikeValues['deliveredWith'];

export const NOTHING_KNOWN_OF_PROFILE: ProfileNow = {
  rear: 'unknown',
  lowered: 'unknown',
  boosted: 'unknown',
  sameEq: 'unknown',
};

const agrees = (does: boolean, known: Tri) => known === 'unknown' || does === (known === 'yes');

/** The stored profiles that agree with what is known. As delivered, a bike with four speakers already has rear-on. */
export const candidates = (now: ProfileNow, deliveredWith?: DeliveredWith): readonly StoredProfile[] =>
  EVERY_PROFILE.filter(
    (id) =>
      !(id === 'unaltered' && deliveredWith === 'four') &&
      PROPERTIES.every((property) => agrees(STORED_PROFILES[id][property], now[property])),
  );

/** What the bike was built with, where that says something of this head unit: one from elsewhere remembers another bike. */
export const deliveredOf = (findings: Findings): DeliveredWith | undefined =>
  findings.outcome('planned-change') === 'unit-swapped' ? undefined : findings.rig.deliveredWith;

type Meaning = { readonly step: StepId; readonly yes: readonly string[]; readonly no: readonly string[] };

/** What the outcome of a measurement says about its property. Every other outcome says nothing. */
const MEASURED = {
  boosted: { step: 'tones-off', yes: ['boosted'], no: ['flat'] },
  rear: { step: 'rear-pair', yes: ['ok', 'uneven', 'one-only'], no: ['none'] },
  sameEq: { step: 'tones-running', yes: ['same'], no: ['changes'] },
  lowered: { step: 'top-step', yes: ['lowered'], no: ['full'] },
} as const satisfies Record<Property, Meaning>;
export const MEASURED_BY = {
  boosted: MEASURED.boosted.step,
  rear: MEASURED.rear.step,
  sameEq: MEASURED.sameEq.step,
  lowered: MEASURED.lowered.step,
} as const satisfies Record<Property, StepId>;

/** Whether one says yes where the other says no. */
const opposite = (one: Tri, other: Tri): boolean => one !== 'unknown' && other !== 'unknown' && one !== other;

const PAPER = {
  boosted: 'paper-boosted',
  rear: 'paper-rear',
  sameEq: 'paper-same-eq',
  lowered: 'paper-lowered',
} as const satisfies Record<Property, StepId>;

const everyProperty = (of: (property: Property) => Tri): ProfileNow => ({
  rear: of('rear'),
  lowered: of('lowered'),
  boosted: of('boosted'),
  sameEq: of('sameEq'),
});

/** What the meter says of one property, whatever somebody was told. */
function readOf(findings: Findings, property: Property): Tri {
  const { step, yes, no }: Meaning = MEASURED[property];
  const outcome = findings.outcome(step) ?? '';
  if (yes.includes(outcome)) return 'yes';
  return no.includes(outcome) ? 'no' : 'unknown';
}

/** Whether a reading was put aside, because what was told counts. */
export const putAside = (findings: Findings, property: Property): boolean =>
  findings.outcome('told-or-read') === 'told' && opposite(readOf(findings, property), toldOf(findings)[property]);

/** What the meter says. */
export const measuredProfile = (findings: Findings): ProfileNow =>
  everyProperty((property) => (putAside(findings, property) ? 'unknown' : readOf(findings, property)));

/** Whether the step that reads a property was done, and left it open. */
export const isUnclear = (findings: Findings, property: Property): boolean => {
  const outcome = findings.outcome(MEASURED_BY[property]);
  return outcome !== undefined && outcome !== 'cannot' && readOf(findings, property) === 'unknown';
};

/** What was told, unless a reading counts against it: a paper that is wrong in one thing is of another head unit. */
export const toldProfile = (findings: Findings): ProfileNow =>
  findings.outcome('told-or-read') === 'read' ? NOTHING_KNOWN_OF_PROFILE : toldOf(findings);

/** What a paper says, or that nobody ever changed it, which nobody can say after a reflash. */
function toldOf(findings: Findings): ProfileNow {
  const source = findings.outcome('profile-source');
  if (source === 'record') {
    return everyProperty((property) => {
      const said = findings.outcome(PAPER[property]);
      return said === 'yes' || said === 'no' ? said : 'unknown';
    });
  }
  if (source !== 'never' || workedOn(findings.outcome('planned-change'))) return NOTHING_KNOWN_OF_PROFILE;
  const { deliveredWith, deliveredAmp } = findings.rig;
  // Built with an amplifier, it may have been delivered with the lowered level or without.
  if (deliveredAmp === 'yes') return NOTHING_KNOWN_OF_PROFILE;
  const rear = deliveredWith === undefined ? 'unknown' : deliveredWith === 'four' ? 'yes' : 'no';
  return { rear, lowered: 'no', boosted: 'yes', sameEq: 'no' };
}

/** What is known of the stored profile: a reading beats a paper, a paper beats memory. */
export function profileNow(findings: Findings): ProfileNow {
  const [measured, told] = [measuredProfile(findings), toldProfile(findings)];
  return everyProperty((property) => (measured[property] === 'unknown' ? told[property] : measured[property]));
}

/** The properties in which the meter says the opposite of what was told. */
export function toldAgainstMeter(findings: Findings): readonly Property[] {
  const [measured, told] = [measuredProfile(findings), toldProfile(findings)];
  return PROPERTIES.filter((property) => opposite(measured[property], told[property]));
}
