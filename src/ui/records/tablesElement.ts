import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { CSV_FORMS, chooseCsvForm, csvForm } from './csvChoice.ts';
import { choice } from '../parts/choice.ts';
import { copyTable } from '../../report/copyTable.ts';
import { toCsv } from '../../report/csv.ts';
import { fileStem } from '../../report/experimentJson.ts';
import { EXPERIMENT_TABLES } from '../../report/tables/experimentTables.ts';
import type { ExperimentTable } from '../../report/tables/experimentTables.ts';
import type { Session } from '../../session/session.ts';
import { laterWords } from '../../words/inUse.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { workingOut } from '../parts/workingOut.ts';
import { saveFile } from '../saveFile.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { putOnClipboard } from './putOnClipboard.ts';

/** The experiment's tables, each as a CSV file or on the clipboard. */
@customElement('bench-tables')
export class TablesElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      th,
      td {
        vertical-align: middle;
      }
      td {
        /* Both buttons of a row. */
        inline-size: 10.5rem;
      }
      td .row {
        flex-wrap: nowrap;
        justify-content: end;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  protected readonly watch = new SessionWatch(this, ['notebook', 'answers']);

  /** Whether there is anything in a table, while what it needs is worked out. */
  private hasRows(table: ExperimentTable): boolean {
    const { experiment, outcomeIfAny: outcome } = this.session;
    return !(table.needsResult && this.session.isWorkingOut) && table.hasRows(experiment, outcome.places);
  }

  private rowsOf(table: ExperimentTable): ReturnType<ExperimentTable['rows']> {
    // The marks themselves can be taken along whatever becomes of their solution.
    const { experiment, outcomeIfAny } = this.session;
    return table.rows(experiment, outcomeIfAny.places);
  }

  private onCsv(table: ExperimentTable): void {
    // The marks alone bear the experiment's plain name: they are what other programs and the solver read.
    const ending = table.id === 'marks' ? '' : `-${table.id}`;
    const name = `${fileStem(this.session.experiment)}${ending}.csv`;
    saveFile(name, 'text/csv', toCsv(this.rowsOf(table), csvForm()));
  }

  private async onCopy(table: ExperimentTable): Promise<void> {
    const rows = this.rowsOf(table);
    if (await putOnClipboard(copyTable(rows))) {
      this.session.tell(
        'info',
        laterWords.tables.copied(laterWords.tableKinds[table.id].name, rows.length - 1),
      );
    } else {
      this.session.tell('problem', laterWords.clipboard.notCopied);
    }
  }

  override render() {
    return html`<section class="stack" aria-label=${laterWords.tables.heading}>
      <h2>${laterWords.tables.heading}${workingOut(this.session.isWorkingOut)}</h2>
      <p class="lead">${laterWords.tables.lead}</p>
      <label
        >${laterWords.tables.form}
        ${choice({
          options: CSV_FORMS.map((form) => ({ value: form, name: laterWords.tables.forms[form] })),
          now: csvForm,
          choose: (form) => chooseCsvForm(form === 'comma' ? 'comma' : 'point'),
        })}</label
      >
      <table>
        <tbody>
          ${EXPERIMENT_TABLES.map((table) => {
            const isEmpty = !this.hasRows(table);
            const words = laterWords.tableKinds[table.id];
            return html`<tr>
              <th scope="row">${words.name}</th>
              <td>
                <div class="row">
                  <button @click=${() => this.onCsv(table)} ?disabled=${isEmpty} aria-label=${words.save}>
                    ${laterWords.tables.csv}
                  </button>
                  <button @click=${() => this.onCopy(table)} ?disabled=${isEmpty} aria-label=${words.copy}>
                    ${laterWords.tables.copy}
                  </button>
                </div>
              </td>
            </tr>`;
          })}
        </tbody>
      </table>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-tables': TablesElement;
  }
}
