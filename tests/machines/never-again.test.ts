import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../machines/amp-wont-turn-on.ts';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import { caseOn, give, openIn, stand } from '../journey.ts';

/* Common practice, no published source: a second fuse into the same short tells nothing, and heats the lead again. */
describe('a new fuse that opened', () => {
  const dead = {
    'which-amp': 'rear',
    'rear-amp-turn-on': 'wire',
    'unit-kind': 'factory',
    'amp-history': 'stopped',
    'last-change': 'workshop',
    'fuses-blown': 'unknown',
    'tried-already': 'nothing',
    'amp-light': 'off',
    'tools-at-hand': 'meter',
    'remote-volts': { remoteV: '12.3' },
    'amp-terminals': { batteryV: '12.7', plusV: '0', groundV: '0' },
    'fuse-look': 'blown',
    'fuse-lamp': null,
    'spare-fuse': 'opens',
  };
  it('is not tried once more, whatever hangs on it', () => {
    expect(openIn(stand(ampWontTurnOn, give(caseOn(ampWontTurnOn), dead)))).not.toContain('spare-fuse');
  });
});

describe('a plug that hung out and was pushed home', () => {
  const asked = {
    'unit-kind': 'factory',
    'rear-drive': 'amp',
    'front-drive': 'unit',
    'rear-inputs': 'own',
    'rear-amp-turn-on': 'wire',
    'which-silent': 'both',
    'rear-history': 'stopped',
    'when-silent': 'always',
    'last-change': 'opened',
    'tried-already': 'nothing',
    'amp-light': 'normal',
    'pin-look': 'out',
  };
  it('ends the search: the bike is another one now', () => {
    expect(openIn(stand(noRearSound, give(caseOn(noRearSound), asked)))).toBe('amp-input-plug-off');
  });
});
