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

const asWords = (name: string): string => `_${name.replace(/\./g, "_")}_`;

/** One name has all the words of the other, in one run: CANNULA and CANNULA_FIO2, but not SUM and SUMMARY. */
const holdsWords = (oneAsWords: string, otherAsWords: string): boolean =>
  oneAsWords.indexOf(otherAsWords) >= 0 || otherAsWords.indexOf(oneAsWords) >= 0;

/**
 * The name that is most likely meant by a mistyped one: one that has its words or whose words it has first, then the
 * fewest edits, then list order. Undefined where no name has its words or is within a third of its letters.
 */
export function nearestName(typed: string, names: readonly string[]): string | undefined {
  const typedAsWords = asWords(typed);
  const most = Math.max(1, Math.round(typed.length / 3));
  let nearest: string | undefined;
  let least = Infinity;
  for (const name of names) {
    const related = typed.length >= 3 && holdsWords(typedAsWords, asWords(name));
    if (!related && Math.abs(name.length - typed.length) > most) continue;
    // The words that one has beyond the other are all that is to be edited; a long text is never compared letter by letter.
    const distance = related ? Math.abs(name.length - typed.length) : editDistance(typed, name);
    if (!related && distance > most) continue;
    const rank = distance - (related ? 1000 : 0);
    if (rank < least) {
      least = rank;
      nearest = name;
    }
  }
  return nearest;
}
