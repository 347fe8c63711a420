import { ampDriving } from '../rig/rig.ts';
import type { Findings } from '../steps/outcome.ts';
import { candidates, measuredProfile, STORED_PROFILES, toldProfile } from './profile/profile.ts';

/** Answers that cannot all be true, whatever is stored. Common practice of the trade, no published source. */
export type AnswerClash =
  | 'driven-by-none'
  | 'none-counted'
  | 'amp-overlooked'
  | 'dc-on-line-level'
  | 'dealer-without-factory-amp'
  | 'factory-amp-silent';

const ampsOf = (findings: Findings) => findings.rig.amps ?? [];
const everyAmpAdded = (findings: Findings) =>
  ampsOf(findings).length > 0 && ampsOf(findings).every(({ kind }) => kind === 'add-on');

/** A pair hangs on an amplifier, and each one that was counted is known to drive something else. */
function drivenByNone(findings: Findings): boolean {
  const amps = ampsOf(findings);
  if (amps.length < 2 || amps.some(({ drives }) => drives === undefined)) return false;
  const missed = (pair: 'front' | 'rear') =>
    findings.outcome(`${pair}-build`) === 'amp' && !ampDriving(findings.rig, pair);
  return missed('front') || missed('rear');
}

/** Whether it matters who did the work: only a paper says that the level was lowered, and every amplifier was added. */
export function dealerMatters(findings: Findings): boolean {
  if (findings.outcome('profile-source') !== 'record' || !everyAmpAdded(findings)) return false;
  const told = candidates(toldProfile(findings));
  const measured = candidates(measuredProfile(findings));
  const lowered = (profile: (typeof told)[number]) => STORED_PROFILES[profile].lowered;
  return told.length > 0 && told.every(lowered) && !measured.every(lowered);
}

const HOLDS: Readonly<Record<AnswerClash, (findings: Findings) => boolean>> = {
  'driven-by-none': drivenByNone,
  'none-counted': (f) =>
    (f.outcome('planned-change') === 'amp-added' || f.outcome('planned-change') === 'amp-exchanged') &&
    f.rig.amps?.length === 0,
  'amp-overlooked': (f) => f.outcome('hidden-amp') === 'yes' && f.rig.amps?.length === 0,
  'dc-on-line-level': (f) => ampsOf(f).some((amp) => amp.turnOn === 'dc' && amp.input === 'line'),
  'dealer-without-factory-amp': (f) => f.outcome('paper-by') === 'dealer' && dealerMatters(f),
  'factory-amp-silent': (f) =>
    f.outcome('factory-amp-answers') === 'no' && ampsOf(f).some(({ kind }) => kind === 'factory'),
};
export const ANSWER_CLASHES = Object.keys(HOLDS) as readonly AnswerClash[];

export const answerClashes = (findings: Findings): readonly AnswerClash[] =>
  ANSWER_CLASHES.filter((clash) => HOLDS[clash](findings));
