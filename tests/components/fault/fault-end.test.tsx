import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { cured, repaired } from '../../../src/case/change.ts';
import type { Case } from '../../../src/case/events.ts';
import { FaultEnd } from '../../../src/components/fault/FaultEnd.tsx';
import type { FaultView } from '../../../src/components/fault/view.ts';
import { given, surely, view, words } from './fan.ts';

const nothing = () => undefined;
const propsOf = (it: Case, seen: FaultView) => ({
  view: seen,
  case: it,
  root: '/',
  onMove: nothing,
  onReopen: nothing,
  onGoOn: nothing,
  goesOn: <p>Take it further</p>,
});
const shown = (it: Case) => words(renderToString(<FaultEnd {...propsOf(it, view(it))} />));
const HANDS = surely({ hum: 'silent', shaft: 'free', 'tools-at-hand': 'meter', socket: { socketV: '0' } });
const PART = surely({ hum: 'silent', shaft: 'free', 'tools-at-hand': 'meter', socket: { socketV: '12' } });

describe('the end in a cause', () => {
  it('asks what came of the fix', () => {
    expect(shown(HANDS)).toMatch(/The breaker is off\..* It’s cured Still wrong, go on looking Better, not gone/);
  });
  it('lets the check speak against a fix that costs more than hands', () => {
    expect(view(PART).standing.open.kind).toBe('cause');
    expect(shown(PART)).toContain('The check says it is not this');
  });
  it('lets the check speak against a proved fix by hand, too, and shows that check', () => {
    const proved = renderToString(<FaultEnd {...propsOf(HANDS, view(HANDS))} />);
    expect(view(HANDS).standing.open).toMatchObject({ kind: 'cause', cause: 'breaker-off' });
    expect(words(proved)).toMatch(/The check that tells Breaker off: by meter\?.* The check says it is not this/);
  });
  it('says of a cause that was ruled out and comes up again that its check is to be done once more', () => {
    const again = view(repaired(HANDS, 'breaker-off', 'not-it'));
    const it_ = { ...again, standing: { ...again.standing, open: view(HANDS).standing.open } };
    expect(words(renderToString(<FaultEnd {...propsOf(HANDS, it_)} />))).toMatch(/^You ruled this out.* once more/);
  });
  it('says that it is noted as cured, and asks for nothing but that it came back', () => {
    const text = shown(cured(HANDS, 'breaker-off'));
    expect(text).toMatch(/^Noted as cured.* It came back/);
    expect(text).not.toContain('Still wrong');
  });
  it('offers what is done with stored settings only where the fix goes through them', () => {
    expect(shown(HANDS)).not.toContain('Take it further');
  });
});

describe('the end in another flow', () => {
  it('says why, and goes on there or here', () => {
    const text = shown(surely({ hum: 'hums', shaft: 'free', 'tools-at-hand': 'meter', socket: { socketV: '12' } }));
    expect(text).toMatch(
      /^It blows nowhere The fan is sound.* Go on with “It blows nowhere” It is not that, go on here$/,
    );
  });
});

describe('a check that says that it is not this', () => {
  it('keeps every answer, and makes the cause unlikely without making it impossible', () => {
    const before = view(PART);
    const after = view(repaired(PART, 'motor-dead', 'not-it'));
    expect(after.standing.facts).toEqual(before.standing.facts);
    expect(after.standing.repairs).toEqual([]);
    expect(after.shareOf('motor-dead')).toBeLessThan(before.shareOf('motor-dead'));
    expect(after.shareOf('motor-dead')).toBeGreaterThan(0);
  });
  it('counts for a cause of another flow, too', () => {
    const it_ = given({ hum: 'hums', shaft: 'free' });
    const after = view(repaired(it_, 'elsewhere: ducts', 'not-it'));
    expect(after.shareOf('elsewhere: ducts')).toBeLessThan(view(it_).shareOf('elsewhere: ducts'));
  });
});
