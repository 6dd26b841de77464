import type { FunctionRecord } from "./record";
import { askedAs } from "./askedAs";
import { synonyms } from "./synonyms";

const wordsIn = (text: string): string[] => text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];

/** Word without the endings that change nothing for a search: "filters", "filling" and "filled" are "fill…" alike. */
const stem = (word: string): string => {
  if (word.length < 4 || /\d/.test(word)) return word;
  const cut = word
    .replace(/ies$/, "y")
    .replace(/(ss|sh|ch|x)es$/, "$1")
    .replace(/([^su])s$/, "$1")
    .replace(/(.{3})(?:ing|ed)$/, "$1")
    .replace(/([bdgmnprt])\1$/, "$1");
  return cut.length > 3 ? cut.replace(/e$/, "") : cut;
};

const stemsIn = (text: string): string[] => wordsIn(text).map(stem);

/** Words of a question that name nothing. */
const fillers = new Set(
  stemsIn(
    "a an and any are as at be been by can could do does did for from get give had has have how i if in into is it its just let long make many may me much must my need of on one or our per shall should so some such take tell than that the their them then there these they this those to us use was we were what when where which while who why will with work would you your",
  ),
);

interface Field {
  readonly stems: ReadonlySet<string>;
  readonly worth: number;
}

interface Indexed {
  readonly record: FunctionRecord;
  readonly name: string;
  readonly fields: readonly Field[];
  /** Each phrase of `askedAs`, the words that tell something alone. */
  readonly phrases: readonly (readonly string[])[];
}

const telling = (stems: readonly string[]): string[] => stems.filter((each) => !fillers.has(each));

const indexOf = (record: FunctionRecord): Indexed => {
  const field = (text: string, worth: number): Field => ({ stems: new Set(stemsIn(text)), worth });
  const asked = askedAs[record.id] ?? "";
  const choices = record.arguments.map((argument) => (argument.choices ?? []).join(" ")).join(" ");
  return {
    record,
    name: record.id.toLowerCase(),
    fields: [
      field(record.id, 8),
      field(asked, 6),
      field(record.description, 4),
      field(record.arguments.map((argument) => `${argument.name} ${argument.description}`).join(" "), 2),
      field(`${record.group} ${record.result.description} ${record.rule} ${record.caution ?? ""} ${choices}`, 1),
    ],
    phrases: asked.split(";").map((phrase) => telling(stemsIn(phrase))),
  };
};

const hit = ({ fields }: Indexed, term: string): number => {
  let best = 0;
  for (const { stems, worth } of fields) {
    if (worth <= best) continue;
    if (stems.has(term)) best = worth;
    else if (term.length > 2)
      for (const each of stems)
        if (each.startsWith(term)) best = Math.max(best, worth * (0.4 + (0.5 * term.length) / each.length));
  }
  return best;
};

const synonymLines = synonyms.map((line) => line.map(stemsIn));

/** What means the same as a term, each as its words. */
const alike = (term: string): readonly (readonly string[])[] => {
  const found: (readonly string[])[] = [];
  for (const line of synonymLines)
    if (line.some((words) => words.length === 1 && words[0] === term))
      found.push(...line.filter((words) => !(words.length === 1 && words[0] === term)));
  return found;
};

/** Two neighbouring words of a question that stand as one in a line of synonyms ("power cut"). */
const spokenPairs = (terms: readonly string[]): readonly (readonly string[])[] => {
  const found: (readonly string[])[] = [];
  for (const line of synonymLines)
    for (const words of line)
      if (words.length > 1 && words.every((word) => terms.includes(word)))
        found.push(...line.filter((other) => other !== words));
  return found;
};

/** A one-letter slip in a word of five letters or more: one letter more, less or other, or two exchanged. */
const isSlip = (typed: string, word: string): boolean => {
  if (typed.length < 5 || Math.abs(typed.length - word.length) > 1) return false;
  let at = 0;
  while (at < typed.length && typed[at] === word[at]) at++;
  const [rest, other] = [typed.slice(at), word.slice(at)];
  return (
    rest.slice(1) === other.slice(1) ||
    rest.slice(1) === other ||
    rest === other.slice(1) ||
    (rest.slice(2) === other.slice(2) && rest[0] === other[1] && rest[1] === other[0])
  );
};

const synonymWorth = 0.6;
/** Results that are worth less than this share of the best are left out, so that a list ends where it stops to help. */
const keptShare = 0.18;

/**
 * Makes the search of pane, sheet and help page. A function is found by any of the words typed (as a word, the start of one,
 * or a synonym); the more of them it holds, the rarer they are and the nearer to its name they stand, the higher it comes.
 * Equals stand in catalogue order. An empty query gives the whole catalogue.
 */
export const makeSearch = (catalogue: readonly FunctionRecord[]): ((query: string) => FunctionRecord[]) => {
  const index = catalogue.map(indexOf);
  const known = new Set<string>();
  for (const { fields } of index) for (const { stems } of fields) stems.forEach((each) => known.add(each));
  for (const line of synonymLines) for (const words of line) words.forEach((each) => known.add(each));

  const asKnown = (term: string): string => {
    if (known.has(term) || [...known].some((word) => word.startsWith(term))) return term;
    return [...known].find((word) => isSlip(term, word)) ?? term;
  };

  return (query) => {
    const typed = wordsIn(query.replace(/^\s*=?\s*oxygen\./i, ""));
    if (typed.length === 0) return [...catalogue];
    const typedName = typed.join("_");
    const stems = typed.map(stem);
    const terms = [...new Set((telling(stems).length > 0 ? telling(stems) : stems).map(asKnown))];

    const worths = terms.map((term) => {
      const others = alike(term);
      return index.map((each) => {
        let best = hit(each, term);
        for (const words of others)
          best = Math.max(best, synonymWorth * Math.min(...words.map((word) => hit(each, word))));
        return best;
      });
    });
    const pairs = spokenPairs(terms);
    const rarity = worths.map((row) => {
      const holding = row.filter((worth) => worth >= 2).length;
      return Math.log(1 + index.length / (1 + holding));
    });
    const found = index.map((each, at) => {
      let total = 0;
      let held = 0;
      terms.forEach((_, number) => {
        const worth = worths[number]![at]!;
        if (worth > 0) held++;
        total += worth * rarity[number]!;
      });
      for (const words of pairs) total += synonymWorth * Math.min(...words.map((word) => hit(each, word)));
      const phrase = each.phrases.reduce((best, words) => {
        if (words.length === 0 || !words.every((word) => terms.includes(word))) return best;
        return Math.max(best, (words.length / terms.length) ** 2);
      }, 0);
      total = total * (0.5 + (0.5 * held) / terms.length) * (1 + phrase);
      const named = each.name === typedName ? 2 : each.name.startsWith(typedName) ? 1 : 0;
      return { record: each.record, named, total };
    });
    const best = Math.max(...found.map(({ total }) => total));
    return found
      .filter(({ named, total }) => named > 0 || (total > 0 && total >= best * keptShare))
      .sort((one, other) => other.named - one.named || other.total - one.total)
      .map(({ record }) => record);
  };
};
