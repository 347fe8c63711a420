import { conditionAt } from '../conditions.ts';
import type { ConstantStepId, StepId } from '../ids.ts';
import { type Findings, findingsFrom, outcomeNamed } from '../outcome.ts';
import type { ReadingStep, Situation, Step, Words } from '../step.ts';
import { type OfEach, ofEach } from '../subject.ts';
import { ampPair } from './the-amp.ts';
import type { AmpPair } from './which-amp.ts';

/** The steps whose answers are about one amplifier: about another one they tell nothing. */
const OF_AN_AMP: readonly ConstantStepId[] = [
  'amp-channels',
  'amp-dc',
  'amp-goes-off',
  'amp-history',
  'amp-light',
  'amp-runs',
  'amp-signs',
  'amp-switches',
  'amp-terminals',
  'amp-wires-to-frame',
  'between-look',
  'body-fuse',
  'copper-look',
  'fuse-lamp',
  'breaker-look',
  'fuse-look',
  'fuse-sides',
  'fuses-blown',
  'gain-down',
  'input-plug',
  'joint-drop',
  'key-positions',
  'lead-off-amp',
  'lowest-volts',
  'one-by-one',
  'pin-look',
  'plus-path',
  'recover',
  'remote-jumper',
  'remote-key-off',
  'remote-lamp',
  'remote-source',
  'remote-start-lamp',
  'remote-volts',
  'rings-look',
  'sense-dc',
  'sense-level',
  'shared-screw',
  'signal-plug-out',
  'spare-fuse',
  'speakers-unplugged',
  'supply-under-load',
  'supply-wiggle',
  'temporary-leads',
  'wakes-when-loud',
  'water-look',
];
export const isOfAnAmp = (id: string): boolean => (OF_AN_AMP as readonly string[]).includes(id);

/** What is known, for a question about one amplifier: answers about the other are not there. */
export function situationAt<S extends Situation>(pair: AmpPair, situation: S): S {
  const isMeant = ampPair(situation) === pair;
  const behind = `@${pair}`;
  const others = Object.entries(situation.facts).filter(([key]) => isMeant || !isOfAnAmp(key));
  const own = Object.entries(situation.facts).flatMap(([key, answer]) =>
    key.endsWith(behind) && isOfAnAmp(key.slice(0, -behind.length))
      ? [[key.slice(0, -behind.length), answer] as const]
      : [],
  );
  return { ...situation, facts: Object.fromEntries([...others, ...own]), amp: pair };
}

function findingsAt(pair: AmpPair, f: Findings): Findings {
  const isMeant = ampPair(f) === pair;
  const own = (id: string) => `${id}@${pair}` as StepId;
  return findingsFrom(
    situationAt(pair, { rig: f.rig, facts: f.facts }),
    (id) => {
      if (id === 'which-amp') return pair;
      return isOfAnAmp(id) ? (f.outcome(own(id)) ?? (isMeant ? outcomeNamed(f, id) : undefined)) : outcomeNamed(f, id);
    },
    (id) => {
      const isOwn = isOfAnAmp(id) && (!isMeant || f.outcome(own(id)) !== undefined);
      return f.values(isOwn ? own(id) : (id as StepId));
    },
  );
}

/** Whether a bike has an amplifier for these speakers, or may. One that drives everything counts as the rear’s. */
function mayHave(pair: AmpPair, { amps, frontFedBy }: Situation['rig']): boolean {
  if (pair === 'front' && frontFedBy === 'unit') return false;
  return amps?.some(({ drives }) => drives === undefined || (drives === 'front') === (pair === 'front')) ?? true;
}

/** A step that is written about the amplifier that is meant, asked of one by its speakers. */
function askedOf<S extends Step>(pair: AmpPair, step: S): S {
  const at = (situation: Situation) => situationAt(pair, situation);
  const said = (words: Words): Words => (typeof words === 'function' ? (s) => words(at(s)) : words);
  const { how, sensible, givenUnder, conditions } = step;
  const common = {
    ...step,
    short: said(step.short),
    ask: said(step.ask),
    phone: said(step.phone),
    how: typeof how === 'function' ? (s: Situation) => how(at(s)) : how,
    sensible: (f: Findings) => mayHave(pair, f.rig) && sensible?.(findingsAt(pair, f)) !== false,
    ...(givenUnder && { givenUnder: givenUnder.map((id) => (isOfAnAmp(id) ? `${id}@${pair}` : id)) }),
    ...(conditions && { conditions: conditions.map((id) => conditionAt(pair, id)) }),
  };
  return step.kind === 'reading' ? { ...common, ...readAt(at, step as unknown as ReadingStep) } : common;
}

/** What a measurement works out, from what is known of its amplifier. */
function readAt(
  at: (situation: Situation) => Situation,
  { probes, unusable, bands, judge, healthy }: ReadingStep,
): Partial<ReadingStep> {
  return {
    probes: typeof probes === 'function' ? (s) => probes(at(s)) : probes,
    ...(unusable && { unusable: (values, s) => unusable(values, at(s)) }),
    bands: (reading, values, s) => bands(reading, values, at(s)),
    judge: (values, s) => judge(values, at(s)),
    healthy: (values, s) => healthy(values, at(s)),
  };
}

/**
 * A step about one amplifier: the one that is meant, or one by the speakers that it drives. It is written about the one
 * that is meant, and for the others it sees what is known of them.
 * @__NO_SIDE_EFFECTS__
 */
export const ofEachAmp = <S extends Step>(step: S): OfEach<S, 'meant', AmpPair> =>
  ofEach(['meant', 'rear', 'front'], (subject) => (subject === 'meant' ? step : askedOf(subject, step)), ampPair);
