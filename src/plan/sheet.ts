import { upperFirst } from '../compute/first-letter.ts';
import { gainTargetV } from '../compute/gain.ts';
import { formatQuantity, formatRange } from '../compute/quantity.ts';
import { loweredV, unloadedFullV } from '../rig/levels.ts';
import { ampEstimate, type KnownAmp } from '../rig/rig.ts';
import { list, namedAmps } from './amp-names.ts';
import { changesInWords, demandOf, isChange, kept, keptInWords, propertyIn } from './demand.ts';
import { expectEngine, expectRear, expectTones } from './expect.ts';
import type { PlanCase } from './facts.ts';
import type { Figures } from './figures.ts';
import { decidesIt, openFindings } from './open.ts';
import { PROPERTY_QUESTIONS, type Property, STORED_PROFILES } from './profile/profile.ts';
import { deliveredIn, JOB_CARD, readLines, UPDATES } from './read-lines.ts';
import type { Finding, Sheet, SheetPart, ToSelect } from './verdict.ts';

/*
 * The paper for a counter: what goes to whoever selects the profile, the volts for the gain, the speakers to ask for, what
 * to ask before the visit, and the check after it. It fits one side.
 */

/** Whether the bike gets, or keeps, the lowered level. */
function endsLowered(c: PlanCase): boolean {
  const demand = demandOf(c);
  if (demand.kind === 'select') return demand.to.lowered === true;
  return c.facts.profiles.length > 0 && c.facts.profiles.every((profile) => STORED_PROFILES[profile].lowered);
}

/** What must stay. The rear channels may be either way where nothing hangs on them. */
function toKeep({ facts }: PlanCase, to: ToSelect): string {
  if (to.lowered) return to.sameEq ? '' : `Best with the ${propertyIn('sameEq', true)}. `;
  const words = keptInWords(
    kept(to, facts.profiles).filter((property) => property !== 'rear' || facts.rear !== 'none'),
  );
  return words === '' ? '' : `Please keep: ${words}. `;
}

const losesSameEq = ({ facts }: PlanCase, to: ToSelect): boolean =>
  to.lowered === false && facts.profiles.some((profile) => STORED_PROFILES[profile].sameEq);

const bikeLine = (c: PlanCase): string =>
  `${['Factory head unit', ...deliveredIn(c.findings), ...driversIn(c)].join(', ')}.`;

const ifHeld = ({ ifStored, orElse }: { readonly ifStored?: true; readonly orElse?: ToSelect }): string =>
  ifStored ? `, if this head unit holds such a profile${orElse ? `; if not, only ${changesInWords(orElse)}` : ''}` : '';
/** What a finding asks of whoever selects the profile. */
function asked({ follows, demand }: Finding): string {
  if (demand.kind === 'nothing') return 'please change nothing in the output profile';
  return demand.kind === 'select' && !demand.orMove
    ? `please select ${changesInWords(demand.to)}${ifHeld(demand)}`
    : follows;
}

/** What somebody with the tool is asked to read, and what he is then to do. */
function readFirst(c: PlanCase): SheetPart {
  return {
    title: 'For whoever reads the head unit',
    lines: [
      bikeLine(c),
      `Please read first ${list(decidesIt(c).map((property) => PROPERTY_QUESTIONS[property]))}, and say so in these words.`,
      ...openFindings(c).map((one) => `${upperFirst(one.when)}? ${upperFirst(asked(one))}.`),
      ...readLines(c.findings),
      JOB_CARD,
    ],
  };
}

function visit(c: PlanCase, proof: string): SheetPart {
  const demand = demandOf(c);
  return {
    title: 'For whoever selects the profile',
    lines: [
      bikeLine(c),
      ...(demand.kind === 'select'
        ? [
            `Please change: ${changesInWords(demand.to)}${ifHeld(demand)}.`,
            `${toKeep(c, demand.to)}Choose by what a profile does, not by its name.`,
            ...(losesSameEq(c, demand.to)
              ? ['The EQ will change with the engine: no profile has the full level and the same EQ.']
              : []),
          ]
        : ['Please change nothing in the output profile. If anything else is done, leave it as it is.']),
      ...readLines(c.findings),
      `Check it afterwards: ${proof}`,
      JOB_CARD,
    ],
  };
}

const driversIn = ({ facts }: PlanCase): readonly string[] => [
  `front on ${facts.front === 'amp' ? 'an amplifier' : 'the head unit'}`,
  facts.rear === 'none' ? 'no rear' : `rear on ${facts.rear === 'amp' ? 'an amplifier' : 'the head unit'}`,
];

/** The volts at which one amplifier gives its rated power, and what comes in at the loudest step. */
function gainLine(name: string, amp: KnownAmp): string {
  if (amp.kind === 'factory') return `${upperFirst(name)}: mostly no controls. Nothing to set.`;
  const [power, load] = [ampEstimate(amp, 'powerW'), ampEstimate(amp, 'ratedOhm')];
  const targetV = formatQuantity(gainTargetV({ powerW: power.value, loadOhm: load.value }), 'V', 2);
  const rated = `${formatQuantity(power.value, 'W')} into ${formatQuantity(load.value, 'Ω')}`;
  return power.assumed || load.assumed
    ? `${upperFirst(name)}: √(watts × ohms) of its papers; ${targetV} if it is ${rated}.`
    : `${upperFirst(name)}: ${targetV} at its output, ${rated}.`;
}

function gain(c: PlanCase): readonly SheetPart[] {
  const amps = namedAmps(c);
  if (amps.length === 0 || c.facts.amp === 'none') return [];
  const { rig } = c.findings;
  const low = loweredV(rig);
  const inV = endsLowered(c)
    ? low.assumed
      ? formatRange(low.low, low.high, 'V')
      : formatQuantity(low.value, 'V', 2)
    : formatQuantity(unloadedFullV(rig), 'V', 2);
  return [
    {
      title: 'Gain, speakers off the amplifier',
      lines: [
        ...amps.map(({ name, amps: [amp = {}] }) => gainLine(name, amp)),
        `At the loudest clean step of the loud 400 Hz tone, where the head unit sends about ${inV}.`,
      ],
    },
  ];
}

/** Sensitivity and power: common practice, no published source. */
function speakers(c: PlanCase, f: Figures): SheetPart {
  const { facts } = c;
  const onUnit = (['front', 'rear'] as const).filter((pair) => facts[pair] === 'unit');
  const onAmp = (['front', 'rear'] as const).filter((pair) => facts[pair] === 'amp');
  return {
    title: 'Speakers to ask for',
    lines: [
      ...(onUnit.length > 0
        ? [
            `${upperFirst(onUnit.join(' and '))}, on the head unit: 4 Ω or more, 90 dB or more at 1 W and 1 m, 30 W or more. It gives ${f.unitW}.`,
          ]
        : []),
      ...(onAmp.length > 0
        ? [
            `${upperFirst(onAmp.join(' and '))}, on an amplifier: no fewer ohms than its channels are rated for, continuous watts no less than a channel gives, high-pass at 80 to 100 Hz.`,
          ]
        : []),
    ],
  };
}

function questions(c: PlanCase): SheetPart {
  const changes = isChange(c.answer);
  return {
    title: changes ? 'Ask before the visit' : 'Ask whoever works on the bike',
    lines: [
      ...(changes
        ? [
            'Does the bike have to come, or is the head unit sent in? Sent in, it comes out and goes back with its plugs marked.',
            'Can it be put back later, and what would that cost?',
          ]
        : []),
      UPDATES,
    ],
  };
}

/** What is read after it. */
function checksOf(c: PlanCase): readonly Property[] {
  const demand = demandOf(c);
  const to = demand.kind === 'select' ? demand.to : {};
  if (c.answer === 'likely-stay') return decidesIt(c);
  return ['boosted', ...(to.rear ? (['rear'] as const) : []), ...(to.sameEq ? (['sameEq'] as const) : [])];
}

function after(c: PlanCase): SheetPart {
  const demand = demandOf(c);
  const checks = checksOf(c);
  const [rear, same] = [checks.includes('rear'), checks.includes('sameEq')];
  const tones = same || checks.includes('boosted');
  return {
    title: demand.kind === 'select' ? 'After the visit' : 'To check it yourself',
    lines: [
      ...(tones ? [`Engine off: ${expectTones(c)}`] : []),
      ...(rear ? [`Rear: ${expectRear(c)}`] : []),
      ...(same ? [`Engine running: ${expectEngine(c)}`] : []),
      'Keep the readings with the papers of the bike.',
    ],
  };
}

export interface ForCounter {
  readonly sheet: Sheet;
  /** Whether it has somebody set a gain, and what it has him read. */
  readonly setsGain: boolean;
  readonly checks: readonly Property[];
}

export function sheetOf(c: PlanCase, proof: string, f: Figures): ForCounter | undefined {
  const open = c.answer === 'likely-stay';
  if (!isChange(c.answer) && c.answer !== 'stay' && !open) return undefined;
  // The volts for a gain wait for the reading: they hang on the level that is stored.
  const gains = open ? [] : gain(c);
  return {
    sheet: { parts: [open ? readFirst(c) : visit(c, proof), ...gains, speakers(c, f), questions(c), after(c)] },
    setsGain: gains.length > 0,
    checks: checksOf(c),
  };
}
