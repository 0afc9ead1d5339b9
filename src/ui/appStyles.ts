import { css } from 'lit';

/** Where things stand on the page. */
export const appStyles = css`
  :host {
    min-block-size: 100vh;
  }
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
  .saved {
    font-size: var(--text-small);
    color: var(--ink-soft);
  }
  main {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--gap-3);
    padding: var(--gap-3) clamp(0.75rem, 2vw, 1.5rem) 4rem;
    max-inline-size: 110rem;
    margin-inline: auto;
  }
  .flash {
    box-shadow: inset 0 0 0 0.9rem var(--tone-fill);
    background: var(--tone-wash);
  }
  @media (prefers-reduced-motion: no-preference) {
    main {
      transition:
        box-shadow 0.5s ease-out,
        background 0.5s ease-out;
    }
    .flash {
      transition: none;
    }
  }
  .controls {
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    align-items: end;
    gap: var(--gap-2) var(--gap-4);
  }
  .readings {
    display: grid;
    grid-template-columns: minmax(0, 3fr) minmax(0, 2fr);
    gap: var(--gap-3) var(--gap-5);
    align-items: start;
  }
  .measure {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
    gap: var(--gap-4) var(--gap-5);
    align-items: start;
  }
  @media (max-width: 900px) {
    .measure,
    .readings {
      grid-template-columns: minmax(0, 1fr);
    }
    bench-strip {
      order: -1;
      --strip-height: 9rem;
    }
  }
`;
