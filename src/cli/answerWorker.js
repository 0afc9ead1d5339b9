import { register } from 'tsx/esm/api';

// A worker thread starts without the reader of TypeScript that the main thread was started with.
register();
const { default: answerFile } = await import('./answerFile.ts');

export default answerFile;
