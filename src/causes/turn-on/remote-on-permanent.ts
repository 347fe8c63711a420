import { formatQuantity } from '../../compute/quantity.ts';
import { estimate } from '../../rig/rig.ts';
import type { Findings } from '../../steps/outcome.ts';
import { FULL_AND_RESTED } from '../battery-state.ts';
import type { Cause } from '../cause.ts';
import { REMOTE_PARTS, remoteFigures, SWITCHED_FEED } from '../remote-wire.ts';
import { AmpName, ampName } from '../the-amp.ts';
import { FITTER } from '../who.ts';

/** What an amplifier takes that is awake and silent: the middle of 0.5 to 1.5 A. From memory, no published source. */
const IDLE_A = 0.9;
/** Half of the charge may go before a battery suffers. Common practice, no published source. */
const HALF_RATIO = 0.5;

function emptiesInWords(f: Findings): string {
  const batteryAh = estimate(f.rig, 'batteryAh').value;
  const hours = Math.round((HALF_RATIO * batteryAh) / IDLE_A);
  return `Awake but silent, an amplifier draws about ${formatQuantity(IDLE_A, 'A')}: half of ${formatQuantity(batteryAh, 'Ah')} is gone in about ${hours} hours.`;
}

export const remoteOnPermanent: Cause = {
  id: 'remote-on-permanent',
  title: (f) => `The remote wire of ${ampName(f)} never switches off, and the battery is flat`,
  faults: ['remote-on-permanent'],
  split: {
    byMeter: 'Key off and out for ten minutes: still volts on the remote terminal, against the battery negative post?',
    without: 'Key off and out for ten minutes: is the amplifier’s light still lit, or its case warm?',
    asStep: { byMeter: 'remote-key-off' },
  },
  mends: ['amp-supply'],
  article: 'the-charging-system',
  remedy: (f) => ({
    what: `The remote wire is on a feed that never switches off: ${ampName(f)} stays awake day and night and flattens the battery.`,
    background: emptiesInWords(f),
    numbers: remoteFigures(f),
    repair: [{ do: 'move-remote', to: 'switched-feed' }, { do: 'charge-battery' }],
    fix: [
      'Key off. Take the remote wire off the point it is tapped off, and tape that end: it is live.',
      SWITCHED_FEED,
      `Charge the battery with a charger for its chemistry, then four hours’ rest. ${FULL_AND_RESTED}`,
      'Judge the battery only then: one deep discharge may have ruined it.',
    ],
    tools: 'Crimp tool, charger, meter',
    minutes: 60,
    who: FITTER,
    parts: REMOTE_PARTS,
    notBuy: [
      'A battery, before this one has been charged and rested.',
      'An amplifier: it stays on because it is told to.',
    ],
    proofOfCure: {
      byEar: `Ten minutes after key off its light is out. Two nights later the bike starts as usual. ${AmpName(f)} comes on with the head unit.`,
      byMeter: 'Ten minutes after key off the remote terminal reads below 0.5 V.',
    },
  }),
};
