import { ampDriving } from '../rig/rig.ts';
import { choice, EVERY_PART } from './step.ts';

/** What ears and eyes can tell, without a tool. */

export const faderCentre = choice<'cured' | 'plays' | 'no-change'>({
  id: 'fader-centre',
  short: 'Fader and balance in the middle',
  ask: 'Put fader and balance in the middle. Does the rear play now?',
  phone: 'Open the sound menu and put both sliders exactly in the middle. Does the back play now?',
  how: [
    'Note where both stand now.',
    'Play music at a low volume.',
    'Set fader and balance to 0, and listen at a rear grille.',
  ],
  why: 'A fader at its front end silences the rear completely. Battery work and pocketed key presses move it.',
  tool: 'ears',
  minutes: 1,
  observes: EVERY_PART,
  options: {
    'no-change': 'No, still silent',
    cured: 'Yes. One stood off the middle',
    plays: 'It plays, and both were in the middle already',
  },
  outcomes: { 'no-change': 'no change', cured: 'rear plays', plays: 'plays just now anyway' },
  ifCannot: 'No such menu, or you cannot find it: the readings go round it.',
});

export const rearControl = choice<'cured' | 'no-change' | 'none'>({
  id: 'rear-control',
  short: 'Passenger control',
  ask: 'Is there a control for the passenger or the rear, and does turning it up bring the sound back?',
  phone: 'Are there buttons or a knob for the passenger, or a rear on and off item in the menu? Turn it up.',
  how: [
    'Look at the passenger’s armrest or pod, and for a “rear speakers” item in the menu.',
    'Set it to on and turn it up.',
  ],
  why: 'A rear control that is off looks exactly like a dead rear.',
  tool: 'ears',
  minutes: 0.5,
  observes: EVERY_PART,
  options: { cured: 'Yes, that was it', 'no-change': 'It is on, still silent', none: 'There is no such control' },
  outcomes: { cured: 'rear plays', 'no-change': 'on, no change', none: 'none fitted' },
});

export const fourCorners = choice<'all' | 'no-rear' | 'one-corner' | 'one-side' | 'none'>({
  id: 'four-corners',
  short: 'Which corners play',
  ask: 'Fader fully front, then rear, balance left, then right: which corners play?',
  phone: 'Fully front … now fully rear … now left … now right. Tell me each time which speaker you hear.',
  how: [
    'Case, lids and trunk plugged in. A mono track, low volume.',
    'Move the fader and the balance to each end and put your ear to each speaker.',
    'Put both back in the middle.',
    'An amplifier that takes everything from the front pair does not follow the fader: put your ear to each speaker.',
  ],
  why: 'One silent corner is a speaker, a plug or a wire. A silent pair is more often a setting, a profile or an amplifier.',
  tool: 'ears',
  minutes: 3,
  observes: EVERY_PART,
  options: {
    'no-rear': 'The front plays, the rear never',
    all: 'All four play',
    'one-corner': 'All but one rear corner',
    'one-side': 'One whole side is silent',
    none: 'Nothing plays anywhere',
  },
  outcomes: {
    'no-rear': 'front only',
    all: 'all four play',
    'one-corner': 'one rear corner silent',
    'one-side': 'one side silent',
    none: 'nothing plays',
  },
  ifCannot: 'No fader here: put your ear to each rear grille instead.',
});

export const lidCheck = choice<'cured' | 'reacts' | 'no-effect' | 'hiss-now' | 'no-plug'>({
  id: 'lid-check',
  short: 'Lid and case plugs',
  ask: 'Push every lid, bag and case plug fully home, then move the lid slowly. Does the sound come back?',
  phone: 'Key off, push the plug till it clicks, key on, listen. Then open and close the lid slowly while it plays.',
  how: [
    'Key off. Pull each plug, look at it, push it home until it locks.',
    'Key on, play music.',
    'Move each lid through its whole travel and listen. On an amplifier: pause, and listen for its hiss again.',
  ],
  why: 'Lid and case plugs are the joint that is opened most often, and they sit in road spray.',
  tool: 'ears',
  minutes: 3,
  observes: EVERY_PART,
  cautions: ['key-off'],
  options: {
    'no-effect': 'No, nothing changes',
    cured: 'Yes, after pushing the plug home',
    reacts: 'It comes and goes as the lid moves',
    'hiss-now': 'No music, but a hiss that was not there before',
    'no-plug': 'The rear speakers have no such plug',
  },
  // Only an amplifier that was not heard can be heard now.
  leftOut: (s) => (ampDriving(s.rig, 'rear') && s.facts[rearHiss.id] ? [] : ['hiss-now']),
  outcomes: {
    'no-effect': 'no effect',
    cured: 'plays after pushing home',
    reacts: 'comes and goes',
    'hiss-now': 'hisses now, no music',
    'no-plug': 'no such plug',
  },
  ifCannot: 'The case is not here? Refit it before anything else: a rear in the garage stays silent.',
});

export const contactsLook = choice<'apart' | 'film' | 'clean'>({
  id: 'contacts-look',
  short: 'The plug’s contacts',
  ask: 'How did the plug look: apart, dirty, or clean and together?',
  phone: 'Was the plug really apart, or was it in, with a grey or green film on the metal?',
  how: [
    'Look at both halves in good light.',
    'With a film on them: wipe them dry with a lint-free cloth, no abrasive, and try again.',
  ],
  why: 'A plug that was apart is cured. A film comes back, and a clean plug means that the lead itself breaks inside.',
  tool: 'none',
  minutes: 1,
  observes: ['run'],
  cautions: ['key-off'],
  options: { apart: 'It was apart or not locked', film: 'Together, with dirt or a film', clean: 'Together and clean' },
  outcomes: { apart: 'was apart', film: 'dirty or filmed', clean: 'clean' },
  givenUnder: ['lid-check'],
});

export const rearHiss = choice<'hiss' | 'silent'>({
  id: 'rear-hiss',
  short: 'Hiss at a rear cone',
  ask: 'Music paused, ear at a rear speaker: is there a faint hiss, or a thump when it switches on?',
  phone:
    'Pause the music, put your ear right on the rear grille. A little hiss, like a shell? Or a soft thump when you switch on?',
  how: [
    'Quiet place, engine off, key on, music paused.',
    'Volume at zero, ear near the grille. For the thump: volume still at zero, key off and on, a hand’s width away.',
  ],
  why: 'Hiss is the amplifier’s own noise. If you hear it, the amplifier, the wire and the coil are alive, and the fault is before the amplifier.',
  tool: 'ears',
  minutes: 1,
  observes: ['amp-supply', 'amp', 'run', 'speaker'],
  cautions: ['loud-tone'],
  options: { hiss: 'Yes, hiss or a thump', silent: 'Dead silence' },
  outcomes: { hiss: 'hiss or thump', silent: 'dead silence' },
  ifCannot: 'Too loud around you: we go on without it.',
});

export const ampLight = choice<'normal' | 'off' | 'fault'>({
  id: 'amp-light',
  short: 'Amplifier lamp',
  ask: 'With music playing, is the amplifier’s lamp lit as usual, off, or showing its fault colour?',
  phone:
    'Do not take anything apart yet. Just look at the little lamp on the amplifier: what colour, and does it blink?',
  how: [
    'Music playing at medium volume.',
    'Look within 10 seconds, and again after a minute: an amplifier that listens falls asleep.',
  ],
  why: 'A lit lamp does not prove that sound comes out, and a dark one does not prove that the supply is missing. It says where to look first.',
  tool: 'none',
  minutes: 1,
  observes: ['settings', 'profile', 'unit', 'unit-leads', 'amp-supply', 'amp', 'run'],
  cautions: ['hot'],
  options: { normal: 'Lit as usual', off: 'Off', fault: 'Fault colour, or blinking' },
  outcomes: { normal: 'lit', off: 'off', fault: 'fault' },
  ifCannot: 'Hidden amplifier: lay a hand on it after ten minutes of music. Warm means on.',
});

export const wakesWhenLoud = choice<'awake' | 'wakes' | 'wakes-silent' | 'fault' | 'stays-off'>({
  id: 'wakes-when-loud',
  short: 'Turned up for a moment',
  ask: 'Turn it up slowly, with music that never stops. Does the amplifier’s lamp come on, and do its own speakers play then?',
  phone:
    'Speech off, steady music on. Come up one step at a time, well above your usual volume. Does the lamp come on? And does the back play then?',
  how: [
    'Amplifier gain down first, if you can reach it: it may wake at full blast.',
    'Steady music at your usual volume first: look at the lamp. Then come up one step at a time, ten seconds a step.',
    'Turn down again as soon as its lamp comes on, in whatever colour.',
  ],
  why: 'An amplifier that listens has a threshold. If only high volume wakes it, too little reaches it: its wiring is fine.',
  tool: 'ears',
  minutes: 2,
  observes: ['settings', 'profile', 'unit', 'unit-leads', 'amp-supply', 'amp', 'run', 'speaker'],
  cautions: ['loud-tone'],
  options: {
    wakes: 'It wakes, and its speakers play',
    'wakes-silent': 'It wakes, and its speakers stay silent',
    fault: 'Its fault lamp comes on',
    'stays-off': 'No, it stays off',
    awake: 'It is on by now, at my usual volume already',
  },
  outcomes: {
    awake: 'on by now at the usual volume',
    wakes: 'wakes when loud, and plays',
    'wakes-silent': 'wakes when loud, and stays silent',
    fault: 'fault lamp when loud',
    'stays-off': 'stays off',
  },
  article: 'amplifiers-that-listen',
});

export const wiggle = choice<'amp-input' | 'rear-run' | 'amp-supply' | 'no-effect'>({
  id: 'wiggle',
  short: 'Press and move the plugs',
  ask: 'Music low: does pressing a plug or a lead with one finger make the rear come or go?',
  phone: 'Press each plug gently with one finger, one after the other. Tell me when it crackles, plays or stops.',
  how: (s) => [
    'Engine off, music at a low volume.',
    ...(s.rig.rearFedBy === 'unit'
      ? ['Press and move: the plug of the rear loom, lid leads at the hinge, leads under the seat.']
      : [
          'Press and move: the signal plug at the amplifier, its power leads, the rear speaker plug, lid leads at the hinge.',
        ]),
    'Only what you can reach. No metal tools. Nothing that is hot.',
  ],
  why: 'What reacts to a finger is where the contact is bad. What does not react proves nothing.',
  tool: 'ears',
  minutes: 10,
  observes: ['unit-leads', 'amp-supply', 'run'],
  cautions: ['riding', 'hot'],
  options: {
    'no-effect': 'Nothing reacts',
    'amp-input': 'The signal plug at the amplifier',
    'rear-run': 'A rear speaker plug, lead or lid',
    'amp-supply': 'A power lead, fuse holder or remote wire',
  },
  leftOut: (s) => (s.rig.rearFedBy === 'unit' && !ampDriving(s.rig, 'rear') ? ['amp-input', 'amp-supply'] : []),
  outcomes: {
    'no-effect': 'nothing reacts',
    'amp-input': 'signal plug reacts',
    'rear-run': 'rear lead reacts',
    'amp-supply': 'power lead reacts',
  },
});

export const ampSwitches = choice<'right' | 'mode' | 'range' | 'turn-on'>({
  id: 'amp-switches',
  short: 'Selectors on the amplifier',
  ask: 'Do the amplifier’s selectors fit the way it is wired?',
  phone: 'Read me every little switch on the amplifier and where it stands, left to right.',
  how: [
    'Only read them. Key off before you move one.',
    'Inputs: set to the number of pairs that are plugged in.',
    'Crossover: full range or high-pass for the rear, never low-pass.',
    'Range: the highest voltage that comes in must be inside it.',
    'Turn-on: set to wire where there is a remote wire, to sensing where there is none.',
  ],
  why: 'A channel selector left at its default can take the rear channels from inputs that nobody wired.',
  tool: 'none',
  minutes: 5,
  observes: ['amp'],
  cautions: ['hot'],
  options: {
    right: 'They all fit',
    mode: 'The input selector does not fit',
    range: 'The range does not fit, or the gain is at its lowest',
    'turn-on': 'The turn-on selector does not fit',
  },
  outcomes: {
    right: 'all fit',
    mode: 'input selector wrong',
    range: 'range or gain wrong',
    'turn-on': 'turn-on selector wrong',
  },
  ifCannot: 'Take a photo of the selector side and send it along with this case.',
});
