// Every formula comes through here, and often: a walk over the names makes nothing that has to be thrown away.

/** Refuses a broken contract. The argument's name, unit suffix included, becomes the message. */
export function requirePositive(args: Readonly<Record<string, number>>): void {
  for (const name in args) {
    const value = args[name] as number;
    if (!(value > 0 && value < Infinity)) throw new RangeError(`${name} must be finite and above 0, got ${value}`);
  }
}

/** As `requirePositive`, but zero is allowed. */
export function requireNotNegative(args: Readonly<Record<string, number>>): void {
  for (const name in args) {
    const value = args[name] as number;
    if (!(value >= 0 && value < Infinity)) throw new RangeError(`${name} must be finite and not below 0, got ${value}`);
  }
}

/** As `requirePositive`, but any finite value is allowed. */
export function requireFinite(args: Readonly<Record<string, number>>): void {
  for (const name in args) {
    const value = args[name] as number;
    if (!Number.isFinite(value)) throw new RangeError(`${name} must be finite, got ${value}`);
  }
}

/** Allows only values from `lowest` to `highest`, both included. The argument's name brings the unit to the message. */
export function requireWithin(args: Readonly<Record<string, number>>, lowest: number, highest: number): void {
  for (const name in args) {
    const value = args[name] as number;
    if (!(value >= lowest && value <= highest)) {
      throw new RangeError(`${name} must be from ${lowest} to ${highest}, got ${value}`);
    }
  }
}

/** Allows only whole numbers from `lowest` to `highest`, both included: counts and gauge numbers. */
export function requireWhole(args: Readonly<Record<string, number>>, lowest: number, highest: number): void {
  requireWithin(args, lowest, highest);
  for (const name in args) {
    const value = args[name] as number;
    if (!Number.isInteger(value)) throw new RangeError(`${name} must be a whole number, got ${value}`);
  }
}
