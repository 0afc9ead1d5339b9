import { existsSync } from 'node:fs';
import { resolve } from 'node:path';

/** npm runs scripts in the project's folder; a path is meant from where the user stands. */
export function locate(file: string): string {
  const from = process.env['INIT_CWD'];
  const meant = from === undefined ? null : resolve(from, file);
  return meant !== null && existsSync(meant) ? meant : resolve(file);
}
