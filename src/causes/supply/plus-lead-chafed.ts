import { is } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import { FUSE_READS, fuseFigures, fuseLast, fuseParts, renewMainFuse } from '../main-fuse.ts';
import { AmpName, ampName } from '../the-amp.ts';
import { FITTER } from '../who.ts';

export const plusLeadChafed: Cause = {
  id: 'plus-lead-chafed',
  title: (f) => `The positive lead of ${ampName(f)} touches the frame`,
  faults: ['wire-chafed@plus-lead'],
  provedBy: ['lead-off-amp'],
  split: (f) => ({
    byMeter:
      'Key off, main fuse out, battery negative off, positive lead off the amplifier, meter on ohms: lead to bare frame metal, below 100 Ω?',
    needs: ['minus-off', 'meter-on-ohms'],
    without: is(f, 'lead-off-amp', 'bright')
      ? 'The lamp still in the fuse’s place, the lead off the amplifier and taped: does it flicker as you move the lead bit by bit?'
      : 'Battery negative off, positive lead off the amplifier and taped, a 21 to 55 W lamp in the fuse’s place, negative on: does it stay bright?',
    cautions: ['minus-first', 'battery-gas', 'cranking', 'fuse', 'lamp-hot'],
  }),
  mends: ['amp-supply'],
  article: 'wire-fuse-and-ground',
  remedy: (f) => ({
    what: `The positive lead of ${ampName(f)} has chafed through to the frame, and that blew its main fuse.`,
    background: is(f, 'lead-off-amp', 'bright')
      ? `${AmpName(f)} does not blow the fuse: the lead shorts before it.`
      : `The short is then ahead of the amplifier. A lamp in the fuse’s place, with the lead off ${ampName(f)}, tells the two apart.`,
    numbers: fuseFigures(f),
    readFirst: FUSE_READS,
    repair: [{ do: 'free-wire', wire: 'plus-lead' }, renewMainFuse(f)],
    fix: [
      'Key off, main fuse out, battery negative off.',
      'Follow the lead: seat pan, frame edges, steering, under the tank. It will be worn where it runs close to metal.',
      'A few strands damaged: cut that length out and rejoin with a sealed crimp. Only the insulation: sleeve it.',
      'Route it with slack at the steering and a grommet at each edge. The length before the fuse has no protection: look there first, and keep the fuse within a hand’s width of the battery.',
      ...fuseLast(f),
    ],
    tools: 'Crimp tool, a 21 to 55 W lamp or a meter',
    minutes: 45,
    who: FITTER,
    parts: ['Sealed crimp, sleeve, grommets, cable ties', ...fuseParts(f)],
    notBuy: [
      'A bigger fuse: the lead would burn in its place.',
      'An amplifier, before the lead has been mended and this one tried.',
    ],
    ifDoneAnyway: 'With a bigger fuse the lead itself becomes the fuse, right next to the fuel tank.',
    proofOfCure: {
      byEar:
        'The amplifier comes on. Steering from lock to lock and the seat loaded: no flicker, and the same fuse is whole after ten loud minutes.',
      byMeter:
        'Main fuse out, battery negative off, lead off the amplifier: above 100 kΩ to the frame while it is moved.',
      needs: ['meter-on-ohms'],
    },
  }),
};
