import { describe, expect, it } from 'vitest';
import { eqChangesWhenEngineStarts } from '../../../machines/eq-changes-when-engine-starts.ts';
import { toldBy } from '../../../machines/machine.ts';
import { noRearSound } from '../../../machines/no-rear-sound.ts';
import { replay } from '../../../src/case/replay.ts';
import { UNTHOUGHT, viewOf } from '../../../src/components/fault/view.ts';
import { late as toneLate } from '../../../src/likelihoods/eq-changes-when-engine-starts.ts';
import { late } from '../../../src/likelihoods/no-rear-sound.ts';
import { caseOn, give } from '../../journey.ts';

/* What a rider said of the bike stands on the screen as well. Common sense, no published source. */

/** Both rears play weakly, and read less than the front at the head unit: a control that is turned down would do that. */
const WEAK = {
  'unit-kind': 'factory',
  'rear-drive': 'unit',
  'which-silent': 'weak',
  'rear-history': 'stopped',
  'when-silent': 'always',
  'last-change': 'opened',
  'tried-already': 'nothing',
  'fader-centre': 'weak',
  'lid-check': 'weak',
  'rear-rating': '4',
  'tools-at-hand': 'meter',
  'run-ohms': { leadsOhm: '0.3', leftOhm: '4.1', rightOhm: '4.0' },
  'four-corners': 'rear-weak',
  'meter-digit': '0.01',
  'rear-pair': { residueV: '0.02', frontV: '0.60', leftV: '0.38', rightV: '0.39' },
} as const;
const seen = (control: string) => {
  const standing = replay(noRearSound, give(caseOn(noRearSound), { ...WEAK, 'rear-control': control }), late);
  return { standing, view: viewOf(noRearSound, standing, late) };
};

describe('what it can be', () => {
  it('is a control only where there is one', () => {
    expect(seen('weak').view.shares[0]?.cause).toBe('rear-control-off');
    const { standing, view } = seen('none');
    expect(view.shareOf('rear-control-off')).toBe(0);
    expect(view.shares[0]?.cause).toBe(UNTHOUGHT);
    expect(standing.open).not.toMatchObject({ kind: 'cause', cause: 'rear-control-off' });
  });
  it('adds up to all there is, whatever the bike cannot have', () => {
    const { shares } = seen('none').view;
    expect(shares.reduce((sum, { shareRatio }) => sum + shareRatio, 0)).toBeCloseTo(1, 9);
  });
});

describe('a tone that changes because the amplifier gives way', () => {
  const to = eqChangesWhenEngineStarts.handsOver.find(({ flow }) => flow === 'amp-wont-turn-on');
  const told = (drives: string) => {
    const it = give(caseOn(eqChangesWhenEngineStarts), { 'amps-drive': drives, 'loud-compare': 'cleaner' });
    return to && toldBy(to, replay(eqChangesWhenEngineStarts, it, toneLate).findings);
  };
  it('goes on with the only amplifier there is, which plays and gives way', () => {
    expect(told('all')).toEqual({
      'which-amp': { option: 'rear' },
      'amp-history': { option: 'comes-and-goes' },
    });
    expect(told('front')?.['which-amp']).toEqual({ option: 'front' });
    expect(told('each')?.['which-amp']).toBeUndefined();
  });
});
