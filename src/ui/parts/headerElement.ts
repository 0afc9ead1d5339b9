import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { frameWords } from '../../words/page/frame.ts';
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

const THEMES = ['system', 'light', 'dark'] as const;

/**
 * Name, views, the result where it isn't shown large, keys and theme.
 * @fires keys-show  to show the keys
 */
@customElement('bench-header')
export class HeaderElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      header {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--gap-1) var(--gap-3);
        padding: var(--gap-1) clamp(0.75rem, 2vw, 1.5rem);
        border-block-end: 1px solid var(--line);
      }
      h1 {
        font-size: var(--text);
        font-weight: 700;
        margin: 0;
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
        font-weight: 600;
      }
      @media (forced-colors: active) {
        nav a:not([aria-current='page']) {
          border-block-end-color: Canvas;
        }
      }
      .speed {
        font-weight: 600;
        white-space: nowrap;
      }
      /* Where the measurement shows it large beside the picture. */
      @media (min-width: 761px) {
        .speed.large {
          display: none;
        }
      }
      label {
        font-size: var(--text-small);
        color: var(--ink-soft);
      }
      @media (max-width: 900px) {
        label {
          position: absolute;
          inline-size: 1px;
          block-size: 1px;
          overflow: hidden;
          clip-path: inset(50%);
        }
        /* A row of its own from the start: the speed must not push it there when it comes. */
        nav {
          order: 9;
          inline-size: 100%;
          margin: 0;
        }
        h1 {
          margin-inline-end: auto;
        }
      }
      @media (max-width: 640px) {
        nav a {
          padding: 0 0.1875rem;
          font-size: var(--text-small);
        }
        /* Heavier letters are wider: the row would break on some views and not on others. Its line marks it. */
        nav a[aria-current='page'] {
          font-weight: inherit;
        }
        nav {
          justify-content: space-between;
        }
        h1 {
          flex: 1 1 5rem;
          line-height: 1.1;
        }
        .speed {
          font-size: var(--text-small);
        }
        select {
          padding-inline: var(--gap-1);
        }
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @property() view: ViewId = 'measure';
  // Where storage is refused the choice holds for this visit.
  private theme: ThemeChoice = themeChoice();
  protected readonly watch = new SessionWatch(this, ['notebook', 'answers']);

  private onTheme(chosen: string): void {
    this.theme = THEMES.find((theme) => theme === chosen) ?? 'system';
    chooseTheme(this.theme, document.documentElement);
  }

  private onKeys(): void {
    send(this, 'keys-show');
  }

  override render() {
    return html`<header>
      <h1>${frameWords.heading}</h1>
      <nav aria-label=${frameWords.views}>
        ${VIEWS.map(
          (view) =>
            html`<a href="#${view.id}" aria-current=${view.id === listedView(this.view) ? 'page' : 'false'}
              >${frameWords.viewNames[view.id]}</a
            >`,
        )}
      </nav>
      <span class="speed ${this.view === 'measure' ? 'large' : ''}"
        >${this.speed()}${workingOut(this.session.isWorkingOut)}</span
      >
      <button @click=${this.onKeys}>${frameWords.keys}</button>
      <label for="theme">${frameWords.theme}</label>
      ${choice({
        id: 'theme',
        options: THEMES.map((theme) => ({ value: theme, name: frameWords.themeNames[theme] })),
        now: () => this.theme,
        choose: (theme) => this.onTheme(theme),
      })}
    </header>`;
  }

  /** The result stays in sight on views that don't show it large. */
  private speed(): string {
    const { outcomeIfAny: outcome, experiment } = this.session;
    const here = outcome.places.find((one) => one.placeId === experiment.present.placeId);
    const speed = here === undefined ? null : resultLines(here.solution).speed;
    return speed === null ? '' : speedWords(speed);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-header': HeaderElement;
  }
}
