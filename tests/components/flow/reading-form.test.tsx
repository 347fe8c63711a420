import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { ReadingForm } from '../../../src/components/flow/ReadingForm.tsx';
import { runOhms } from '../../../src/steps/runs/run-ohms.ts';
import { anyStep } from '../../steps/situation.ts';

type Texts = Readonly<Record<string, string>>;
const nothing = () => undefined;

/** What stands in each field, with a mark behind what waits to be typed over. */
function fields(typed: Texts, fromLastTime: boolean, draft: Texts): Record<string, string> {
  const html = renderToString(
    <ReadingForm
      step={anyStep(runOhms)}
      situation={{ rig: {}, facts: {} }}
      typed={typed}
      fromLastTime={fromLastTime}
      draft={draft}
      showBandsAtOnce={false}
      disabled={false}
      reached="leadsOhm"
      onReach={nothing}
      onType={nothing}
      onAnswer={nothing}
    />,
  );
  const inputs = [...html.matchAll(/<input id="reading-(\w+)"[^>]*>/g)];
  return Object.fromEntries(
    inputs.map(([tag, name = '']) => [
      name,
      (/ value="([^"]*)"/.exec(tag)?.[1] ?? '') + (/class="old"/.test(tag) ? ' (old)' : ''),
    ]),
  );
}

describe('the fields of a measurement', () => {
  it('are empty at first', () => {
    expect(fields({}, false, {})).toEqual({ leadsOhm: '', leftOhm: '', rightOhm: '' });
  });
  it('show what was typed and not sent', () => {
    expect(fields({}, false, { leadsOhm: '0.2', leftOhm: '3.' })).toMatchObject({ leadsOhm: '0.2', leftOhm: '3.' });
  });
  it('show what was typed over what was read last time, and the rest still waits to be typed over', () => {
    expect(fields({ leadsOhm: '0.3', leftOhm: 'OL', rightOhm: '3.6' }, true, { leftOhm: '3.7' })).toEqual({
      leadsOhm: '0.3 (old)',
      leftOhm: '3.7',
      rightOhm: '3.6 (old)',
    });
  });
});
