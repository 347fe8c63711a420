import { type Observation, posterior, shareOf } from '../../inference/posterior.ts';
import { compile } from '../../inference/table.ts';
import { unpack } from '../../likelihoods/packed.ts';
import table from '../../likelihoods/stored-profile.json' with { type: 'json' };
import type { StepId } from '../../steps/ids.ts';
import { type Findings, outcomeNamed } from '../../steps/outcome.ts';
import {
  candidates,
  deliveredOf,
  EVERY_PROFILE,
  MEASURED_BY,
  measuredProfile,
  PROPERTIES,
  profileNow,
  putAside,
  type StoredProfile,
} from './profile.ts';

/*
 * Which profile is stored, and how surely: by the one inference that judges everything. Its table is made from the model,
 * from bikes with each profile. What a profile demands is for the rows to say.
 */

/** What is answered under one condition fails together: the same controls and meter, the same fader, the same ear, paper. */
const SEEN: Readonly<Partial<Record<StepId, string>>> = {
  'tones-off': 'tones',
  'tones-running': 'tones',
  'rear-pair': 'rear',
  'top-step': 'level',
  'worse-how': 'ears',
  'paper-rear': 'paper',
  'paper-lowered': 'paper',
  'paper-boosted': 'paper',
  'paper-same-eq': 'paper',
};
const MEASURED: readonly StepId[] = ['tones-off', 'tones-running', 'rear-pair', 'top-step'];
const PAPERS: readonly StepId[] = ['paper-rear', 'paper-lowered', 'paper-boosted', 'paper-same-eq'];
const BUILD: readonly StepId[] = ['delivered-with', 'delivered-amp'];

let model: ReturnType<typeof compile> | undefined;
const theModel = () => {
  model ??= compile(unpack(table));
  return model;
};

function observationsOf(findings: Findings): readonly Observation[] {
  const { rig } = findings;
  const known: Observation[] = [];
  const toldIsOut = findings.outcome('told-or-read') === 'read';
  for (const [step, group] of Object.entries(SEEN)) {
    const outcome = outcomeNamed(findings, step);
    const confirmed = findings.checked?.has(step) ?? false;
    const fromPaper = PAPERS.includes(step as StepId);
    if (fromPaper && (findings.outcome('profile-source') !== 'record' || toldIsOut)) continue;
    if (PROPERTIES.some((property) => MEASURED_BY[property] === step && putAside(findings, property))) continue;
    if (outcome !== undefined && outcome !== 'cannot') known.push({ step, outcome, group, trust: 'seen', confirmed });
  }
  const build = { 'delivered-with': deliveredOf(findings), 'delivered-amp': rig.deliveredAmp };
  for (const step of BUILD) {
    const outcome = build[step as keyof typeof build];
    if (outcome !== undefined) known.push({ step, outcome, group: step, trust: 'build' });
  }
  const told = (step: string, outcome: string) => known.push({ step, outcome, group: step, trust: 'told' });
  if (findings.outcome('profile-source') === 'never' && !toldIsOut) told('profile-source', 'never');
  if (findings.outcome('planned-change') === 'after-reflash') told('planned-change', 'after-reflash');
  return known;
}

export interface Believed {
  readonly profile: StoredProfile;
  readonly shareRatio: number;
}

/**
 * The profiles that no reading contradicts, each with its share, the likeliest first. Empty when what is known fits none:
 * readings that no profile has together, or a paper that describes one nobody stored.
 */
export function believed(findings: Findings, by: 'all' | 'readings' = 'all'): readonly Believed[] {
  const deliveredWith = deliveredOf(findings);
  const possible = candidates(measuredProfile(findings), deliveredWith);
  if (candidates(profileNow(findings), deliveredWith).length === 0) return [];
  const observations = observationsOf(findings).filter(
    ({ step, trust }) => by === 'all' || trust === 'build' || MEASURED.includes(step as StepId),
  );
  const known = posterior(theModel(), { observations, repairs: [] });
  const shares = possible.map((profile) => [profile, shareOf(theModel(), known, profile)] as const);
  const total = shares.reduce((sum, [, share]) => sum + share, 0);
  return shares
    .map(([profile, share]): Believed => ({ profile, shareRatio: total > 0 ? share / total : 1 / shares.length }))
    .toSorted((a, b) => b.shareRatio - a.shareRatio);
}

/** The likeliest profiles that together have so much of the belief, in the order in which profiles are named. */
export function covering(shares: readonly Believed[], shareRatio: number): readonly StoredProfile[] {
  const kept: StoredProfile[] = [];
  let sum = 0;
  for (const one of shares) {
    if (sum >= shareRatio) break;
    kept.push(one.profile);
    sum += one.shareRatio;
  }
  return EVERY_PROFILE.filter((profile) => kept.includes(profile));
}
