import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { LANGUAGE_TAGS } from '../../../src/words/language.ts';
import type { Language } from '../../../src/words/language.ts';

const WORDS = 'src/words';
/** They collect or help, and say nothing. */
const NO_TEXTS = new Set(['first.ts', 'later.ts', 'grammar.ts']);

/** One text of a language: a string, or a function that makes one. */
export interface CatalogueText {
  readonly language: Language;
  /** Names of its section and of all that it stands in, as code writes them. */
  readonly path: readonly string[];
  /** The parts that are text, what varies replaced by nothing. */
  readonly said: readonly string[];
  /** Of a function: its parameters' names, and those of them that it uses. */
  readonly parameters: readonly string[];
  readonly used: readonly string[];
}

/** Every text of every language, as its source has it. */
export function catalogueTexts(): readonly CatalogueText[] {
  return LANGUAGE_TAGS.flatMap((language) =>
    readdirSync(join(WORDS, language), { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.ts') && !NO_TEXTS.has(file))
      .flatMap((file) => textsOf(language, join(WORDS, language, file))),
  );
}

function textsOf(language: Language, file: string): readonly CatalogueText[] {
  const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
  const texts: CatalogueText[] = [];
  const take = (path: readonly string[], node: ts.Expression): void => {
    const value = bare(node);
    if (ts.isObjectLiteralExpression(value)) {
      for (const property of value.properties) {
        if (ts.isPropertyAssignment(property)) take([...path, nameOf(property.name)], property.initializer);
      }
      return;
    }
    if (ts.isArrayLiteralExpression(value)) {
      value.elements.forEach((element, index) => take([...path, String(index)], element));
      return;
    }
    const isFunction = ts.isArrowFunction(value);
    const parameters = isFunction ? value.parameters.flatMap(({ name }) => names(name)) : [];
    const body = isFunction ? value.body : value;
    const used = parameters.filter((name) => identifiers(body).has(name));
    texts.push({ language, path, said: strings(body), parameters, used });
  };
  for (const statement of source.statements) {
    if (!ts.isVariableStatement(statement) || statement.modifiers === undefined) continue;
    for (const { name, initializer } of statement.declarationList.declarations) {
      if (ts.isIdentifier(name) && initializer !== undefined) take([name.text], initializer);
    }
  }
  return texts;
}

/** Without what only the compiler reads. */
function bare(node: ts.Expression): ts.Expression {
  return ts.isSatisfiesExpression(node) || ts.isAsExpression(node) || ts.isParenthesizedExpression(node)
    ? bare(node.expression)
    : node;
}

function nameOf(name: ts.PropertyName): string {
  return ts.isIdentifier(name) || ts.isStringLiteral(name) || ts.isNumericLiteral(name)
    ? name.text
    : name.getText();
}

function names(name: ts.BindingName): readonly string[] {
  if (ts.isIdentifier(name)) return [name.text];
  return name.elements.flatMap((element) => (ts.isBindingElement(element) ? names(element.name) : []));
}

function identifiers(node: ts.Node): ReadonlySet<string> {
  const found = new Set<string>();
  const visit = (inner: ts.Node): void => {
    if (ts.isIdentifier(inner)) found.add(inner.text);
    ts.forEachChild(inner, visit);
  };
  visit(node);
  return found;
}

function strings(node: ts.Node): readonly string[] {
  const found: string[] = [];
  const visit = (inner: ts.Node): void => {
    if (ts.isStringLiteralLike(inner)) found.push(inner.text);
    if (ts.isTemplateHead(inner) || ts.isTemplateMiddle(inner) || ts.isTemplateTail(inner))
      found.push(inner.text);
    ts.forEachChild(inner, visit);
  };
  visit(node);
  return found;
}
