import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import type { Cause } from '../../../src/causes/cause.ts';
import { CauseView } from '../../../src/components/fault/CauseView.tsx';
import { strongest } from '../../../src/components/fault/Evidence.tsx';
import type { FaultView } from '../../../src/components/fault/view.ts';
import type { Certainty } from '../../../src/inference/certainty.ts';
import { CAUTIONS } from '../../../src/steps/cautions.ts';
import { given, late, surely, view, words } from './fan.ts';

const ALL = { hum: 'silent', shaft: 'free', 'tools-at-hand': 'meter', socket: { socketV: '12' } };
const shown = (
  id: string,
  certainty: Certainty,
  answers: Parameters<typeof given>[0] = ALL,
  besides: readonly string[] = [],
) => {
  const cause = late.causes[id];
  if (!cause) throw new RangeError(`cause must be one of the fan’s, got ${id}`);
  return renderToString(
    <CauseView
      view={view(given(answers))}
      case={given(answers)}
      cause={cause}
      certainty={certainty}
      besides={besides}
      root="/"
      onReopen={() => undefined}
      onMove={() => undefined}
    >
      buttons
    </CauseView>,
  );
};
const motor = late.causes['motor-dead'] as Cause;
const order = (text: string, ...parts: readonly string[]) => parts.map((part) => text.indexOf(part));

describe('a cause as a verdict', () => {
  const html = shown('motor-dead', 'proved');
  const text = words(html);

  it('says what is wrong and how sure first, then what to do, then why', () => {
    const places = order(
      text,
      'The motor is dead.',
      'Proved.',
      'Do this',
      'Put in another motor.',
      'Don’t pay for',
      'Numbers for this bike',
      'Prove the cure',
      'buttons',
      'How we know',
      'Motors wear.',
    );
    expect(places).not.toContain(-1);
    expect(places).toEqual(places.toSorted((a, b) => a - b));
  });
  it('has everything that the fix takes, no finer than it is known', () => {
    for (const part of [
      'A motor of 200 W',
      'Winding above 12 Ω',
      'about 60 minutes',
      'A bigger breaker.',
      'It opens again.',
      'It runs.',
    ])
      expect(text).toContain(part);
  });
  it('shows every caution of its fix, in front of it, under the signal word of each', () => {
    for (const id of ['fuse', 'key-off'] as const)
      expect(text.indexOf(CAUTIONS[id])).toBeLessThan(text.indexOf('Put in'));
    expect(text).toMatch(/Warning .*Never a bigger fuse.* Notice .*Key off/);
  });
  it('names as evidence the answers that moved it, with their readings', () => {
    expect(text).toMatch(/How we know .*Socket : live \(socket 12 V\)/);
    expect(text).toContain('Hum : silent');
  });
});

describe('how sure a cause is', () => {
  const ring = (html: string) => /<p class="how-sure">.*?<\/svg>/.exec(html)?.[0];
  it('differs in words and in shape', () => {
    const all = (['proved', 'likely', 'short list'] as const).map((certainty) => shown('motor-dead', certainty));
    expect(all.map((html) => /Proved\.|Likely\.|Not proved yet\./.exec(html)?.[0])).toEqual([
      'Proved.',
      'Likely.',
      'Not proved yet.',
    ]);
    expect(new Set(all.map(ring)).size).toBe(3);
  });
  it('sends nobody to buy a part on odds: the check comes first', () => {
    const text = words(shown('motor-dead', 'likely', { hum: 'silent' }));
    expect(text).toContain('Make sure with the check below before you buy or book anything.');
    expect(text).toMatch(/Check this first Motor dead: by eye\? Do this/);
    expect(words(shown('breaker-off', 'likely', { hum: 'silent' }))).not.toContain('buy');
  });
  it('says of a proof that what carries it was given twice, and else only that no one answer does', () => {
    const proof = (seen: FaultView) =>
      words(
        renderToString(
          <CauseView
            view={seen}
            case={given(ALL)}
            cause={motor}
            certainty="proved"
            besides={[]}
            root="/"
            onReopen={() => undefined}
            onMove={() => undefined}
          >
            buttons
          </CauseView>,
        ),
      );
    const once = view(given(ALL));
    const twice = view(surely(ALL));
    expect(twice.hangsOn('motor-dead').map(({ step }) => step)).toEqual(['socket', 'hum']);
    expect(proof(twice)).toContain('The answers that it hangs on were given twice.');
    expect(proof(twice)).not.toContain('would still lead');
    expect(proof(once)).not.toMatch(/given twice|would still lead/);
    expect(proof({ ...once, hangsOn: () => [] })).toContain(
      'It would still lead without any one of the readings below.',
    );
  });
  it('has its check by meter where there is one', () => {
    expect(words(shown('motor-dead', 'likely'))).toContain('Motor dead: by meter?');
  });
});

describe('what else it may be', () => {
  const text = words(shown('breaker-off', 'likely', { hum: 'silent' }, ['motor-dead', 'elsewhere: ducts']));
  it('is said of each with its odds and the check that separates it, or why another flow looks for it', () => {
    expect(text).toMatch(/It may also be Motor dead , about 4 in 10\. Motor dead: by eye\?/);
    expect(text).toMatch(/It blows nowhere , (about|less than) 1 in \d+\. The fan is sound, the duct is not\./);
  });
  it('is left out where nothing else is likely', () => {
    expect(words(shown('rotor-stuck', 'proved'))).not.toContain('It may also be');
  });
});

describe('what speaks against it', () => {
  it('is said as openly as what speaks for it', () => {
    const text = words(shown('motor-dead', 'likely', { hum: 'hums', socket: { socketV: '12' } }));
    expect(text).toMatch(/What speaks against it Hum : hums/);
  });
});

describe('what counts as evidence', () => {
  const { flow } = view(given(ALL));
  const moved = (bits: number) => () => [{ step: 'hum', outcome: 'silent', bits, speaks: undefined }];
  const shownOf = (told: boolean, bits: number) =>
    strongest({ flow: told ? { ...flow, told: new Set(['hum']) } : flow, moved: moved(bits) }, 'motor-dead').length;
  it('is what was seen, from a quarter of a bit on', () => {
    expect([shownOf(false, 0.2), shownOf(false, 0.3), shownOf(false, -0.3)]).toEqual([0, 1, 1]);
  });
  it('is what was merely told only where it weighs a whole bit', () => {
    expect([shownOf(true, 0.9), shownOf(true, -0.9), shownOf(true, 1.1)]).toEqual([0, 0, 1]);
  });
});
