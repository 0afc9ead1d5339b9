/** A length for a message: centimetres without the noise of a change of units, “15.8 cm”, “−4.2 cm”. */
export function inCm(lengthM: number): string {
  return `${Number((lengthM * 100).toPrecision(8))} cm`.replace('-', '−');
}
