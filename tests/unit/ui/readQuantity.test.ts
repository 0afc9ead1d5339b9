import { describe, expect, it } from 'vitest';
import { QUANTITIES } from '../../../src/ui/readQuantity.ts';
import type { QuantityKind } from '../../../src/ui/readQuantity.ts';
import { parseFaultWords } from '../../../src/words/parseFaults.ts';

function value(kind: QuantityKind, text: string): number | string {
  const parsed = kind.read(text);
  return parsed.ok ? parsed.value : parseFaultWords(parsed.fault);
}

describe('quantities typed on the page', () => {
  it('takes a decimal comma and a decimal point alike', () => {
    expect(value(QUANTITIES.temperatureC, '21,5')).toBe(21.5);
    expect(value(QUANTITIES.temperatureC, '21.5 °C')).toBe(21.5);
    expect(value(QUANTITIES.zeroOffsetCm, '−0,4')).toBe(-0.4);
  });

  it('converts units that were typed', () => {
    expect(value(QUANTITIES.temperatureC, '68 °F')).toBe(20);
    expect(value(QUANTITIES.diameterMm, '3.5 cm')).toBe(35);
    expect(value(QUANTITIES.pressureHpa, '101.3 kPa')).toBe(1013);
    expect(value(QUANTITIES.travelCm, '1.2 m')).toBe(120);
  });

  it('says what is wrong and what to do', () => {
    expect(value(QUANTITIES.forkHz, '63')).toMatch(/64 to 4096 Hz, not 63 Hz/);
    expect(value(QUANTITIES.forkHz, 'A4')).toMatch(/not a number/);
    expect(value(QUANTITIES.readingMm, '1 kg')).toMatch(/not a unit.*Use mm/);
    expect(value(QUANTITIES.humidityPct, '120')).toMatch(/0 to 100 %/);
  });
});
