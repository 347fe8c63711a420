/** A function of one thing that works out its answer once for each. */
export function onceEach<K, T>(make: (of: K) => T): (of: K) => T {
  const known = new Map<K, { readonly made: T }>();
  return (of) => {
    const found = known.get(of) ?? { made: make(of) };
    known.set(of, found);
    return found.made;
  };
}
