import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { eachBench } from './support/eachBench.ts';

const { open } = eachBench(true);

/** Thirty groups that measured 512 Hz in rooms of 18 to 24 °C, three lengths each, and three of them with a slip. */
const SLIPS: Readonly<Record<number, (cm: number) => number>> = {
  7: (cm) => 10 * cm,
  15: (cm) => cm + 2.3,
  22: (cm) => 1.03 * cm,
};
const GROUPS = Array.from({ length: 30 }, (_, at) => {
  const number = at + 1;
  const celsius = 18 + at / 5;
  // Half a wave of 512 Hz; the walls of a 30 mm tube take 0.3 %.
  const halfCm = (100 * 0.997 * 331.3 * Math.sqrt(1 + celsius / 273.15)) / 512 / 2;
  return [0.5, 1.5, 2.5].map((halves, mark) => {
    const cm = halves * halfCm - 0.92 + 0.04 * Math.sin(7 * at + 3 * mark);
    return `Group ${number};512;closed;${(SLIPS[number]?.(cm) ?? cm).toFixed(2)};30;${celsius.toFixed(1)}`;
  });
}).flat();
const HEADING = 'group;fork_hz;ends;length_cm;diameter_mm;temperature_c';

async function paste(page: Page, lines: readonly string[]): Promise<void> {
  await page.getByRole('textbox', { name: 'Paste or type a table' }).fill(lines.join('\n'));
  await page.getByRole('button', { name: 'Read the table' }).click();
}

describe('a class', () => {
  it.each(['A4', 'Letter'] as const)('of thirty groups is printed on one sheet of %s', async (format) => {
    const { page } = await open({ url: `${inject('pageUrl')}#class` });
    await paste(page, [HEADING, ...GROUPS]);
    const table = page.getByRole('region', { name: 'Table of groups' });
    await table.getByText('Group 30').waitFor();
    const pdf = (await page.pdf({ format })).toString('latin1');
    expect(pdf.match(/\/Type \/Page\b/g)).toHaveLength(1);
  });

  it('takes no table whose groups don’t name their forks, and says which column is missing', async () => {
    const { page } = await open({ url: `${inject('pageUrl')}#class` });
    await paste(page, [
      'group;frequency;ends;length_cm',
      'Group 1;480;closed;16.9',
      'Group 1;480;closed;52.6',
    ]);
    await page
      .getByRole('dialog')
      .getByText(/fork_hz/)
      .first()
      .waitFor();
    expect(await page.getByRole('region', { name: 'Table of groups' }).count()).toBe(0);
  });

  it('says which columns of a table look as if they were meant and aren’t read', async () => {
    const { page } = await open({ url: `${inject('pageUrl')}#class` });
    await paste(page, [HEADING.replace('temperature_c', 'temperature'), ...GROUPS]);
    await page.getByText(/30 groups.*not read: temperature\b/).waitFor();
  });
});
