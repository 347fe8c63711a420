import { largestFuseA, USUAL_LEADS_M2 } from '../compute/fuse.ts';
import { formatQuantity } from '../compute/quantity.ts';
import { RIDING } from './riding.ts';

/** “20 A on 3.31 mm², 30 A on 5.26”, for each usual lead. */
const FUSE_BY_LEAD = USUAL_LEADS_M2.map((sectionM2, i) => {
  const section = formatQuantity(sectionM2 / 1e-6, 'mm²', 3);
  return `${largestFuseA({ sectionM2 })} A on ${i === 0 ? section : section.replace(' mm²', '')}`;
}).join(', ');

/** Every caution once. A step or a verdict names the ones that belong to it. */
export const CAUTIONS = {
  riding: RIDING,
  outdoors:
    'Engine on only outdoors: exhaust gas kills. Firm stand, neutral, hair and sleeves clear, mind the hot parts.',
  bridge:
    'Never touch a speaker wire to the frame, not even with a probe tip, while it is plugged in: it can kill the output. No mains-powered instrument either.',
  'loud-tone':
    'Start the tone with the volume at zero and come up one step at a time. Tones damage ears and coils sooner than music does.',
  'full-tone':
    'Near the top a tone burns speakers and hurts ears. With a speaker still on it: bursts under 5 seconds, ears covered.',
  'loud-listening':
    'Loud for seconds only, ears covered, no ear near a speaker. At 100 dBA the limit is fifteen minutes a day, and every 3 dB more halves that.',
  'key-off': 'Key off before any plug goes in or out.',
  'ohms-dead': 'Ohms only with the key off and the plug apart. Never on a live output.',
  'amp-output':
    'Key off, then unplug the speakers from the amplifier for this. Full output into a speaker is painfully loud.',
  'short-suspected':
    'Do not swap outputs while a short to the frame is possible: it can take the good channel with it.',
  hot: 'Cases, fuse holders and exhaust can burn your skin. If you smell hot varnish or plastic: key off, fuse out, stop.',
  cell: 'Only with the wires off whatever drives them. Half a second at a time. Never on a tweeter, never a 9 V battery.',
  'flat-battery':
    'Key on, engine off, music system on: the bike draws about 13 A. Twenty minutes at most, or stop when the battery reads 12.2 V. Better with a charger on.',
  cone: 'Never press a cone on one side, and never touch a tweeter dome.',
  'minus-first':
    'Battery negative comes off first and goes back last, all its leads together. Ring and watch off. No spanner from positive to frame.',
  cranking:
    'Never crank with the bike’s negative lead loose and the amplifier’s tight: the starter current would go through the amplifier.',
  capacitors:
    'The amplifier’s capacitors charge with a spark when its fuse or lead goes back. Not near a battery that has just been charged.',
  'live-clip':
    'Main fuse out while you clip on: the amplifier’s positive is live even with the key off. A test lamp has a 10 A fuse in its lead.',
  fuse: 'Never a bigger fuse than the lead can carry, never a wire in its place. A fuse that blows twice: stop.',
  // Common practice, no published source; the fuse for each lead is that of the calculators.
  'no-fuse': `A battery lead without a fuse: fire kills. Off the battery until it has one: ${FUSE_BY_LEAD}.`,
  data: 'Leave the data-bus wires and any airbag plug alone. No probes, no test lamps.',
  warranty: 'Under warranty? Ask before you open anything, because it may be judged later, and keep what you take off.',
  'back-to-full':
    'Before the level goes back up: amplifier gain to minimum, speaker-level range, high-pass on. Set the gain again afterwards. Otherwise it comes back 7 dB louder, and 20 dB in the bass.',
  'set-gain-again': 'After the change set the amplifier gain again, and take out any bass cut in its own tuning.',
  'plus-probe':
    'The probe on positive must not touch the frame: hundreds of amps are waiting. A long test lead on battery positive needs a 1 A fuse at its clip.',
  jumper:
    'Take the remote wire off first and insulate its end. Then amplifier positive to remote only, through a 1 A fuse. Never to ground, the frame or a speaker terminal.',
  'lamp-hot': 'The lamp reaches hundreds of degrees within seconds. Hold it by its leads, away from seat and plastic.',
  'ground-open':
    'Line-level plugs out first, key off: with a loose ground the amplifier’s current returns through their shields and the head unit.',
  'wakes-loud':
    'It may wake at full blast. Volume at zero and amplifier gain down before you try; only to listen for its hiss the gain stays.',
  'comes-back-loud':
    'When the sound comes back, it may be loud. Volume right down first, then up slowly, and mind your ears.',
  'battery-gas':
    'A battery can give off explosive gas: no sparks, no flame, eye protection. Never disconnect it with the engine running.',
  'own-charger': 'Charge a lithium battery only with its own charger. Warm or swollen: hands off.',
  acid: 'A lead-acid battery that was overcharged may have spat acid: gloves and eye protection. On skin, eyes or paint: plenty of water at once; from eyes, then to a doctor.',
  'temporary-lead':
    'Only the positive lead gets a fuse, at the battery. Never fuse a ground. Keep the leads clear of the steering and off the exhaust.',
  'into-a-short': 'Don’t keep restarting into a short: each try can take the output with it.',
  'local-rules':
    'Local rules on sound, hearing and riding come first. Where the law calls for a licensed workshop, go to one.',
} as const;
export type CautionId = keyof typeof CAUTIONS;
