import { css, html, unsafeCSS } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { unsafeHTML } from 'lit/directives/unsafe-html.js';
import { fileStem } from '../../report/experimentJson.ts';
import { labReport } from '../../report/labReport/labReport.ts';
import { labReportFile } from '../../report/labReport/labReportFile.ts';
import { LAB_REPORT_STYLE } from '../../report/labReport/labReportStyle.ts';
import type { BenchSession } from '../../session/benchSession.ts';
import { BenchWatch } from '../benchWatch.ts';
import { workingOut } from '../parts/workingOut.ts';
import { saveFile } from '../saveFile.ts';
import { BenchElement } from '../parts/benchElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { reportInput } from './reportInput.ts';

/** The lab report as it will be printed, always dark on white, with the ways to take it along. */
@customElement('bench-report')
export class BenchReport extends BenchElement {
  static override styles = [
    sharedStyles,
    unsafeCSS(LAB_REPORT_STYLE),
    css`
      .tools {
        padding-block-end: var(--gap-3);
      }
      .paper {
        border: 1px solid var(--line);
        background: #ffffff;
        color-scheme: light;
      }
      @media print {
        .tools {
          display: none;
        }
        .paper {
          border: 0;
        }
      }
    `,
  ];

  @property({ attribute: false }) session!: BenchSession;
  protected readonly watch = new BenchWatch(this, ['notebook', 'answers']);

  private onSave(): void {
    const input = reportInput(this.session);
    if (input === null) return;
    const name = `${fileStem(this.session.experiment)}-report.html`;
    saveFile(name, 'text/html', labReportFile(input));
  }

  private onPrint(): void {
    print();
  }

  override render() {
    const input = reportInput(this.session);
    return html`<section aria-label="Lab report">
      <div class="row tools">
        <button class="primary" ?disabled=${input === null} @click=${this.onPrint}>
          Print or save as PDF
        </button>
        <button ?disabled=${input === null} @click=${this.onSave}>Save as an HTML file</button>
        <a href="#records">Back to records</a>
        <p class="small">Names and discussion have empty lines to write on.</p>
      </div>
      ${
        input === null
          ? html`<p>The report is${workingOut(true)}</p>`
          : html`<div class="paper">${unsafeHTML(labReport(input).text)}</div>`
      }
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-report': BenchReport;
  }
}
