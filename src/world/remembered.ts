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

let numbered = 0;
const numberOf = oncePer((_: object) => numbered++);
/** A text that is the same only for the very same parts. */
export const identityOf = (...parts: readonly object[]): string => parts.map(numberOf).join();
