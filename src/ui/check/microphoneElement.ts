import { css, html } from 'lit';
import { customElement } from 'lit/decorators.js';
import { laterWords } from '../../words/inUse.ts';
import { administratorHelpRows, benchHelpRows } from '../../words/page/microphone.ts';
import type { HelpRow } from '../../words/page/microphone.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';

/** Everything that can keep a microphone from the page: for the bench, and for the school's administrator. */
@customElement('bench-microphone')
export class MicrophoneElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      :host {
        max-inline-size: 64rem;
      }
      td {
        overflow-wrap: anywhere;
      }
      td:last-child {
        inline-size: 45%;
      }
      a {
        color: inherit;
      }
      /* On a narrow screen each row is a paragraph of its own. */
      @media (max-width: 640px) {
        thead {
          display: none;
        }
        tr,
        th,
        td,
        td:last-child {
          display: block;
          inline-size: auto;
          border: 0;
        }
        tr {
          border-block-end: 1px solid var(--line);
          padding-block: var(--gap-2);
        }
      }
    `,
  ];

  override render() {
    return html`<article class="sheet stack" aria-label=${laterWords.microphone.name}>
      <h2>${laterWords.microphone.heading}</h2>
      <p class="lead">${laterWords.microphone.lead}</p>
      ${this.table(laterWords.microphone.bench, laterWords.microphone.benchHeads, benchHelpRows())}
      <h2 id="administrator">${laterWords.microphone.administratorHeading}</h2>
      <p class="lead">${laterWords.microphone.administratorLead}</p>
      ${this.table(laterWords.microphone.administrator, laterWords.microphone.administratorHeads, administratorHelpRows())}
      <p class="row">
        <button @click=${() => print()}>${laterWords.microphone.print}</button>
        <a href="#check">${laterWords.microphone.back}</a>
      </p>
    </article>`;
  }

  private table(name: string, { seen, why, toDo }: HelpRow, rows: readonly HelpRow[]) {
    return html`<div class="scroll">
      <table>
        <caption class="unseen">
          ${name}
        </caption>
        <thead>
          <tr>
            ${[seen, why, toDo].map((head) => html`<th scope="col">${head}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${rows.map(
            (row) =>
              html`<tr>
                <th scope="row">${row.seen}</th>
                <td>${row.why}</td>
                <td>${row.toDo}</td>
              </tr>`,
          )}
        </tbody>
      </table>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-microphone': MicrophoneElement;
  }
}
