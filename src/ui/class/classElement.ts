import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import type { ClassDesk } from '../../classroom/classDesk.ts';
import { classJson } from '../../classroom/classJson.ts';
import { classTable } from '../../classroom/classTable.ts';
import { spreadPicture } from '../../classroom/spreadSvg.ts';
import { temperaturesPlot } from '../../classroom/temperaturesPlot.ts';
import { classWords, discussionWords, groupWords } from '../../words/classroom.ts';
import { laterWords } from '../../words/inUse.ts';
import { hidesTheory, keepsTheory } from '../../report/hideTheory.ts';
import { copyTable } from '../../report/copyTable.ts';
import { plotPicture } from '../../report/plots/picture.ts';
import { toCsv } from '../../report/csv.ts';
import type { Session } from '../../session/session.ts';
import { saveFile } from '../saveFile.ts';
import { PartElement } from '../parts/partElement.ts';
import { fieldDraft } from '../parts/typedEntry.ts';
import { sharedStyles } from '../sharedStyles.ts';
import '../intake/bringInElement.ts';
import './codeReaderElement.ts';
import '../parts/pictureElement.ts';
import { csvForm } from '../records/csvChoice.ts';
import { putOnClipboard } from '../records/putOnClipboard.ts';

/** A whole class: every group's result, the picture of their spread, and what they give together. */
@customElement('bench-class')
export class ClassElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      .cards {
        display: grid;
        grid-template-columns: minmax(0, 2fr) minmax(0, 3fr);
        gap: var(--gap-4);
        align-items: start;
      }
      @media (max-width: 900px) {
        .cards {
          grid-template-columns: minmax(0, 1fr);
        }
      }
      .wide {
        grid-column: 1 / -1;
      }
      ul {
        padding-inline-start: 1.2em;
      }
      .speed {
        font-size: 2rem;
        font-weight: 600;
      }
      .groups {
        max-block-size: 70vh;
        overflow: auto;
      }
      thead th {
        position: sticky;
        inset-block-start: 0;
        background: var(--sheet);
      }
      tbody th {
        min-inline-size: 6rem;
        overflow-wrap: anywhere;
      }
      .number {
        white-space: nowrap;
      }
      /* On a phone the table slides sideways rather than setting one word a line. */
      td:last-child {
        min-inline-size: 15rem;
      }
      tr.outlying th,
      tr.outlying td {
        background: var(--caution-wash);
      }
      tbody tr {
        content-visibility: auto;
        contain-intrinsic-block-size: auto 2.5rem;
      }
      @media print {
        /* Text, pictures and table each go over the whole width, side by side in two. */
        .cards {
          grid-template-columns: minmax(0, 1fr);
        }
        .said {
          display: block;
          columns: 2;
        }
        .said > div {
          break-inside: avoid;
        }
        .pictures {
          display: grid;
          grid-template-columns: repeat(2, minmax(0, 1fr));
          align-items: start;
        }
        /* The whole table, and nothing to press. */
        .groups {
          max-block-size: none;
          overflow: visible;
          columns: 2;
        }
        td:last-child {
          min-inline-size: 0;
        }
        thead th {
          position: static;
        }
        tr {
          break-inside: avoid;
        }
        button,
        bench-bring-in,
        .tools,
        .lead,
        a {
          display: none;
        }
        /* Thirty groups, their picture and what is said of them fit one page. */
        .speed {
          font-size: 14pt;
        }
        .small,
        p {
          font-size: 9pt;
          margin: 0 0 2pt;
        }
        .sheet {
          padding: 0;
          border: 0;
          gap: 2pt;
        }
        .cards {
          gap: 4pt;
        }
        input,
        th:first-child:not([scope='row']),
        td:first-child {
          display: none;
        }
        table {
          font-size: 8pt;
          line-height: 1.15;
        }
        td,
        th {
          padding-block: 1pt;
        }
        tbody tr {
          content-visibility: visible;
        }
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @property({ attribute: false }) desk!: ClassDesk;
  private unwatch: (() => void) | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    this.unwatch = this.desk.watch(() => this.requestUpdate());
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.unwatch?.();
  }

  private onCsv(): void {
    saveFile('class.csv', 'text/csv', toCsv(classTable(this.desk.result), csvForm()));
  }

  private onJson(): void {
    saveFile(
      'class.json',
      'application/json',
      classJson(this.desk.result, hidesTheory(this.session.experiment)),
    );
  }

  private async onCopy(): Promise<void> {
    const isCopied = await putOnClipboard(copyTable(classTable(this.desk.result)));
    this.session.tell(
      isCopied ? 'info' : 'problem',
      isCopied ? laterWords.classPage.copied : laterWords.clipboard.notCopied,
    );
  }

  private onChoose(event: Event): void {
    const box = event.target as HTMLInputElement;
    this.desk.choose(box.value, box.checked);
  }

  private onClear(): void {
    this.desk.clear();
  }

  override render() {
    const isEmpty = this.desk.groups.length === 0;
    return html`<div class="cards">
      <section class="sheet stack" aria-label=${laterWords.classPage.heading}>
        <h2>${laterWords.classPage.heading}</h2>
        ${isEmpty ? nothing : this.together()}
        <p class="lead">${laterWords.classPage.lead}</p>
        <bench-bring-in .draft=${fieldDraft(this.session, 'table')}></bench-bring-in>
        <bench-code-reader .session=${this.session} .desk=${this.desk}></bench-code-reader>
        <a href="#records">${laterWords.classPage.back}</a>
      </section>
      ${isEmpty ? nothing : this.pictures()} ${isEmpty ? nothing : this.table()}
    </div>`;
  }

  private pictures() {
    const temperatures = temperaturesPlot(this.desk.result, hidesTheory(this.session.experiment));
    return html`<div class="stack pictures">
      <bench-picture
        class="sheet"
        name="class-spread"
        sliding
        .picture=${spreadPicture(this.desk.result)}
      ></bench-picture>
      ${
        temperatures === null
          ? nothing
          : html`<bench-picture
              class="sheet"
              name="class-temperatures"
              .picture=${plotPicture(temperatures)}
            ></bench-picture>`
      }
    </div>`;
  }

  private together() {
    const words = classWords(this.desk.result, hidesTheory(this.session.experiment));
    return html`<p class="speed" role="status">${words.speed ?? '—'}</p>
      <div class="said stack">
        ${words.sentences.map((sentence) => html`<p class="small">${sentence}</p>`)}
        <div>
          <h3>${laterWords.classPage.discuss}</h3>
          <ul>
            ${discussionWords(this.desk.result).map((one) => html`<li class="small">${one}</li>`)}
          </ul>
        </div>
      </div>
      <div class="row tools">
        <button class="primary" @click=${() => print()}>${laterWords.classPage.print}</button>
        <button @click=${this.onCsv}>${laterWords.classPage.saveCsv}</button>
        <button @click=${this.onJson}>${laterWords.classPage.saveJson}</button>
        <button @click=${this.onCopy}>${laterWords.classPage.copy}</button>
        <button class="quiet" @click=${this.onClear}>${laterWords.classPage.empty}</button>
      </div>`;
  }

  private table() {
    const { rows } = this.desk.result;
    const isHidden = hidesTheory(this.session.experiment);
    const names = rows.map(({ group }) => group.source.name);
    /** Groups of one name are told apart by their files. */
    const isShared = (name: string): boolean => names.indexOf(name) !== names.lastIndexOf(name);
    const called = new Map(
      rows.map(({ group: { id, source } }) => [
        id,
        isShared(source.name) ? laterWords.classPage.groupInFile(source.name, source.fileName) : source.name,
      ]),
    );
    return html`<section class="sheet stack wide" aria-label=${laterWords.classPage.groups}>
      <h2>${laterWords.classPage.groups}</h2>
      <div class="groups scroll" tabindex="0" role="region" aria-label=${laterWords.classPage.table}>
        <table>
          <thead>
            <tr>
              <th scope="col">${laterWords.classPage.use}</th>
              <th scope="col">${laterWords.classPage.group}</th>
              <th scope="col" class="number">${laterWords.classPage.speed}</th>
              <th scope="col" class="number">${laterWords.classPage.marks}</th>
              <th scope="col">${laterWords.classPage.remarks}</th>
            </tr>
          </thead>
          <tbody>
            ${rows.map((row) => {
              const words = groupWords(
                row,
                (id) => called.get(id) ?? '?',
                this.desk.result.air !== null,
                isHidden ? keepsTheory : undefined,
              );
              const { group } = row;
              return html`<tr class=${row.state}>
                <td>
                  <input
                    type="checkbox"
                    value=${group.id}
                    aria-label=${laterWords.classPage.count(called.get(group.id) ?? '?')}
                    .checked=${live(row.state === 'counted')}
                    ?disabled=${row.state === 'no result' || row.state === 'outlying'}
                    @change=${this.onChoose}
                  />
                </td>
                <th scope="row" title=${group.source.fileName}>
                  ${group.source.name}${isShared(group.source.name) ? html`<div class="small">${group.source.fileName}</div>` : nothing}
                </th>
                <td class="number">${words.speed}</td>
                <td class="number">${group.outcome?.markCount ?? 0}</td>
                <td>${words.remark}</td>
              </tr>`;
            })}
          </tbody>
        </table>
      </div>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-class': ClassElement;
  }
}
