import { bringsAbout, reads } from './acts.ts';
import { FOR_FULL_LEVEL, list, namesOf, settingsForBoost } from './amp-names.ts';
import { needOf } from './amp-need.ts';
import type { Feed } from './decision.ts';
import { expectEngine, expectFull, expectRear, expectTones } from './expect.ts';
import type { PlanCase } from './facts.ts';
import { decidesIt } from './open.ts';
import { planVerdict } from './plan-verdict.ts';
import { PROPERTY_QUESTIONS, type Property } from './profile/profile.ts';
import { isAmplified, stayHarm } from './settled.ts';
import { eqOfAmplified, ofTheWish, sureness, YOU } from './wording.ts';

/** Answers that say what is not known yet, and how to find it out before anything is paid for. */

export const findTheUnit = planVerdict({
  id: 'plan-find-the-unit',
  title: 'First find out which head unit it is',
  remedy: () => ({
    what: 'Not yet: first find out whether the head unit is the one the bike was built with.',
    certainty: 'short list',
    howSure: 'Everything else depends on it: only a factory head unit has stored profiles.',
    fix: [
      'Look at the start screen and the surround, and at the papers of the bike.',
      'Not sure? Send a photo of the screen and of the label to whoever sells the work.',
      'Then answer the question about the head unit: the questions go on from there.',
    ],
    who: 'You. Looking is enough.',
    notBuy: ['A reflash before that.'],
    ifDoneAnyway: 'You may pay for a reflash of a head unit that has nothing to select.',
    proof: 'You can name who made the head unit.',
    minutes: 5,
  }),
});

/** The amplifiers of which nobody knows what they need. */
const openAmps = (c: PlanCase) => namesOf(c, (amp) => needOf(amp) === 'unknown');

export const findTheAmp = planVerdict({
  id: 'plan-find-the-amp',
  title: 'First find out what the amplifier needs',
  article: 'amplifiers-that-listen',
  remedy: (c, f) => ({
    what: c.findings.rig.amps
      ? `Not yet: first find out what switches ${openAmps(c)} on, and which output it was made for.`
      : 'Not yet: first find out whether there is an amplifier, and which output it was made for.',
    certainty: 'short list',
    howSure:
      'One that wakes by what is on its inputs can stay asleep after a reflash. One made for the full output plays too quietly.',
    fix: [
      ...(c.findings.rig.amps
        ? []
        : ['Look for a lead with its own fuse at the battery and follow it. None: answer with no amplifier.']),
      'Read the label and the papers: a remote terminal? Senses a signal, or DC? Made for the unaltered output?',
      'Look at it: is a thin wire on a terminal marked remote, and does it carry 12 V while the head unit is on?',
      'No papers: let a bench try show whether it wakes with quiet music at the lowered level.',
      'Then answer the questions about the amplifier again.',
    ],
    who: YOU,
    notBuy: ['Any reflash before that. Nor a new amplifier: this one may be right.'],
    ifDoneAnyway: `A listening amplifier then gets ${f.loweredV} where it got ${f.fullV} at full volume, and may stay asleep.`,
    acts: [...bringsAbout('amp-uncovered', 'head-unit-playing', 'volume-zero'), { do: 'renew-wire', wire: 'signal' }],
    proof: 'You know what switches it on, in the words of its papers.',
    tools: 'papers, perhaps a multimeter',
    minutes: 15,
  }),
});

const FEED_WORK: Readonly<Record<Feed, string>> = {
  front: 'Follow the wires of a front speaker: do they end at the head unit’s plug, or at an amplifier?',
  rear: 'Look for rear speakers, and follow their wires: head unit, or amplifier?',
  inputs:
    'At the amplifier’s rear inputs: do the wires come from the rear outputs, or from the front pair? Turn the fader: front pair only if it does nothing.',
};
const FEED_NAMES: Readonly<Record<Feed, string>> = {
  front: 'what drives the front speakers',
  rear: 'what drives the rear speakers',
  inputs: 'where the rear inputs of the amplifier get their signal',
};

export const followTheWires = planVerdict({
  id: 'plan-follow-the-wires',
  title: 'First follow the wires',
  remedy: ({ decision }) => ({
    what: `Not yet: first find out ${list(decision.open.map((feed) => FEED_NAMES[feed]))}.`,
    certainty: 'short list',
    howSure: 'The answer is another one for each of them.',
    fix: [
      ...decision.open.map((feed) => FEED_WORK[feed]),
      'Then answer that question: the questions go on from there.',
    ],
    who: YOU,
    notBuy: ['Any reflash before that.'],
    ifDoneAnyway: 'An amplified profile starves every pair that turns out to be on the head unit.',
    acts: [
      ...bringsAbout('key-off', 'panel-off', 'amp-uncovered'),
      ...(decision.open.includes('inputs') ? ([{ do: 'centre-fader' }] as const) : []),
    ],
    proof: 'Every pair and every input has a known source.',
    minutes: 20,
  }),
});

/** What is read, or has somebody else read it. */
const YOU_OR_A_READER = 'You, with a multimeter and the tones. Or a specialist who reads the head unit.';
const NO_METER = 'No meter: have a specialist read the head unit and say what the profile does, in these words.';
/** What a reading needs besides: the EQ is judged by the tones with the engine off. */
const readingActs = (properties: readonly Property[]) =>
  reads(...properties, ...(properties.includes('sameEq') ? (['boosted'] as const) : []));
const proofOf = (properties: readonly Property[]) =>
  properties.length === 1 ? 'You can say which of the two it is.' : 'You can say of each which of the two it is.';

const PROPERTY_WORK: Readonly<Record<Property, (c: PlanCase) => string>> = {
  boosted: (c) => `Bass boost: ${expectTones(c)}`,
  rear: (c) => `Rear channels: ${expectRear(c)} DC on those wires proves nothing.`,
  sameEq: (c) => `EQ: ${expectTones(c)} ${expectEngine(c)}`,
  lowered: (c) => `Level: ${expectFull(c)}`,
};

export const measureFirst = planVerdict({
  id: 'plan-measure-first',
  title: 'Measure first',
  article: 'two-tones-one-ratio',
  remedy: ({ decision, ...c }) => ({
    what: `Not yet: first find out ${list(decision.separators.map((property) => PROPERTY_QUESTIONS[property]))}. Nothing else separates the answers.`,
    certainty: 'short list',
    howSure: 'What is needed depends on what is stored now, and that is not known.',
    background: 'The name of a profile proves nothing, not even if it names your number of amplifiers.',
    fix: [
      ...decision.separators.map((property) => PROPERTY_WORK[property]({ ...c, decision })),
      NO_METER,
      'Then change the answer about the stored profile: the questions go on from there.',
    ],
    reopens: 'profile-source',
    who: YOU_OR_A_READER,
    notBuy: ['A reflash on a guess. What it would select may be in already.'],
    ifDoneAnyway: 'You pay for what is there already, or miss what is needed.',
    acts: readingActs(decision.separators),
    proof: proofOf(decision.separators),
    tools: 'a multimeter and the tones',
    minutes: 10 * decision.separators.length,
  }),
});

/** Nothing is needed as far as anybody knows, and nobody has read what is stored. */
export const likelyStay = planVerdict({
  id: 'plan-likely-stay',
  title: 'Most likely no reflash',
  article: 'two-tones-one-ratio',
  remedy: (c, f) => {
    const decides = decidesIt(c);
    const protects = isAmplified(c) ? [] : settingsForBoost(c);
    const eq = isAmplified(c) ? [eqOfAmplified(c)] : [];
    const one = decides.length === 1;
    return {
      what: [
        'Most likely no reflash.',
        ...ofTheWish(c, f),
        `${one ? 'One reading decides' : 'These readings decide'}: ${list(decides.map((property) => PROPERTY_QUESTIONS[property]))}.`,
      ].join(' '),
      ...sureness(c),
      background: 'Bikes change hands, and a paper can be of another head unit. A reading is of this one.',
      fix: [
        ...decides.map((property) => PROPERTY_WORK[property](c)),
        NO_METER,
        'Then change the answer about the stored profile: the questions go on from there.',
        'Nobody can read it now? Change nothing in the head unit, and have it read when it next goes to anybody with the tool.',
        ...protects,
        ...eq,
      ],
      reopens: 'profile-source',
      who: YOU_OR_A_READER,
      notBuy: ['A reflash before that. Most likely there is nothing to select.'],
      ifDoneAnyway: stayHarm(c, f),
      acts: [...readingActs(decides), ...(protects.length > 0 ? FOR_FULL_LEVEL : [])],
      proof: proofOf(decides),
      tools: 'a multimeter and the tones',
      minutes: 10 * decides.length,
    };
  },
});
