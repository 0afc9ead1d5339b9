import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseDecimal } from '../../../src/marks/parseDecimal.ts';
import { parseLength } from '../../../src/marks/parseLength.ts';
import {
  parseDiameter,
  parseFrequency,
  parseHumidity,
  parsePressure,
  parseTemperature,
} from '../../../src/marks/parseQuantities.ts';
import { parseFaultWords } from '../../../src/words/parseFaults.ts';

describe('a typed length', () => {
  it.each([
    '15.8',
    '15,8',
    ' 15.8 ',
    '15.8 cm',
    '15,8cm',
    '158 mm',
    '0.158 m',
    '0,158m',
    '1.58 dm',
    '15.80',
    '+15.8',
    '158\u00a0mm',
  ])('reads %s as 0.158 m', (text) => expect(parseLength(text)).toEqual({ ok: true, lengthM: 0.158 }));

  it.each([
    ['', 'empty'],
    ['abc', 'is not a number'],
    ['0', 'zero'],
    ['-15.8', 'negative'],
    ['−15,8', 'negative'],
    ['0.158', 'if these are metres, write 0.158 m or 15.8'],
    ['1580', 'if these are millimetres, write 1580 mm'],
    ['15.8 in', 'is not a unit'],
    ['1.2.3', 'more than one decimal sign'],
    ['1 234', 'more than one decimal sign, or a space'],
    ['12 m', 'longer than 10 m'],
    ['1e99', 'longer than 10 m'],
    ['NaN', 'is not a number'],
    ['٣', 'is not a number'],
  ])('refuses %j and says: %s', (text, reason) => {
    const parsed = parseLength(text);
    expect(parsed.ok).toBe(false);
    if (!parsed.ok) expect(parseFaultWords(parsed.fault)).toContain(reason);
  });

  it('survives any text, and what it takes is a length', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.double().map(String)), (text) => {
        const parsed = parseLength(text);
        if (parsed.ok) return parsed.lengthM > 0 && parsed.lengthM <= 10;
        const said = parseFaultWords(parsed.fault);
        return said.length > 0 && said.length < 200;
      }),
      { seed: 3, numRuns: 500 },
    );
  });

  it('reads back every tenth of a millimetre exactly', () => {
    for (let tenths = 100; tenths < 20_000; tenths += 37) {
      expect(parseLength((tenths / 100).toFixed(2))).toEqual({ ok: true, lengthM: tenths / 10_000 });
    }
  });
});

describe('typed air and apparatus', () => {
  it('takes °C, °F and K', () => {
    expect(parseTemperature('20')).toEqual({ ok: true, temperatureC: 20 });
    expect(parseTemperature('20,5 °C')).toEqual({ ok: true, temperatureC: 20.5 });
    expect(parseTemperature('68 °F')).toEqual({ ok: true, temperatureC: 20 });
    expect(parseTemperature('68F')).toEqual({ ok: true, temperatureC: 20 });
    expect(parseTemperature('293.15 K')).toEqual({ ok: true, temperatureC: 20 });
    expect(parseTemperature('-5')).toEqual({ ok: true, temperatureC: -5 });
  });

  it('suspects the unit of a temperature out of range', () => {
    const said = (text: string): string => {
      const parsed = parseTemperature(text);
      return parsed.ok ? '' : parseFaultWords(parsed.fault);
    };
    expect(said('68')).toContain('write 68 °F');
    expect(said('293')).toContain('write 293 K');
  });

  it('takes humidity, pressure, pitch and diameter in their units', () => {
    expect(parseHumidity('45 %')).toEqual({ ok: true, humidityPct: 45 });
    expect(parsePressure('1013,25')).toEqual({ ok: true, pressurePa: 101_325 });
    expect(parsePressure('101.325 kPa')).toEqual({ ok: true, pressurePa: 101_325 });
    expect(parseFrequency('341,3 Hz')).toEqual({ ok: true, frequencyHz: 341.3 });
    expect(parseDiameter('30')).toEqual({ ok: true, diameterM: 0.03 });
    expect(parseDiameter('3 cm')).toEqual({ ok: true, diameterM: 0.03 });
    for (const refused of [
      parseHumidity('120'),
      parsePressure('101325'),
      parseFrequency('0'),
      parseDiameter('0.03'),
    ]) {
      expect(refused.ok).toBe(false);
    }
  });

  it('keeps the unit for the caller', () => {
    expect(parseDecimal('1,5 kg')).toEqual({ ok: true, value: 1.5, unit: 'kg' });
  });
});
