import { readFileSync, readdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

const UI = resolve(import.meta.dirname, '../../../src/ui');
/** Where the map of events stands, and what sends them. */
const EVENTS = join('parts', 'events.ts');

interface Listed {
  readonly file: string;
  readonly name: string;
}

const files = readdirSync(UI, { recursive: true, encoding: 'utf8' }).filter((path) => path.endsWith('.ts'));
const parsed = files.map((file) => ({ file, source: parse(readFileSync(join(UI, file), 'utf8')) }));

function parse(text: string): ts.SourceFile {
  return ts.createSourceFile('module.ts', text, ts.ScriptTarget.ES2022, true);
}

function everyNode(node: ts.Node): ts.Node[] {
  return [node, ...node.getChildren().flatMap(everyNode)];
}

/** What sends an event by itself: an event that is made, or handed on. */
function sentPast(source: ts.SourceFile): string[] {
  return everyNode(source)
    .filter(
      (node) =>
        (ts.isNewExpression(node) && /^(Custom)?Event$/.test(node.expression.getText())) ||
        (ts.isPropertyAccessExpression(node) && node.name.text === 'dispatchEvent'),
    )
    .map((node) => node.getText());
}

/** The names in `send(element, 'name', …)`. */
function sentNames(source: ts.SourceFile): string[] {
  return everyNode(source)
    .filter((node) => ts.isCallExpression(node))
    .filter(({ expression }) => expression.getText() === 'send')
    .flatMap(({ arguments: [, name] }) => (ts.isStringLiteral(name) ? [name.text] : []));
}

/** The names that a template listens to and a browser doesn't send: theirs have no hyphen. */
function heardNames(source: ts.SourceFile): string[] {
  return [...source.getText().matchAll(/[\s(]@([a-z]+(?:-[a-z]+)+)=\$/g)].map((match) => match[1]);
}

function everywhere(namesIn: (source: ts.SourceFile) => string[]): Listed[] {
  return parsed.flatMap(({ file, source }) => namesIn(source).map((name) => ({ file, name })));
}

function mappedNames(): string[] {
  const map = parsed.find(({ file }) => file === EVENTS)?.source.statements.find(ts.isInterfaceDeclaration);
  return (map?.members ?? []).map(({ name }) => (name as ts.Identifier | ts.StringLiteral).text);
}

describe('events of the page', () => {
  it('are sent by the one helper that checks their name and detail', () => {
    const past = everywhere(sentPast).filter(({ file }) => file !== EVENTS);
    expect(past).toEqual([]);
    expect(everywhere(sentNames).length).toBeGreaterThan(15);
  });

  it('are each sent somewhere', () => {
    const sent = new Set(everywhere(sentNames).map(({ name }) => name));
    expect([...sent].sort()).toEqual(mappedNames().sort());
  });

  it('are the only ones that a template listens to', () => {
    const heard = everywhere(heardNames);
    expect(heard.length).toBeGreaterThan(30);
    expect(heard.filter(({ name }) => !mappedNames().includes(name))).toEqual([]);
  });
});

describe('the check of events', () => {
  it('finds what is sent past the helper', () => {
    expect(sentPast(parse(`this.dispatchEvent(new CustomEvent('a'))`))).toEqual([
      'this.dispatchEvent',
      `new CustomEvent('a')`,
    ]);
    expect(
      sentPast(parse(`const one = new Event('a'); const send = part.dispatchEvent.bind(part);`)),
    ).toEqual([`new Event('a')`, 'part.dispatchEvent']);
    expect(sentPast(parse(`send(this, 'a')`))).toEqual([]);
  });
});
