import { describe, expect, it } from 'vitest';
import { solveTable } from '../../../../src/cli/solveTable.ts';
import { measuredMarks } from '../../../../src/notebook/measuredMarks.ts';
import { apparatusPart } from '../../../../src/report/labReport/apparatusPart.ts';
import { predictColumn } from '../../../../src/session/experiment/predictColumn.ts';
import { solverMarks } from '../../../../src/session/experiment/solverMarks.ts';
import { exampleExperiment, exampleMark } from '../../notebook/exampleExperiment.ts';

const telescoping = (ends: 'open' | 'closed', otherDiameterM: number | null) => {
  const experiment = exampleExperiment([exampleMark('a', { lengthM: 0.652, ends })]);
  return {
    ...experiment,
    present: { ...experiment.present, ends },
    tube: { ...experiment.tube, diameterM: 0.03, otherDiameterM, mouth: 'thin-rim' as const },
  };
};

describe('the other end of a telescoping tube', () => {
  it('reaches the solver where the column is open at both ends, and only there', () => {
    const radiusOf = (ends: 'open' | 'closed', otherDiameterM: number | null) => {
      const experiment = telescoping(ends, otherDiameterM);
      return solverMarks(experiment, measuredMarks(experiment))[0]?.otherRadiusM;
    };
    expect(radiusOf('open', 0.04)).toBeCloseTo(0.02, 12);
    expect(radiusOf('open', null)).toBeNull();
    expect(radiusOf('closed', 0.04)).toBeNull();
  });

  it('does so from a table: the speed of one open length grows by 0.61 times the radii’s difference', () => {
    // Levine & Schwinger 1948: e = 0.6133 a at each end; f = v / 2(L + e₁ + e₂), so v grows by 2 f Δe₂.
    const speedOf = (other: string): number => {
      const rows = `fork_hz,ends,length_cm,diameter_mm,other_diameter_mm,mouth\n256,open,65.2,30,${other},thin-rim\n`;
      const answer = solveTable(rows);
      if ('error' in answer) throw new Error(answer.error);
      return answer.speedMps;
    };
    expect(speedOf('') - speedOf('30')).toBe(0);
    expect(speedOf('50') - speedOf('30')).toBeCloseTo(2 * 256 * 0.6133 * 0.01, 1);
  });

  it('shortens the expected columns, and stands in the report', () => {
    const firstM = (otherDiameterM: number | null): number =>
      predictColumn({ ...telescoping('open', otherDiameterM), marks: [] }, { places: [] }).expected[0]
        ?.lengthM ?? 0;
    // At ka = 0.2 the wider end has 2 % less than 0.6133 a.
    expect((firstM(null) - firstM(0.05)) / (0.6133 * 0.01)).toBeCloseTo(0.98, 1);
    expect(apparatusPart(telescoping('open', 0.05)).text).toContain('50.0 mm at the other open end');
    expect(apparatusPart(telescoping('closed', 0.05)).text).not.toContain('other open end');
  });
});
