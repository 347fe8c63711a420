import type { Rig } from '../rig/rig.ts';
import { ampDriving, withKnown, without } from '../rig/rig.ts';
import { choice, rigQuestion } from './step.ts';

/** Questions about a planned build, and about what is known of the profile that is stored now. */

export type PlannedChange =
  | 'nothing'
  | 'front-only'
  | 'rear-on-unit'
  | 'amp-added'
  | 'amp-exchanged'
  | 'amp-removed'
  | 'unit-replaced'
  | 'mirroring'
  | 'louder'
  | 'same-eq'
  | 'after-reflash';

/** The rig as it will be: what the plan settles is set, and what it may change is forgotten, so that it is asked. */
function plannedRig(plan: PlannedChange, rig: Rig): Rig {
  switch (plan) {
    case 'rear-on-unit':
      return withKnown(rig, { rearFitted: 'yes', rearFedBy: 'unit' });
    case 'amp-added':
    case 'amp-removed':
      return without(rig, 'amps', 'frontFedBy', 'rearFitted', 'rearFedBy');
    case 'amp-exchanged':
      return without(rig, 'amps');
    case 'unit-replaced':
      return withKnown(rig, { unitKind: 'replaced' });
    default:
      return rig;
  }
}

export const plannedChange = rigQuestion<PlannedChange>({
  id: 'planned-change',
  short: 'Plan',
  ask: 'What do you want to change, or what should get better?',
  phone: 'What are you planning on the bike, or what should be better afterwards?',
  how: [
    'Take the one that comes closest. Everything after this is asked about the bike as it will be.',
    'A factory head unit swapped for the same one is not “another head unit”. It comes back as delivered.',
  ],
  why: 'Most wishes need nothing done to the head unit. Some need one setting, and some would be spoilt by it.',
  tool: 'none',
  minutes: 0.5,
  observes: [],
  options: {
    nothing: 'Nothing. Somebody said I need a reflash',
    'front-only': 'New front speakers, nothing else',
    'rear-on-unit': 'Rear speakers on the head unit',
    'amp-added': 'An amplifier is added',
    'amp-exchanged': 'An amplifier is exchanged',
    'amp-removed': 'An amplifier comes off',
    'unit-replaced': 'Another head unit, not the bike maker’s',
    mirroring: 'Only phone mirroring without a headset',
    louder: 'Louder, or less boomy when loud, without an amplifier',
    'same-eq': 'Bass and treble should stay the same when the engine starts',
    'after-reflash': 'It got worse after a reflash',
  },
  outcomes: {
    nothing: 'nothing, somebody said so',
    'front-only': 'new front speakers only',
    'rear-on-unit': 'rear speakers on the head unit',
    'amp-added': 'an amplifier is added',
    'amp-exchanged': 'an amplifier is exchanged',
    'amp-removed': 'an amplifier comes off',
    'unit-replaced': 'another head unit',
    mirroring: 'phone mirroring only',
    louder: 'louder or less boomy without an amplifier',
    'same-eq': 'same EQ with the engine running',
    'after-reflash': 'worse after a reflash',
  },
  ifCannot: 'We go through the whole build.',
  article: 'what-a-reflash-is',
  known: () => undefined,
  learn: plannedRig,
});

export const wrongNow = choice<'no' | 'rear-silent' | 'other'>({
  id: 'wrong-now',
  short: 'Wrong now',
  ask: 'Is anything wrong with the sound now?',
  phone: 'Forget what others said. Is there anything about the sound that bothers you today?',
  how: ['Your own ears count. A wish is not a fault.'],
  why: 'If nothing is wrong and nothing is wished for, there is nothing to do, whatever is stored in the head unit.',
  tool: 'none',
  minutes: 0.3,
  observes: [],
  options: { no: 'No, nothing', 'rear-silent': 'The rear is silent', other: 'Yes, something else' },
  outcomes: { no: 'nothing wrong', 'rear-silent': 'rear silent', other: 'something is wrong' },
  givenUnder: ['planned-change'],
});

export const wishMirroring = choice<'yes' | 'no'>({
  id: 'wish-mirroring',
  short: 'Mirroring',
  ask: 'Do you also want phone mirroring to start without a headset?',
  phone: 'Does your phone’s picture come up on the screen only when a headset is connected, and should that change?',
  how: ['If mirroring works for you as it is, or you do not use it: no.'],
  why: 'That is a setting of the headset module. It is a separate thing, and no output profile touches it.',
  tool: 'none',
  minutes: 0.2,
  observes: [],
  options: { yes: 'Yes', no: 'No' },
  outcomes: { yes: 'wanted', no: 'not wanted' },
});

export const frontBuild = rigQuestion<'unit' | 'amp'>({
  id: 'front-build',
  short: 'Front driven by',
  ask: 'When it is finished, what drives the front speakers?',
  phone: 'When all is done: do the front speakers hang on the radio itself, or on an amplifier?',
  how: [
    'Follow the wires from the speaker, or ask who fits it. Speakers at the ends of their wires decide, not the plan.',
  ],
  why: 'An amplified profile lowers every output. A pair that stays on the head unit then plays quietly.',
  tool: 'none',
  minutes: 1,
  observes: [],
  options: { unit: 'The head unit', amp: 'An amplifier' },
  outcomes: { unit: 'the head unit', amp: 'an amplifier' },
  known: (rig) => rig.frontFedBy ?? (ampDriving(rig, 'front') ? 'amp' : undefined),
  learn: (frontFedBy, rig) => withKnown(rig, { frontFedBy }),
});

export const rearBuild = rigQuestion<'none' | 'unit' | 'amp'>({
  id: 'rear-build',
  short: 'Rear driven by',
  ask: 'When it is finished, are there rear speakers, and what drives them?',
  phone: 'When all is done: are there speakers in the back, and do they hang on the radio or on an amplifier?',
  how: ['Lids, saddlebags, top case, trunk and passenger pods all count as rear.'],
  why: 'Rear speakers on the head unit need its rear channels switched on. No amplifier is needed for that.',
  tool: 'none',
  minutes: 1,
  observes: [],
  options: { none: 'No rear speakers', unit: 'Yes, on the head unit', amp: 'Yes, on an amplifier' },
  outcomes: { none: 'no rear speakers', unit: 'the head unit', amp: 'an amplifier' },
  known: (rig) => {
    if (rig.rearFitted === 'no') return 'none';
    return rig.rearFedBy ?? (ampDriving(rig, 'rear') ? 'amp' : undefined);
  },
  learn: (rear, rig) =>
    rear === 'none'
      ? withKnown(without(rig, 'rearFedBy'), { rearFitted: 'no' })
      : withKnown(rig, { rearFitted: 'yes', rearFedBy: rear }),
});

export const wishSameEq = choice<'yes' | 'no'>({
  id: 'wish-same-eq',
  short: 'Same EQ wanted',
  ask: 'Should bass and treble stay the same when the engine starts?',
  phone: 'When you start the engine, bass and treble may change. Does that bother you, should they stay the same?',
  how: ['The unaltered head unit changes its EQ when the engine runs. That is how it is made, not a fault.'],
  why: 'Only some amplified profiles keep one EQ. If you want that, the kind of profile matters.',
  tool: 'none',
  minutes: 0.3,
  observes: [],
  options: { yes: 'Yes, they should stay the same', no: 'No, I do not mind' },
  outcomes: { yes: 'wanted', no: 'not wanted' },
  ifCannot: 'We take it as no, and name the better kind all the same.',
});

export const profileSource = choice<'measure' | 'record' | 'never' | 'unknown'>({
  id: 'profile-source',
  short: 'Stored profile',
  ask: 'How do you know which output profile is stored in the head unit now?',
  phone:
    'What do we know about the settings stored in your radio: can you measure, is there a paper, or did nobody ever touch it?',
  how: [
    'A paper counts only if it says what the profile does: rear, level, bass boost, EQ.',
    'The name of a profile proves nothing, not even if it names your number of amplifiers.',
    'Nobody ever changed it: only if you have had the bike from new, and it got no other head unit.',
  ],
  why: 'The answer depends on what is stored now. A reading beats a paper, and a paper beats memory.',
  tool: 'none',
  minutes: 0.5,
  observes: [],
  options: {
    measure: 'I can measure it now',
    record: 'A paper says what it does',
    never: 'Nobody ever changed it',
    unknown: 'I do not know, and I cannot measure now',
  },
  outcomes: {
    measure: 'measured now',
    record: 'from a paper',
    never: 'never changed',
    unknown: 'not known',
  },
  article: 'what-a-reflash-is',
});

type Paper = 'yes' | 'no' | 'silent';
const paper = (id: string, short: string, ask: string, phone: string, why: string, yes: string, no: string) =>
  choice<Paper>({
    id,
    short,
    ask,
    phone,
    how: ['Read it off the job card or the read-out. What the paper does not say, it does not say: do not guess.'],
    why,
    tool: 'papers',
    minutes: 0.5,
    observes: ['profile'],
    options: { yes, no, silent: 'It does not say' },
    outcomes: { yes: yes.toLowerCase(), no: no.toLowerCase(), silent: 'the paper does not say' },
    ifCannot: 'Then it counts as not known.',
    givenUnder: ['profile-source'],
  });

export const paperRear = paper(
  'paper-rear',
  'Paper: rear',
  'Does the paper say that the rear channels are on?',
  'What does the paper say about the rear channels: on or off?',
  'Only the unaltered profile of a bike built with front speakers has them off.',
  'On',
  'Off',
);
export const paperLowered = paper(
  'paper-lowered',
  'Paper: level',
  'Does the paper say that the output level is lowered?',
  'What does the paper say about the level: full for speakers, or lowered for an amplifier?',
  'Only an amplified profile lowers it.',
  'Lowered',
  'Full',
);
export const paperBoosted = paper(
  'paper-boosted',
  'Paper: bass boost',
  'Does the paper say that the bass boost is in?',
  'What does the paper say about the bass boost: still in, or taken out?',
  'A profile has the full level and the boost, or neither. Both answers together check the paper.',
  'In',
  'Out',
);
export const paperSameEq = paper(
  'paper-same-eq',
  'Paper: EQ',
  'Does the paper say that the EQ stays the same when the engine runs?',
  'What does the paper say about the EQ: the same with the engine running, or another one?',
  'Two kinds of amplified profile differ only in this.',
  'The same',
  'Another one',
);

export const paperBy = choice<'dealer' | 'dealer-factory-amp' | 'specialist'>({
  id: 'paper-by',
  short: 'Paper: done by',
  ask: 'Who selected that profile?',
  phone: 'Who did the work on that paper: a dealer, or an independent specialist?',
  how: ['The stamp or the letterhead says it. Ask whether a factory amplifier was on the bike at that time.'],
  why: 'A dealer’s tool selects an amplified profile only if a factory amplifier answers on the data bus.',
  tool: 'papers',
  minutes: 0.5,
  observes: ['profile'],
  options: {
    dealer: 'A dealer, and no factory amplifier was fitted',
    'dealer-factory-amp': 'A dealer, with a factory amplifier fitted then',
    specialist: 'An independent specialist',
  },
  outcomes: {
    dealer: 'a dealer, without a factory amplifier',
    'dealer-factory-amp': 'a dealer, with a factory amplifier',
    specialist: 'an independent specialist',
  },
  ifCannot: 'Then the paper counts as it stands.',
  givenUnder: ['profile-source'],
});
