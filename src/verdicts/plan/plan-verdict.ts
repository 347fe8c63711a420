import type { Remedy, Verdict } from '../verdict.ts';
import { type PlanCase, planCase, wantsMirroring } from './facts.ts';
import { type Figures, figuresOf } from './figures.ts';
import { ASSUMED_NEED, assumedNeed, SAME_EQ_NOT_TO_BE_HAD } from './wording.ts';

/** The steps whose answers speak for a plan, in the order they are asked. */
export const BUILD_STEPS = [
  'planned-change',
  'wrong-now',
  'unit-kind',
  'amp-count',
  ...[1, 2, 3].flatMap((n) => [`amp-${n}-kind`, `amp-${n}-turn-on`, `amp-${n}-needs`]),
  'front-build',
  'rear-build',
  'rear-inputs',
  'wish-same-eq',
];
export const PROFILE_STEPS = [
  'profile-source',
  'delivered-with',
  'paper-rear',
  'paper-lowered',
  'paper-boosted',
  'paper-same-eq',
  'tones-off',
  'rear-pair',
  'tones-running',
  'top-step',
];

/** What a verdict of this flow leaves out when it has nothing to say. */
type Written = Omit<Remedy, 'numbers' | 'cautions' | 'notBuy' | 'tools' | 'minutes'> & Partial<Remedy>;
type Parts = Pick<Verdict, 'id' | 'title'> &
  Partial<Pick<Verdict, 'faults' | 'mends' | 'article'>> & {
    remedy(c: PlanCase, figures: Figures): Written;
  };

/** A verdict of this flow: its own words, and what the other wishes of the case add to them. */
export function planVerdict({ faults = [], mends = [], article = 'what-a-reflash-is', ...parts }: Parts): Verdict {
  return {
    id: parts.id,
    title: parts.title,
    faults,
    mends,
    article,
    evidence: [...BUILD_STEPS, ...PROFILE_STEPS],
    remedy: (findings) => {
      const c = planCase(findings);
      const own: Remedy = {
        numbers: [],
        cautions: [],
        notBuy: [],
        tools: 'none',
        minutes: 0,
        ...parts.remedy(c, figuresOf(c)),
      };
      return withWishes(c, withAssumedNeed(c, own));
    },
  };
}

const CHANGES: readonly string[] = [
  'enable-rear',
  'back-to-unaltered',
  'back-to-rear-on',
  'amplified-same',
  'amplified-any',
  'move-or-back',
];

/** What comes first and what stays until then, for a build that changes at the same time. */
function orderOfWork({ findings, answer, facts }: PlanCase): readonly string[] {
  const changes = CHANGES.includes(answer);
  switch (findings.outcome('planned-change')) {
    case 'amp-exchanged':
      if (!changes)
        return answer === 'stay' ? ['Exchange the amplifier. The profile stays as it is, before and after.'] : [];
      return [
        'Leave the profile as it is until the new amplifier is in: the old one was set up for it.',
        'Fit the new amplifier with its gain at minimum, and do not play loud until the profile is changed.',
      ];
    case 'amp-added':
      return changes && facts.amp !== 'none'
        ? ['First fit and wire the amplifier, gain at minimum. Have the profile changed after that, not before.']
        : [];
    case 'rear-on-unit':
      return changes ? ['First fit and wire the rear speakers. Have the profile changed after that.'] : [];
    default:
      return [];
  }
}

function mirroring({ facts }: PlanCase): readonly string[] {
  if (facts.unit === 'replaced') {
    return [
      'Phone mirroring: the setting of the replaced head unit itself. The bike’s headset module has no say in it.',
    ];
  }
  if (facts.unit === 'unknown') return ['Phone mirroring: first find out which head unit it is.'];
  return [
    'Phone mirroring without a headset: have only the setting of the headset module changed. Ask first who has the tool for that module, usually a specialist or a dealer. The output profile stays out of it.',
  ];
}

function notToBuy({ findings, decision, answer }: PlanCase): readonly string[] {
  const plan = findings.outcome('planned-change');
  const clash = decision.sameEqClash;
  return [
    ...(plan === 'louder' && answer !== 'replaced-unit'
      ? ['A reflash to play louder. It adds no power: more sensitive speakers or an amplifier do.']
      : []),
    ...(clash && !answer.startsWith('same-eq') ? [`A profile for the same EQ. ${SAME_EQ_NOT_TO_BE_HAD[clash]}`] : []),
    ...(wantsMirroring(findings)
      ? ['Another output profile for phone mirroring. It changes the sound and not the mirroring.']
      : []),
  ];
}

function wrongNow({ findings, answer }: PlanCase): readonly string[] {
  const wrong = findings.outcome('wrong-now');
  if (answer === 'which-rear' || (wrong !== 'other' && wrong !== 'rear-silent')) return [];
  return ['Still wrong after that? Then start with the complaint itself: its own questions look for the fault.'];
}

/** A need that is only assumed makes the answer no surer than that, and is worth a look before anything is paid for. */
function withAssumedNeed(c: PlanCase, remedy: Remedy): Remedy {
  const changes = CHANGES.includes(c.answer);
  if (!assumedNeed(c) || !(changes || c.answer === 'stay')) return remedy;
  return {
    ...remedy,
    certainty: 'likely',
    howSure: `What the amplifier needs is only assumed. ${remedy.howSure}`,
    background: [remedy.background, ASSUMED_NEED].filter(Boolean).join(' '),
    fix: [...(changes ? ['Before you pay for anything, find out what the amplifier needs.'] : []), ...remedy.fix],
  };
}

/** Adds what the rest of the case asks for. It never changes the answer itself. */
function withWishes(c: PlanCase, remedy: Remedy): Remedy {
  const wanted = wantsMirroring(c.findings) && c.answer !== 'mirroring-only' && c.answer !== 'replaced-unit';
  return {
    ...remedy,
    fix: [...orderOfWork(c), ...remedy.fix, ...(wanted ? mirroring(c) : []), ...wrongNow(c)],
    notBuy: [...new Set([...remedy.notBuy, ...notToBuy(c)])],
  };
}
