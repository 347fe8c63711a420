import type { Axle, Corner } from '../rig/corner.ts';
import type { Situation, Step } from './step.ts';

/**
 * What a step is about, where a bike has several of it: a speaker, the pair of an axle, or an amplifier, which goes by the
 * axle that it drives. A role is whichever one the answers make it: the silent speaker, or the amplifier that is meant.
 */
export type Subject = Corner | Axle | 'silent' | 'meant';

/** Finds what a role is, as far as the answers tell. */
type Role = (situation: Situation) => Subject | undefined;

/** Which step it is, what it is about, and what it is about by itself. */
export interface About {
  readonly step: string;
  readonly subject: Subject;
  readonly first: Subject;
  /** Where the first of its subjects is a role. */
  readonly role?: Role;
}

/** The thing itself that a key is about, for a step with these subjects: a role is what the answers make it. */
export const thingOf = ({ first, role }: About, subject: string | undefined, situation: Situation) =>
  subject === undefined || subject === first ? (role ? role(situation) : first) : subject;

/** A step that can be asked of several things. By itself it is about the first of them. */
export type OfEach<S extends Step, First extends Subject, Other extends Subject> = S & {
  readonly subjects: readonly [First, ...Other[]];
  readonly of: (subject: First | Other) => S;
};

/** What the answers to a step about one of its subjects go by. About its first one they go by its id alone. */
export const withSubject = <Id extends string, First extends Subject, S extends Subject>(
  id: Id,
  subject: S,
  first: First,
): S extends First ? Id : `${Id}@${S}` =>
  (subject === (first as Subject) ? id : `${id}@${subject}`) as S extends First ? Id : `${Id}@${S}`;

/**
 * Makes a step of each of its subjects: each has answers, and a column in the tables, of its own. Those that nobody names
 * are never made. Where the first is a role, `role` finds what it is.
 * @__NO_SIDE_EFFECTS__
 */
export function ofEach<S extends Step, const First extends Subject, const Other extends Subject>(
  subjects: readonly [First, ...Other[]],
  make: (subject: First | Other) => S,
  role?: Role,
): OfEach<S, First, Other> {
  const [first] = subjects;
  const made = new Map<Subject, S>();
  const one = (subject: First | Other): S => {
    const step = make(subject);
    return {
      ...step,
      id: withSubject(step.id, subject, first),
      about: { step: step.id, subject, first, ...(role && { role }) },
    };
  };
  const of = (subject: First | Other): S => {
    const known = made.get(subject) ?? one(subject);
    if (!(subjects as readonly Subject[]).includes(subject))
      throw new RangeError(`${known.about?.step} must be about one of ${subjects.join(', ')}, got ${subject}`);
    made.set(subject, known);
    return known;
  };
  const whole = { ...one(first), subjects, of };
  made.set(first, whole);
  return whole;
}

/** What a step is called, whatever it is about. */
export const stepName = ({ id, about }: Pick<Step, 'id' | 'about'>): string => about?.step ?? id;

/** A step, asked of one of its subjects. */
export const about = <S extends Step, Of extends Subject>(step: { readonly of: (subject: Of) => S }, subject: Of): S =>
  step.of(subject);

/** A step about each of its subjects, the first of them first. One that has none is one step. */
export const eachOf = (step: Step | OfEach<Step, Subject, Subject>): readonly Step[] =>
  'subjects' in step ? step.subjects.map((subject) => step.of(subject)) : [step];
