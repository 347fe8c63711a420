import { AMP_GROUPS } from '../steps/plan/amp-groups.ts';
import { namesOf } from './amp-names.ts';
import { assumedNeedOf } from './amp-need.ts';
import { type PlanCase, planCase, wantsMirroring } from './facts.ts';
import { type Figures, figuresOf } from './figures.ts';
import type { PlanRemedy, PlanVerdict } from './verdict.ts';
import { ASSUMED_NEED, assumedIn, sameEqNotToBeHad } from './wording.ts';

/** The steps whose answers speak for a plan, in the order they are asked. */
export const BUILD_STEPS = [
  'planned-change',
  'wrong-now',
  'unit-kind',
  'amp-count',
  'amp-layout',
  ...Object.values(AMP_GROUPS).flatMap(({ id }) => [`${id}-kind`, `${id}-turn-on`, `${id}-signal`, `${id}-needs`]),
  'front-build',
  'rear-build',
  'rear-inputs',
  'wish-same-eq',
  'hidden-amp',
  'factory-amp-answers',
];
export const PROFILE_STEPS = [
  'profile-source',
  'delivered-with',
  'paper-rear',
  'paper-lowered',
  'paper-boosted',
  'paper-same-eq',
  'paper-by',
  'tones-off',
  'rear-pair',
  'tones-running',
  'top-step',
];

/** What a verdict of this flow leaves out when it has nothing to say. */
type Written = Omit<PlanRemedy, 'numbers' | 'cautions' | 'notBuy' | 'tools' | 'minutes'> & Partial<PlanRemedy>;
type Parts = Pick<PlanVerdict, 'id' | 'title'> &
  Partial<Pick<PlanVerdict, 'faults' | 'mends' | 'article'>> & {
    remedy(c: PlanCase, figures: Figures): Written;
  };

/** A verdict of this flow: its own words, and what the other wishes of the case add to them. */
export function planVerdict({ faults = [], mends = [], article = 'what-a-reflash-is', ...parts }: Parts): PlanVerdict {
  return {
    id: parts.id,
    title: parts.title,
    faults,
    mends,
    article,
    evidence: [...BUILD_STEPS, ...PROFILE_STEPS],
    remedy: (findings) => {
      const c = planCase(findings);
      const figures = figuresOf(c);
      const own: PlanRemedy = {
        numbers: [],
        cautions: [],
        notBuy: [],
        tools: 'none',
        minutes: 0,
        ...parts.remedy(c, figures),
      };
      return withWishes(c, figures, withAssumedNeed(c, own));
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
        return answer === 'stay'
          ? ['Exchange the amplifier, gain at minimum first. The profile stays as it is, before and after.']
          : [];
      return [
        'Leave the profile as it is until the new amplifier is in: the old one was set up for it.',
        'Fit the new amplifier with its gain at minimum, and do not play loud until the profile is changed.',
      ];
    case 'amp-added':
      return changes && facts.amp !== 'none'
        ? ['First fit and wire the amplifier, gain at minimum. Have the profile changed after that, not before.']
        : [];
    case 'amp-removed':
      return facts.amp === 'none' && (changes || answer === 'stay')
        ? [
            'First take the amplifier out and put its speakers on the head unit. Speakers below 4 Ω were made for the amplifier: on the head unit its outputs run hot.',
            ...(changes ? ['Have the profile changed after that, not before.'] : []),
          ]
        : [];
    case 'rear-on-unit':
      return changes ? ['First fit and wire the rear speakers. Have the profile changed after that.'] : [];
    default:
      return [];
  }
}

/** What helps somebody who wants it louder or cleaner without an amplifier. */
function louder({ findings, facts, answer }: PlanCase, f: Figures): readonly string[] {
  if (findings.outcome('planned-change') !== 'louder' || facts.amp !== 'none') return [];
  if (answer !== 'stay' && answer !== 'enable-rear') return [];
  return [
    `Boomy or harsh when loud: turn the bass control down first. The boosted bass takes ${f.bassTimes} the power of the rest and clips first.`,
    'Louder: more sensitive speakers, or an amplifier.',
  ];
}

/** Leads at the battery are part of the work. */
const worksAtTheBattery = ({ findings, answer }: PlanCase) =>
  ['amp-added', 'amp-exchanged', 'amp-removed'].includes(findings.outcome('planned-change') ?? '') &&
  (answer === 'stay' || CHANGES.includes(answer));

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

function notToBuy(c: PlanCase): readonly string[] {
  const { findings, decision, answer } = c;
  const plan = findings.outcome('planned-change');
  const clash = decision.sameEqClash;
  return [
    ...(plan === 'louder' && answer !== 'replaced-unit'
      ? [
          'A reflash to play louder or with less boom. It adds no power, and a profile without the boost lowers everything.',
        ]
      : []),
    ...(clash && !answer.startsWith('same-eq')
      ? [
          answer === 'move-or-back'
            ? 'A profile for the same EQ before every pair is on an amplifier.'
            : `A profile for the same EQ: ${sameEqNotToBeHad(c, clash)}`,
        ]
      : []),
    ...(wantsMirroring(findings) && answer !== 'mirroring-only'
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
function withAssumedNeed(c: PlanCase, remedy: PlanRemedy): PlanRemedy {
  const assumed = assumedIn(c);
  const changes = CHANGES.includes(c.answer);
  if (!assumed || !(changes || c.answer === 'stay')) return remedy;
  const who = namesOf(c, (amp) => assumedNeedOf(amp) === assumed);
  return {
    ...remedy,
    certainty: 'likely',
    howSure: `What ${who} was made for is only assumed. ${remedy.howSure}`,
    background: [remedy.background, ASSUMED_NEED[assumed]].filter(Boolean).join(' '),
    fix: [...(changes ? [`Before you pay for anything, find out what ${who} was made for.`] : []), ...remedy.fix],
  };
}

/** Adds what the rest of the case asks for. It never changes the answer itself. */
function withWishes(c: PlanCase, f: Figures, remedy: PlanRemedy): PlanRemedy {
  const wanted = wantsMirroring(c.findings) && c.answer !== 'mirroring-only' && c.answer !== 'replaced-unit';
  return {
    ...remedy,
    fix: [...louder(c, f), ...orderOfWork(c), ...remedy.fix, ...(wanted ? mirroring(c) : []), ...wrongNow(c)],
    cautions: [...remedy.cautions, ...(worksAtTheBattery(c) ? (['minus-first'] as const) : [])],
    notBuy: [...new Set([...remedy.notBuy, ...notToBuy(c)])],
  };
}
