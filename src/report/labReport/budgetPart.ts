import type { Solution } from '../../solver/solution.ts';
import { budgetFacts, budgetRows } from '../../words/budgetLines.ts';
import type { BudgetRow } from '../../words/budgetLines.ts';
import { laterWords } from '../../words/inUse.ts';
import { markup } from '../markup.ts';
import type { Markup } from '../markup.ts';

const COLUMNS = Object.keys(laterWords.budgetColumns) as (keyof BudgetRow)[];

/** A place's uncertainty budget as the GUM lays it out, and what belongs to it. A phone shows a line's cells under each other. */
export function budgetPart(solution: Solution): Markup {
  return markup`<table class="budget stacked" aria-label="${laterWords.placePart.budgetTable}"><thead><tr>${COLUMNS.map(
    (column) => markup`<th scope="col">${laterWords.budgetColumns[column]}</th>`,
  )}</tr></thead>
<tbody>${budgetRows(solution.budget).map(
    (row) =>
      markup`<tr>${COLUMNS.map((column) =>
        column === 'quantity'
          ? markup`<th scope="row">${row[column]}</th>`
          : markup`<td data-name="${laterWords.budgetColumns[column]}">${row[column]}</td>`,
      )}</tr>`,
  )}</tbody></table>
<p class="small">${laterWords.budgetLine.types}</p>
<table class="facts"><tbody>${budgetFacts(solution).map(
    ({ name, value }) => markup`<tr><th scope="row">${name}</th><td>${value}</td></tr>`,
  )}</tbody></table>`;
}
