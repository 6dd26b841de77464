/** Insertions, deletions, changes and swaps of neighbours between two words (optimal string alignment). */
export function editDistance(from: string, to: string): number {
  let before: number[] = [];
  let above = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (let row = 1; row <= from.length; row++) {
    const line = [row];
    for (let column = 1; column <= to.length; column++) {
      const same = from[row - 1] === to[column - 1];
      let least = Math.min(above[column]! + 1, line[column - 1]! + 1, above[column - 1]! + (same ? 0 : 1));
      const swapped = row > 1 && column > 1 && from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1];
      if (swapped) least = Math.min(least, before[column - 2]! + 1);
      line.push(least);
    }
    before = above;
    above = line;
  }
  return above[to.length]!;
}

/** The name most like what was typed: one that holds it or is held by it first, then the fewest edits, then list order. */
export function nearestName(typed: string, names: readonly string[]): string | undefined {
  let nearest: string | undefined;
  let least = Infinity;
  for (const name of names) {
    const inside = typed.length >= 3 && (name.includes(typed) || typed.includes(name));
    const distance = editDistance(typed, name) - (inside ? 100 : 0);
    if (distance < least) {
      least = distance;
      nearest = name;
    }
  }
  return nearest;
}
