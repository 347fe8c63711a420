import { type Findings, is } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import { figureText } from '../figure.ts';
import { isWithoutAmp } from '../the-amp.ts';
import { findTheRun, notForAShort, onePlaced, Placed, placeToFrame } from '../where.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';
import { CLEAR_OF_FRAME, lowestToFrameRead, TOUCHES_FRAME } from './run-figures.ts';

/** What tells that the run which was just unplugged is the one. */
const comesBack = (f: Findings): string =>
  isWithoutAmp(f) ? 'do the rest play' : 'does the light clear, or do the rest play';

export const speakerWireToFrame: Cause = {
  id: 'speaker-wire-to-frame',
  title: (f) => Placed(placeToFrame(f), 'speaker wire on the frame'),
  faults: ['speaker-wire-to-frame'],
  split: (f) => ({
    byMeter:
      is(f, 'wire-to-frame', 'shorted') ||
      is(f, 'wire-to-frame@front', 'shorted') ||
      is(f, 'amp-wires-to-frame', 'shorted')
        ? `Key off, unplug one run at a time: with which one off ${comesBack(f)}? Does only that one read ohms to the frame?`
        : 'Key off, plug apart, meter on ohms, lids moving: is a speaker wire below 100 Ω to bare frame metal?',
    needs: ['meter-on-ohms'],
    without: `Key off, unplug one run at a time, the rest plugged in: with one of them off, ${comesBack(f)}?`,
  }),
  mends: ['run'],
  article: 'half-the-supply-on-a-speaker-wire',
  remedy: (f) => ({
    what: `${onePlaced(placeToFrame(f), 'speaker wire')} touches metal. Its output sits at half the supply, so that shorts it to ground.`,
    background:
      'Pinched under a grille or the seat, bent at a hinge, or a bare terminal on a metal lid. It may touch only with the lid shut.',
    numbers: [...lowestToFrameRead(f), CLEAR_OF_FRAME, TOUCHES_FRAME],
    repair: [{ do: 'free-wire', wire: 'speaker-run', where: placeToFrame(f) }],
    fix: [
      ...findTheRun(f, placeToFrame(f)),
      'Leave that run unplugged: don’t keep restarting into the short.',
      'Key off, plugs apart. Meter on ohms, red on one wire after the other, black on bare bright frame metal. Move lids, steering and seat.',
      placeToFrame(f).startsWith('rear')
        ? 'Look under grilles, at lid hinges, under the seat, at bare terminals on metal.'
        : 'Look under grilles, behind the fairing, at its brackets, at lid hinges, under the seat, at bare terminals on metal.',
      'Free the wire, insulate it, and tie it with slack.',
      'Check every wire of every run to the frame again before a plug goes back.',
    ],
    tools: 'Meter, insulating tape, sleeve',
    minutes: 45,
    who: YOURSELF_OR_FITTER,
    parts: [],
    notBuy: [notForAShort(f)],
    ifDoneAnyway: `A new ${isWithoutAmp(f) ? 'head unit' : 'amplifier'} on the same wire shuts down too, or dies.`,
    cautions: ['ohms-dead'],
    proofOfCure: {
      byEar: 'It plays after key off and on, and for 30 minutes at the volume that tripped it. Lids open and shut.',
      byMeter: `Key off, plugs apart: every speaker wire ${figureText(CLEAR_OF_FRAME)} to the frame while lids, steering and seat move.`,
    },
  }),
};
