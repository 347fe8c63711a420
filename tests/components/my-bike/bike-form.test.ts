import { describe, expect, it } from 'vitest';
import {
  ampsListed,
  doubtsAbout,
  draftOf,
  EMPTY_DRAFT,
  fileNameOf,
  filledIn,
  groupsOf,
  readDraft,
  rigFromFile,
  withoutAmp,
} from '../../../src/components/my-bike/bike-form.ts';
import { keptOf, withKept } from '../../../src/components/my-bike/kept-fields.ts';
import { EXAMPLE_RIGS } from '../../../src/rig/examples.ts';
import { BIKE_FIELDS } from '../../../src/rig/fields.ts';
import type { Rig } from '../../../src/rig/rig.ts';
import { validateRig } from '../../../src/rig/validate.ts';

const examples = Object.entries(EXAMPLE_RIGS);
const sorted = (value: unknown): unknown => JSON.parse(JSON.stringify(value, replacer));
/** Keys in one order, so that two bikes compare by what they say. */
function replacer(_: string, value: unknown) {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return value;
  return Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)));
}

describe('draftOf and readDraft', () => {
  it.each(examples)('give back the example bike “%s” exactly as it was', (_, rig) => {
    expect(readDraft(draftOf(rig))).toEqual({ rig: sorted(rig), errors: {} });
  });
  it('know nothing of a bike that nobody described', () => {
    expect(readDraft(EMPTY_DRAFT)).toEqual({ rig: {}, errors: {} });
  });
  it('tell “no amplifier” from “nobody knows”', () => {
    expect(readDraft(draftOf({ amps: [] })).rig).toEqual({ amps: [] });
    expect(readDraft(draftOf({})).rig).toEqual({});
  });
  it('keep what was typed for amplifiers while there are said to be none, and leave it out of the bike', () => {
    const draft = { ...draftOf(EXAMPLE_RIGS.trunk), ampsKnown: 'none' as const };
    expect(readDraft(draft).rig.amps).toEqual([]);
    expect(readDraft({ ...draft, ampsKnown: 'some' }).rig.amps).toHaveLength(2);
  });
  it('name the field that cannot be used, and keep all the others', () => {
    const draft = draftOf(EXAMPLE_RIGS.trunk);
    const wrong = {
      ...draft,
      bike: { ...draft.bike, batteryAh: '3000' },
      amps: [draft.amps[0] ?? {}, { powerW: 'a lot', ratedOhm: '2' }],
    };
    const { rig, errors } = readDraft(wrong);
    expect(Object.keys(errors)).toEqual(['batteryAh', 'amp1.powerW']);
    expect(rig.batteryAh).toBeUndefined();
    expect(rig.rearRunM).toBe(2.8);
    expect(rig.amps?.[1]).toEqual({ ratedOhm: 2 });
  });
  it('leave out what is not asked: a bike without rear speakers has no rear wires', () => {
    const draft = draftOf({ ...EXAMPLE_RIGS.trunk, rearFitted: 'no' });
    expect(Object.keys(readDraft(draft).rig).filter((id) => id.startsWith('rear'))).toEqual(['rearFitted']);
  });
  it('shorten a name that a link could not carry, and drop an empty one', () => {
    expect(readDraft({ ...EMPTY_DRAFT, name: 'x'.repeat(80) }).rig.name).toHaveLength(60);
    expect(readDraft({ ...EMPTY_DRAFT, name: '  ' }).rig).toEqual({});
  });
});

describe('a bike that a newer version saved', () => {
  const NEWER = {
    name: 'Tourer',
    batteryAh: 18,
    hornDb: 110,
    unitKind: 'streaming',
    amps: [{ powerW: 50 }, { powerW: 75, fanW: 2, turnOn: 'by-light' }],
  };
  const open = (claimed: unknown) => {
    const { rig } = validateRig(claimed);
    return draftOf(rig, keptOf(claimed, rig));
  };
  const saved = (draft: ReturnType<typeof open>) => withKept(readDraft(draft).rig, draft.kept);

  it('is saved again with all that this version does not know of it, also of each amplifier', () => {
    expect(saved(open(NEWER))).toEqual(NEWER);
    expect(saved({ ...open(NEWER), name: 'Red' })).toEqual({ ...NEWER, name: 'Red' });
  });
  it('says what the form says where both say something', () => {
    const draft = open(NEWER);
    expect(saved({ ...draft, bike: { ...draft.bike, unitKind: 'factory' } })).toEqual({
      ...NEWER,
      unitKind: 'factory',
    });
  });
  it('loses what was kept of an amplifier with that amplifier, and of no other', () => {
    expect(saved(withoutAmp(open(NEWER), 0)).amps).toEqual([NEWER.amps[1]]);
    expect(saved(withoutAmp(open(NEWER), 1)).amps).toEqual([NEWER.amps[0]]);
  });
  it('is gone when the form is emptied', () => {
    expect(saved(EMPTY_DRAFT)).toEqual({});
  });
  it('keeps no number that is only out of its range', () => {
    expect(saved(open({ batteryAh: 9999, frontRatedOhm: 4 }))).toEqual({ frontRatedOhm: 4 });
  });
  it('comes through a file whole', () => {
    const read = rigFromFile(JSON.stringify(NEWER));
    if ('error' in read) throw new Error(read.error);
    expect(saved(draftOf(read.rig, read.kept))).toEqual(NEWER);
  });
});

describe('groupsOf', () => {
  it('asks for every field of a bike when nothing is known', () => {
    expect(
      groupsOf({})
        .flatMap(({ fields }) => fields)
        .sort(),
    ).toEqual(Object.keys(BIKE_FIELDS).sort());
  });
  it('does not ask for the profile of a replaced head unit, which has none', () => {
    expect(groupsOf({ unitKind: 'replaced' })[0]?.fields).toEqual(['unitKind', 'deliveredWith']);
  });
});

describe('filledIn and ampsListed', () => {
  it('count what is filled in', () => {
    expect(filledIn(['a', 'b', 'c'], { a: '1', b: ' ' })).toBe('1 of 3 filled in');
  });
  it('say whether amplifiers are listed, none, or not said yet', () => {
    expect(ampsListed(draftOf(EXAMPLE_RIGS.trunk))).toBe('2 listed');
    expect(ampsListed(draftOf({ amps: [] }))).toBe('none on this bike');
    expect(ampsListed(EMPTY_DRAFT)).toBe('not said yet');
  });
});

describe('doubtsAbout', () => {
  it.each(examples)('finds none in the example bike “%s”', (_, rig) => {
    expect(doubtsAbout(rig)).toEqual([]);
  });
  it('finds none where nothing is known', () => {
    expect(doubtsAbout({})).toEqual([]);
  });
  it.each<[string, Rig]>([
    ['an amplifier drives the front, but none is there', { frontFedBy: 'amp', amps: [] }],
    ['the head unit drives the rear, and an amplifier too', { rearFedBy: 'unit', amps: [{ drives: 'both' }] }],
    ['an amplifier drives rear speakers that are not fitted', { rearFitted: 'no', amps: [{ drives: 'rear' }] }],
    ['one speaker, wired in parallel', { rearPerChannel: 1, rearWiring: 'parallel' }],
    ['two speakers, of which there is only one', { rearPerChannel: 2, rearWiring: 'single' }],
    ['a supply that falls when the engine runs', { supplyOffV: 12.6, supplyRunningV: 12.4 }],
  ])('asks about this: %s', (_, rig) => {
    expect(doubtsAbout(rig)).toHaveLength(1);
  });
});

describe('rigFromFile', () => {
  it.each(examples)('opens the saved example “%s” with nothing refused', (_, rig) => {
    expect(rigFromFile(JSON.stringify(rig))).toEqual({ rig, refused: [] });
  });
  it('takes what can be used and names the rest', () => {
    expect(rigFromFile('{"batteryAh": 9999, "frontRatedOhm": 4}')).toEqual({
      rig: { frontRatedOhm: 4 },
      refused: [expect.stringMatching(/^Battery capacity: 9999 is outside/)],
    });
  });
  it.each(['', 'not json', '[]', '"a"', '{}', '{"colour":"red"}', ' '.repeat(100_001)])(
    'changes nothing for %j',
    (text) => {
      expect(rigFromFile(text)).toEqual({ error: expect.stringMatching(/Nothing was changed\.$/) });
    },
  );
});

describe('fileNameOf', () => {
  it('makes a file name that every system takes from the name of the bike', () => {
    expect(fileNameOf({ name: 'Tänker: “Big/2”' })).toBe('t-nker-big-2.json');
    expect(fileNameOf({})).toBe('my-bike.json');
  });
});
