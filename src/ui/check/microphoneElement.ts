import { css, html } from 'lit';
import { customElement } from 'lit/decorators.js';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { ADMINISTRATOR_HELP, BENCH_HELP } from './microphoneHelp.ts';
import type { HelpRow } from './microphoneHelp.ts';

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
    return html`<article class="sheet stack" aria-label="Microphone help">
      <h2>Help with the microphone</h2>
      <p class="lead">
        Only listening needs a microphone. Lengths can be typed, recordings opened and the practice column
        used without one.
      </p>
      ${this.table('At the bench', ['What you see', 'Why', 'What to do'], BENCH_HELP)}
      <h2 id="administrator">For the school’s administrator</h2>
      <p class="lead">
        This page needs the microphone without any processing for voices. It stores experiments in the browser
        and sends nothing.
      </p>
      ${this.table('Administrator', ['Where', 'What matters', 'Setting'], ADMINISTRATOR_HELP)}
      <p class="row">
        <button @click=${() => print()}>Print this page</button> <a href="#check">Back to the checks</a>
      </p>
    </article>`;
  }

  private table(name: string, heads: readonly string[], rows: readonly HelpRow[]) {
    return html`<div class="scroll">
      <table>
        <caption class="unseen">
          ${name}
        </caption>
        <thead>
          <tr>
            ${heads.map((head) => html`<th scope="col">${head}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${rows.map(
            ({ seen, why, toDo }) =>
              html`<tr>
                <th scope="row">${seen}</th>
                <td>${why}</td>
                <td>${toDo}</td>
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
