import { choice } from './step.ts';

/** The fuses of the amplifier, by eye and with a lamp: ways that need no meter, and the test before any new fuse. */

export const fuseLook = choice<'blown' | 'whole'>({
  id: 'fuse-look',
  short: 'Main fuse, by eye',
  ask: 'Key off, main fuse pulled: is its strip burnt through?',
  phone: 'Key off. Pull the big fuse near the battery and hold it against the light. Is the little strip whole?',
  how: [
    'Key off. Amplifier volume does not matter now.',
    'Pull the main fuse of the amplifier, close to the battery. Note its number: that is its amperes.',
    'Look at the strip against the light, and at its blades: dull or brown means heat.',
    'A breaker instead of a fuse? Its button stands out, or its lever hangs: it tripped. Leave it so for now.',
  ],
  why: 'A burnt strip settles that the current was too high once. A whole one settles nothing: it can be open at its cap.',
  tool: 'none',
  minutes: 2,
  observes: ['amp-supply'],
  cautions: ['key-off', 'hot'],
  options: { blown: 'Burnt through, or the breaker had tripped', whole: 'It looks whole' },
  outcomes: { blown: 'burnt through', whole: 'looks whole' },
  ifCannot: 'Cannot find it? Follow the thick plus lead from the battery, or from the amplifier back.',
});

/** A lamp lets only its own current through, so it can stand in for the fuse while the short is still there. */
export const fuseLamp = choice<'dark' | 'bright'>({
  id: 'fuse-lamp',
  short: 'A lamp in place of the fuse',
  ask: 'A 12 V lamp in place of the fuse, remote wire and speakers off the amplifier: does the lamp stay bright?',
  phone:
    'No new fuse yet. Key off, thin remote wire and speakers off the amplifier. Put a bulb where the fuse was. Bright, or dark?',
  how: [
    'Key off. Remote wire and all speaker plugs off the amplifier, the remote wire’s end insulated.',
    'A 12 V lamp of 21 to 55 W on two leads, in place of the fuse.',
    'A short glow is healthy: the amplifier fills its capacitors. Bright for longer is a short.',
    'Bright? Move the lead along its way: where it flickers is the place.',
  ],
  why: 'A lamp in the fuse’s place shows a short without a spark and without a second fuse.',
  tool: 'test-lamp',
  minutes: 5,
  observes: ['amp-supply', 'amp'],
  cautions: ['key-off', 'lamp-hot', 'minus-first', 'fuse'],
  options: { dark: 'Dark, perhaps after a short glow', bright: 'Bright, and it stays bright' },
  outcomes: { dark: 'dark: no short now', bright: 'bright: a short is there' },
  ifCannot: 'No lamp: one new fuse of the same rating, once, with everything unplugged.',
});

export const leadOffAmp = choice<'bright' | 'dark'>({
  id: 'lead-off-amp',
  short: 'The plus lead off the amplifier',
  ask: 'Now the plus lead off the amplifier, its end insulated: is the lamp still bright?',
  phone: 'Battery minus off. Take the thick plus off the amplifier and tape its end. Battery minus on: bright or dark?',
  how: [
    'Battery minus off. Plus lead off the amplifier, its bare end taped.',
    'Battery minus on. Look at the lamp in the fuse’s place.',
    'Battery minus off again before the lead goes back.',
  ],
  why: 'Still bright without the amplifier: the lead touches the frame. Dark now: the amplifier itself is shorted.',
  tool: 'test-lamp',
  minutes: 5,
  observes: ['amp-supply', 'amp'],
  cautions: ['minus-first', 'lamp-hot'],
  options: { bright: 'Still bright', dark: 'Dark now' },
  outcomes: { bright: 'bright without the amplifier', dark: 'dark without the amplifier' },
  givenUnder: ['fuse-lamp'],
});

export const spareFuse = choice<'wakes' | 'holds' | 'opens'>({
  id: 'spare-fuse',
  short: 'One new fuse of the same rating',
  ask: 'One new fuse of the same rating, speakers and remote wire off at first: what happens?',
  phone:
    'Key off, speakers and thin remote wire off the amplifier. One new fuse, same number. Does it hold? Then plug back, key on.',
  how: [
    'Key off. Speaker plugs and remote wire off the amplifier.',
    'One new fuse of the same rating. Never a bigger one.',
    'It holds: key off, remote wire back, key on, lamp? Then the speakers, key off for each.',
    'It opens: stop here. A second one would tell you nothing new.',
  ],
  why: 'A fuse can be open and look whole. One swap of the same rating is a test; a bigger one is a fire.',
  tool: 'spare-fuse',
  minutes: 4,
  observes: ['amp-supply', 'amp'],
  cautions: ['fuse', 'key-off', 'hot'],
  options: {
    wakes: 'It holds, and the amplifier comes on',
    holds: 'It holds, the amplifier stays off',
    opens: 'It opens, at once or when it is switched on',
  },
  outcomes: { wakes: 'comes on with a new fuse', holds: 'new fuse holds, still off', opens: 'new fuse opens, too' },
});

export const bodyFuse = choice<'whole' | 'blown' | 'none'>({
  id: 'body-fuse',
  short: 'The amplifier’s own fuses',
  ask: 'Does the amplifier have fuses of its own beside its power plug, and are they whole?',
  phone: 'Look beside the thick wires on the amplifier. Are there small coloured fuses in it? Pull them: strips whole?',
  how: [
    'Key off. Look beside its power terminals, under a cover too.',
    'Pull each fuse, look at its strip and its blades, and push it back home.',
    'A meter at hand: key off, fuse out, it must read next to nothing in ohms.',
  ],
  why: 'An open fuse in the amplifier looks exactly like a dead amplifier, and costs a hundredth of one.',
  tool: 'none',
  minutes: 3,
  observes: ['amp-supply', 'amp'],
  cautions: ['key-off', 'fuse'],
  options: { whole: 'All whole', blown: 'One is burnt through', none: 'It has none' },
  outcomes: { whole: 'whole', blown: 'burnt through', none: 'none of its own' },
});

export const ringsLook = choice<'battery' | 'ground' | 'tight'>({
  id: 'rings-look',
  short: 'The rings of its ground lead',
  ask: 'Follow the amplifier’s ground lead: is a ring loose, painted over or green?',
  phone: 'Find where the amplifier’s ground lead is bolted on. Loose, painted under the ring, or green? Which end?',
  how: [
    'Key off. Battery minus off before you pull at any ring.',
    'Look at both ends: at the amplifier, and where it is bolted on.',
    'Bolted to a painted, anodised or rubber-mounted part counts as bad.',
  ],
  why: 'The open place is at the battery post, at the frame, or in a crimp. Each has its own fix.',
  tool: 'none',
  minutes: 3,
  observes: ['amp-supply'],
  cautions: ['minus-first'],
  options: {
    battery: 'Loose or green at the battery post',
    ground: 'Loose, painted or green where it meets the frame',
    tight: 'Both ends look good',
  },
  outcomes: { battery: 'bad at the battery post', ground: 'bad at the frame', tight: 'both ends look good' },
});

/** Both ways bypassed, one at a time: the test of leads for whoever has no meter. */
export const temporaryLeads = choice<'plus' | 'ground' | 'neither'>({
  id: 'temporary-leads',
  short: 'Temporary plus and ground leads',
  ask: 'A temporary ground lead to battery minus, then a fused plus lead: does the amplifier come on with one of them?',
  phone:
    'A thick lead from the amplifier’s ground straight to battery minus: lamp on? If not, a fused lead from battery plus to its plus.',
  how: [
    'Key off. A 4 mm² lead or thicker from the amplifier’s ground to the battery minus post. Key on: lamp?',
    'Not yet: key off. A second lead with its own 10 A fuse at the battery, from plus post to amplifier plus. Key on: lamp?',
    'It is on, and goes off only when loud or shaken? Do that again with each lead: does it still go off?',
    'Take both off again, plus first.',
  ],
  why: 'A lead that cures it stands beside the one that is at fault.',
  tool: 'jumper',
  minutes: 10,
  observes: ['amp-supply', 'amp'],
  cautions: ['minus-first', 'temporary-lead', 'key-off', 'ground-open'],
  options: {
    ground: 'Yes, with the ground lead',
    plus: 'Yes, with the plus lead',
    neither: 'No, with neither',
  },
  outcomes: { ground: 'comes on with a new ground', plus: 'comes on with a new plus', neither: 'stays off with both' },
});
