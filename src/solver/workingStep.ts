import type { ColumnEnds } from '../marks/mark.ts';

/** One step of the way from lengths to the result as it is gone by hand: what is put in and what comes out. */
export type WorkingStep =
  | {
      readonly kind: 'half-wave-from-difference';
      readonly nearLengthM: number;
      readonly nearOrder: number;
      readonly farLengthM: number;
      readonly farOrder: number;
      readonly halfWaveM: number;
    }
  | { readonly kind: 'wavelength-from-half-wave'; readonly halfWaveM: number; readonly wavelengthM: number }
  | {
      readonly kind: 'end-correction';
      readonly ends: ColumnEnds;
      readonly lengthM: number;
      readonly order: number;
      readonly halfWaveM: number;
      readonly endCorrectionM: number;
    }
  | {
      readonly kind: 'column-length';
      readonly ends: ColumnEnds;
      readonly lengthM: number;
      /** Of one open end; marks that contradict each other can give a negative one. */
      readonly endCorrectionM: number;
      readonly columnM: number;
    }
  | {
      readonly kind: 'wavelength-from-column';
      readonly ends: ColumnEnds;
      readonly order: number;
      readonly columnM: number;
      readonly wavelengthM: number;
    }
  | {
      readonly kind: 'speed-in-tube';
      readonly frequencyHz: number;
      readonly wavelengthM: number;
      readonly speedMps: number;
    }
  | {
      readonly kind: 'fit-of-all-marks';
      /** Whether the marks give the end correction as well; else it is theory's. */
      readonly isEndFree: boolean;
      readonly markCount: number;
      readonly chiSquared: number;
      readonly degreesOfFreedom: number;
      readonly speedMps: number;
      readonly endCorrectionM: number;
    }
  | {
      readonly kind: 'free-air';
      readonly speedInTubeMps: number;
      /** Part of the speed that the walls take away. */
      readonly wallFraction: number;
      readonly speedMps: number;
    }
  | {
      readonly kind: 'standard-uncertainty';
      /** Largest first. */
      readonly contributionsMps: readonly number[];
      /** Whether contributions that change nothing are left out. */
      readonly isShortened: boolean;
      readonly standardUncertaintyMps: number;
    }
  | {
      readonly kind: 'expanded-uncertainty';
      readonly coverageFactor: number;
      readonly standardUncertaintyMps: number;
      readonly effectiveDegreesOfFreedom: number;
      readonly expandedUncertaintyMps: number;
    }
  | {
      readonly kind: 'theory';
      readonly temperatureC: number;
      readonly humidityPct: number;
      readonly pressurePa: number;
      readonly speedMps: number;
      readonly standardUncertaintyMps: number;
    }
  | {
      readonly kind: 'difference-from-theory';
      readonly speedMps: number;
      readonly theoryMps: number;
      readonly differenceMps: number;
      readonly differencePct: number;
      /** Eₙ. */
      readonly normalisedError: number;
    };
