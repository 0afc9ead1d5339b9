/**
 * How deep the brackets of a JSON text are nested, without parsing it: a tower of brackets can overflow the stack of
 * whoever walks it.
 * @param most  counting ends above this
 */
export function jsonDepth(text: string, most: number): number {
  let depth = 0;
  let deepest = 0;
  let isInString = false;
  for (let at = 0; at < text.length && deepest <= most; at += 1) {
    const character = text.charCodeAt(at);
    if (isInString) {
      if (character === 0x5c) at += 1;
      else if (character === 0x22) isInString = false;
    } else if (character === 0x22) isInString = true;
    else if (character === 0x7b || character === 0x5b) deepest = Math.max(deepest, (depth += 1));
    else if (character === 0x7d || character === 0x5d) depth -= 1;
  }
  return deepest;
}
