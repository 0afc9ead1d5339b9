import { css } from 'lit';

/** Fields beside each other, as many in a row as there is room for; a list looks like the others. */
export const fieldStyles = css`
  .fields {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(var(--field, 9rem), 1fr));
    gap: var(--gap-3);
  }
  .fields label {
    font-size: var(--text-small);
  }
  .fields select {
    display: block;
    font-size: var(--text);
  }
`;
