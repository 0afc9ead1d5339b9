import { describe, expect, it } from 'vitest';
import { splitDelimited } from '../../../src/marks/delimited.ts';
import { readMarksTable } from '../../../src/marks/marksTable.ts';
import { tableFaultsWords } from '../../../src/words/tableFaults.ts';

const faultsOf = (text: string): string => {
  const table = readMarksTable(text);
  return table.ok ? '' : tableFaultsWords(table.faults);
};
const lengthsOf = (text: string): number[] => {
  const table = readMarksTable(text);
  if (!table.ok) throw new Error(tableFaultsWords(table.faults));
  return table.rows.filter(({ excluded }) => !excluded).map(({ lengthM }) => lengthM);
};

describe('RFC 4180', () => {
  it.each([
    [
      'its rules 1 to 4',
      'aaa,bbb\r\nzzz,yyy\r\n',
      [
        ['aaa', 'bbb'],
        ['zzz', 'yyy'],
      ],
    ],
    [
      'no line end at the end',
      'aaa,bbb\r\nzzz,yyy',
      [
        ['aaa', 'bbb'],
        ['zzz', 'yyy'],
      ],
    ],
    [
      'rule 5, quotes',
      '"aaa","bbb"\r\nzzz,yyy',
      [
        ['aaa', 'bbb'],
        ['zzz', 'yyy'],
      ],
    ],
    [
      'rule 6, line ends and commas inside quotes',
      '"aaa","b\r\nb,b"\r\nzzz,yyy',
      [
        ['aaa', 'b\r\nb,b'],
        ['zzz', 'yyy'],
      ],
    ],
    ['rule 7, doubled quotes', '"aaa","b""bb"', [['aaa', 'b"bb']]],
    [
      'empty cells',
      'a,,\n,,c',
      [
        ['a', '', ''],
        ['', '', 'c'],
      ],
    ],
  ])('%s', (_name, text, cells) => {
    const { records, fault } = splitDelimited(text, ',');
    expect(fault).toBeNull();
    expect(records.map((record) => record.cells)).toEqual(cells);
  });

  it('counts blank rows but leaves them out', () => {
    expect(splitDelimited('a\n\n\nb\n', ',').records.map(({ row }) => row)).toEqual([1, 4]);
  });
});

describe('a table of marks', () => {
  it.each([
    ['commas', 'fork_hz,ends,length_cm\n512,closed,15.8\n512,closed,49.3\n'],
    ['semicolons and decimal commas', 'fork_hz;ends;length_cm\n512;closed;15,8\n512;closed;49,3\n'],
    ['tabs', 'fork_hz\tends\tlength_cm\n512\tclosed\t15,8\n512\tclosed\t49.3\n'],
    [
      'a byte-order mark, CRLF and quotes',
      '\ufefffork_hz,ends,length_cm\r\n"512","closed","15,8"\r\n512,closed,49.3\r\n',
    ],
    ['CR alone', 'fork_hz,ends,length_cm\r512,closed,15.8\r512,closed,49.3'],
    ['a named delimiter', 'sep=;\nfork_hz;ends;length_cm\n512;closed;15,8\n512;closed;49,3'],
    [
      'readable headings in another order, others beside',
      'Length (cm),note,Ends,Fork (Hz)\n15.8,"a, b",Closed,512\n49.3,,CLOSED,512',
    ],
    ['units in the cells', 'fork_hz,ends,length_cm\n512 Hz,closed,158 mm\n512,closed,0.493 m'],
    [
      'rows that are excluded',
      'fork_hz,ends,length_cm,excluded\n512,closed,15.8,no\n512,closed,77,yes\n512,closed,49.3,',
    ],
    [
      'blank and comment rows',
      '# by the window\nfork_hz,ends,length_cm\n\n512,closed,15.8\n,,\n512,closed,49.3\n\n',
    ],
  ])('reads %s', (_name, text) => expect(lengthsOf(text)).toEqual([0.158, 0.493]));

  it('reads all optional columns in SI units', () => {
    const table = readMarksTable(
      'fork_hz,ends,length_cm,diameter_mm,other_diameter_mm,mouth,gas,temperature_c,temperature_uncertainty_c,humidity_pct,pressure_hpa,co2_ppm,place,order,length_uncertainty_mm,fork_uncertainty_hz,fork_id,other_length_cm,group,made_at,note,excluded,located_by,rise_db,centre_uncertainty_half_widths\n' +
        "512,open,31.8,30,33,Thick rim,Carbon Dioxide,20.5,0.3,40,1000,800 ppm,hall,1,0.5,0.2,red,32,B,2030-03-01T10:00Z,'=1+1,no,Center,9.5 dB,0.2\n",
    );
    expect(table).toEqual({
      ok: true,
      passedOver: [],
      skipped: [],
      rows: [
        {
          row: 2,
          forkHz: 512,
          ends: 'open',
          lengthM: 0.318,
          otherLengthM: 0.32,
          diameterM: 0.03,
          otherDiameterM: 0.033,
          mouth: 'thick-rim',
          filling: 'carbon-dioxide',
          temperatureC: 20.5,
          temperatureUncertaintyC: 0.3,
          humidityPct: 40,
          pressurePa: 100_000,
          co2MoleFraction: 0.0008,
          place: 'hall',
          order: 1,
          locatedBy: 'centre',
          riseDb: 9.5,
          centreStandardUncertaintyHalfWidths: 0.2,
          lengthUncertaintyM: 0.0005,
          forkUncertaintyHz: 0.2,
          forkId: 'red',
          excluded: false,
          group: 'B',
          madeAt: '2030-03-01T10:00Z',
          note: '=1+1',
        },
      ],
    });
  });

  it.each([
    ['', null],
    ['centre', 'centre'],
    [' CENTER ', 'centre'],
    ['loudest', 'loudest'],
    ['ear', 'loudest'],
    ['by level', 'loudest'],
  ])('located_by “%s” says %s', (typed, locatedBy) => {
    const table = readMarksTable(`fork_hz,ends,length_cm,located_by\n512,closed,15.8,${typed}\n`);
    expect(table.rows[0]?.locatedBy).toBe(locatedBy);
  });

  it.each([
    ['', 'empty'],
    [
      'fork_hz,ends,length_cm,located_by\n512,closed,15.8,ear\n512,closed,49.2,maybe',
      'row 3, column located_by: “maybe” doesn’t say how the length was found',
    ],
    ['fork_hz,ends,length_cm\n', 'no rows of marks'],
    ['fork_hz,length_cm\n512,15.8', 'row 1, column ends: the column is missing'],
    ['fork_hz,ends,length_cm,ends\n512,closed,15.8,open', 'more than once'],
    [
      'fork_hz,ends,length_cm\n512,closed,15.8\n512,closed,abc',
      'row 3, column length_cm: “abc” is not a number',
    ],
    ['fork_hz,ends,length_cm\n512,closed,-1', 'row 2, column length_cm: −1 cm is negative'],
    ['fork_hz,ends,length_cm\n512,closed,0', 'row 2, column length_cm: The length is zero'],
    ['fork_hz,ends,length_cm\n512,closed,', 'row 2, column length_cm: The length is empty'],
    ['fork_hz,ends,length_cm\n512,closed,0.158', 'if these are metres'],
    ['fork_hz,ends,length_cm\n512,half,15.8', 'row 2, column ends: “half” is neither'],
    ['fork_hz,ends,length_cm\n5,closed,15.8', 'row 2, column fork_hz: The frequency must be'],
    [
      'fork_hz,ends,length_cm\n512,closed,15,8',
      'row 2: there are 4 cells under 3 headings. With decimal commas',
    ],
    [
      'fork_hz,ends,length_cm\n512,closed,"15.8',
      'row 2, column length_cm: a quote (") is opened and never closed',
    ],
    ['fork_hz,ends,length_cm\n512,clo"sed,15.8', 'row 2, column ends: there is a stray quote'],
    ['fork_hz,ends,length_cm\n512,"closed"x,15.8', 'row 2, column ends: there is text after a closing quote'],
    [
      'fork_hz,ends,length_cm,order\n512,closed,15.8,1.5',
      'row 2, column order: The order must be a whole number',
    ],
    ['fork_hz,ends,length_cm,temperature_c\n512,closed,15.8,293', 'For kelvin write 293 K'],
    ['fork_hz,ends,length_cm,length_uncertainty_mm\n512,closed,15.8,0', 'must be 0.01 to 200 mm, not 0'],
    [
      'fork_hz,ends,length_cm,centre_uncertainty_half_widths\n512,closed,15.8,999',
      'half widths, not 999 half widths. Check the number and its unit (half widths).',
    ],
    ['PK\u0003\u0004\u0000', 'is not a text file'],
  ])('refuses %j and says: %s', (text, reason) => expect(faultsOf(text)).toContain(reason));

  it('names every fault, the first five in words', () => {
    const rows = Array.from({ length: 8 }, () => '512,closed,x').join('\n');
    expect(faultsOf(`fork_hz,ends,length_cm\n${rows}`)).toMatch(
      /row 2.*row 3.*row 4.*row 5.*row 6.*And 3 more\./,
    );
  });
});

describe('what spreadsheets and people put into a table', () => {
  const lines = (...rows: string[]): string => rows.join('\n');

  it('comments may hold quotes and delimiters, anywhere, and count as rows', () => {
    const table = readMarksTable(
      lines(
        '# 5B; it’s "hot"; "',
        'fork_hz,ends,length_cm',
        '512,closed,15.8',
        '# end, "of',
        '512,closed,49.3',
      ),
    );
    expect(table.ok && table.rows.map(({ row }) => row)).toEqual([3, 5]);
  });

  it('a long line of number signs is read at once', () => {
    const started = performance.now();
    expect(readMarksTable('#'.repeat(100_000)).ok).toBe(false);
    expect(performance.now() - started).toBeLessThan(1000);
  });

  it('columns that look as if they were meant are named, others passed over in silence', () => {
    const table = readMarksTable(lines('fork_hz,ends,length_cm,temp_c,note', '512,closed,15.8,20,good'));
    expect(table.ok && table.passedOver).toEqual(['temp_c']);
  });

  it('so are columns whose names hold the known word further on, but not those that the bench itself writes', () => {
    const heading = 'fork_hz,ends,length_cm,inner_diameter_mm,air_temp,above_room_db,rise_db,weekday';
    const table = readMarksTable(lines(heading, '512,closed,15.8,32,20,30,12,Friday'));
    expect(table.ok && table.passedOver).toEqual(['inner_diameter_mm', 'air_temp']);
  });

  it.each(['exluded', 'hunidity_pct', 'tmperature_c', 'dameter_mm', 'presure_hpa', 'lngth_uncertainty_mm'])(
    'so is a known name with a slip in it: %s',
    (heading) => {
      const table = readMarksTable(lines(`fork_hz,ends,length_cm,${heading}`, '512,closed,15.8,1'));
      expect(table.ok && table.passedOver).toEqual([heading]);
    },
  );

  it.each(['comment', 'student', 'colour', 'number', 'remark', 'date', 'weight'])(
    'a heading that means something else is passed over in silence: %s',
    (heading) => {
      const table = readMarksTable(lines(`fork_hz,ends,length_cm,${heading}`, '512,closed,15.8,1'));
      expect(table.ok && table.passedOver).toEqual([]);
    },
  );

  it.each(['y', 'yes', 'YES', 'ja', 'oui', 'sí', 'si\u0301', 'sim', 'tak', 'x', '1', 'true', 'wahr', 'vrai'])(
    'a row with %j under excluded is left out',
    (word) => {
      const table = readMarksTable(
        lines('fork_hz,ends,length_cm,excluded', `512,closed,15.8,${word}`, '512,closed,49.3,'),
      );
      expect(table.ok && table.rows.map(({ excluded }) => excluded)).toEqual([true, false]);
    },
  );

  it.each(['', 'n', 'no', 'No', 'nein', 'non', 'não', 'nie', '0', 'false', 'faux'])(
    'a row with %j under excluded is used',
    (word) => {
      const table = readMarksTable(lines('fork_hz,ends,length_cm,excluded', `512,closed,15.8,${word}`));
      expect(table.ok && table.rows.map(({ excluded }) => excluded)).toEqual([false]);
    },
  );

  it('a word under excluded that says neither is a fault of its row', () => {
    const table = readMarksTable(
      lines('fork_hz,ends,length_cm,excluded', '512,closed,15.8,perhaps', '512,closed,49.3,no'),
    );
    expect(table.ok ? [] : table.faults.map(({ row, column }) => [row, column])).toEqual([[2, 'excluded']]);
    expect(table.ok ? '' : tableFaultsWords(table.faults)).toContain('“perhaps” is neither yes nor no');
  });

  it.each([
    ['fork_hz|ends|length_cm', 'Put commas, semicolons or tabs between the cells'],
    ['My experiment', 'no title above the heading'],
    ['512,closed,15.8', 'Put a heading on top'],
    ['fork_hz,ends,length (mm)', 'If “length (mm)” is meant, call it length_cm.'],
    ['fork,ends,length', 'If “fork” is meant, call it fork_hz.'],
  ])('a heading like %j is refused in one fault with a hint: %s', (heading, hint) => {
    const table = readMarksTable(lines(heading, '512,closed,15.8'));
    expect(table.ok ? [] : table.faults).toHaveLength(1);
    expect(table.ok ? '' : tableFaultsWords(table.faults)).toContain(hint);
  });

  it('huge and tiny exponents are too large or too short, not malformed', () => {
    const reasonOf = (length: string): string => {
      const table = readMarksTable(lines('fork_hz,ends,length_cm', `512,closed,${length}`));
      return table.ok ? '' : tableFaultsWords(table.faults);
    };
    expect(reasonOf('1e999')).toContain('too large');
    expect(reasonOf('1e-300')).toContain('shorter than any column');
  });

  it('a humidity below 1 without a unit is asked about', () => {
    const table = readMarksTable(lines('fork_hz,ends,length_cm,humidity_pct', '512,closed,15.8,0.5'));
    expect(table.ok ? '' : tableFaultsWords(table.faults)).toContain('write 50');
    expect(readMarksTable(lines('fork_hz,ends,length_cm,humidity_pct', '512,closed,15.8,0')).ok).toBe(true);
  });
});

describe('a table with faults', () => {
  it('keeps the rows that could be read, before and after the bad ones', () => {
    const table = readMarksTable(
      'fork_hz,ends,length_cm\n512,closed,15.8\n512,closed,x\n512,closed,49.3\n512',
    );
    expect(table.ok).toBe(false);
    expect(table.rows.map(({ row }) => row)).toEqual([2, 4]);
    expect(table.ok ? [] : table.faults.map(({ row, column }) => [row, column])).toEqual([
      [3, 'length_cm'],
      [5, 'ends'],
      [5, 'length_cm'],
    ]);
  });

  it('keeps the rows before a broken quote', () => {
    const table = readMarksTable('fork_hz,ends,length_cm\n512,closed,15.8\n512,"closed,49.3\n');
    expect(table.rows.map(({ row }) => row)).toEqual([2]);
    expect(table.ok ? '' : tableFaultsWords(table.faults)).toContain('row 3, column ends: a quote');
  });

  it('passes over an excluded row that can’t be read, and says which', () => {
    const table = readMarksTable('fork_hz,ends,length_cm,excluded\n512,closed,x,yes\n512,closed,15.8,no');
    expect(table.ok && table.skipped).toEqual([2]);
  });
});

describe('a table that was pasted, fork and ends known', () => {
  const known = { forkHz: 480, ends: 'open' } as const;
  it.each([
    ['lengths alone, decimal commas', '15,8\n49,3', [480, 480], 'open'],
    ['lengths under their heading', 'length (cm)\n15.8\n49.3', [480, 480], 'open'],
    ['pitch and length from a spreadsheet', '512\t15,8\n256\t49,3', [512, 256], 'open'],
    ['pitch, ends and length', '512;closed;15,8\n256;closed;49,3', [512, 256], 'closed'],
  ])('reads %s', (_name, text, forks, ends) => {
    const table = readMarksTable(text, known);
    expect(table.rows.map(({ lengthM }) => lengthM)).toEqual([0.158, 0.493]);
    expect(table.rows.map(({ forkHz }) => forkHz)).toEqual(forks);
    expect(table.rows.every((row) => row.ends === ends)).toBe(true);
  });

  it('counts rows without a heading from the first on', () => {
    const table = readMarksTable('15.8\nx', known);
    expect(table.ok ? null : table.faults[0]?.row).toBe(2);
  });

  it('asks for a heading where the columns can’t be guessed', () => {
    const table = readMarksTable('512\tclosed\t15.8\t20.5', known);
    expect(table.ok ? '' : tableFaultsWords(table.faults)).toContain('length_cm');
  });
});
