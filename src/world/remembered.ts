/*
 * What is worked out once and looked up after that. It is valid because nothing in this folder is changed after it is
 * made: a bike with another part is another object. What is remembered of an object goes when the object goes.
 */

/** A function that works out its answer once for each object. */
export function oncePer<K extends object, V>(make: (of: K) => V): (of: K) => V {
  const known = new WeakMap<K, { readonly made: V }>();
  return (of) => {
    let found = known.get(of);
    if (!found) {
      found = { made: make(of) };
      known.set(of, found);
    }
    return found.made;
  };
}

/** The same for each object and text. The text has to say all that the answer depends on besides the object. */
export function oncePerKey<K extends object, V>(): (of: K, key: string, make: () => V) => V {
  const answersOf = oncePer((_: K) => new Map<string, { readonly made: V }>());
  return (of, key, make) => {
    const known = answersOf(of);
    let found = known.get(key);
    if (!found) {
      found = { made: make() };
      known.set(key, found);
    }
    return found.made;
  };
}

/** JSON writes what is infinite and what is no number as null; an open contact must not look like a missing one. */
const plainly = (_: string, value: unknown) =>
  typeof value === 'number' && !Number.isFinite(value) ? String(value) : value;

/** Numbers for the parts of one build: equal parts get the same. */
const numbersWithin = oncePer<object, (part: object) => number>(() => {
  const numbers = new Map<string, number>();
  return oncePer((part: object) => {
    const text = JSON.stringify(part, plainly);
    const number = numbers.get(text) ?? numbers.size;
    numbers.set(text, number);
    return number;
  });
});

/** A text that is the same only for parts of the same values, among the parts that belong to one build. */
export const identityOf = (within: object, ...parts: readonly object[]): string =>
  parts.map(numbersWithin(within)).join();
