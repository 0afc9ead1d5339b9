import type { CsvForm } from '../../report/csv.ts';
import { scopedName, siteScope } from '../../notebook/siteScope.ts';

export const CSV_FORMS: readonly CsvForm[] = ['point', 'comma'];

const key = (): string => scopedName('csv', siteScope());

/** How this device's spreadsheet reads tables, as it was last chosen here. */
export function csvForm(): CsvForm {
  try {
    return localStorage.getItem(key()) === 'comma' ? 'comma' : 'point';
  } catch {
    return 'point';
  }
}

export function chooseCsvForm(form: CsvForm): void {
  try {
    localStorage.setItem(key(), form);
  } catch {
    // Chosen anew next time.
  }
}

export function forgetCsvForm(): void {
  try {
    localStorage.removeItem(key());
  } catch {
    // Nothing was kept.
  }
}
