import js from '@eslint/js';
import { configs as litConfigs } from 'eslint-plugin-lit';
import { configs as wcConfigs } from 'eslint-plugin-wc';
import tseslint from 'typescript-eslint';
import { textInWords } from './build/lint/textInWords.js';

/** A style sheet in a string is no sentence. */
const STYLE_SHEET = 'src/report/labReport/labReportStyle.ts';

export default tseslint.config(
  { ignores: ['dist/', 'node_modules/', '.cache/', 'eslint.config.js', 'src/cli/answerWorker.js'] },
  js.configs.recommended,
  ...tseslint.configs.recommendedTypeChecked,
  litConfigs['flat/recommended'],
  wcConfigs['flat/recommended'],
  {
    languageOptions: {
      parserOptions: {
        project: [
          './tsconfig.json',
          './src/capture/worklet/tsconfig.json',
          './src/offline/worker/tsconfig.json',
        ],
        tsconfigRootDir: import.meta.dirname,
      },
    },
    rules: {
      eqeqeq: 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_' }],
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
    },
  },
  {
    files: ['src/**/*.ts'],
    ignores: ['src/words/**', 'src/cli/**', STYLE_SHEET],
    plugins: { bench: { rules: { 'text-in-words': textInWords } } },
    rules: { 'bench/text-in-words': 'error' },
  },
  // French parts its signs from the word by a space that doesn't break.
  {
    files: ['src/words/fr/**'],
    rules: { 'no-irregular-whitespace': ['error', { skipTemplates: true }] },
  },
  // It runs in a page, whose names TypeScript knows.
  { files: ['tests/engines/benchHand.js'], rules: { 'no-undef': 'off' } },
  // Lit calls a template's listeners with the element as `this`.
  { files: ['src/ui/**'], rules: { '@typescript-eslint/unbound-method': 'off' } },
);
