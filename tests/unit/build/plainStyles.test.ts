import { describe, expect, it } from 'vitest';
import { plainStyles } from '../../../build/plainStyles.ts';

describe('styles in the built site', () => {
  it('lose comments and indentation, and nothing else of the module changes', () => {
    const source =
      'const a = css`\n  p {\n    /* why\n       so */\n    color: ${ink};\n  }\n`;\n\nconst b = html`<p>  a\n b</p>`;';
    expect(plainStyles(source)).toBe(
      'const a = css` p { color: ${ink}; } `;\n\nconst b = html`<p>  a\n b</p>`;',
    );
  });
});
