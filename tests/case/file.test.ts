import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fileName, fromFile, toFile } from '../../src/case/file.ts';
import { MOST_BYTES } from '../../src/case/limits.ts';
import { fromLink } from '../../src/case/link.ts';
import { anyCase } from './any-case.ts';

describe('a case as a file', () => {
  it('is the same case when it is opened again, whatever is in it', async () => {
    await fc.assert(
      fc.asyncProperty(anyCase, async (it_) => {
        const opened = await fromFile(toFile(it_));
        if (!opened.ok) throw new Error(opened.message);
        expect(await fromLink(opened.fragment)).toEqual({ ok: true, case: it_, refused: [] });
      }),
      { numRuns: 50 },
    );
  });
  it('is named after its flow', () => {
    expect(fileName({ flow: 'no-rear-sound', events: [] })).toBe('no-rear-sound.case.json');
  });
  it.each(['', '{}', '[]', '{"unitKind":"factory"}', 'GIF89a', '[7]'])(
    'that holds %s is refused in a sentence',
    async (text) => {
      expect(await fromFile(text)).toEqual({ ok: false, message: 'This file does not hold a case of this site.' });
    },
  );
  it('is refused unread when it is longer than any case', async () => {
    expect(await fromFile('['.repeat(MOST_BYTES + 1))).toMatchObject({
      ok: false,
      message: expect.stringMatching(/longer than any case/),
    });
  });
});
