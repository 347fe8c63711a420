import { axleOf, type Corner } from '../../rig/corner.ts';
import { coil } from '../elements/coil.ts';
import { contact } from '../elements/contact.ts';
import { wire } from '../elements/wire.ts';
import type { Moment, Place } from '../moment.ts';
import type { Element } from '../network.ts';
import { ohmNow, type World } from '../state.ts';
import { driverOf } from '../valued-rig.ts';
import { coilTop, dockBike, dockLid, MINUS, runEnd, runStart, SIGNS, type Sign, tab } from './nodes.ts';

/** The motion of a cone around its resonance. From memory; it changes volts only by what the wire before it loses. */
const MOTION_PEAK_RATIO = 5;
const MOTION_HZ = 90;
const MOTION_Q = 4;

/** The coils of one corner between its tabs: one, several side by side, or several in a row. */
function coils(world: World, corner: Corner, top: string, bottom: string): Element[] {
  const { coilOhm, count, wiring } = world.speakers[corner];
  const made = {
    resistanceOhm: coilOhm,
    motion: { peakOhm: MOTION_PEAK_RATIO * coilOhm, resonanceHz: MOTION_HZ, q: MOTION_Q },
  };
  return Array.from({ length: count }, (_, i) => {
    const ends =
      wiring === 'series'
        ? ([i === 0 ? top : `${top} ${i}`, i === count - 1 ? bottom : `${top} ${i + 1}`] as const)
        : ([top, bottom] as const);
    return coil(`${top} ${i} coil`, ends, made);
  });
}

/** The plugs that part a run from its driver. */
const driverPlugs = ({ rig }: World, corner: Corner): readonly Moment['apart'][number][] =>
  driverOf(rig, corner) === 'unit' ? ['runs'] : ['runs', 'amp-outputs'];

/** What moves a run: its joints and its plug are at the lid and under the seat, or at the steering and in the fairing. */
const MOVED_BY = {
  rear: { joint: 'rear-run', plug: 'lid' },
  front: { joint: 'steering', plug: 'fairing' },
} as const satisfies Record<'rear' | 'front', Record<string, Place>>;

/**
 * A speaker run from the wires of its driver to the coil: driver's plug, wire, joint, docking contact, lead into the lid,
 * tabs, braid. `from` names the driver's two wires.
 */
export function runElements(world: World, corner: Corner, moment: Moment, from: (sign: Sign) => string): Element[] {
  const { wire: made, joint, second, dock, lidLead, toFrame, acrossPair, reversed } = world.runs[corner];
  const { braid } = world.speakers[corner];
  const moved = MOVED_BY[axleOf(corner)];
  const apart = (plug: Moment['apart'][number], ohm: number) => (moment.apart.includes(plug) ? Infinity : ohm);
  const offDriver = driverPlugs(world, corner).some((plug) => moment.apart.includes(plug));
  const perWire = SIGNS.flatMap((sign) => {
    const half = joint[sign === '+' ? 'plus' : 'minus'];
    const other: Sign = sign === '+' ? '−' : '+';
    const atTab = tab(corner, reversed ? other : sign);
    return [
      contact(`plug ${corner} ${sign}`, [from(sign), runStart(corner, sign)], offDriver ? Infinity : 1e-3),
      wire(`wire ${corner} ${sign}`, [runStart(corner, sign), runEnd(corner, sign)], made),
      contact(
        `joint ${corner} ${sign}`,
        [runEnd(corner, sign), dockBike(corner, sign)],
        ohmNow(half, moved.joint, moment) + ohmNow(second, moved.joint, moment),
      ),
      contact(
        `dock ${corner} ${sign}`,
        [dockBike(corner, sign), dockLid(corner, sign)],
        apart('dock', ohmNow(dock, moved.plug, moment)),
      ),
      contact(
        `lid lead ${corner} ${sign}`,
        [dockLid(corner, sign), atTab],
        sign === '+' ? apart('tabs', ohmNow(lidLead, moved.plug, moment)) : ohmNow(lidLead, moved.plug, moment),
      ),
    ];
  });
  return [
    ...perWire,
    contact(`braid ${corner}`, [tab(corner, '+'), coilTop(corner)], ohmNow(braid, moved.joint, moment)),
    ...coils(world, corner, coilTop(corner), tab(corner, '−')),
    contact(`to frame ${corner}`, [runEnd(corner, '+'), MINUS], ohmNow(toFrame, moved.plug, moment)),
    contact(`other wire to frame ${corner}`, [runEnd(corner, '−'), MINUS], Infinity),
    contact(`across ${corner}`, [runEnd(corner, '+'), runEnd(corner, '−')], ohmNow(acrossPair, moved.joint, moment)),
  ];
}
