import { AMP_GROUPS } from '../steps/plan/amp-groups.ts';
import { type PlanAct, reads, withCautions } from './acts.ts';
import { namesOf, setGains } from './amp-names.ts';
import { assumedNeedOf } from './amp-need.ts';
import { demandOf, isChange, selecting } from './demand.ts';
import { belowRated, type PlanCase, planCase, wantsMirroring } from './facts.ts';
import { type Figures, figuresOf } from './figures.ts';
import { holdsOf, openFindings, unlessOf } from './open.ts';
import { deadPair } from './read-values.ts';
import { type ForCounter, sheetOf } from './sheet.ts';
import type { PlanRemedy, PlanVerdict } from './verdict.ts';
import { ASSUMED_NEED, assumedIn, ofTheWish, sameEqNotToBeHad } from './wording.ts';

/** The steps whose answers speak for a plan, in the order they are asked. */
export const BUILD_STEPS = [
  'planned-change',
  'bass-gone-when',
  'worse-how',
  'wrong-now',
  'unit-kind',
  'amp-count',
  'amp-layout',
  ...Object.values(AMP_GROUPS).flatMap(({ id }) => [`${id}-kind`, `${id}-turn-on`, `${id}-signal`, `${id}-needs`]),
  'front-build',
  'rear-build',
  'front-ohms',
  'rear-ohms',
  'rear-inputs',
  'wish-same-eq',
  'hidden-amp',
  'factory-amp-answers',
];
export const PROFILE_STEPS = [
  'read-after',
  'profile-source',
  'delivered-with',
  'delivered-amp',
  'paper-rear',
  'paper-lowered',
  'paper-boosted',
  'paper-same-eq',
  'paper-by',
  'told-or-read',
  'tones-off',
  'rear-pair',
  'tones-running',
  'top-step',
];

type WithoutCautions = Omit<PlanRemedy, 'cautions' | 'proofCautions'>;
/** What a verdict of this flow leaves out when it has nothing to say. */
type Written = Omit<WithoutCautions, keyof typeof NOTHING_WRITTEN | 'demand'> & Partial<WithoutCautions>;
const NOTHING_WRITTEN = {
  numbers: [],
  unless: [],
  holds: [],
  findings: [],
  acts: [],
  proofActs: [],
  notBuy: [],
  tools: 'none',
  minutes: 0,
} as const;
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
      const own: WithoutCautions = {
        ...NOTHING_WRITTEN,
        demand: demandOf(c),
        ...(isComplete(c) && c.answer !== 'likely-stay' && { unless: unlessOf(c) }),
        holds: holdsOf(c),
        findings: openFindings(c),
        ...parts.remedy(c, figures),
      };
      const whole = withSpeakersBelow(c, withWishes(c, figures, withAssumedNeed(c, withCondition(c, own))));
      const sheet = sheetOf(c, whole.proof, figures);
      return withCautions(sheet ? withSheet(c, whole, sheet) : whole, findings);
    },
  };
}

/** What the paper for the counter has somebody do: select what is asked for, set the gain, take the readings of the check. */
function withSheet(c: PlanCase, remedy: WithoutCautions, { sheet, setsGain, checks }: ForCounter): WithoutCautions {
  return {
    ...remedy,
    sheet,
    acts: [...selecting(remedy.demand), ...remedy.acts, ...(setsGain ? setGains(c) : [])],
    proofActs: [...remedy.proofActs, ...reads(...checks)],
  };
}

const stays = ({ answer }: PlanCase): boolean => answer === 'stay' || answer === 'likely-stay';
/** Answers that say what to do, or that there is nothing to do, as far as that is known. */
const isComplete = (c: PlanCase): boolean => isChange(c.answer) || stays(c) || c.answer.startsWith('same-eq');

/** What comes first and what stays until then, for a build that changes at the same time. */
function orderOfWork(c: PlanCase): readonly string[] {
  const { findings, answer, facts } = c;
  const changes = isChange(answer);
  const until = answer === 'likely-stay' ? ' until it is read' : '';
  switch (findings.outcome('planned-change')) {
    case 'amp-exchanged':
      if (!changes)
        return stays(c)
          ? [
              `Exchange the amplifier, gain at minimum first. The profile stays as it is${until || ', before and after'}.`,
            ]
          : [];
      return [
        'Leave the profile as it is until the new amplifier is in: the old one was set up for it.',
        'Fit the new amplifier with its gain at minimum, and do not play loud until the profile is changed.',
      ];
    case 'amp-added':
      if (facts.amp === 'none') return [];
      return changes
        ? ['First fit and wire the amplifier, gain at minimum. Have the profile changed after that, not before.']
        : stays(c)
          ? [`Fit and wire the amplifier, gain at minimum first. The profile stays as it is${until}.`]
          : [];
    case 'amp-removed':
      return facts.amp === 'none' && answer !== 'back-if-stored' && (changes || answer === 'stay')
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

/** What helps somebody who wants it louder or cleaner. */
function louder(c: PlanCase, f: Figures): readonly string[] {
  const { findings, facts, answer } = c;
  if (findings.outcome('planned-change') !== 'louder') return [];
  if (facts.amp !== 'none')
    return answer === 'stay'
      ? ['Louder: the gain, set to the volts on the sheet below. Then speakers that take more.']
      : [];
  if (!stays(c) && answer !== 'enable-rear') return [];
  return [
    `Boomy or harsh when loud: turn the bass control down first. The boosted bass takes ${f.bassTimes} the power of the rest and clips first.`,
    'Louder: more sensitive speakers, or an amplifier.',
  ];
}

/** The same for somebody who wants more bass. */
function moreBass({ findings, facts, answer }: PlanCase): readonly string[] {
  if (findings.outcome('planned-change') !== 'more-bass') return [];
  if (isChange(answer) && answer.startsWith('back'))
    return ['The bass comes back with the full level: its boost was taken out.'];
  if (facts.amp === 'none')
    return [
      'More bass: speakers with more cone area in a tight mount, both wired the same way round. Then an amplifier.',
    ];
  return [
    'More bass: check that both speakers of each pair are wired the same way round, then the bass of the amplifier, a little.',
  ];
}

/** What is done besides for a build that changes at the same time, and for a wish. */
function actsOfWork(c: PlanCase): readonly PlanAct[] {
  const plan = c.findings.outcome('planned-change');
  if (plan === 'more-bass') return [{ do: 'turn-polarity', where: 'front' }];
  if (!isComplete(c)) return [];
  switch (plan) {
    case 'front-only':
      return [{ do: 'replace-speaker', where: 'front' }];
    case 'rear-on-unit':
      return [{ do: 'replace-speaker', where: 'rear' }];
    case 'amp-added':
    case 'amp-exchanged':
      return [{ do: 'fit-amp' }];
    case 'amp-removed':
      return c.answer === 'likely-stay' ? [] : [{ do: 'take-out-amp' }];
    case 'louder':
      return c.facts.amp === 'none' ? [{ do: 'flatten-tone', of: 'unit' }] : [];
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
    ...(plan === 'more-bass' && answer !== 'replaced-unit'
      ? [
          'A reflash for more bass. No stored profile has more than the unaltered one, and an amplified one has none of its boost.',
        ]
      : []),
    ...(clash && !answer.startsWith('same-eq')
      ? [
          answer === 'move-or-back'
            ? 'A profile for the same EQ before every pair is on an amplifier.'
            : answer === 'back-if-stored'
              ? 'A profile for the same EQ before somebody has looked whether a full level is held.'
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
function withAssumedNeed(c: PlanCase, remedy: WithoutCautions): WithoutCautions {
  const assumed = assumedIn(c);
  const changes = isChange(c.answer);
  if (!assumed || !(changes || stays(c))) return remedy;
  const who = namesOf(c, (amp) => assumedNeedOf(amp) === assumed);
  return {
    ...remedy,
    certainty: 'likely',
    howSure: `What ${who} was made for is only assumed. ${remedy.howSure}`,
    background: [remedy.background, ASSUMED_NEED[assumed]].filter(Boolean).join(' '),
    fix: [...(changes ? [`Before you pay for anything, find out what ${who} was made for.`] : []), ...remedy.fix],
  };
}

const IF: Readonly<Partial<Record<string, string>>> = {
  never: 'if nobody ever changed it',
  record: 'if the paper is right',
};

/** An answer that hangs on something says so in its first words. */
function withCondition({ findings }: PlanCase, remedy: WithoutCautions): WithoutCautions {
  if (!remedy.unless?.length) return remedy;
  const condition = IF[findings.outcome('profile-source') ?? ''] ?? 'most likely';
  const what = remedy.what
    .replace(/^Yes: /, `Yes, ${condition}: `)
    .replace(/^Yes, (?!if (nobody|the paper)|most likely)/, `Yes, ${condition}, `);
  return { ...remedy, what };
}

/** What a wish gets to hear at once, whatever else is to be done. An answer that may be another one says it itself. */
const firstOfAll = (c: PlanCase, what: string, f: Figures): string =>
  c.answer !== 'likely-stay' && (isComplete(c) || c.answer === 'measure-first')
    ? [what, ...ofTheWish(c, f)].join(' ')
    : what;

/** Speakers of too few ohms on the head unit are said with the answer, not after it. */
function withSpeakersBelow(c: PlanCase, remedy: WithoutCautions): WithoutCautions {
  const pairs = isComplete(c) ? belowRated(c) : [];
  if (pairs.length === 0) return remedy;
  const what = `${remedy.what} But no ${pairs.join(' or ')} speakers below 4 Ω on the head unit.`;
  return {
    ...remedy,
    what,
    fix: [
      `Ask for ${pairs.join(' and ')} speakers of 4 Ω or more. Below that an output of the head unit runs hot, clips early and shuts off.`,
      ...remedy.fix,
    ],
    notBuy: [
      'Speakers of 2 Ω for a head unit. They are made for amplifiers, and it gives them no more power for long.',
      ...remedy.notBuy,
    ],
  };
}

/** Adds what the rest of the case asks for. It never changes the answer itself. */
function withWishes(c: PlanCase, f: Figures, remedy: WithoutCautions): WithoutCautions {
  const wanted = wantsMirroring(c.findings) && c.answer !== 'mirroring-only' && c.answer !== 'replaced-unit';
  return {
    ...remedy,
    what: firstOfAll(c, remedy.what, f),
    fix: [
      ...louder(c, f),
      ...moreBass(c),
      ...deadPair(c.findings),
      ...orderOfWork(c),
      ...remedy.fix,
      ...(wanted ? mirroring(c) : []),
      ...wrongNow(c),
    ],
    acts: [
      ...actsOfWork(c),
      ...remedy.acts,
      ...(wanted && c.facts.unit === 'factory' ? ([{ do: 'allow-without-headset' }] as const) : []),
    ],
    notBuy: [...new Set([...remedy.notBuy, ...notToBuy(c)])],
  };
}
