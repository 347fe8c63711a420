import { choice } from './step.ts';
import { theAmp } from './which-amp.ts';

/** What happened before, and what eyes, ears and fingers find at an amplifier that stays off. */

export const ampHistory = choice<'never' | 'stopped' | 'comes-and-goes'>({
  id: 'amp-history',
  short: 'The amplifier before now',
  ask: 'Has this amplifier ever come on by itself on this bike?',
  phone: 'Did that amplifier ever come on by itself, or has it been dark since it was fitted?',
  how: ['Count only coming on with the head unit, as it should.'],
  why: 'One that never came on points to the fitting. One that stopped points to a fuse, a contact or the last work.',
  tool: 'none',
  minutes: 0.3,
  observes: [],
  options: { never: 'Never', stopped: 'It did, then it stopped', 'comes-and-goes': 'It comes and goes' },
  outcomes: { never: 'never came on', stopped: 'worked, then stopped', 'comes-and-goes': 'comes and goes' },
});

export const ampSigns = choice<'alive' | 'dead'>({
  id: 'amp-signs',
  short: 'Other signs of life',
  ask: 'No lamp to see: is there a click or thump at switch-on, or is its case warm after ten minutes?',
  phone: 'Listen at the amplifier while you switch on: a click? After ten minutes of music, is its case warm?',
  how: [
    'Volume at zero. Ear near the amplifier, key off and on: a click or a soft thump?',
    'Music for ten minutes, then the back of a hand near its case: warmer than the metal around it?',
  ],
  why: 'A relay that clicks and a case that warms up need supply, ground and turn-on, all three.',
  tool: 'ears',
  minutes: 11,
  observes: ['settings', 'profile', 'unit', 'unit-leads', 'amp-supply', 'amp', 'run'],
  cautions: ['hot', 'wakes-loud'],
  options: { alive: 'Yes, it clicks or gets warm', dead: 'No, nothing at all' },
  outcomes: { alive: 'clicks or gets warm', dead: 'no sign of life' },
});

export const ampGoesOff = choice<'stays-on' | 'always' | 'bumps' | 'running' | 'loud' | 'hot' | 'quiet'>({
  id: 'amp-goes-off',
  short: 'When it goes off',
  ask: 'When does it go off, or show its fault lamp?',
  phone:
    'Think of the last three times it went dark or showed its fault lamp: bumps, the engine running, loud music, heat, quiet music, or each time from the start?',
  how: ['Think of the last three times.', 'It is on and never goes off? Then the trouble is that no sound comes out.'],
  why: 'Bumps point to a contact, loud music to volts that are lost, heat to its cooling, quiet music to its listening.',
  tool: 'none',
  minutes: 0.5,
  observes: ['settings', 'profile', 'unit', 'unit-leads', 'amp-supply', 'amp', 'run', 'speaker'],
  options: {
    'stays-on': 'It stays on, it is only silent',
    always: 'Fault lamp at once, each time it is switched on',
    bumps: 'On bumps, or when something is moved',
    running: 'With the engine running, loud or not',
    loud: 'In loud passages',
    hot: 'When it is hot, and back after minutes',
    quiet: 'In quiet passages',
  },
  outcomes: {
    'stays-on': 'stays on',
    always: 'fault lamp from the start',
    bumps: 'on bumps',
    running: 'with the engine running',
    loud: 'in loud passages',
    hot: 'when hot',
    quiet: 'in quiet passages',
  },
  // What shows its fault lamp does not stay on, and what is on has no fault from the start.
  leftOut: ({ facts }) => {
    const lamp = facts['amp-light'];
    if (lamp === undefined) return [];
    return 'option' in lamp && lamp.option === 'fault' ? ['stays-on', 'quiet'] : ['always'];
  },
  givenUnder: ['amp-light'],
});

export const whatElse = choice<'nothing' | 'accessories' | 'unit' | 'bike'>({
  id: 'what-else',
  short: 'What else stopped',
  ask: 'Did anything else on the bike stop at the same time?',
  phone: 'Is anything else dead: the radio itself, the socket, the charger? Is the clock set back, are the lamps dim?',
  how: ['Look at the head unit’s screen, a socket or a charger, the clock, and the lamps.'],
  why: 'A dead socket names the fuse that the remote wire shares. A clock set back names the battery posts.',
  tool: 'none',
  minutes: 1,
  observes: ['unit', 'amp-supply'],
  options: {
    nothing: 'Nothing else',
    accessories: 'A socket, a charger or another accessory',
    unit: 'The head unit is dark, too',
    bike: 'Dim lamps, a slow starter, a clock set back',
  },
  outcomes: {
    nothing: 'nothing else',
    accessories: 'an accessory too',
    unit: 'the head unit too',
    bike: 'the whole bike is weak',
  },
});

export const keyPositions = choice<'none' | 'some'>({
  id: 'key-positions',
  short: 'Other key positions',
  ask: 'Does the amplifier come on in any other key position, or with another switch of the bike?',
  phone: 'Turn the key through its positions, wait ten seconds in each. Lamps on, lamps off. Does it come on anywhere?',
  how: [
    'Accessory, ignition, lamps on and off, heated grips on and off. Ten seconds each.',
    'Head unit on, where the position allows it.',
  ],
  why: 'A remote wire tapped from the wrong feed is live in some other position. That shows the mistake at once.',
  tool: 'none',
  minutes: 2,
  observes: ['unit', 'unit-leads', 'amp-supply', 'amp'],
  options: { none: 'No, it stays off in all of them', some: 'Yes, in one of them' },
  outcomes: { none: 'off in all of them', some: 'comes on in another position' },
});

export const supplyWiggle = choice<'no-effect' | 'battery' | 'holder' | 'ground' | 'remote' | 'input'>({
  id: 'supply-wiggle',
  short: 'Press its power leads',
  ask: 'Head unit on: does the lamp flicker when you press the rings, the fuse holder or a plug with one finger?',
  phone: 'Push each thing gently with one finger, battery first, then the fuse, the ground, the thin wires. A flicker?',
  how: (s) => [
    'Engine off, volume low. One finger, no metal tools.',
    'Battery rings, fuse holder, plus and ground at the amplifier, the other end of the ground, the remote wire.',
    ...(theAmp(s).turnOn === 'wire' ? [] : ['The signal plug, too: it is what this amplifier listens to.']),
  ],
  why: 'What reacts to a finger is where the contact is bad. What does not react proves nothing.',
  tool: 'none',
  minutes: 5,
  observes: ['unit-leads', 'amp-supply', 'amp'],
  cautions: ['hot', 'wakes-loud'],
  options: {
    'no-effect': 'Nothing reacts',
    battery: 'A ring at the battery',
    holder: 'The fuse holder or the plus lead',
    ground: 'The ground lead',
    remote: 'The remote wire',
    input: 'The signal plug',
  },
  outcomes: {
    'no-effect': 'nothing reacts',
    battery: 'a battery ring reacts',
    holder: 'fuse holder or plus lead reacts',
    ground: 'ground lead reacts',
    remote: 'remote wire reacts',
    input: 'signal plug reacts',
  },
});
