import type { ColumnGas } from './columnGas.ts';
import { hyperbolicTangent, plus, product, quotient } from './complexNumber.ts';
import type { ComplexNumber } from './complexNumber.ts';
import { levineSchwinger } from './openEnd.ts';
import { tubeWave } from './tubeWave.ts';

/** A column with a fork at its open end. */
export interface TestColumn {
  readonly gas: ColumnGas;
  readonly radiusM: number;
  readonly frequencyHz: number;
  readonly ends: 'closed' | 'open';
  /** End correction over radius of the end where the fork is, as ka → 0. */
  readonly mouthRatio: number;
  /** Of the other open end. */
  readonly farRatio: number;
}

/** A resonance of such a column. */
export interface Resonance {
  readonly lengthM: number;
  /** Half of the full width at half power, on the length's scale. */
  readonly halfWidthM: number;
}

/** e/a of a thin rim in the open (Levine & Schwinger 1948). */
export const THIN_RIM = 0.6133;
/** e/a in a wide flat plate (Nomura, Yamamura & Inawashiro 1960). */
export const FLANGE = 0.8216;

/**
 * e/a of a rim as thick as a real wall: between thin rim and flange with the wall's thickness.
 * @param inOverOut  inside over outside radius, 0..1
 * @see Dalmont, Nederveen & Joly 2001, J. Sound Vib. 244, 505, on circular flanges (from memory)
 * @example
 * thickRim(15 / 17).toFixed(3) // → '0.661'
 */
export function thickRim(inOverOut: number): number {
  return FLANGE + inOverOut * (THIN_RIM - FLANGE) + 0.057 * inOverOut * (1 - inOverOut ** 5);
}

/**
 * Lengths at which columns resonate, from impedances: the length at which the reactance seen by the fork, that of the
 * column and of the air outside in series, is zero. The walls enter by Zwikker and Kosten, the mouth by Levine and
 * Schwinger with its end correction stretched to the mouth's. A rigid piston: what its face takes is left out.
 * @returns a finder of the n-th resonance; null where that is shorter than the end correction
 * @example
 * const gas = moistAir({ temperatureC: 20, humidityPct: 50, co2: 0.0004 });
 * const column = { gas, radiusM: 0.015, frequencyHz: 512, ends: 'closed', mouthRatio: THIN_RIM, farRatio: THIN_RIM };
 * resonances()(column, 1)?.lengthM.toFixed(4) // → '0.1581'
 */
export function resonances(): (column: TestColumn, order: number) => Resonance | null {
  const openEnd = levineSchwinger();
  const radiation = (column: TestColumn, ratio: number): ComplexNumber => {
    const { gas, radiusM, frequencyHz } = column;
    const waveNumber = (2 * Math.PI * frequencyHz) / gas.speedMps;
    const end = openEnd(waveNumber * radiusM);
    const phase = -2 * waveNumber * radiusM * end.ratio * (ratio / THIN_RIM);
    const reflected: ComplexNumber = [-end.reflection * Math.cos(phase), -end.reflection * Math.sin(phase)];
    const open = gas.densityKgPerM3 * gas.speedMps;
    return product([open, 0], quotient(plus([1, 0], reflected), [1 - reflected[0], -reflected[1]]));
  };
  return (column, order) => {
    const { propagation, impedance } = tubeWave(column.gas, column.radiusM, column.frequencyHz);
    const mouth = radiation(column, column.mouthRatio);
    const far = radiation(column, column.farRatio);
    const seen = (lengthM: number): ComplexNumber => {
      const tangent = hyperbolicTangent([propagation[0] * lengthM, propagation[1] * lengthM]);
      const inside =
        column.ends === 'closed'
          ? quotient(impedance, tangent)
          : product(
              impedance,
              quotient(plus(far, product(impedance, tangent)), plus(impedance, product(far, tangent))),
            );
      return plus(inside, mouth);
    };
    const reactance = (lengthM: number): number => seen(lengthM)[1];
    // Near the textbook's length, where the reactance rises through zero once within an eighth of a wave.
    const halfWaveM = Math.PI / propagation[1];
    const corrections = column.ends === 'closed' ? column.mouthRatio : column.mouthRatio + column.farRatio;
    const aboutM =
      (column.ends === 'closed' ? order - 0.5 : order) * halfWaveM - corrections * column.radiusM;
    let low = aboutM - halfWaveM / 5;
    let high = aboutM + halfWaveM / 5;
    if (low <= 0) low = 1e-4;
    if (!(reactance(low) < 0 && reactance(high) > 0)) return null;
    for (let round = 0; round < 60; round += 1) {
      const middle = (low + high) / 2;
      if (reactance(middle) < 0) low = middle;
      else high = middle;
    }
    // Half the power is left where the reactance has grown as large as the resistance.
    const stepM = 1e-6;
    const slope = (reactance(low + stepM) - reactance(low - stepM)) / (2 * stepM);
    return { lengthM: low, halfWidthM: seen(low)[0] / slope };
  };
}
