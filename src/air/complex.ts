/** A complex number. */
export interface Complex {
  readonly re: number;
  readonly im: number;
}

/**
 * a·b.
 * @example
 * multiply({ re: 0, im: 1 }, { re: 0, im: 1 }) // → { re: -1, im: 0 }
 */
export function multiply(a: Complex, b: Complex): Complex {
  return { re: a.re * b.re - a.im * b.im, im: a.re * b.im + a.im * b.re };
}

/**
 * a/b; not finite where b is 0.
 * @example
 * divide({ re: 1, im: 0 }, { re: 0, im: 2 }) // → { re: 0, im: -0.5 }
 */
export function divide(a: Complex, b: Complex): Complex {
  const square = b.re * b.re + b.im * b.im;
  return { re: (a.re * b.re + a.im * b.im) / square, im: (a.im * b.re - a.re * b.im) / square };
}

/**
 * Principal square root.
 * @example
 * squareRoot({ re: -3, im: 4 }) // → { re: 1, im: 2 }
 */
export function squareRoot(a: Complex): Complex {
  const size = Math.hypot(a.re, a.im);
  const re = Math.sqrt((size + a.re) / 2);
  return { re, im: Math.sign(a.im) * Math.sqrt((size - a.re) / 2) };
}
