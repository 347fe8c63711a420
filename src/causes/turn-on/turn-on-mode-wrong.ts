import { SENSE_DC_HIGHEST_V, SENSE_DC_LOWEST_V, SENSE_HIGHEST_V, SENSE_LOWEST_V } from '../../compute/amp-supply.ts';
import { AMP_FIELDS, type AmpValues } from '../../rig/fields.ts';
import type { Findings } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import type { Figure } from '../figure.ts';
import { remoteFigures } from '../remote-wire.ts';
import { AmpName, ampName, ampOf } from '../the-amp.ts';
import { YOURSELF } from '../who.ts';

type TurnOn = AmpValues['turnOn'];

/**
 * What the selector has to stand on. What is wired is looked at, whatever was said of it: on “wire” an amplifier without
 * one never wakes again.
 */
const NO_WIRE = 'signal, auto or DC, whichever its papers give for what comes in';
const SET_TO: Readonly<Record<TurnOn, string>> = {
  wire: `A wire is there? Set it to wire, remote or 12 V. None? Then to ${NO_WIRE}.`,
  signal: 'No wire? Set it to signal or auto: it wakes by sound. One is there? Then to wire, remote or 12 V.',
  dc: 'No wire? Set it to DC or offset: it wakes by the DC on its inputs. One is there? Then to wire, remote or 12 V.',
};

const SENSES: Readonly<Record<Exclude<TurnOn, 'wire'>, Figure>> = {
  signal: {
    id: 'wakes-above',
    label: 'Amplifiers that wake by sound wake above',
    value: [SENSE_LOWEST_V, SENSE_HIGHEST_V],
    unit: 'V',
  },
  dc: {
    id: 'wakes-above-dc',
    label: 'DC on an input wire that wakes them, above',
    value: [SENSE_DC_LOWEST_V, SENSE_DC_HIGHEST_V],
    unit: 'V',
  },
};

const wired = (f: Findings): TurnOn => ampOf(f).turnOn ?? AMP_FIELDS.turnOn.typical;

function figures(f: Findings): readonly Figure[] {
  const turnOn = wired(f);
  return turnOn === 'wire' ? remoteFigures(f) : [SENSES[turnOn]];
}

export const turnOnModeWrong: Cause = {
  id: 'turn-on-mode-wrong',
  title: (f) => `The turn-on selector of ${ampName(f)} does not match its wiring`,
  faults: ['turn-on-mode-wrong'],
  split: {
    byMeter:
      'Head unit on: its remote terminal within 1 V of the battery, and it still stays asleep? Then read its turn-on selector.',
    needs: ['head-unit-playing'],
    without: 'Key off, read its turn-on selector: is it set to something else than what is wired?',
    asStep: { without: 'amp-switches' },
  },
  mends: ['amp'],
  article: 'amplifiers-that-listen',
  remedy: (f) => ({
    what: `${AmpName(f)} is waiting for a kind of turn-on that is not wired to it.`,
    numbers: figures(f),
    readFirst: ['turn-on'],
    repair: [{ do: 'set-selector', selector: 'turn-on', to: wired(f) }],
    fix: [
      'Key off. The selector may hide under a cover or behind a rubber plug.',
      'See what is wired: a thin wire in the remote terminal, or none.',
      SET_TO[wired(f)],
      'Volume at zero, gain down, key on. Then gain back to where it was.',
    ],
    tools: 'Small screwdriver',
    minutes: 5,
    who: YOURSELF,
    parts: [],
    notBuy: ['An amplifier, a fuse or a reflash: a switch is set wrong.'],
    proofOfCure: {
      byEar: 'It starts and stops with the key, twice in a row, and stays on for ten minutes of quiet music.',
    },
  }),
};
