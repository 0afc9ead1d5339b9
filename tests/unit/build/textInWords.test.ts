import { RuleTester } from 'eslint';
import { parser } from 'typescript-eslint';
import { describe, it } from 'vitest';
import { textInWords } from '../../../build/lint/textInWords.js';

RuleTester.describe = describe;
RuleTester.it = it;

const reports = (...texts: readonly string[]) =>
  texts.map((text) => ({ message: `Text for people belongs into src/words: “${text}”.` }));

new RuleTester({ languageOptions: { parser } }).run('text-in-words', textInWords, {
  valid: [
    'html`<p class="lead small">${words.lead} · ${speed}</p>`',
    'html`<p class=${isNear ? "near" : "far"}>± ${value}</p>`',
    'html`<button aria-label=${words.remove(1)} aria-pressed="true">×</button>`',
    'svg`<path class="stem" d=${`M${x} 0 V${y}`} />`',
    'css`.note::before { content: "two more words"; }`',
    'const key = "new length";',
    'import { a } from "./a b c.ts"; export * from "one two three";',
    'type Noise = "one of three" | "a full class";',
    'throw new RangeError(`length must be above 0, got ${length}`);',
    'class OutOfRange extends RangeError { constructor(n) { super(`the length is ${n}`); } }',
    'console.error("This part has failed:", error);',
    'const yes = new Set("yes true ja oui".split(" "));',
    'session.change(isOut ? "put mark back in" : "leave mark out", (now) => now);',
    'const font = "600 12px sans-serif";',
  ],
  invalid: [
    { code: 'html`<h2>Forks</h2>`', errors: reports('Forks') },
    { code: 'html`<p>${n} of\n ${all} marks</p>`', errors: reports('of', 'marks') },
    { code: 'svg`<text x="1">cm</text>`', errors: reports('cm') },
    { code: 'html`<input title="Name of ${part}" placeholder=Name />`', errors: reports('Name of', 'Name') },
    { code: 'html`<p>${isOn ? "Stop" : name ?? `Listen ${n}`}</p>`', errors: reports('Stop', 'Listen 0') },
    { code: 'html`<p aria-label=${isOn ? "Stop at once" : nothing}></p>`', errors: reports('Stop at once') },
    { code: 'tell("No marks yet.");', errors: reports('No marks yet.') },
    { code: 'tell(`Type ${n} lengths and go on`);', errors: reports('Type 0 lengths and go on') },
    { code: 'session.change(step, () => tell("No marks yet."));', errors: reports('No marks yet.') },
    { code: 'throw new Error("The file is empty.");', errors: reports('The file is empty.') },
  ],
});
