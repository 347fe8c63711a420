import { MUSIC_AVERAGE_RATIO } from '../../compute/amp-current.ts';
import { perCorner } from '../../rig/corner.ts';
import { usable } from '../../steps/outcome.ts';
import { adapterLook, betweenLook, inputPlug, remoteJumper, senseLevel } from '../../steps/turn-on.ts';
import { SOUND } from '../../world/healthy.ts';
import { ORDINARY_VOLUME } from '../../world/moment.ts';
import { ampIsOn, ampOf, changed, cornersOfAmp, isOpen, lampOf, withAmp } from './bike.ts';
import { hold } from './hand.ts';
import { CANNOT, happens, option, type Says } from './observer.ts';
import { acAt, probesAt } from './probes.ts';
import { VOLUME_STEPS } from './volume.ts';

/* What wakes an amplifier, by ear, by eye, and at its inputs. */

/** How many owners have the papers of their amplifier, with its threshold in them. An estimate. */
const HAS_PAPERS_SHARE = 0.3;
const THREE_QUARTERS_UP = VOLUME_STEPS[Math.round(0.75 * VOLUME_STEPS.length) - 1] ?? 1;
const SOUND_PLUG = perCorner(() => ({ plus: SOUND, minus: SOUND }));

export const TURN_ON: Says = {
  [remoteJumper.id]: ({ bike }) => {
    if (ampOf(bike) === null) return CANNOT;
    // The selector is set to wire for this, as the step says.
    const set = changed(bike, 'selector on wire', withAmp({ turnOn: 'wire' }));
    const lamp = lampOf(set, { jumper: true, toneHz: null, apart: ['remote'] });
    return option(lamp === 'normal' ? 'wakes' : lamp === 'fault' ? 'fault' : 'dead');
  },
  [adapterLook.id]: ({ bike }) => {
    const i = ampOf(bike);
    const amp = i === null ? undefined : bike.world.amps[i];
    if (!amp || bike.world.rig.unitKind !== 'replaced') return CANNOT;
    return option(isOpen(amp.remotePin) ? 'gap' : 'through');
  },
  [inputPlug.id]: ({ bike }) => {
    if (ampOf(bike) === null) return CANNOT;
    const home = changed(bike, 'signal plug home', withAmp({ inputPlug: SOUND_PLUG }));
    return option(ampIsOn(home) && !ampIsOn(bike) ? 'cured' : 'no-change');
  },
  [betweenLook.id]: ({ bike }) => {
    const i = ampOf(bike);
    const amp = i === null ? undefined : bike.world.amps[i];
    return amp ? option(amp.passesDc && amp.level === 'speaker' ? 'direct' : 'box') : CANNOT;
  },
  [senseLevel.id]: ({ step, bike, situation, observer }) => {
    const i = ampOf(bike);
    const pairs = cornersOfAmp(bike).map((corner) => probesAt(bike, ['amp-in-plus', 'amp-in-minus'], corner));
    const volts = (volumeRatio: number) =>
      Math.max(
        0,
        ...pairs.map((pair) =>
          pair
            ? acAt(
                bike,
                { volumeRatio, averageRatio: MUSIC_AVERAGE_RATIO, apart: ['amp-outputs'] },
                pair,
                observer.meter,
              )
            : 0,
        ),
      );
    if (i === null || pairs.every((pair) => pair === null)) return CANNOT;
    const hand = hold(observer);
    const papersV = bike.world.amps[i]?.senseV ?? 0;
    const listens = bike.world.rig.amps[i]?.turnOn === 'signal';
    const papers = listens && happens(observer, HAS_PAPERS_SHARE) ? { papersV: `${papersV.toPrecision(2)} V` } : {};
    const answer = {
      readings: {
        usualV: hand.typed('ac', volts(ORDINARY_VOLUME)),
        loudV: hand.typed('ac', volts(THREE_QUARTERS_UP)),
        ...papers,
      },
    };
    return usable(step, answer, situation) ? answer : CANNOT;
  },
};
