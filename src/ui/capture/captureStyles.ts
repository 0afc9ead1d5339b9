import { css } from 'lit';

/** Boxes that say what is wrong with the sound's way into the page: cautions, and what ends the listening. */
export const captureStyles = css`
  section {
    border-inline-start: 5px solid var(--caution);
    background: var(--caution-wash);
    padding: var(--gap-2) var(--gap-3);
  }
  .bad {
    border-inline-start-color: var(--alert);
    background: var(--alert-wash);
  }
  a {
    color: inherit;
  }
  a.button {
    display: inline-flex;
    align-items: center;
    text-decoration: none;
  }
`;
