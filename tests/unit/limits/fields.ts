import type { Limit } from '../../../src/limits/limits.ts';
import { LIMITS } from '../../../src/limits/limits.ts';
import type { Fork, Place, Rule, Tube } from '../../../src/notebook/experiment.ts';
import type { Experiment } from '../../../src/notebook/experiment.ts';
import type { ReadColumn } from '../../../src/marks/markColumns.ts';
import type { Mark } from '../../../src/marks/mark.ts';
import { parseLength } from '../../../src/marks/parseLength.ts';
import { QUANTITIES } from '../../../src/ui/readQuantity.ts';
import type { QuantityKind } from '../../../src/ui/readQuantity.ts';
import { exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';

/** One quantity of an experiment with every way by which it comes in. */
export interface Field {
  /** As a record's fault names it. */
  readonly path: string;
  readonly limit: Limit;
  readonly put: (experiment: Experiment, si: number) => Experiment;
  readonly get: (experiment: Experiment) => number | null;
  /** Only whole numbers are of this kind. */
  readonly isWhole?: boolean;
  /** How the page reads it; absent where nobody types it. The unit's size in SI. */
  readonly typed?: { readonly kind: QuantityKind; readonly perUnit: number };
  /** Its column in a table; a cell may say its unit. */
  readonly column?: { readonly name: ReadColumn; readonly perUnit: number; readonly unit: string };
}

const fork = (change: (si: number) => Partial<Fork>): Field['put'] => {
  return (experiment, si) => ({
    ...experiment,
    forks: experiment.forks.map((one, index) => (index === 0 ? { ...one, ...change(si) } : one)),
  });
};
const place = (change: (si: number) => Partial<Place>): Field['put'] => {
  return (experiment, si) => ({
    ...experiment,
    places: experiment.places.map((one, index) => (index === 0 ? { ...one, ...change(si) } : one)),
  });
};
const mark = (change: (si: number) => Partial<Mark>): Field['put'] => {
  return (experiment, si) => ({
    ...experiment,
    marks: experiment.marks.map((one, index) => (index === 0 ? { ...one, ...change(si) } : one)),
  });
};
const tube = (change: (si: number) => Partial<Tube>): Field['put'] => {
  return (experiment, si) => ({ ...experiment, tube: { ...experiment.tube, ...change(si) } });
};
const rule = (change: (si: number) => Partial<Rule>): Field['put'] => {
  return (experiment, si) => ({ ...experiment, rule: { ...experiment.rule, ...change(si) } });
};

const LENGTH: QuantityKind = {
  unit: 'cm',
  read: (text) => {
    const parsed = parseLength(text);
    return parsed.ok ? { ok: true, value: parsed.lengthM * 100 } : parsed;
  },
};

export const FIELDS: readonly Field[] = [
  {
    path: 'forks[0].nominalHz',
    limit: LIMITS.stampedHz,
    put: fork((nominalHz) => ({ nominalHz })),
    get: ({ forks }) => forks[0]?.nominalHz ?? null,
    typed: { kind: QUANTITIES.forkHz, perUnit: 1 },
  },
  {
    path: 'forks[0].measuredHz',
    limit: LIMITS.pitchHz,
    put: fork((measuredHz) => ({ measuredHz, measuredStandardUncertaintyHz: 0.02 })),
    get: ({ forks }) => forks[0]?.measuredHz ?? null,
    column: { name: 'fork_hz', perUnit: 1, unit: 'Hz' },
  },
  {
    path: 'forks[0].standardUncertaintyHz',
    limit: LIMITS.forkStandardUncertaintyHz,
    put: fork((standardUncertaintyHz) => ({ standardUncertaintyHz })),
    get: ({ forks }) => forks[0]?.standardUncertaintyHz ?? null,
    typed: { kind: QUANTITIES.uncertaintyHz, perUnit: 1 },
    column: { name: 'fork_uncertainty_hz', perUnit: 1, unit: 'Hz' },
  },
  {
    path: 'forks[0].measuredStandardUncertaintyHz',
    limit: LIMITS.forkStandardUncertaintyHz,
    put: fork((measuredStandardUncertaintyHz) => ({ measuredHz: 511.8, measuredStandardUncertaintyHz })),
    get: ({ forks }) => forks[0]?.measuredStandardUncertaintyHz ?? null,
  },
  {
    path: 'places[0].temperatureC',
    limit: LIMITS.temperatureC,
    put: place((temperatureC) => ({ temperatureC })),
    get: ({ places }) => places[0]?.temperatureC ?? null,
    typed: { kind: QUANTITIES.temperatureC, perUnit: 1 },
    column: { name: 'temperature_c', perUnit: 1, unit: '°C' },
  },
  {
    path: 'places[0].temperatureStandardUncertaintyC',
    limit: LIMITS.temperatureStandardUncertaintyC,
    put: place((temperatureStandardUncertaintyC) => ({ temperatureStandardUncertaintyC })),
    get: ({ places }) => places[0]?.temperatureStandardUncertaintyC ?? null,
    typed: { kind: QUANTITIES.temperatureUncertaintyC, perUnit: 1 },
    column: { name: 'temperature_uncertainty_c', perUnit: 1, unit: '°C' },
  },
  {
    path: 'places[0].humidityPct',
    limit: LIMITS.humidityPct,
    put: place((humidityPct) => ({ humidityPct })),
    get: ({ places }) => places[0]?.humidityPct ?? null,
    typed: { kind: QUANTITIES.humidityPct, perUnit: 1 },
    column: { name: 'humidity_pct', perUnit: 1, unit: '%' },
  },
  {
    path: 'places[0].pressurePa',
    limit: LIMITS.pressurePa,
    put: place((pressurePa) => ({ pressurePa })),
    get: ({ places }) => places[0]?.pressurePa ?? null,
    typed: { kind: QUANTITIES.pressureHpa, perUnit: 100 },
    column: { name: 'pressure_hpa', perUnit: 100, unit: 'hPa' },
  },
  {
    path: 'places[0].co2MoleFraction',
    limit: LIMITS.co2MoleFraction,
    put: place((co2MoleFraction) => ({ co2MoleFraction })),
    get: ({ places }) => places[0]?.co2MoleFraction ?? null,
    typed: { kind: QUANTITIES.co2Ppm, perUnit: 1e-6 },
    column: { name: 'co2_ppm', perUnit: 1e-6, unit: 'ppm' },
  },
  {
    path: 'tube.diameterM',
    limit: LIMITS.diameterM,
    put: tube((diameterM) => ({ diameterM })),
    get: (experiment) => experiment.tube.diameterM,
    typed: { kind: QUANTITIES.diameterMm, perUnit: 0.001 },
    column: { name: 'diameter_mm', perUnit: 0.001, unit: 'mm' },
  },
  {
    path: 'tube.otherDiameterM',
    limit: LIMITS.diameterM,
    put: tube((otherDiameterM) => ({ otherDiameterM })),
    get: (experiment) => experiment.tube.otherDiameterM,
    typed: { kind: QUANTITIES.diameterMm, perUnit: 0.001 },
    column: { name: 'other_diameter_mm', perUnit: 0.001, unit: 'mm' },
  },
  {
    path: 'tube.travelM',
    limit: LIMITS.travelM,
    put: tube((travelM) => ({ travelM })),
    get: (experiment) => experiment.tube.travelM,
    typed: { kind: QUANTITIES.travelCm, perUnit: 0.01 },
  },
  {
    path: 'rule.readingStandardUncertaintyM',
    limit: LIMITS.readingStandardUncertaintyM,
    put: rule((readingStandardUncertaintyM) => ({ readingStandardUncertaintyM })),
    get: (experiment) => experiment.rule.readingStandardUncertaintyM,
    typed: { kind: QUANTITIES.readingMm, perUnit: 0.001 },
    column: { name: 'length_uncertainty_mm', perUnit: 0.001, unit: 'mm' },
  },
  {
    path: 'rule.zeroOffsetM',
    limit: LIMITS.zeroOffsetM,
    // Readings that leave a column at every zero offset.
    put: (experiment, zeroOffsetM) => ({
      ...experiment,
      rule: { ...experiment.rule, zeroOffsetM },
      marks: experiment.marks.map((one, index) => ({ ...one, lengthM: 1.158 + 0.3345 * index })),
    }),
    get: (experiment) => experiment.rule.zeroOffsetM,
    typed: { kind: QUANTITIES.zeroOffsetCm, perUnit: 0.01 },
  },
  {
    path: 'marks[0].lengthM',
    limit: LIMITS.lengthM,
    put: mark((lengthM) => ({ lengthM })),
    get: ({ marks }) => marks[0]?.lengthM ?? null,
    typed: { kind: LENGTH, perUnit: 0.01 },
    column: { name: 'length_cm', perUnit: 0.01, unit: 'cm' },
  },
  {
    path: 'marks[0].otherLengthM',
    limit: LIMITS.lengthM,
    put: mark((otherLengthM) => ({ otherLengthM })),
    get: ({ marks }) => marks[0]?.otherLengthM ?? null,
    column: { name: 'other_length_cm', perUnit: 0.01, unit: 'cm' },
  },
  {
    path: 'marks[0].order',
    limit: LIMITS.order,
    isWhole: true,
    put: mark((order) => ({ order })),
    get: ({ marks }) => marks[0]?.order ?? null,
    column: { name: 'order', perUnit: 1, unit: '' },
  },
];

/** An experiment with everything that is compared, written out and drawn: two resonances of 512 Hz at two places. */
export function boundaryExperiment(): Experiment {
  const marks = [0.1575, 0.492].flatMap((lengthM, index) =>
    ['place-1', 'place-2'].map((placeId) => exampleMark(`mark-${index}-${placeId}`, { lengthM, placeId })),
  );
  const example = exampleExperiment(marks.sort((one, other) => (one.placeId < other.placeId ? -1 : 1)));
  const [bench] = example.places;
  if (bench === undefined) throw new Error('an experiment has a place');
  const read = { temperatureC: 20, humidityPct: 50, pressurePa: 101_300 };
  return {
    ...example,
    tube: { diameterM: 0.035, otherDiameterM: null, mouth: null, stopper: 'piston', travelM: 1.2 },
    places: [
      { ...bench, ...read },
      { ...bench, ...read, id: 'place-2', name: 'Yard', temperatureC: 5 },
    ],
  };
}

/** A step that every way in keeps: twelve digits are typed. */
const STEP = 1e-9;

/** Values at, just inside and in the middle of a field's limit. */
export function goodValues({ limit: { lowest, highest }, isWhole = false }: Field): readonly number[] {
  const step = isWhole ? 1 : STEP * (highest - lowest);
  const middle = isWhole ? Math.round((lowest + highest) / 2) : (lowest + highest) / 2;
  return [lowest, lowest + step, middle, highest - step, highest].map(tidy);
}

/** The same, and more between them. */
export function manyValues(field: Field): readonly number[] {
  const { lowest, highest } = field.limit;
  const between = [0.01, 0.1, 0.25, 0.75, 0.9, 0.99].map((share) => lowest + share * (highest - lowest));
  return [
    ...goodValues(field),
    ...between.map((value) => (field.isWhole === true ? Math.round(value) : tidy(value))),
  ];
}

/** Values just outside of a field's limit, and far from it. */
export function badValues({ limit: { lowest, highest }, isWhole = false }: Field): readonly number[] {
  if (isWhole) return [lowest - 1, highest + 1, 1000, -3, 2.5];
  const within = highest - lowest;
  return [
    tidy(lowest - STEP * within),
    tidy(lowest - 0.5 * within),
    tidy(highest + STEP * within),
    tidy(highest + 0.5 * within),
    tidy(highest + 1000 * within),
  ];
}

function tidy(value: number): number {
  return Number(value.toPrecision(11));
}
