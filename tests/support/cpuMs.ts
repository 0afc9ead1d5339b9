/** Work of this process so far, ms: unlike the clock it doesn't count what else the machine does. */
export function cpuMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}
