import type { Filling } from '../air/gases.ts';
import type { ColumnEnds, LocatedBy } from '../marks/mark.ts';

/** What was known of the mouth before anything was measured, and counts beside the marks. */
export interface KnownEnd {
  /** Whether the numbers are over the inside radius; else they are metres, because no diameter is known. */
  readonly isRelative: boolean;
  readonly expected: number;
  readonly standardUncertainty: number;
}

/** One step of the way from lengths to the result as it is gone by hand: what is put in and what comes out. */
export type WorkingStep =
  | {
      readonly kind: 'half-wave-from-difference';
      readonly ends: ColumnEnds;
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
      /** Inside radius; null where no diameter is known. */
      readonly radiusM: number | null;
    }
  | {
      readonly kind: 'column-length';
      readonly ends: ColumnEnds;
      readonly lengthM: number;
      /** Of one open end; marks that contradict each other can give a negative one. */
      readonly endCorrectionM: number;
      readonly columnM: number;
      readonly radiusM: number | null;
      /** null where the marks alone give the end correction. */
      readonly known: KnownEnd | null;
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
      /** null where the marks alone give the end correction. */
      readonly known: KnownEnd | null;
      /** What the marks alone say of it; null where they don't determine it. */
      readonly ofMarks: { readonly endCorrectionM: number; readonly standardUncertaintyM: number } | null;
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
      /** Inside radius and frequency of the mark that the walls slow most. */
      readonly radiusM: number;
      readonly frequencyHz: number;
      /** Thickness of the air that the wall holds back, √(2η/ρω), m. */
      readonly layerM: number;
      readonly speedMps: number;
    }
  | {
      /** How far the places that were read may lie from their resonances, with the widest resonance as the example. */
      readonly kind: 'place';
      readonly locatedBy: LocatedBy;
      /** Marks that were located so. */
      readonly markCount: number;
      /** Length of the example. */
      readonly lengthM: number;
      readonly halfWidthM: number;
      /** Whether the width is a usual tube's, because no diameter is known. */
      readonly isUsualTube: boolean;
      /** Of its loudest place over the fork alone, dB. */
      readonly riseDb: number;
      readonly isRiseAssumed: boolean;
      /** Its place's, as a standard uncertainty. */
      readonly placeHalfWidths: number;
      readonly placeM: number;
      /** What these places add to the speed's standard uncertainty; null where they are part of the lengths' own. */
      readonly contributionMps: number | null;
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
      /** Of another gas than air only the temperature counts. */
      readonly filling: Filling;
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
