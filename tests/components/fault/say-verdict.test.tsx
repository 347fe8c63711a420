import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { cautionsOfCheck, cautionsOfFix } from '../../../src/causes/action-cautions.ts';
import { CAUSES } from '../../../src/causes/all.ts';
import { splitOf } from '../../../src/causes/cause.ts';
import { SPOKEN } from '../../../src/components/caution/spoken.ts';
import { Meanings } from '../../../src/components/fault/Meanings.tsx';
import { OnwardView } from '../../../src/components/fault/OnwardView.tsx';
import { tellCause, tellList, tellOnward } from '../../../src/components/fault/say-verdict.ts';
import { SayEnd } from '../../../src/components/flow/SayEnd.tsx';
import { lowerFirst } from '../../../src/compute/first-letter.ts';
import { EXAMPLE_RIGS } from '../../../src/rig/examples.ts';
import { onBike } from '../../causes/on-bike.ts';
import { allWords, given, hum, late, socket, view, words } from './fan.ts';

const BIKES = [onBike({}), ...Object.values(EXAMPLE_RIGS).map((rig) => onBike(rig))];

describe.each(CAUSES.map((cause) => [cause.id, cause] as const))('on the phone, %s', (_, cause) => {
  it('is told with how sure it is, every step of its fix and its proof', () => {
    for (const f of BIKES) {
      const remedy = cause.remedy(f);
      const { tell, fix } = tellCause(remedy, f, {
        certainty: 'likely',
        check: { text: splitOf(cause, f).without, isDone: false },
      });
      expect(tell).toEqual([remedy.what, 'That is likely, and not proved.']);
      expect(fix[0]).toContain(splitOf(cause, f).without);
      for (const line of remedy.fix) expect(fix).toContain(line);
      expect(fix.at(-1)).toContain(remedy.proofOfCure.byEar);
    }
  });
  it('says what he must not do: each caution of the fix, and what not to pay for', () => {
    for (const f of BIKES) {
      const remedy = cause.remedy(f);
      const { mind } = tellCause(remedy, f, { certainty: 'proved', check: undefined });
      for (const id of cautionsOfFix(remedy, f)) expect(mind).toContain(SPOKEN[id]);
      for (const line of remedy.notBuy) expect(mind).toContain(`Do not pay for ${lowerFirst(line)}`);
    }
  });
  it('says what to be careful of with the check that comes first', () => {
    for (const f of BIKES) {
      const ofCheck = cautionsOfCheck(cause, f);
      const { mind } = tellCause(cause.remedy(f), f, {
        certainty: 'likely',
        check: { text: 'It?', isDone: false },
        ofCheck,
      });
      for (const id of ofCheck) expect(mind).toContain(SPOKEN[id]);
      expect(new Set(mind).size).toBe(mind.length);
    }
  });
  it('says what to bring: the tools and every part', () => {
    for (const f of BIKES) {
      const remedy = cause.remedy(f);
      const { bring } = tellCause(remedy, f, { certainty: 'proved', check: undefined });
      expect(bring.length).toBe(1 + remedy.parts.length);
      for (const part of remedy.parts) expect(bring.join(' ')).toContain(part);
      expect(bring[0]).toBe(remedy.tools === 'None' ? 'No tools.' : `${remedy.tools}.`);
    }
  });
  it('needs tools or none, and never both in one line', () => {
    for (const f of BIKES) expect(cause.remedy(f).tools).toMatch(/^None$|^(?!None\b)/i);
  });
});

describe('a list on the phone', () => {
  const seen = view(given({ hum: 'silent' }));
  it('names who is left with the check of each, and buys nothing before one', () => {
    const { tell, mind, bring, fix } = tellList(seen, ['breaker-off', 'motor-dead']);
    expect(tell[0]).toMatch(/not proved yet.*Breaker off; Motor dead/);
    expect(fix).toEqual(['Breaker off. The check: Breaker off: by eye?', 'Motor dead. The check: Motor dead: by eye?']);
    expect(mind.join()).toMatch(/Buy and book nothing/);
    expect(bring.join()).toMatch(/multimeter/);
  });
  it('does not ask for a check that was done, but tells what it showed', () => {
    const done = { text: 'You did its check: “Shaft: free”.', isDone: true };
    const { fix } = tellList({ ...seen, splitOf: () => done }, ['motor-dead']);
    expect(fix).toEqual(['Motor dead. You did its check: “Shaft: free”.']);
    const cause = late.causes['motor-dead'];
    if (!cause) expect.fail('no such cause');
    const f = onBike({});
    const told = tellCause(cause.remedy(f), f, { certainty: 'likely', check: done }).fix;
    expect(told[0]).toBe(done.text);
    expect(told[1]).toMatch(/^Before anything is bought or booked, look at that once more/);
    expect([...fix, ...told].join(' ')).not.toMatch(/check( this)?: You did/i);
  });
  it('is heard before he begins: what it is, what to mind, what it takes, then what he does', () => {
    const text = allWords(renderToString(<SayEnd {...tellList(seen, ['breaker-off'])} />));
    expect(text).toMatch(/Tell the caller.* What he has to mind:.* To bring:.* What he does, one line at a time:/);
  });
});

describe('for whoever learns', () => {
  const seen = view(given({ 'tools-at-hand': 'meter', shaft: 'free' }));
  it('each outcome of a question says what it would make of the likeliest', () => {
    const text = words(renderToString(<Meanings view={seen} step={hum} />));
    expect(text).toMatch(
      /What each outcome would mean .*silent .*“(Breaker off|Motor dead)” goes from about \d in 10 to about \d in 10/,
    );
  });
  it('a reading does so as well', () => {
    expect(words(renderToString(<Meanings view={seen} step={socket} />))).toMatch(/live .* dead |dead .* live /);
  });
});

describe('on the phone, the way to another list of causes', () => {
  it('is told with why, that nothing is asked twice, and that nothing is bought or taken apart yet', () => {
    const { tell, mind } = tellOnward('The amplifier stays off', 'Its lamp is dark.');
    expect(tell.join(' ')).toMatch(
      /^Its lamp is dark\. We go on with this: The amplifier stays off\. All that you told/,
    );
    expect(mind.join(' ')).toMatch(/^Buy and book nothing yet\. .*take nothing else apart/);
  });
  it('stands on the screen of the hand-over', () => {
    const html = renderToString(
      <OnwardView
        title="It blows nowhere"
        because="The fan is sound."
        goesOn={undefined}
        onGo={() => undefined}
        onNotIt={() => undefined}
      />,
    );
    expect(allWords(html)).toMatch(/Tell the caller, one line at a time: The fan is sound\. We go on with this/);
  });
});
