import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const PROJECT = join(dirname(fileURLToPath(import.meta.url)), '../..');

/**
 * Words for Node that start a command as `npm run` does, without npm's own start-up and settings.
 * @param program  in its place
 */
export function commandWords(command: 'analyse' | 'solve', program?: string): string[] {
  const { scripts } = JSON.parse(readFileSync(join(PROJECT, 'package.json'), 'utf8')) as {
    scripts: Record<typeof command, string>;
  };
  const [node, ...words] = scripts[command].split(' ');
  const script = words.pop();
  if (node !== 'node' || script === undefined) throw new Error(`not run by Node: ${scripts[command]}`);
  return [...words, program ?? join(PROJECT, script)];
}
