/** A complex number. */
export interface Complex {
  readonly re: number;
  readonly im: number;
}

export function multiply(a: Complex, b: Complex): Complex {
  return { re: a.re * b.re - a.im * b.im, im: a.re * b.im + a.im * b.re };
}

export function divide(a: Complex, b: Complex): Complex {
  const square = b.re * b.re + b.im * b.im;
  return { re: (a.re * b.re + a.im * b.im) / square, im: (a.im * b.re - a.re * b.im) / square };
}

/** Principal square root. */
export function squareRoot(a: Complex): Complex {
  const size = Math.hypot(a.re, a.im);
  const re = Math.sqrt((size + a.re) / 2);
  return { re, im: Math.sign(a.im) * Math.sqrt((size - a.re) / 2) };
}
