import type { MarkRow } from '../../src/marks/markRow.ts';

/** A row of a table that says no more than it must. */
export const PLAIN_ROW: MarkRow = {
  row: 2,
  forkHz: 512,
  ends: 'closed',
  lengthM: 0.158,
  otherLengthM: null,
  diameterM: null,
  otherDiameterM: null,
  mouth: null,
  temperatureC: null,
  humidityPct: null,
  pressurePa: null,
  place: '',
  order: null,
  locatedBy: null,
  riseDb: null,
  centreStandardUncertaintyHalfWidths: null,
  lengthUncertaintyM: null,
  forkUncertaintyHz: null,
  excluded: false,
  group: '',
  madeAt: '',
  note: '',
};
