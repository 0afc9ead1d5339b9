import { templateText } from './templateText.js';

/** @import { Rule } from 'eslint' */
/** @import { Expression, Node, TemplateElement, TemplateLiteral } from 'estree' */

const LETTER = /\p{L}/u;
/** A word with what may stand around it in a sentence. */
const WORD = /^[“„"'(‘]*\p{L}[\p{L}\p{M}’'-]*[.,:;!?…)”"’]*$/u;
/** So many words make a text for people of a string. */
const SENTENCE_WORDS = 3;
const MARKUP = new Set(['html', 'svg']);
/** What takes the name of a step; its type has each of them. */
const STEP_TAKERS = new Set(['change', 'changeTyped', 'editMark']);

/**
 * Text for people stands in src/words, from where it can be translated: not in templates, and no sentence in a string.
 * Let be is what programs or programmers read: errors of a wrong call, the console, styles, imports, types, names
 * of steps, and words that are known when somebody types them.
 * @type {Rule.RuleModule}
 */
export const textInWords = {
  meta: {
    type: 'problem',
    schema: [],
    messages: { text: 'Text for people belongs into src/words: “{{text}}”.' },
  },
  create(context) {
    /** @param {Node} node @param {string} text */
    const report = (node, text) =>
      context.report({ node, messageId: 'text', data: { text: text.replaceAll(/\s+/g, ' ').trim() } });
    /** @type {Set<Node>} */
    const reported = new Set();
    /** @param {Node} node @param {string} text */
    const checkSentence = (node, text) => {
      if (
        !reported.has(node) &&
        isSentence(text) &&
        !isForPrograms(node, context.sourceCode.getAncestors(node))
      ) {
        report(node, text);
      }
    };
    return {
      TaggedTemplateExpression({ tag, quasi }) {
        if (tag.type !== 'Identifier' || !MARKUP.has(tag.name)) return;
        const { texts, shown } = templateText(quasi.quasis.map(cooked));
        for (const { text, part } of texts) {
          const place = quasi.quasis[part];
          if (place !== undefined && LETTER.test(text)) report(place, text);
        }
        for (const index of shown) {
          const expression = quasi.expressions[index];
          for (const node of expression === undefined ? [] : outcomes(expression)) {
            const text = staticText(node);
            if (text === null || !LETTER.test(text)) continue;
            reported.add(node);
            report(node, text);
          }
        }
      },
      Literal(node) {
        if (typeof node.value === 'string') checkSentence(node, node.value);
      },
      TemplateLiteral(node) {
        if (context.sourceCode.getAncestors(node).at(-1)?.type !== 'TaggedTemplateExpression') {
          checkSentence(node, staticText(node) ?? '');
        }
      },
    };
  },
};

/** @param {TemplateElement} part */
function cooked(part) {
  return part.value.cooked ?? part.value.raw;
}

/** @param {string} text */
function isSentence(text) {
  return text.split(/\s+/).filter((word) => WORD.test(word)).length >= SENTENCE_WORDS;
}

/**
 * What an expression may come to.
 * @param {Expression} expression
 * @returns {readonly Expression[]}
 */
function outcomes(expression) {
  switch (expression.type) {
    case 'ConditionalExpression':
      return [...outcomes(expression.consequent), ...outcomes(expression.alternate)];
    case 'LogicalExpression':
      return [...outcomes(expression.left), ...outcomes(expression.right)];
    default:
      return [expression];
  }
}

/**
 * The text that stands in the code itself; a digit for each value put into it, null where it is no text.
 * @param {Expression | TemplateLiteral} node
 */
function staticText(node) {
  if (node.type === 'TemplateLiteral') return node.quasis.map(cooked).join('0');
  return node.type === 'Literal' && typeof node.value === 'string' ? node.value : null;
}

/**
 * @param {Node} node
 * @param {readonly Node[]} parents  outermost first
 */
function isForPrograms(node, parents) {
  const parent = parents.at(-1);
  if (parent === undefined) return false;
  // What imports and exports call a module's name.
  if ('source' in parent && parent.source === node) return true;
  if (isCutUp(parent) || isStepTaker(parents) || /^TS.*Type$/.test(parent.type)) return true;
  return parents.some((one) => isWrongCall(one) || isConsole(one) || isStyle(one));
}

/** @param {Node} node  a list of words in one string */
function isCutUp(node) {
  return (
    node.type === 'MemberExpression' && node.property.type === 'Identifier' && node.property.name === 'split'
  );
}

/** @param {readonly Node[]} parents  outermost first, of what may be the step or one of several */
function isStepTaker(parents) {
  const call = parents.findLast(({ type }) => type !== 'ConditionalExpression');
  return (
    call?.type === 'CallExpression' &&
    call.callee.type === 'MemberExpression' &&
    call.callee.property.type === 'Identifier' &&
    STEP_TAKERS.has(call.callee.property.name)
  );
}

/** @param {Node} node  an error that names a programmer's fault, made or derived from */
function isWrongCall(node) {
  const kind =
    node.type === 'NewExpression' ? node.callee : node.type === 'ClassDeclaration' ? node.superClass : null;
  return kind?.type === 'Identifier' && ['RangeError', 'TypeError'].includes(kind.name);
}

/** @param {Node} node */
function isConsole(node) {
  return (
    node.type === 'CallExpression' &&
    node.callee.type === 'MemberExpression' &&
    node.callee.object.type === 'Identifier' &&
    node.callee.object.name === 'console'
  );
}

/** @param {Node} node */
function isStyle(node) {
  return (
    node.type === 'TaggedTemplateExpression' && node.tag.type === 'Identifier' && node.tag.name === 'css'
  );
}
