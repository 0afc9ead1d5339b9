/** fork-1, fork-2…: one that isn't taken, which is taken from now on. */
export function freeId(stem: string, taken: Set<string>): string {
  let number = taken.size + 1;
  while (taken.has(`${stem}-${number}`)) number += 1;
  const id = `${stem}-${number}`;
  taken.add(id);
  return id;
}
