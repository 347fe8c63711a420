/** Every caution once. A step or a verdict names the ones that belong to it. */
export const CAUTIONS = {
  riding: 'Never while riding. The bike stands on its stand, the rider does nothing else.',
  outdoors: 'Engine only outdoors: exhaust gas kills. Firm stand, neutral, hair and sleeves away, hot parts in mind.',
  bridge:
    'Never touch a speaker wire to the frame, not even with a probe tip: it can kill the output. No mains-powered instrument either.',
  'loud-tone':
    'Start the tone with the volume at zero and come up one step at a time. Tones hurt ears and coils sooner than music does.',
  'full-tone':
    'Near the top a tone burns speakers and hurts ears. With a speaker still on it: bursts under 5 seconds, ears covered.',
  'loud-listening':
    'Loud for seconds only, ears covered, nobody with an ear at a speaker. 100 dBA is fifteen minutes a day, and each 3 dB more halves that.',
  'key-off': 'Key off before any plug goes in or out.',
  'ohms-dead': 'Ohms only with the key off and the plug apart. Never on a live output.',
  'amp-output':
    'Unplug the speakers from the amplifier for this, key off. Full output into a speaker is painfully loud.',
  'short-suspected':
    'Do not swap outputs while a short to the frame is possible: it can take the good channel with it.',
  hot: 'Cases, fuse holders and exhaust can burn your skin. A smell of hot varnish or plastic: key off, fuse out, stop.',
  cell: 'Only with the wires off whatever drives them. Half a second. Never on a tweeter, never a 9 V battery.',
  'flat-battery':
    'Key on, engine off, music system on: the bike draws about 13 A. Twenty minutes at most, or stop when the battery reads 12.2 V. A charger on the battery is better.',
  cone: 'Never press a cone on one side, never touch a dome.',
  'minus-first':
    'Battery minus off first and on last, all its leads together. Ring and watch off. No spanner from plus to frame.',
  cranking:
    'Never crank with the bike’s minus lead loose and the amplifier’s tight: the starter’s current would go through the amplifier.',
  capacitors:
    'The amplifier’s capacitors fill with a spark when its fuse or lead goes back. Not beside a battery that was just charged.',
  'live-clip':
    'Main fuse out while you clip on: the amplifier’s plus is live with the key off, too. A 10 A fuse in a lamp’s lead.',
  fuse: 'Never a bigger fuse than the lead can carry, never a wire in its place. A fuse that opens twice: stop.',
  data: 'Leave the data-bus wires and any airbag plug alone. No probes, no lamps.',
  warranty: 'Under warranty: say before you open anything that it may be judged later, and keep what you take off.',
  'back-to-full':
    'Before the level goes back up: amplifier gain to minimum, speaker-level range, high-pass on. Set the gain again afterwards. Otherwise it comes back 7 dB louder, and 20 dB in the bass.',
  'set-gain-again': 'After the change set the amplifier gain again, and take out any bass cut in its own tune.',
  'plus-probe':
    'The probe on plus must not touch the frame: hundreds of amperes wait there. A long test lead on battery plus has a 1 A fuse at its clip.',
  jumper:
    'Take the remote wire off first and insulate its end. Then only amplifier plus to remote, through a 1 A fuse. Never to ground, to the frame or to a speaker terminal.',
  'lamp-hot': 'The lamp is hundreds of degrees hot within seconds. Hold it by its leads, away from seat and plastic.',
  'ground-open':
    'Line-level plugs out first, key off: with a loose ground the amplifier’s current goes through their shields and the head unit.',
  'wakes-loud': 'It may wake at full blast. Volume at zero and amplifier gain down before you try.',
  'comes-back-loud':
    'Sound that comes back comes back loud. Volume right down first, then up slowly, with your ears in mind.',
  'battery-gas': 'A battery may gas: no sparks, no flame, eye protection. No lead off it while the engine runs.',
  'own-charger': 'A lithium battery only with its own charger. Warm or swollen: hands off.',
  'temporary-lead':
    'Only the plus lead gets a fuse, at the battery. A ground is never fused. Keep the leads out of the steering and off the exhaust.',
  'into-a-short': 'Do not start again and again into a short: each try can take the output with it.',
  'local-rules':
    'Local rules on sound, hearing and riding come first. Where the law asks for a licensed workshop, go there.',
} as const;
export type CautionId = keyof typeof CAUTIONS;
