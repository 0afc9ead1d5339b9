import { css } from 'lit';

/** The answer of a check, to be read from afar. */
export const verdictStyles = css`
  .verdict {
    font-size: clamp(1.75rem, 1.2rem + 2.4vw, 3rem);
    font-weight: 600;
    line-height: 1.1;
  }
`;
