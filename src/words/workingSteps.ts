import type { WorkingStep } from '../solver/workingStep.ts';
import { words } from './inUse.ts';
import { counted } from './en/grammar.ts';
import { centimetres, fixed, hertz, significant } from './numbers.ts';
import { knownEndWords, whyWords } from './whySteps.ts';

/** One step of the working, ready to print: what is done, its formula, the numbers put in, and the result. */
export interface StepWords {
  readonly title: string;
  readonly formula: string;
  readonly numbers: string;
  readonly result: string;
  /** Why it is done so, with a source; null where nobody asks. */
  readonly why: string | null;
}

/** A step with this experiment's numbers, as a student would write it. */
export function workingStepWords(step: WorkingStep): StepWords {
  return { ...doneWords(step), why: whyWords(step) };
}

function doneWords(step: WorkingStep): Omit<StepWords, 'why'> {
  switch (step.kind) {
    case 'half-wave-from-difference':
      return {
        title: 'Half a wavelength from the difference of two lengths',
        formula: 'λ/2 = (L₂ − L₁)/(n₂ − n₁)',
        numbers: `(${centimetres(step.farLengthM)} cm − ${centimetres(step.nearLengthM)} cm)/(${step.farOrder} − ${step.nearOrder})`,
        result: `λ/2 = ${finely(step.halfWaveM)} cm`,
      };
    case 'wavelength-from-half-wave':
      return {
        title: 'Wavelength',
        formula: 'λ = 2·(λ/2)',
        numbers: `2 · ${finely(step.halfWaveM)} cm`,
        result: `λ = ${finely(step.wavelengthM)} cm`,
      };
    case 'end-correction': {
      const length = `${centimetres(step.lengthM)} cm`;
      const isClosed = step.ends === 'closed';
      return {
        title: 'End correction',
        formula: isClosed ? 'e = (2n₁ − 1)·λ/4 − L₁' : 'e = (n₁·λ/2 − L₁)/2',
        numbers: isClosed
          ? `${2 * step.order - 1} · ${finely(step.halfWaveM / 2)} cm − ${length}`
          : `(${step.order} · ${finely(step.halfWaveM)} cm − ${length})/2`,
        result: `e = ${fixed(step.endCorrectionM * 1000, 1)} mm`,
      };
    }
    case 'column-length': {
      const isClosed = step.ends === 'closed';
      const sign = step.endCorrectionM < 0 ? '−' : '+';
      return {
        title: 'Length of the sounding column',
        formula: isClosed ? 'ℓ = L + e' : 'ℓ = L + 2e',
        numbers: `${centimetres(step.lengthM)} cm ${sign} ${isClosed ? '' : '2 · '}${finely(Math.abs(step.endCorrectionM))} cm`,
        result: `ℓ = ${finely(step.columnM)} cm`,
      };
    }
    case 'wavelength-from-column': {
      const isClosed = step.ends === 'closed';
      const column = `${finely(step.columnM)} cm`;
      return {
        title: 'Wavelength',
        formula: isClosed ? 'λ = 4ℓ/(2n − 1)' : 'λ = 2ℓ/n',
        numbers: isClosed ? `4 · ${column}/${2 * step.order - 1}` : `2 · ${column}/${step.order}`,
        result: `λ = ${finely(step.wavelengthM)} cm`,
      };
    }
    case 'speed-in-tube':
      return {
        title: 'Speed of the wave in the tube',
        formula: 'v = f·λ',
        numbers: `${hertz(step.frequencyHz)} Hz · ${fixed(step.wavelengthM, 4)} m`,
        result: `v = ${fixed(step.speedMps, 1)} m/s`,
      };
    case 'fit-of-all-marks': {
      const { chiSquared } = step;
      const marks = step.markCount === 1 ? 'the mark' : `all ${step.markCount} marks`;
      const beside =
        step.known === null ? '' : ` and what is known of this mouth (${knownEndWords(step.known)})`;
      return {
        title: step.known === null ? 'All marks together' : 'All marks and the mouth together',
        formula: 'L = (2n − 1)·v/4f − e (closed), L = n·v/2f − 2e (open)',
        numbers: `v and e from ${marks}${beside} by weighted least squares; χ² = ${fixed(chiSquared, chiSquared < 100 ? 1 : 0)} for ${counted(step.degreesOfFreedom, 'degree')} of freedom`,
        result: `c = ${fixed(step.speedMps, 2)} m/s in free air, e = ${fixed(step.endCorrectionM * 1000, 1)} mm`,
      };
    }
    case 'free-air':
      return {
        title: 'Free air: the walls slow the wave',
        formula: 'c = v/(1 − w)',
        numbers: `${fixed(step.speedInTubeMps, 2)} m/s/(1 − ${fixed(step.wallFraction, 5)})`,
        result: `c = ${fixed(step.speedMps, 2)} m/s`,
      };
    case 'place':
      return placeWords(step);
    case 'standard-uncertainty': {
      const squares = step.contributionsMps.map((mps) => `${significant(mps, 2)}²`);
      const rest = step.isShortened ? ', lines below 1 % of u left out' : '';
      return {
        title: 'Standard uncertainty',
        formula: 'u = √(u₁² + u₂² + …), the lines of the budget',
        numbers: `√(${squares.join(' + ')}) m/s${rest}`,
        result: `u = ${significant(step.standardUncertaintyMps, 2)} m/s`,
      };
    }
    case 'expanded-uncertainty':
      return {
        title: 'Expanded uncertainty, 95 %',
        formula: 'U = k·u, k from Student’s t',
        numbers: `${fixed(step.coverageFactor, 2)} · ${significant(step.standardUncertaintyMps, 2)} m/s, ν = ${fixed(step.effectiveDegreesOfFreedom, 0)}`,
        result: `U = ${significant(step.expandedUncertaintyMps, 2)} m/s`,
      };
    case 'theory':
      return {
        title: 'Theory',
        formula: step.filling === 'air' ? 'c(t, h, p), Cramer 1993' : 'c = √(γRT/M)',
        numbers:
          step.filling !== 'air'
            ? `${words.fillingNames[step.filling]} at t = ${fixed(step.temperatureC, 1)} °C`
            : `t = ${fixed(step.temperatureC, 1)} °C, h = ${fixed(step.humidityPct, 0)} %, p = ${fixed(step.pressurePa / 100, 0)} hPa`,
        result: `c = ${fixed(step.speedMps, 2)} m/s, u = ${significant(step.standardUncertaintyMps, 2)} m/s`,
      };
    case 'difference-from-theory':
      return {
        title: 'Difference from theory',
        formula: 'Δ = c − c(theory), Eₙ = Δ/√(U² + U(theory)²)',
        // One digit more than the result has: whoever takes one from the other gets the difference that is shown.
        numbers: `${fixed(step.speedMps, 3)} m/s − ${fixed(step.theoryMps, 3)} m/s`,
        result: `Δ = ${fixed(step.differenceMps, 2)} m/s (${fixed(step.differencePct, 2)} %), Eₙ = ${fixed(step.normalisedError, 2)}`,
      };
  }
}

function placeWords(step: Extract<WorkingStep, { kind: 'place' }>): Omit<StepWords, 'why'> {
  const isCentre = step.locatedBy === 'centre';
  const tube = step.isUsualTube ? ', in a usual tube' : '';
  const at = `of ${counted(step.markCount, 'mark')} the widest, at ${centimetres(step.lengthM)} cm`;
  const rise = `${step.isRiseAssumed ? 'taken as ' : ''}${fixed(step.riseDb, 0)} dB over the fork alone`;
  const place = `${significant(step.placeHalfWidths, 2)} · ${fixed(step.halfWidthM * 1000, 2)} mm half width${tube}`;
  const added =
    step.contributionMps === null
      ? 'part of each length’s own u'
      : `${fixed(step.contributionMps, 2)} m/s of u`;
  return {
    title: isCentre
      ? 'Places shown as the centre: each for itself'
      : 'Loudest places: beside the resonance, with one fork and setup to the same side',
    formula: isCentre ? 'u(place) = a·h' : 'u(place) = a·h, a² = R/√(R² − 1) − 1, R the rise as a ratio',
    numbers: `${at}: ${place}${isCentre ? '' : `, rise ${rise}`}`,
    result: `u(place) = ${fixed(step.placeM * 1000, 2)} mm, ${added}`,
  };
}

/** Metres as centimetres to the tenth of a millimetre, whatever their size. */
function finely(lengthM: number): string {
  return fixed(lengthM * 100, 2);
}
