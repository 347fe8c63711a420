import type { Findings } from '../../steps/outcome.ts';
import type { Remedy } from '../verdict.ts';

/** What a rear verdict names beside itself, in the same words wherever it does. */
export type Alternative = NonNullable<Remedy['mayAlsoBe']>[number];

export const ON_THE_FRAME: Alternative = {
  what: 'A rear speaker wire on the frame',
  split: 'Key off, plug apart, meter on ohms: each rear wire to bare frame metal, above 100 kΩ?',
};
export const SIGNAL_PLUG_OFF: Alternative = {
  what: 'The signal plug at the amplifier is not home',
  split: 'Key off, pull it, push it home until it locks, listen.',
};
export const RUN_SHORTED: Alternative = {
  what: 'A short on the rear run: to the frame, or its two wires',
  split: 'Key off, plug apart, meter on ohms: each wire to the frame above 100 kΩ, each run its coil?',
};
export const WIRES_TOGETHER: Alternative = {
  what: 'Its two wires on each other, or a burnt coil',
  split: 'Key off, plug apart, meter on ohms: does each run read its coil plus wires?',
};
const SUPPLY_GIVES_WAY: Alternative = {
  what: 'A supply that gives way under load',
  split: 'Music at your usual volume: does the amplifier’s lamp go off? Then its plus and its ground.',
};
/** An amplifier whose lamp nobody saw may go off whenever it has to work. */
export const supplyUnseen = (f: Findings): readonly Alternative[] =>
  f.outcome('rear-drive') === 'amp' && f.outcome('amp-light') === 'cannot' ? [SUPPLY_GIVES_WAY] : [];
export const REAR_CONTROL_OFF: Alternative = {
  what: 'Passenger or rear control off',
  split: 'Turn the rear control up and listen.',
};
export const FADER_OFF: Alternative = {
  what: 'The fader',
  split: 'Put fader and balance exactly in the middle and listen.',
};
