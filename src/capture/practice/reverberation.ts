/** A room's echoes: four feedback delays of unrelated lengths. @see Schroeder 1962, J. Audio Eng. Soc. 10, 219 */
export class Reverberation {
  private readonly lines: readonly { readonly buffer: Float32Array; readonly feedback: number; at: number }[];

  /** @param timeS  in which the sound falls by 60 dB; a classroom has about 0.4 (Sato & Bradley 2008) */
  constructor(timeS: number, sampleRateHz: number) {
    this.lines = [0.0297, 0.0371, 0.0411, 0.0437].map((delayS) => ({
      buffer: new Float32Array(Math.round(delayS * sampleRateHz)),
      feedback: 10 ** ((-3 * delayS) / timeS),
      at: 0,
    }));
  }

  /** Direct sound with its echoes. */
  next(input: number): number {
    let sum = 0;
    for (const line of this.lines) {
      const delayed = line.buffer[line.at] ?? 0;
      line.buffer[line.at] = input + line.feedback * delayed;
      line.at = line.at + 1 === line.buffer.length ? 0 : line.at + 1;
      sum += delayed;
    }
    return input + 0.35 * sum;
  }
}
