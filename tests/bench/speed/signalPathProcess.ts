/** What `benchSignalPath` measures, as JSON on standard output: to be built and run by builtSignalPath.ts. */
import { benchSignalPath } from './signalPath.ts';

console.log(JSON.stringify(await benchSignalPath()));
