import type { WorkingStep } from '../solver/workingStep.ts';
import { laterWords, words } from './inUse.ts';
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
  const said = laterWords.workingStep;
  switch (step.kind) {
    case 'half-wave-from-difference':
      return {
        title: said.halfWave,
        formula: 'λ/2 = (L₂ − L₁)/(n₂ − n₁)',
        numbers: `(${centimetres(step.farLengthM)} cm − ${centimetres(step.nearLengthM)} cm)/(${step.farOrder} − ${step.nearOrder})`,
        result: `λ/2 = ${finely(step.halfWaveM)} cm`,
      };
    case 'wavelength-from-half-wave':
      return {
        title: said.wavelength,
        formula: 'λ = 2·(λ/2)',
        numbers: `2 · ${finely(step.halfWaveM)} cm`,
        result: `λ = ${finely(step.wavelengthM)} cm`,
      };
    case 'end-correction': {
      const length = `${centimetres(step.lengthM)} cm`;
      const isClosed = step.ends === 'closed';
      return {
        title: said.endCorrection,
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
        title: said.columnLength,
        formula: isClosed ? 'ℓ = L + e' : 'ℓ = L + 2e',
        numbers: `${centimetres(step.lengthM)} cm ${sign} ${isClosed ? '' : '2 · '}${finely(Math.abs(step.endCorrectionM))} cm`,
        result: `ℓ = ${finely(step.columnM)} cm`,
      };
    }
    case 'wavelength-from-column': {
      const isClosed = step.ends === 'closed';
      const column = `${finely(step.columnM)} cm`;
      return {
        title: said.wavelength,
        formula: isClosed ? 'λ = 4ℓ/(2n − 1)' : 'λ = 2ℓ/n',
        numbers: isClosed ? `4 · ${column}/${2 * step.order - 1}` : `2 · ${column}/${step.order}`,
        result: `λ = ${finely(step.wavelengthM)} cm`,
      };
    }
    case 'speed-in-tube':
      return {
        title: said.speedInTube,
        formula: 'v = f·λ',
        numbers: `${hertz(step.frequencyHz)} Hz · ${fixed(step.wavelengthM, 4)} m`,
        result: `v = ${fixed(step.speedMps, 1)} m/s`,
      };
    case 'fit-of-all-marks': {
      const { chiSquared } = step;
      const chi = fixed(chiSquared, chiSquared < 100 ? 1 : 0);
      const { markCount, degreesOfFreedom } = step;
      return {
        title: step.known === null ? said.allMarks : said.allMarksAndMouth,
        formula: said.allMarksFormula,
        numbers:
          step.known === null
            ? said.fitOf(markCount, chi, degreesOfFreedom)
            : said.fitWithMouth(markCount, knownEndWords(step.known), chi, degreesOfFreedom),
        result: said.fitGives(fixed(step.speedMps, 2), fixed(step.endCorrectionM * 1000, 1)),
      };
    }
    case 'free-air':
      return {
        title: said.freeAir,
        formula: 'c = v/(1 − w)',
        numbers: `${fixed(step.speedInTubeMps, 2)} m/s/(1 − ${fixed(step.wallFraction, 5)})`,
        result: `c = ${fixed(step.speedMps, 2)} m/s`,
      };
    case 'place':
      return placeWords(step);
    case 'standard-uncertainty': {
      const squares = step.contributionsMps.map((mps) => `${significant(mps, 2)}²`);
      const rest = step.isShortened ? said.shortened : '';
      return {
        title: said.standardUncertainty,
        formula: said.standardFormula,
        numbers: `√(${squares.join(' + ')}) m/s${rest}`,
        result: `u = ${significant(step.standardUncertaintyMps, 2)} m/s`,
      };
    }
    case 'expanded-uncertainty':
      return {
        title: said.expandedUncertainty,
        formula: said.expandedFormula,
        numbers: `${fixed(step.coverageFactor, 2)} · ${significant(step.standardUncertaintyMps, 2)} m/s, ν = ${fixed(step.effectiveDegreesOfFreedom, 0)}`,
        result: `U = ${significant(step.expandedUncertaintyMps, 2)} m/s`,
      };
    case 'theory':
      return {
        title: said.theory,
        formula: step.filling === 'air' ? said.theoryFormula : 'c = √(γRT/M)',
        numbers:
          step.filling !== 'air'
            ? said.gasAt(words.fillingNames[step.filling], fixed(step.temperatureC, 1))
            : `t = ${fixed(step.temperatureC, 1)} °C, h = ${fixed(step.humidityPct, 0)} %, p = ${fixed(step.pressurePa / 100, 0)} hPa`,
        result: `c = ${fixed(step.speedMps, 2)} m/s, u = ${significant(step.standardUncertaintyMps, 2)} m/s`,
      };
    case 'difference-from-theory':
      return {
        title: said.difference,
        formula: said.differenceFormula,
        // One digit more than the result has: whoever takes one from the other gets the difference that is shown.
        numbers: `${fixed(step.speedMps, 3)} m/s − ${fixed(step.theoryMps, 3)} m/s`,
        result: `Δ = ${fixed(step.differenceMps, 2)} m/s (${fixed(step.differencePct, 2)} %), Eₙ = ${fixed(step.normalisedError, 2)}`,
      };
  }
}

function placeWords(step: Extract<WorkingStep, { kind: 'place' }>): Omit<StepWords, 'why'> {
  const said = laterWords.workingStep;
  const isCentre = step.locatedBy === 'centre';
  const part = significant(step.placeHalfWidths, 2);
  const halfWidthMm = fixed(step.halfWidthM * 1000, 2);
  const place = step.isUsualTube ? said.halfWidthUsual(part, halfWidthMm) : said.halfWidth(part, halfWidthMm);
  const riseDb = fixed(step.riseDb, 0);
  const rise = step.isRiseAssumed ? said.riseAssumed(riseDb) : said.rise(riseDb);
  const placeMm = fixed(step.placeM * 1000, 2);
  return {
    title: isCentre ? said.centres : said.loudest,
    formula: isCentre ? said.placeFormula : said.loudestFormula,
    numbers: `${said.widest(step.markCount, centimetres(step.lengthM))}: ${place}${isCentre ? '' : `, ${rise}`}`,
    result:
      step.contributionMps === null
        ? said.placeInLengths(placeMm)
        : said.placeGives(placeMm, fixed(step.contributionMps, 2)),
  };
}

/** Metres as centimetres to the tenth of a millimetre, whatever their size. */
function finely(lengthM: number): string {
  return fixed(lengthM * 100, 2);
}
