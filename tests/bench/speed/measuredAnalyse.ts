/** `analyse` for a 512 Hz fork, which tells the process's peak memory (kB) on standard error when it is done. */
process.argv = [...process.argv.slice(0, 2), '--fork', '512', '--json', ...process.argv.slice(2)];
process.on('exit', () => process.stderr.write(`peak ${process.resourceUsage().maxRSS}\n`));
await import('../../../src/cli/analyse.ts');
export {};
