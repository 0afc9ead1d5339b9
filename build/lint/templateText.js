/**
 * Where a template of markup shows text to a person, or to what reads it aloud.
 * @typedef {{ readonly text: string, readonly part: number }} StaticText  `part` counts the static parts from 0
 */

/** Attributes that are shown or spoken. */
const SHOWN = new Set([
  'alt',
  'aria-description',
  'aria-label',
  'aria-roledescription',
  'aria-valuetext',
  'hint',
  'label',
  'placeholder',
  'title',
]);

/** What follows `<` of markup that shows nothing, up to its end. */
const COMMENT = { begin: '!--', end: '-->' };

/**
 * Reads a template's static parts as markup.
 * @param {readonly string[]} parts  between them stand the expressions
 * @returns {{ texts: StaticText[], shown: number[] }} static text that is shown, and which expressions are, from 0
 */
export function templateText(parts) {
  const reader = new MarkupReader();
  /** @type {StaticText[]} */
  const texts = [];
  /** @type {number[]} */
  const shown = [];
  parts.forEach((part, index) => {
    texts.push(...reader.read(part).map((text) => ({ text, part: index })));
    if (reader.isShown && index < parts.length - 1) shown.push(index);
  });
  return { texts, shown };
}

/** Knows between parts where in the markup it stands. */
class MarkupReader {
  /** @type {'text' | 'tag' | 'value' | 'comment'} */
  state = 'text';
  attribute = '';
  /** Of the value that it stands in; '' where it has none. */
  quote = '';

  get isShown() {
    return this.state === 'text' || (this.state === 'value' && SHOWN.has(this.attribute));
  }

  /**
   * @param {string} part
   * @returns {string[]} what is shown of it
   */
  read(part) {
    /** @type {string[]} */
    const texts = [];
    let at = 0;
    while (at < part.length) {
      const end = this.endOfPiece(part, at);
      if (this.isShown) texts.push(part.slice(at, end));
      at = this.turn(part, end);
    }
    return texts.map((text) => text.replaceAll(/&\w+;/g, '').trim()).filter((text) => text !== '');
  }

  /**
   * Where the text, tag or value that begins here ends, at most at the end of the part.
   * @param {string} part
   * @param {number} from
   */
  endOfPiece(part, from) {
    const ends = {
      text: /</g,
      tag: /[=>]/g,
      value: this.quote === '' ? /[\s>]/g : new RegExp(this.quote, 'g'),
      comment: new RegExp(COMMENT.end, 'g'),
    };
    const end = ends[this.state];
    end.lastIndex = from;
    return end.exec(part)?.index ?? part.length;
  }

  /**
   * Goes on to what follows the piece.
   * @param {string} part
   * @param {number} end  of the piece
   * @returns {number} where the next one begins
   */
  turn(part, end) {
    if (end === part.length) return end;
    switch (this.state) {
      case 'text': {
        const isComment = part.startsWith(COMMENT.begin, end + 1);
        this.state = isComment ? 'comment' : 'tag';
        return end + 1 + (isComment ? COMMENT.begin.length : 0);
      }
      case 'comment':
        this.state = 'text';
        return end + COMMENT.end.length;
      case 'value':
        // Without quotes the tag's own end may be what ends it.
        this.state = 'tag';
        return this.quote === '' ? end : end + 1;
      case 'tag':
        if (part[end] === '>') {
          this.state = 'text';
          return end + 1;
        }
        this.attribute = nameBefore(part, end);
        this.state = 'value';
        this.quote = /^["']/.exec(part.slice(end + 1))?.[0] ?? '';
        return end + 1 + this.quote.length;
    }
  }
}

/**
 * The name of the attribute or property that ends here.
 * @param {string} part
 * @param {number} end
 */
function nameBefore(part, end) {
  return (/[\w-]+$/.exec(part.slice(0, end).trimEnd())?.[0] ?? '').toLowerCase();
}
