import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const PROJECT = join(dirname(fileURLToPath(import.meta.url)), '../..');

/** Words for Node that start `analyse` as `npm run analyse` does, without npm's own start-up. @param program  in its place */
export function analyseWords(program?: string): string[] {
  const { scripts } = JSON.parse(readFileSync(join(PROJECT, 'package.json'), 'utf8')) as {
    scripts: { analyse: string };
  };
  const [node, ...words] = scripts.analyse.split(' ');
  const command = words.pop();
  if (node !== 'node' || command === undefined) throw new Error(`not run by Node: ${scripts.analyse}`);
  return [...words, program ?? join(PROJECT, command)];
}
