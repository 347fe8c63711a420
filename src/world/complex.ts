/*
 * Complex numbers, as much of them as a sine in steady state needs. A library for six functions would weigh more than
 * they do, and a page has to load it.
 */

/** A number with a real and an imaginary part. For a sine: size and phase, in RMS. At 0 Hz `im` is 0. */
export interface Complex {
  readonly re: number;
  readonly im: number;
}

export const ZERO: Complex = { re: 0, im: 0 };
export const ONE: Complex = { re: 1, im: 0 };

export const real = (re: number): Complex => ({ re, im: 0 });
export const add = (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im });
export const subtract = (a: Complex, b: Complex): Complex => ({ re: a.re - b.re, im: a.im - b.im });
export const negative = (a: Complex): Complex => ({ re: -a.re, im: -a.im });
export const scale = (a: Complex, by: number): Complex => ({ re: a.re * by, im: a.im * by });
export const magnitude = (a: Complex): number => Math.hypot(a.re, a.im);

export const multiply = (a: Complex, b: Complex): Complex => ({
  re: a.re * b.re - a.im * b.im,
  im: a.re * b.im + a.im * b.re,
});

/** 1 / a. Zero has no inverse: who divides has made sure. */
export const inverse = (a: Complex): Complex => {
  const square = a.re * a.re + a.im * a.im;
  return { re: a.re / square, im: -a.im / square };
};
