import { planVerdict } from './plan-verdict.ts';
import { PROPERTY_QUESTIONS, profileNow, toldAgainstMeter } from './profile.ts';
import { whyNoProfile } from './profile-clash.ts';
import { list, PRACTICE, YOU } from './wording.ts';

/** Answers that cannot all be true, and wishes that cannot all be had. */

const AGAIN = 'Then change the answer that was wrong: the questions go on from there.';
const NOT_YET = ['Any reflash before this is clear.'];

export const onNoAmp = planVerdict({
  id: 'plan-on-no-amp',
  title: 'Speakers on an amplifier, but no amplifier',
  remedy: (c) => ({
    what: `The ${c.facts.front === 'amp' ? 'front' : 'rear'} speakers are said to hang on an amplifier, and no amplifier was counted.`,
    certainty: 'proved',
    howSure: 'Both cannot be true.',
    background: 'Usually a small amplifier was overlooked.',
    fix: [
      'At the battery, look for a lead with its own fuse and follow it.',
      'Look under the seat, in the lids and behind the fairing.',
      AGAIN,
    ],
    who: YOU,
    notBuy: NOT_YET,
    ifDoneAnyway: 'The wrong half of the answers decides, and the head unit ends up wrong for the build.',
    proof: 'Every amplifier is counted, and every pair has a driver.',
    minutes: 10,
  }),
});

export const ampFeedsNothing = planVerdict({
  id: 'plan-amp-feeds-nothing',
  title: 'An amplifier that feeds nothing',
  remedy: (_, f) => ({
    what: 'An amplifier was counted, but every speaker is said to hang on the head unit.',
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
    proof: 'Every amplifier that counts has a pair, and every pair has a driver.',
    minutes: 15,
  }),
});

export const whichRear = planVerdict({
  id: 'plan-which-rear',
  title: 'Which rear is silent?',
  remedy: () => ({
    what: 'The rear is said to be silent, and the bike is said to have no rear speakers.',
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
    const source = c.findings.outcome('profile-source') === 'record' ? 'The paper' : '“Nobody ever changed it”';
    return {
      what: `${source} and the meter disagree about ${list(properties)}.`,
      certainty: 'proved',
      howSure: 'A profile does one or the other.',
      background:
        'Likely reasons: a tone control was not flat, a reading was too close to the limit, the profile went back unseen, or the paper belongs to another head unit.',
      fix: [
        'Tone controls flat, loudness and speed volume off, phone equaliser off. Take the reading again at a low level.',
        'Check that the paper names this head unit and is newer than the last work on it.',
        'The reading repeats? Then believe it: answer “I can measure it now”, and the questions go on.',
      ],
      who: YOU,
      notBuy: NOT_YET,
      cautions: ['bridge', 'loud-tone'],
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
    const clashes = whyNoProfile(profileNow(c.findings), c.findings.rig.deliveredWith);
    return {
      what: clashes[0]?.says ?? 'No stored profile does all of that.',
      certainty: 'proved',
      howSure: 'At least one reading or answer is not what it looks like.',
      background: `Likely: ${clashes[0]?.likely ?? 'a setting was not flat.'} ${PRACTICE}`,
      fix: [...new Set(clashes.map((clash) => clash.check)), AGAIN],
      who: YOU,
      notBuy: NOT_YET,
      cautions: ['bridge', 'loud-tone'],
      proof: 'The readings together fit one profile.',
      tools: 'a multimeter',
      minutes: 15,
      mayAlsoBe: clashes.slice(1).map((clash) => ({ what: clash.says, split: clash.check })),
    };
  },
});
