// @vitest-environment node
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { format, resolveConfig } from 'prettier';
import { describe, expect, it } from 'vitest';
import { OFFLINE_CLASSIFIER, ONLINE_CLASSIFIER } from '../../../src/resonance/passages/perceptronWeights.ts';
import { weightsFile } from '../../bench/detector/weightsFile.ts';

const FILE = resolve(import.meta.dirname, '../../../src/resonance/passages/perceptronWeights.ts');

describe('the file of the classifiers’ weights', () => {
  it('is what the script that trains them writes, not edited by hand', async () => {
    const written = weightsFile({ offline: OFFLINE_CLASSIFIER, online: ONLINE_CLASSIFIER });
    const formatted = await format(written, { ...(await resolveConfig(FILE)), parser: 'typescript' });
    expect(readFileSync(FILE, 'utf8')).toBe(formatted);
  });
});
