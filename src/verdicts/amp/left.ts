import { type Findings, is } from '../../steps/outcome.ts';
import type { Remedy } from '../verdict.ts';

/** What the answers leave besides a verdict, each with the check that separates it, until the step that clears it was done. */

export type Left = NonNullable<Remedy['mayAlsoBe']>;

/** A verdict names itself and two others; more are a short list. */
export const MOST_BESIDES = 2;

/** A lamp that nobody saw may be a fault lamp. */
export const lampUnseen = (f: Findings): boolean => !is(f, 'amp-light', 'off', 'normal', 'fault');

export const selectorLeft = (f: Findings): Left =>
  // For the jumper it stood on wire, and one on sensing wakes by sound: whoever stays off then is off for another reason.
  is(f, 'amp-switches', 'right', 'mode', 'range', 'turn-on') ||
  is(f, 'remote-jumper', 'dead') ||
  (is(f, 'remote-volts', 'ok') && is(f, 'wakes-when-loud', 'stays-off'))
    ? []
    : [{ what: 'Its turn-on selector', split: 'Read it: does it stand on what is wired?' }];

export const SETTINGS_LEFT: Left[number] = {
  what: 'The fader or a rear control turned down',
  split: 'Fader and balance in the middle, rear control up: does it wake?',
};

/** It was off when somebody looked, and woke later by a jumper or in another position of the key: it had time to cool. */
export const heatLeft = (f: Findings): Left =>
  lampUnseen(f)
    ? [
        {
          what: 'Amplifier too hot',
          split: 'Change nothing, wait half an hour with the key off, key on: does it come on by itself, when cool?',
        },
      ]
    : [];

export const protectionLeft = (f: Findings): Left => {
  if (!lampUnseen(f)) return [];
  return is(f, 'speakers-unplugged', 'stays')
    ? [
        {
          what: 'It protects itself from heat or from its own output, and nobody sees its fault lamp',
          split: 'Uncover its lamp: dark, or its fault colour? And half an hour after key off, cool: does it come on?',
        },
      ]
    : [
        {
          what: 'It protects itself, and nobody sees its fault lamp',
          split: 'Uncover its lamp, or point a phone’s camera at it: dark, or its fault colour?',
        },
      ];
};

export const bodyFuseLeft = (f: Findings): Left =>
  is(f, 'body-fuse', 'whole', 'none')
    ? []
    : [
        {
          what: 'Fuse in the amplifier itself open',
          split: 'Key off, pull the small fuses beside its power plug: strips whole?',
        },
      ];

/** Readings between enough and too little, where no jumper took their place. */
export const wakingLeft = (f: Findings): Left =>
  is(f, 'remote-jumper', 'dead')
    ? []
    : [
        ...(is(f, 'remote-volts', 'unclear')
          ? [
              {
                what: 'Too few volts on the remote wire',
                split: 'Head unit on: the remote terminal within 1 V of the battery?',
              },
            ]
          : []),
        ...(is(f, 'sense-level', 'unclear') && !is(f, 'wakes-when-loud', 'stays-off')
          ? [
              {
                what: 'Listening amplifier that hears too little',
                split: 'Gain down, then turn the volume up step by step: does it wake?',
              },
            ]
          : []),
      ];

export const pathsLeft = (f: Findings): Left =>
  is(f, 'supply-under-load', 'ok') || is(f, 'temporary-leads', 'neither')
    ? []
    : [
        {
          what: 'A supply that gives way under load',
          split: 'A 55 W lamp across its plus and ground: bright, and within 0.5 V of the battery?',
        },
      ];

export const WEAK_BATTERY: Left[number] = {
  what: 'A battery below 12.2 V or above 15 V',
  split: 'Key on: what do the battery posts read, engine off and at about 3000 rpm outdoors?',
};

export const batteryLeft = (f: Findings): Left =>
  is(f, 'amp-terminals', 'ok', 'unclear') || is(f, 'supply-under-load', 'ok', 'unclear') ? [] : [WEAK_BATTERY];

export const HEAVY_LOAD: Left[number] = {
  what: 'A load that is too heavy',
  split: 'Its papers: the least ohms of a channel. Plugs off, meter on ohms: does any run read less?',
};
