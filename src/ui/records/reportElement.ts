import { css, html, unsafeCSS } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { unsafeHTML } from 'lit/directives/unsafe-html.js';
import { fileStem } from '../../report/experimentJson.ts';
import { labReport } from '../../report/labReport/labReport.ts';
import { labReportFile, reportTitle } from '../../report/labReport/labReportFile.ts';
import { LAB_REPORT_STYLE } from '../../report/labReport/labReportStyle.ts';
import type { LabReportInput } from '../../report/labReport/labReportInput.ts';
import type { Session } from '../../session/session.ts';
import { laterWords } from '../../words/inUse.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { workingOut } from '../parts/workingOut.ts';
import { saveFile } from '../saveFile.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { reportInput } from './reportInput.ts';

/** The lab report as it will be printed, always dark on white, with the ways to take it along. */
@customElement('bench-report')
export class ReportElement extends PartElement {
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

  @property({ attribute: false }) session!: Session;
  /** Whether the working is left to the student. */
  @state() private leavesWorking = false;
  protected readonly watch = new SessionWatch(this, ['notebook', 'answers']);

  private get input(): LabReportInput | null {
    const input = reportInput(this.session);
    return input === null ? null : { ...input, leavesWorking: this.leavesWorking };
  }

  private onSave(): void {
    const { input } = this;
    if (input === null) return;
    const name = `${fileStem(this.session.experiment)}-report.html`;
    saveFile(name, 'text/html', labReportFile(input));
  }

  private onPrint(): void {
    // What the browser proposes as the PDF's name.
    const before = document.title;
    document.title = reportTitle(this.session.experiment);
    addEventListener('afterprint', () => (document.title = before), { once: true });
    print();
  }

  override render() {
    const { input } = this;
    return html`<section aria-label=${laterWords.reportPage.name}>
      <div class="row tools">
        <button class="primary" ?disabled=${input === null} @click=${this.onPrint}>
          ${laterWords.reportPage.print}
        </button>
        <button ?disabled=${input === null} @click=${this.onSave}>${laterWords.reportPage.save}</button>
        <label class="row"
          ><input
            type="checkbox"
            .checked=${this.leavesWorking}
            @change=${(event: Event) => (this.leavesWorking = (event.target as HTMLInputElement).checked)}
          />${laterWords.reportPage.leaveWorking}</label
        >
        <a href="#records">${laterWords.reportPage.back}</a>
        <p class="small">${laterWords.reportPage.lines}</p>
      </div>
      ${
        input === null
          ? html`<p>${laterWords.reportPage.pending}${workingOut(true)}</p>`
          : html`<div class="paper">${unsafeHTML(labReport(input).text)}</div>`
      }
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-report': ReportElement;
  }
}
