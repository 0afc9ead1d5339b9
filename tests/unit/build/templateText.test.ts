import { describe, expect, it } from 'vitest';
import { templateText } from '../../../build/lint/templateText.js';

describe('templateText', () => {
  it('finds what stands between tags, part by part', () => {
    expect(templateText(['<p>Speed: ', ' m/s</p> <b>in air</b>'])).toEqual({
      texts: [
        { text: 'Speed:', part: 0 },
        { text: 'm/s', part: 1 },
        { text: 'in air', part: 1 },
      ],
      shown: [0],
    });
  });

  it('finds attributes that are shown or spoken, with and without quotes, and as properties', () => {
    const { texts, shown } = templateText([
      '<a class="big one" aria-label="Mark ',
      ' here" title=Now .label=',
      ' id=',
      '></a>',
    ]);
    expect(texts.map(({ text }) => text)).toEqual(['Mark', 'here', 'Now']);
    expect(shown).toEqual([0, 1]);
  });

  it('passes over tags, other attributes, listeners, comments and character references', () => {
    expect(templateText(['<!-- a > remark --><p class="x" @click=', '>&nbsp;·</p>'])).toEqual({
      texts: [{ text: '·', part: 1 }],
      shown: [],
    });
  });

  it('knows where it is after a value without quotes that an expression ends', () => {
    expect(templateText(['<p hidden=', '>seen</p>', '']).shown).toEqual([1]);
  });
});
