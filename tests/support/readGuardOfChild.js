import { guardReads } from './readGuard.js';

// What a Node does that a test started is the test's doing.
guardReads({});
