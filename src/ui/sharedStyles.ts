import { css } from 'lit';

/** What every element of the page has in common: native controls, large enough and in the page's colours. */
export const sharedStyles = css`
  :host {
    display: block;
    font-variant-numeric: tabular-nums;
  }
  :host([hidden]),
  [hidden] {
    display: none !important;
  }
  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }
  h2,
  h3,
  p,
  ul,
  ol,
  dl,
  dd,
  fieldset,
  legend,
  figure {
    margin: 0;
    padding: 0;
  }
  fieldset {
    border: 0;
    min-inline-size: 0;
  }
  h2 {
    font-size: var(--text-large);
    font-weight: 600;
  }
  h3 {
    font-size: var(--text);
    font-weight: 600;
  }
  .lead,
  .small {
    color: var(--ink-soft);
    font-size: var(--text-small);
  }
  button,
  select,
  input,
  textarea,
  .button {
    font: inherit;
    font-variant-numeric: inherit;
    color: var(--ink);
    min-height: var(--target);
    border: 1px solid var(--edge);
    border-radius: var(--radius);
    background: var(--sheet);
    padding: 0 var(--gap-3);
    max-width: 100%;
  }
  /* Each engine would draw another arrow, of another width, and one of them a ground of its own. */
  select {
    appearance: none;
    padding-right: 1.5rem;
    background-image:
      linear-gradient(45deg, transparent 50%, var(--ink) 50%),
      linear-gradient(-45deg, transparent 50%, var(--ink) 50%);
    background-position:
      right 0.8125rem center,
      right 0.4375rem center;
    background-size: 0.375rem 0.375rem;
    background-repeat: no-repeat;
  }
  @media (forced-colors: active) {
    select {
      appearance: auto;
    }
  }
  textarea {
    padding-block: var(--gap-2);
  }
  ::placeholder {
    color: var(--ink-soft);
    opacity: 1;
  }
  button,
  .button {
    cursor: pointer;
    touch-action: manipulation;
  }
  button:hover:not(:disabled) {
    border-color: var(--ink);
  }
  button:disabled {
    color: var(--ink-soft);
    border-style: dashed;
    cursor: default;
  }
  button.primary {
    background: var(--ink);
    color: var(--paper);
    border-color: var(--ink);
    font-weight: 600;
  }
  button.quiet {
    background: none;
    border-color: transparent;
    text-decoration: underline;
    text-underline-offset: 0.2em;
    padding: 0 var(--gap-2);
  }
  button[aria-pressed='true'] {
    background: var(--tone-wash);
    border-color: var(--tone);
    box-shadow: inset 0 -3px 0 var(--tone);
  }
  @media (forced-colors: active) {
    button[aria-pressed='true'] {
      border-width: 4px;
    }
    button.primary {
      forced-color-adjust: none;
      background: Highlight;
      color: HighlightText;
      border-color: Highlight;
    }
  }
  input[type='checkbox'],
  input[type='radio'] {
    min-height: 0;
    inline-size: 1.25rem;
    block-size: 1.25rem;
    flex: none;
    margin: 0;
  }
  /* Keys that the number pad of a touch screen lacks. */
  .pad-key {
    display: none;
    flex: none;
    min-inline-size: var(--target);
    padding: 0;
  }
  @media (pointer: coarse) {
    .pad-key {
      display: inline-block;
    }
    /* A phone zooms into smaller letters when their field is touched, and stays there. */
    select,
    input,
    textarea {
      font-size: max(1em, 16px);
    }
  }
  input[aria-invalid='true'] {
    border: 2px solid var(--alert);
  }
  :focus-visible {
    outline: 3px solid var(--focus);
    outline-offset: 2px;
  }
  a {
    color: inherit;
  }
  .pending {
    color: var(--ink-soft);
    font-size: var(--text-small);
    font-weight: 400;
    animation: pending-comes 0s 0.3s both;
  }
  @keyframes pending-comes {
    from {
      visibility: hidden;
    }
    to {
      visibility: visible;
    }
  }
  .fault {
    color: var(--alert);
    font-size: var(--text-small);
  }
  .fault::before {
    content: '✕ ';
  }
  .caution {
    border-inline-start: 4px solid var(--caution);
    background: var(--caution-wash);
    padding: var(--gap-2) var(--gap-3);
    font-size: var(--text-small);
  }
  .failed {
    display: grid;
    gap: var(--gap-2);
    border-inline-start: 4px solid var(--alert);
    background: var(--alert-wash);
    color: var(--ink);
    padding: var(--gap-2) var(--gap-3);
    font-size: var(--text-small);
  }
  .sheet {
    background: var(--sheet);
    border: 1px solid var(--line);
    border-radius: var(--radius);
    padding: var(--gap-4);
  }
  dialog {
    border: 1px solid var(--edge);
    border-radius: var(--radius);
    background: var(--sheet);
    color: var(--ink);
  }
  dialog::backdrop {
    background: rgb(0 0 0 / 45%);
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    gap: var(--gap-2);
    align-items: center;
  }
  /* A box and its words: these go on beside it. */
  label.row {
    flex-wrap: nowrap;
    align-items: start;
  }
  .stack {
    display: grid;
    gap: var(--gap-3);
    align-content: start;
    grid-template-columns: minmax(0, 1fr);
  }
  .unseen {
    position: absolute;
    inline-size: 1px;
    block-size: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
  table {
    border-collapse: collapse;
    inline-size: 100%;
    font-size: var(--text-small);
  }
  th,
  td {
    text-align: start;
    padding: var(--gap-1) var(--gap-2);
    border-block-end: 1px solid var(--line);
    vertical-align: top;
  }
  td.number,
  th.number {
    text-align: end;
  }
  .scroll {
    overflow-x: auto;
  }
  /* Cards beside each other, none narrower than --card unless the page is. */
  .cards {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(var(--card, 22rem), 100%), 1fr));
    gap: var(--gap-4);
    align-items: start;
  }
`;
