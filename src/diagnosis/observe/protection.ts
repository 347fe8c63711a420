import type { Corner } from '../../rig/corner.ts';
import { offered } from '../../steps/outcome.ts';
import { ampRuns, ampWiresToFrame, oneByOne, recover, speakersUnplugged } from '../../steps/protection.ts';
import { OPEN } from '../../world/healthy.ts';
import { LOUD_VOLUME } from '../../world/moment.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { ampIsOn, ampOf, changed, cornersOfAmp, lampOf } from './bike.ts';
import { hold } from './hand.ts';
import { whenToLook, whileOff } from './left.ts';
import { CANNOT, happens, option, type Says } from './observer.ts';
import { lowestToFrame, runOf } from './ohms.ts';

/* What an amplifier protects itself from. */

/** A short that is still there trips again at once: some call that "only by the key", some "each time". */
const CALLED_KEY_CYCLE_SHARE = 0.5;

/** Only this run plugged in. The others are off: what touches in them does not count. */
const alone = (bike: Ridden, corner: Corner): Ridden =>
  changed(bike, `${corner} alone`, (world) => {
    const others = cornersOfAmp(bike).filter((other) => other !== corner);
    const off = others.map((other) => {
      const run = world.runs[other];
      return [other, { ...run, dock: OPEN, toFrame: OPEN, acrossPair: OPEN }] as const;
    });
    return { ...world, runs: { ...world.runs, ...Object.fromEntries(off) } };
  });

export const PROTECTION: Says = {
  [recover.id]: ({ bike, situation, observer }) => {
    const i = ampOf(bike);
    if (i === null) return CANNOT;
    const { now } = bike.at(whileOff(bike, situation));
    const why = now.ok ? now.amps[i]?.why : 'no-supply';
    if (why === 'heat') return option('after-minutes');
    const protects = why === 'short' || why === 'load' || why === 'dc';
    // Volts that dip come back by themselves, and so does a contact that opened on a bump.
    if (why === 'undervoltage' || why === 'overvoltage' || (!protects && ampIsOn(bike))) return option('at-once');
    return option(protects && happens(observer, CALLED_KEY_CYCLE_SHARE) ? 'key-cycle' : 'stays');
  },
  [speakersUnplugged.id]: ({ bike, step, situation }) => {
    if (ampOf(bike) === null) return CANNOT;
    const lamp = lampOf(bike, { ...whenToLook(bike), apart: ['amp-outputs'] });
    if (lamp === 'normal') return option('clears');
    return option(lamp === 'off' && offered(step, situation).some(([name]) => name === 'dark') ? 'dark' : 'stays');
  },
  [ampWiresToFrame.id]: ({ bike, observer }) => {
    const ohm = lowestToFrame(bike, cornersOfAmp(bike));
    return ohm === null
      ? CANNOT
      : { readings: { lowestOhm: hold(observer).typed('ohm', ohm + observer.meter.leadsOhm) } };
  },
  [ampRuns.id]: ({ bike, observer }) => {
    const read = cornersOfAmp(bike).map((corner) => runOf(bike, corner) ?? Infinity);
    if (read.length === 0) return CANNOT;
    const hand = hold(observer);
    const { leadsOhm } = observer.meter;
    const lowest = Math.min(...read) + leadsOhm;
    return { readings: { leadsOhm: hand.typed('ohm', leadsOhm), lowestOhm: hand.typed('ohm', lowest) } };
  },
  [oneByOne.id]: ({ bike }) => {
    if (ampOf(bike) === null) return CANNOT;
    const trips = (it: Ridden, volumeRatio?: number) =>
      lampOf(it, volumeRatio === undefined ? {} : { volumeRatio }) === 'fault';
    if (cornersOfAmp(bike).some((corner) => trips(alone(bike, corner)))) return option('one');
    return option(trips(bike) || trips(bike, LOUD_VOLUME) ? 'together' : 'none');
  },
};
