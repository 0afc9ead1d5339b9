import { describe, expect, it } from 'vitest';
import { plainStyles } from '../../../build/plainStyles.ts';

describe('styles in the built site', () => {
  it('lose comments and blanks that part no words, and nothing else of the module changes', () => {
    const source =
      'const a = css`\n  p {\n    /* why\n       so */\n    color: ${ink};\n  }\n`;\n\nconst b = html`<p>  a\n b</p>`;';
    expect(plainStyles(source)).toBe('const a = css`p{color:${ink}}`;\n\nconst b = html`<p>  a\n b</p>`;');
  });

  it('keep blanks that mean something', () => {
    const kept = (styles: string): string => plainStyles(`css\`${styles}\``).slice(4, -1);
    expect(kept('a :hover > b, c::before { margin: 0 calc(1px + 2px) ; content: "✕ " }')).toBe(
      'a :hover > b,c::before{margin:0 calc(1px + 2px);content:"✕ "}',
    );
    expect(kept('@media (min-width: 9px) and (pointer: fine) { p { border: 1px ${dash} red; } }')).toBe(
      '@media (min-width:9px) and (pointer:fine){p{border:1px ${dash} red}}',
    );
  });
});
