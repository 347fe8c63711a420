import type { CautionId } from '../../steps/cautions.ts';

/** The cautions as they are said to a caller: a breath each, in words that need no picture and no sentence before them. */
export const SPOKEN: Readonly<Record<CautionId, string>> = {
  riding: 'Not while riding: bike on its stand.',
  outdoors: 'Engine on only outdoors: its fumes kill.',
  bridge: 'No speaker wire that is plugged in, and no probe on one, may touch the bike’s metal: that kills the output.',
  'loud-tone': 'A tone hurts ears and speakers: keep it low, and no ear at a speaker.',
  'full-tone': 'Near the top a tone burns speakers and hurts ears: five seconds at a time, ears covered.',
  'loud-listening': 'Loud for seconds only, ears covered, nobody near a speaker.',
  'key-off': 'Key off each time before a plug or a fuse goes in or out.',
  'ohms-dead': 'Ohms only with the key off and the plug apart.',
  'amp-output': 'Key off, and all speakers off the amplifier: at full output they are painfully loud.',
  'short-suspected': 'Not if a speaker wire may touch the frame: it would take the good channel, too.',
  hot: 'Cases, fuses and exhaust may be hot. A burnt smell: key off and stop.',
  cell: 'One 1.5 volt cell, never 9 volt, half a second, wires off whatever drives them, never on a tweeter.',
  'flat-battery': 'Twenty minutes like this at most, or the battery goes flat.',
  cone: 'Never press the cone on one side, and never touch a tweeter dome.',
  'minus-first':
    'Battery negative comes off first and goes back last, all its leads together. Ring and watch off. No spanner from positive to frame.',
  cranking: 'Do not start the bike while its negative lead is loose and the amplifier’s is tight.',
  capacitors:
    'A small spark as the amplifier’s fuse goes back is normal: not near a battery that has just been charged.',
  'live-clip': 'Main fuse of the amplifier out while you clip on: its positive is live even with the key off.',
  fuse: 'Never a bigger fuse, never a wire instead. One that blows twice: stop.',
  'no-fuse': 'A battery lead without a fuse can set the bike on fire: off the battery with it until it has one.',
  data: 'Leave data wires and any airbag plug alone.',
  warranty: 'Under warranty? What you open may be judged later: keep what you take off.',
  'back-to-full': 'Before the level goes up: amplifier gain right down, or it comes back far louder.',
  'set-gain-again': 'Set the amplifier’s gain again afterwards.',
  'plus-probe': 'The probe on a positive must not touch the bike’s metal: hundreds of amps are waiting.',
  jumper:
    'From the amplifier’s positive to its remote terminal only, through a 1 amp fuse. Never to ground or to a speaker.',
  'lamp-hot': 'The lamp burns your skin within seconds: hold it by its leads, away from seat and plastic.',
  'ground-open': 'Round line plugs out of the amplifier first, key off: a loose ground would burn them.',
  'wakes-loud': 'It may wake at full blast: volume at zero, and no ear near a speaker while the key goes on.',
  'comes-back-loud': 'Volume right down first, then up slowly: it comes back loud, mind your ears.',
  'battery-gas': 'A battery gives off explosive gas: no sparks, no flame, eye protection on.',
  'own-charger': 'A lithium battery only on its own charger.',
  acid: 'An overcharged lead-acid battery may have spat acid: gloves, eye protection. On skin, eyes or paint: plenty of water at once.',
  'temporary-lead':
    'The positive lead has its fuse at the battery, the ground lead none. Both clear of steering and exhaust.',
  'into-a-short': 'Don’t keep restarting it into a short.',
  'local-rules': 'Local rules come first.',
};
