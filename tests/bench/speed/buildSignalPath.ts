import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { buildTarget } from '../../../build/browserFloor.ts';

/** Builds signalPathProcess.ts as one file for Node, as the page is built for its browsers. Takes the folder to write to. */
await build({
  configFile: false,
  logLevel: 'error',
  ssr: { noExternal: true },
  build: {
    ssr: fileURLToPath(new URL('./signalPathProcess.ts', import.meta.url)),
    target: buildTarget(),
    outDir: process.argv[2],
    copyPublicDir: false,
    rolldownOptions: { output: { entryFileNames: '[name].mjs' } },
  },
});
