import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { groupHash, groupParts } from '../../notebook/groupLink.ts';
import { measuredMarks } from '../../notebook/measuredMarks.ts';
import type { Session } from '../../session/session.ts';
import { groupNameWords } from '../../words/namelessGroup.ts';
import { laterWords } from '../../words/inUse.ts';
import { PartElement } from '../parts/partElement.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { sharedStyles } from '../sharedStyles.ts';

/** Hands a group's result to the teacher without a network: a code on this screen, or a link. */
@customElement('bench-hand-in')
export class HandInElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      /* A code is read from farther off the larger it is. */
      :host([wide]) {
        grid-column: 1 / -1;
      }
      input[readonly] {
        inline-size: 100%;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @state() private shown: { readonly link: string; readonly links: readonly string[] } | null = null;
  protected readonly watch = new SessionWatch(this, ['notebook'], () => void this.followUp());
  private made = 0;

  /** A code once shown never stays behind the marks. */
  private async followUp(): Promise<void> {
    this.requestUpdate();
    if (this.shown !== null) await this.make();
  }

  private async onShow(): Promise<void> {
    if (this.shown !== null) {
      this.shown = null;
      return;
    }
    await import('../parts/codeElement.ts');
    await this.make();
  }

  private async make(): Promise<void> {
    this.made += 1;
    const number = this.made;
    const hash = await groupHash(this.session.experiment);
    if (number !== this.made) return;
    const page = location.href.split('#').at(0) ?? '';
    this.shown = { link: page + hash, links: groupParts(hash, page.length).map((part) => page + part) };
  }

  override updated(): void {
    this.toggleAttribute('wide', this.shown !== null);
  }

  override render() {
    const { experiment } = this.session;
    const count = measuredMarks(experiment).filter(({ excluded }) => !excluded).length;
    const isNamed = experiment.group.trim() !== '';
    return html`<section class="stack" aria-label=${laterWords.handIn.heading}>
      <h2>${laterWords.handIn.heading}</h2>
      <p class="lead">${laterWords.handIn.lead}</p>
      ${count === 0 ? html`<p>${laterWords.handIn.none}</p>` : nothing}
      <p>
        <button
          aria-expanded=${this.shown === null ? 'false' : 'true'}
          ?disabled=${count === 0 && this.shown === null}
          @click=${this.onShow}
        >
          ${this.shown === null ? laterWords.handIn.show : laterWords.handIn.hide}
        </button>
      </p>
      ${isNamed ? nothing : html`<p class="caution">${laterWords.handIn.unnamed}</p>`}
      ${
        this.shown === null
          ? nothing
          : html`<p>${laterWords.handIn.holds(groupNameWords(experiment.group), count)}</p>
              <bench-code .links=${this.shown.links} name=${laterWords.handIn.codeName}></bench-code>
              <label>${laterWords.handIn.link}<input readonly .value=${this.shown.link} /></label>`
      }
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-hand-in': HandInElement;
  }
}
