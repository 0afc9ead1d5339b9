/*
 * Complex numbers of the columns' own. The forward model shares no code with what it judges, not even arithmetic.
 */
export type ComplexNumber = readonly [re: number, im: number];

export const plus = (a: ComplexNumber, b: ComplexNumber): ComplexNumber => [a[0] + b[0], a[1] + b[1]];
export const minus = (a: ComplexNumber, b: ComplexNumber): ComplexNumber => [a[0] - b[0], a[1] - b[1]];
export const scaled = (a: ComplexNumber, by: number): ComplexNumber => [a[0] * by, a[1] * by];
export const product = (a: ComplexNumber, b: ComplexNumber): ComplexNumber => [
  a[0] * b[0] - a[1] * b[1],
  a[0] * b[1] + a[1] * b[0],
];
export function quotient(a: ComplexNumber, b: ComplexNumber): ComplexNumber {
  const size = b[0] * b[0] + b[1] * b[1];
  return [(a[0] * b[0] + a[1] * b[1]) / size, (a[1] * b[0] - a[0] * b[1]) / size];
}
/** The root whose real part is not below 0. */
export function root(a: ComplexNumber): ComplexNumber {
  const size = Math.hypot(a[0], a[1]);
  const re = Math.sqrt((size + a[0]) / 2);
  return [re, Math.sign(a[1]) * Math.sqrt((size - a[0]) / 2)];
}
/** tanh(x + iy) = (sinh 2x + i sin 2y)/(cosh 2x + cos 2y). */
export function hyperbolicTangent([x, y]: ComplexNumber): ComplexNumber {
  const below = Math.cosh(2 * x) + Math.cos(2 * y);
  return [Math.sinh(2 * x) / below, Math.sin(2 * y) / below];
}
