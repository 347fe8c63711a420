import { lowerFirst } from '../compute/first-letter.ts';
import { ampDriving } from '../rig/rig.ts';
import { bringsAbout, type PlanAct, reads } from './acts.ts';
import { list, namesOf } from './amp-names.ts';
import type { PlanCase } from './facts.ts';
import type { Figures } from './figures.ts';
import { planVerdict } from './plan-verdict.ts';
import { deliveredOf, PROPERTY_QUESTIONS, profileNow, toldAgainstMeter } from './profile/profile.ts';
import { whyNoProfile } from './profile/profile-clash.ts';
import { PRACTICE, YOU } from './wording.ts';

/** Answers that cannot all be true, and wishes that cannot all be had. */

const AGAIN = 'Then change the answer that was wrong: the questions go on from there.';
const NOT_YET = ['Any reflash before this is clear.'];

const LOOK_FOR_IT = [
  'At the battery, look for a lead with its own fuse and follow it.',
  'Look under the seat, in the lids, in the trunk and behind the fairing.',
];

const LOOKS: readonly PlanAct[] = bringsAbout('amp-uncovered');

/** The pair that is said to be on an amplifier that was not counted. */
function pairOnNoAmp({ facts, findings }: PlanCase): string {
  if (facts.amp === 'none') return facts.front === 'amp' ? 'front' : 'rear';
  return facts.front === 'amp' && !ampDriving(findings.rig, 'front') ? 'front' : 'rear';
}

export const onNoAmp = planVerdict({
  id: 'plan-on-no-amp',
  title: 'Speakers on an amplifier, but no amplifier',
  remedy: (c) => ({
    what: `Not yet: the ${pairOnNoAmp(c)} speakers are said to be on an amplifier, and none was counted that drives them.`,
    certainty: 'proved',
    howSure: 'Both cannot be true.',
    background: 'Usually a small amplifier was overlooked.',
    fix: [...LOOK_FOR_IT, AGAIN],
    who: YOU,
    notBuy: NOT_YET,
    ifDoneAnyway: 'The wrong half of the answers decides, and the head unit ends up wrong for the build.',
    acts: LOOKS,
    proof: 'Every amplifier is counted, and every pair has a driver.',
    minutes: 10,
  }),
});

const fullLevelInto = (f: Figures) =>
  `An amplifier set for the lowered level then gets ${f.fullV} where it got ${f.loweredV}, and ${f.bassMovesDb} more bass. Speakers blow.`;

export const ampOverlooked = planVerdict({
  id: 'plan-amp-overlooked',
  title: 'An amplifier that nobody counted',
  remedy: (_, f) => ({
    what: 'Not yet: no amplifier was counted, and there is a fused lead or a lit box that nobody explained.',
    certainty: 'likely',
    howSure: 'An amplified profile is stored, which is what somebody selects for an amplifier.',
    background: 'A small amplifier fits under a seat, into a lid or behind the fairing.',
    fix: [...LOOK_FOR_IT, 'It is an amplifier? Then change the answer about how many there are.', AGAIN],
    who: YOU,
    notBuy: ['Going back to the full level before this is clear.'],
    ifDoneAnyway: fullLevelInto(f),
    acts: LOOKS,
    proof: 'Every fused lead at the battery ends at something that you can name.',
    minutes: 15,
  }),
});

export const dcOnLineLevel = planVerdict({
  id: 'plan-dc-on-line-level',
  title: 'It waits for DC that the lead does not carry',
  faults: ['sense-no-half-supply'],
  article: 'half-the-supply-on-a-speaker-wire',
  remedy: (c) => {
    const amp = namesOf(c, ({ turnOn, input }) => turnOn === 'dc' && input === 'line');
    return {
      what: `Not yet: ${amp} waits for DC on its inputs, and a line-level lead carries none. No profile changes that.`,
      certainty: 'proved',
      howSure: 'Only speaker wires of the head unit carry half the supply as DC.',
      background: 'A transformer, a converter or a coupling capacitor takes the DC away.',
      fix: [
        'Look again: does it sense DC, or a signal? Its papers or a switch on it say so.',
        'Look again: do plain speaker wires go in as well, or only the shielded lead?',
        `Both are as you said? Then run a remote wire to ${amp}, with a 1 A fuse at its source, and set it to be switched by that wire.`,
        'No remote terminal: feed it from the head unit’s speaker wires, if it takes speaker level. Never feed DC into an input to wake it.',
        AGAIN,
      ],
      who: YOU,
      notBuy: ['A reflash to wake it.', 'A new amplifier, before it had a wire.'],
      ifDoneAnyway: 'The profile is another one, and the amplifier still sleeps.',
      acts: [...LOOKS, { do: 'wake-by-wire' }, { do: 'renew-wire', wire: 'signal' }],
      proof: 'It wakes each time the head unit comes on, with quiet music.',
      tools: 'its papers, a fused wire',
      minutes: 45,
    };
  },
});

export const dealerWithoutFactoryAmp = planVerdict({
  id: 'plan-dealer-without-factory-amp',
  title: 'A dealer cannot have selected that',
  article: 'two-tones-one-ratio',
  remedy: () => ({
    what: 'Not yet: the paper says that a dealer selected an amplified profile, and no factory amplifier was there to answer.',
    certainty: 'likely',
    howSure: 'A dealer’s tool selects an amplified profile only if a factory amplifier answers.',
    background: `Perhaps only the rear channels were switched on, or the work was never done. ${PRACTICE}`,
    fix: [
      'Read it: answer “I can measure it now” to how you know the stored profile. The two tones decide.',
      'Look again at who did the work, and whether a factory amplifier was on the bike then.',
      AGAIN,
    ],
    who: YOU,
    notBuy: NOT_YET,
    ifDoneAnyway: 'You build on a profile that is not there.',
    acts: reads('boosted'),
    proofActs: reads('boosted'),
    proof: '80 Hz and 400 Hz read the same on a front pair: amplified. 80 Hz far above: it is not.',
    tools: 'a multimeter and the tones',
    minutes: 15,
  }),
});

export const factoryAmpSilent = planVerdict({
  id: 'plan-factory-amp-silent',
  title: 'The factory amplifier does not answer',
  remedy: (c) => ({
    what: `Not yet: first mend ${namesOf(c, ({ kind }) => kind === 'factory')}. While it does not answer on the data bus, a dealer’s tool selects no amplified profile.`,
    certainty: 'likely',
    howSure: 'A factory amplifier that works answers on the data bus.',
    background: `Likely: its fuse or feed, its ground, its bus plug, or the amplifier itself. ${PRACTICE}`,
    fix: [
      'Is it the bike maker’s own? Look for the part number again. An added one never answers.',
      'Look at its fuse and its plugs, key off: seated, dry, no pin pushed back.',
      'Leave the data-bus wires themselves to a dealer or a specialist.',
      'It answers? Then change that answer: the questions go on from there.',
    ],
    who: 'You for fuse and plugs. A dealer or a specialist for the data bus.',
    notBuy: ['A reflash before it answers.'],
    ifDoneAnyway: 'The visit ends without a profile, or with a lowered level in front of a dead amplifier.',
    acts: [
      ...bringsAbout('amp-uncovered', 'panel-off'),
      { do: 'seat-plug', plug: 'amp-power' },
      { do: 'renew-fuse', fuse: 'amp-body' },
    ],
    proof: 'The dealer’s tool lists the amplifier.',
    minutes: 30,
  }),
});

export const ampFeedsNothing = planVerdict({
  id: 'plan-amp-feeds-nothing',
  title: 'An amplifier that feeds nothing',
  remedy: (_, f) => ({
    what: 'Not yet: an amplifier was counted, but every speaker is said to be on the head unit.',
    certainty: 'proved',
    howSure: 'An amplifier drives something, or it is not connected.',
    background: 'Often it drives a part that nobody counted. Trunk, top case and passenger pods count as rear.',
    fix: [
      'Follow the thick output wires of the amplifier to the speakers they end at.',
      'It ends nowhere? Then it does not count: answer with no amplifier.',
      AGAIN,
    ],
    who: YOU,
    notBuy: ['An amplified profile for an amplifier that feeds nothing.'],
    ifDoneAnyway: `The speakers on the head unit get quieter: ${f.shareLeft} of the power is left, ${f.fullW} become ${f.loweredW}.`,
    acts: [...LOOKS, ...bringsAbout('key-off', 'panel-off')],
    proof: 'Every amplifier that counts has a pair, and every pair has a driver.',
    minutes: 15,
  }),
});

export const whichRear = planVerdict({
  id: 'plan-which-rear',
  title: 'Which rear is silent?',
  remedy: () => ({
    what: 'Not yet: the rear is said to be silent, and the bike is said to have no rear speakers.',
    certainty: 'proved',
    howSure: 'Both cannot be true.',
    background: 'Rear can mean the lids, the top case, the trunk or a passenger pod. A case may be at home.',
    fix: [
      'Ask which speaker should play, and look at it.',
      'Was a lid, bag or case taken off? Fit it again and listen.',
      AGAIN,
    ],
    who: YOU,
    notBuy: NOT_YET,
    proof: 'You can point at the speaker that is silent.',
    minutes: 5,
  }),
});

export const toldAgainstMeterVerdict = planVerdict({
  id: 'plan-told-against-meter',
  title: 'The meter says something else',
  article: 'two-tones-one-ratio',
  remedy: (c) => {
    const properties = toldAgainstMeter(c.findings).map((property) => PROPERTY_QUESTIONS[property]);
    const source = c.findings.outcome('profile-source') === 'record' ? 'the paper' : '“Nobody ever changed it”';
    return {
      what: `Not yet: ${source} and the meter disagree about ${list(properties)}.`,
      certainty: 'proved',
      howSure: 'A profile does one or the other.',
      background:
        'Likely reasons: a bass or treble control was not flat, a reading was too close to the limit, the profile went back unseen, or the paper belongs to another head unit.',
      fix: [
        'Bass and treble controls flat, loudness and speed volume off, phone equaliser off. Take the reading again at a low level.',
        'Check that the paper names this head unit and is newer than the last work on it.',
        'The reading repeats? Then believe it: answer “I can measure it now”, and the questions go on.',
      ],
      who: YOU,
      notBuy: NOT_YET,
      acts: reads(...toldAgainstMeter(c.findings)),
      proof: 'The same reading twice, and a paper that either agrees or is put aside.',
      tools: 'a multimeter',
      minutes: 15,
    };
  },
});

export const noSuchProfile = planVerdict({
  id: 'plan-no-such-profile',
  title: 'No stored profile does that',
  article: 'two-tones-one-ratio',
  remedy: (c) => {
    const clashes = whyNoProfile(profileNow(c.findings), deliveredOf(c.findings));
    return {
      what: `Not yet: ${lowerFirst(clashes[0]?.says ?? 'No stored profile does all of that.')}`,
      certainty: 'proved',
      howSure: 'At least one reading or answer is not what it looks like.',
      background: `Likely: ${clashes[0]?.likely ?? 'a setting was not flat.'} ${PRACTICE}`,
      fix: [...new Set(clashes.map((clash) => clash.check)), AGAIN],
      who: YOU,
      notBuy: NOT_YET,
      acts: reads(...new Set(clashes.flatMap((clash) => clash.properties))),
      proof: 'The readings together fit one profile.',
      tools: 'a multimeter',
      minutes: 15,
      mayAlsoBe: clashes.slice(1).map((clash) => ({ what: clash.says, split: clash.check })),
    };
  },
});

export const noneCounted = planVerdict({
  id: 'plan-none-counted',
  title: 'An amplifier is planned, and none counted',
  remedy: (c) => ({
    what: `Not yet: an amplifier ${c.findings.outcome('planned-change') === 'amp-added' ? 'is added' : 'is exchanged'}, and “None” was the answer to how many there will be.`,
    certainty: 'proved',
    howSure: 'Both cannot be true.',
    fix: [
      'Count the amplifiers that will be there when it is finished, the new one too. Then change that answer.',
      'None stays? Then the plan is that it comes off: change the first answer.',
    ],
    who: YOU,
    notBuy: NOT_YET,
    ifDoneAnyway: 'The answer would be that of a bike without an amplifier.',
    proof: 'The plan and the number of amplifiers go together.',
    minutes: 1,
  }),
});
