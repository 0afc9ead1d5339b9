import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { words } from '../../words/inUse.ts';
import { LANGUAGES, LANGUAGE_TAGS, language } from '../../words/language.ts';
import type { RoundedPair } from '../../words/numbers.ts';
import { resultLines, speedWords } from '../../words/result.ts';
import type { Session } from '../../session/session.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { send } from './events.ts';
import { PartElement } from './partElement.ts';
import { choice } from './choice.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { chooseTheme, themeChoice } from '../themeChoice.ts';
import type { ThemeChoice } from '../themeChoice.ts';
import { VIEWS, listedView } from '../views.ts';
import { workingOut } from './workingOut.ts';
import type { ViewId } from '../views.ts';

/** So long a result stands before it is spoken. */
const SETTLES_MS = 1500;

const THEMES = ['system', 'light', 'dark'] as const;

/**
 * Name, views, the result, keys, language and theme. The result stays in sight however far the page is scrolled.
 * @fires keys-show  to show the keys
 * @fires language-choose  to speak another language
 */
@customElement('bench-header')
export class HeaderElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      :host {
        position: sticky;
        inset-block-start: 0;
        z-index: 4;
      }
      header {
        background: var(--paper);
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--gap-1) var(--gap-3);
        padding: var(--gap-1) clamp(0.75rem, 2vw, 1.5rem);
        border-block-end: 1px solid var(--line);
      }
      h1 {
        font-size: var(--text);
        line-height: 1.15;
        font-weight: 700;
        margin: 0;
        max-inline-size: 10rem;
      }
      nav {
        display: flex;
        flex-wrap: wrap;
        margin-inline-end: auto;
      }
      nav a {
        color: var(--ink);
        text-decoration: none;
        padding: 0 var(--gap-3);
        min-block-size: var(--target);
        display: inline-flex;
        align-items: center;
        border-block-end: 3px solid transparent;
      }
      nav a:hover {
        text-decoration: underline;
      }
      nav a[aria-current='page'] {
        border-block-end-color: var(--ink);
        /* Heavier letters would be wider: the row would shift from view to view, and break on some of them. */
        text-shadow: 0.04em 0 currentcolor;
      }
      @media (forced-colors: active) {
        nav a:not([aria-current='page']) {
          border-block-end-color: Canvas;
        }
      }
      /* As much weight for the uncertainty as for the value: a result is both. */
      .speed {
        font-size: var(--result);
        line-height: 1.1;
        font-weight: 600;
        letter-spacing: -0.01em;
        white-space: nowrap;
      }
      .unit {
        font-size: 0.65em;
        font-weight: 400;
        letter-spacing: 0;
      }
      .none {
        color: var(--ink-soft);
        font-weight: 400;
      }
      label {
        font-size: var(--text-small);
        color: var(--ink-soft);
      }
      /* The list has the languages' names; closed it shows the tag alone, so that the head stays one row. */
      .language {
        position: relative;
        display: grid;
      }
      .language::before {
        content: attr(data-tag);
        position: absolute;
        inset-inline-start: var(--gap-2);
        align-self: center;
        pointer-events: none;
      }
      .language select {
        color: transparent;
        inline-size: 3.5rem;
      }
      .language option {
        color: var(--ink);
      }
      @media (forced-colors: active) {
        .language::before {
          content: none;
        }
        .language select {
          inline-size: auto;
        }
      }
      @media (max-width: 1440px) {
        label {
          position: absolute;
          inline-size: 1px;
          block-size: 1px;
          overflow: hidden;
          clip-path: inset(50%);
        }
      }
      @media (max-width: 900px) {
        /* The views have the first row, which may scroll away; the second stays. */
        :host {
          inset-block-start: -3rem;
        }
        nav {
          order: -1;
          inline-size: 100%;
          margin: 0;
        }
        .result,
        h1 {
          margin-inline-end: auto;
        }
        /* The result comes where the name stood. */
        h1.beside,
        .result.before {
          position: absolute;
          inline-size: 1px;
          block-size: 1px;
          overflow: hidden;
          clip-path: inset(50%);
        }
      }
      @media (max-width: 640px) {
        /* What is this narrow has no keyboard, and where it has, the question mark opens them. */
        .keys {
          display: none;
        }
        nav a {
          padding: 0 0.1875rem;
          /* All views in one row, with a scroll bar beside them, too. */
          font-size: clamp(0.75rem, 3.4vw, 0.875rem);
        }
        nav {
          justify-content: space-between;
        }
        #theme {
          padding-left: var(--gap-1);
        }
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @property() view: ViewId = 'measure';
  // Where storage is refused the choice holds for this visit.
  private theme: ThemeChoice = themeChoice();
  protected readonly watch = new SessionWatch(this, ['notebook', 'answers']);
  /** The result for the ear: once, when it has settled. */
  @state() private spoken = '';
  private lastSeen = '';
  private settles = 0;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.settles);
  }

  override updated(): void {
    const speed = this.session.isWorkingOut ? null : this.speed();
    const said = speed === null ? '' : words.result.spoken(speedWords(speed));
    if (said === this.lastSeen) return;
    this.lastSeen = said;
    clearTimeout(this.settles);
    this.settles = window.setTimeout(() => (this.spoken = said), SETTLES_MS);
  }

  private onTheme(chosen: string): void {
    this.theme = THEMES.find((theme) => theme === chosen) ?? 'system';
    chooseTheme(this.theme, document.documentElement);
  }

  private onLanguage(chosen: string): void {
    const tag = LANGUAGE_TAGS.find((one) => one === chosen);
    if (tag !== undefined) send(this, 'language-choose', tag);
  }

  private onKeys(): void {
    send(this, 'keys-show');
  }

  override render() {
    return html`<header>
      <h1 class=${this.speed() === null ? '' : 'beside'}>${words.frame.heading}</h1>
      <nav aria-label=${words.frame.views}>
        ${VIEWS.map(
          (view) =>
            html`<a href="#${view.id}" aria-current=${view.id === listedView(this.view) ? 'page' : 'false'}
              >${words.frame.viewNames[view.id]}</a
            >`,
        )}
      </nav>
      ${this.result()}
      <p class="unseen" role="status">${this.spoken}</p>
      <button class="keys" @click=${this.onKeys}>${words.frame.keys}</button>
      ${this.languages()}
      <label for="theme">${words.frame.theme}</label>
      ${choice({
        id: 'theme',
        options: THEMES.map((theme) => ({ value: theme, name: words.frame.themeNames[theme] })),
        now: () => this.theme,
        choose: (theme) => this.onTheme(theme),
      })}
    </header>`;
  }

  /** Nothing where there is nothing to choose. */
  private languages() {
    if (LANGUAGE_TAGS.length < 2) return nothing;
    return html`<label for="language">${words.frame.language}</label>
      <span class="language" data-tag=${language.slice(0, 2).toUpperCase()}
        >${choice({
          id: 'language',
          options: LANGUAGE_TAGS.map((tag) => ({
            value: tag,
            name: html`<span lang=${tag}>${LANGUAGES[tag].name}</span>`,
          })),
          now: () => language,
          choose: (tag) => this.onLanguage(tag),
        })}</span
      >`;
  }

  private result() {
    const speed = this.speed();
    return html`<section class="result ${speed === null ? 'before' : ''}" aria-label=${words.result.region}>
      ${
        speed === null
          ? html`<p class="speed none">
              ${words.result.none} <span class="unit">${words.result.unit}</span>
            </p>`
          : html`<p class="speed">${speedWords(speed)}${workingOut(this.session.isWorkingOut)}</p>`
      }
    </section>`;
  }

  /** Of the present place; null before there is one. */
  private speed(): RoundedPair | null {
    const { outcomeIfAny: outcome, experiment } = this.session;
    const here = outcome.places.find((one) => one.placeId === experiment.present.placeId);
    return here === undefined ? null : resultLines(here.solution).speed;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-header': HeaderElement;
  }
}
