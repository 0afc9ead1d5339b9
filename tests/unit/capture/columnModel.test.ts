import { describe, expect, it } from 'vitest';
import { resonantLengthM, ringUpTimeS } from '../../../src/air/columnResonance.ts';
import { endCorrection } from '../../../src/air/endCorrection.ts';
import { airFromReadings } from '../../../src/air/airState.ts';
import { speedOfSound } from '../../../src/air/speedOfSound.ts';
import { wallLoss } from '../../../src/air/wallLoss.ts';
import { ColumnModel } from '../../../src/capture/practice/columnModel.ts';
import { ColumnRing } from '../../../src/capture/practice/columnRing.ts';

const AIR = { temperatureC: 20, humidityPct: 0, pressurePa: 101_325 };

function admittance(model: ColumnModel, lengthM: number): number {
  const { re, im } = model.impedance(lengthM);
  return 1 / Math.hypot(re, im);
}

/** The length of the greatest flow in the mouth near a length, by dense search. */
function peakNear(model: ColumnModel, lengthM: number): number {
  let best = lengthM - 0.02;
  for (let at = best; at < lengthM + 0.02; at += 1e-5) {
    if (admittance(model, at) > admittance(model, best)) best = at;
  }
  return best;
}

describe.each([
  ['closed', 512, 0.0175],
  ['closed', 256, 0.02],
  ['open', 384, 0.015],
  ['open', 512, 0.025],
] as const)('ColumnModel, %s, %d Hz, radius %d m', (ends, frequencyHz, radiusM) => {
  const model = new ColumnModel({ frequencyHz, radiusM, ends, air: AIR });
  const freeMps = speedOfSound(airFromReadings(AIR)).speedMps;
  const speedMps = freeMps * wallLoss(radiusM, frequencyHz, AIR.temperatureC, freeMps).speedRatio;
  const { endCorrectionM } = endCorrection(radiusM, frequencyHz, speedMps);

  it('resonates where the formulas of air/ say', () => {
    const lengths = model.resonantLengthsM(1.2);
    expect(lengths.length).toBeGreaterThan(1);
    lengths.forEach((lengthM, i) => {
      const expectedM = resonantLengthM({ order: i + 1, ends, speedMps, frequencyHz, endCorrectionM });
      expect(lengthM).toBeCloseTo(expectedM, 9);
      // The flow is greatest there; the loss grows with length, which shifts the top by far less than a tenth of a mm.
      expect(Math.abs(peakNear(model, lengthM) - expectedM)).toBeLessThan(1e-4);
    });
  });
});

describe('ColumnModel against published values', () => {
  it('has the half-power widths that wall and mouth losses give', () => {
    // [2αL + (ka)²/2]/k, a = 17.5 mm, 512 Hz, orders 1 to 3: 2.7, 5.4, 8.2 mm (computed from Keefe 1984 and
    // Levine & Schwinger 1948). α there is the wide-tube limit, good to some per cent.
    const model = new ColumnModel({ frequencyHz: 512, radiusM: 0.0175, ends: 'closed', air: AIR });
    const widthsMm = model.resonantLengthsM(0.9).map((lengthM) => {
      const half = admittance(model, lengthM) / Math.SQRT2;
      let low = lengthM;
      let high = lengthM;
      while (admittance(model, low) > half) low -= 1e-5;
      while (admittance(model, high) > half) high += 1e-5;
      return 1000 * (high - low);
    });
    [2.7, 5.4, 8.2].forEach((expected, i) =>
      expect(Math.abs((widthsMm[i] ?? 0) / expected - 1)).toBeLessThan(0.06),
    );
  });

  it('gives OpenStax’ column: 128 Hz at 22.0 °C resonates at 0.672 m, end correction and walls apart', () => {
    // OpenStax College Physics 2e, section 17.5, example: 344 m/s, L = 0.672 m. The effective length is theirs; the
    // walls of a tube of 50 mm radius slow the wave by 0.3 %.
    const air = { temperatureC: 22, humidityPct: 0, pressurePa: 101_325 };
    const model = new ColumnModel({ frequencyHz: 128, radiusM: 0.05, ends: 'closed', air });
    const [lengthM = NaN] = model.resonantLengthsM(0.7);
    const walls = model.tubeSpeedMps / model.freeSpeedMps;
    expect(model.effectiveLengthM(lengthM) / walls).toBeCloseTo(0.672, 2);
  });
});

describe('ColumnRing', () => {
  it.each([1, 2, 3])('builds up at order %d with the time constant 2Q/ω, tens of milliseconds', (order) => {
    const radiusM = 0.0175;
    const frequencyHz = 512;
    const model = new ColumnModel({ frequencyHz, radiusM, ends: 'closed', air: AIR });
    const lengthM = model.resonantLengthsM(1)[order - 1] ?? NaN;
    const ring = new ColumnRing();
    const steady = admittance(model, lengthM);
    let timeS = 0;
    while (Math.hypot(ring.motion.re, ring.motion.im) < (1 - Math.exp(-1)) * steady) {
      ring.step(model, lengthM, { re: 1, im: 0 }, 0.001);
      timeS += 0.001;
    }
    const expectedS = ringUpTimeS({
      lengthM: model.effectiveLengthM(lengthM),
      ends: 'closed',
      radiusM,
      frequencyHz,
      speedMps: model.tubeSpeedMps,
      attenuationNpPerM: wallLoss(radiusM, frequencyHz, 20, model.freeSpeedMps).attenuationNpPerM,
    });
    expect(Math.abs(timeS - expectedS)).toBeLessThan(0.003);
    expect(timeS).toBeGreaterThan(0.02);
    expect(timeS).toBeLessThan(0.1);
  });

  it('settles at drive over impedance for any length, also far from resonance', () => {
    const model = new ColumnModel({ frequencyHz: 512, radiusM: 0.0175, ends: 'closed', air: AIR });
    for (let lengthM = 0.01; lengthM < 1.2; lengthM += 0.007) {
      const ring = new ColumnRing();
      for (let i = 0; i < 1500; i += 1) ring.step(model, lengthM, { re: 1, im: 0 }, 0.001);
      const z = model.impedance(lengthM);
      const square = z.re * z.re + z.im * z.im;
      expect(ring.motion.re).toBeCloseTo(z.re / square, 6);
      expect(ring.motion.im).toBeCloseTo(-z.im / square, 6);
    }
  });

  it('turns the phase of the mouth by nearly 180° across a resonance', () => {
    const model = new ColumnModel({ frequencyHz: 512, radiusM: 0.0175, ends: 'closed', air: AIR });
    for (const lengthM of model.resonantLengthsM(1)) {
      const angle = (at: number): number => Math.atan2(-model.impedance(at).im, model.impedance(at).re);
      const swingDeg = (Math.abs(angle(lengthM + 0.05) - angle(lengthM - 0.05)) * 180) / Math.PI;
      expect(swingDeg).toBeGreaterThan(160);
      expect(swingDeg).toBeLessThan(180);
    }
  });
});
