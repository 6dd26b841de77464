import type { FunctionRecord } from "../catalogue/record";
import { synonyms } from "./synonyms";

interface Indexed {
  record: FunctionRecord;
  name: string;
  /** Each place a word may stand, with what a hit there is worth. */
  fields: { words: string[]; worth: number }[];
}

const wordsOf = (text: string): string[] => text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];

/** Words of a question that name nothing. */
const fillers = new Set(
  "a an and are at be can did do does for from how i in is it its long many me much my of our take the this to was we what will with".split(
    " ",
  ),
);

const indexOf = (record: FunctionRecord): Indexed => ({
  record,
  name: record.id.toLowerCase(),
  fields: [
    { words: wordsOf(record.id), worth: 8 },
    { words: wordsOf(record.description), worth: 4 },
    {
      words: wordsOf(record.arguments.map((argument) => `${argument.name} ${argument.description}`).join(" ")),
      worth: 2,
    },
    { words: wordsOf(`${record.group} ${record.result.description} ${record.rule} ${record.caution ?? ""}`), worth: 1 },
  ],
});

const hit = (indexed: Indexed, term: string): number => {
  let best = 0;
  for (const { words, worth } of indexed.fields) {
    if (words.includes(term)) best = Math.max(best, worth * 2);
    else if (words.some((word) => word.startsWith(term))) best = Math.max(best, worth);
  }
  return best;
};

/** The term and whatever means the same; a synonym counts half. */
const score = (indexed: Indexed, term: string): number => {
  let best = hit(indexed, term);
  for (const line of synonyms) {
    if (!line.some((word) => word === term || wordsOf(word).includes(term))) continue;
    for (const word of line) {
      const parts = wordsOf(word);
      const worths = parts.map((part) => hit(indexed, part));
      if (Math.min(...worths) > 0) best = Math.max(best, Math.min(...worths) / 2);
    }
  }
  return best;
};

/**
 * Makes a search over the catalogue. Every word typed must be found, but for fillers such as "how" and "the" (as a word, the start of one, or a synonym);
 * the best hits come first, equals in catalogue order. An empty query gives the whole catalogue.
 */
export const makeSearch = (catalogue: readonly FunctionRecord[]): ((query: string) => FunctionRecord[]) => {
  const index = catalogue.map(indexOf);
  return (query) => {
    const terms = wordsOf(query.replace(/^\s*=?\s*oxygen\./i, ""));
    if (terms.length === 0) return [...catalogue];
    const typedName = terms.join("_");
    const telling = terms.filter((term) => !fillers.has(term));
    const wanted = telling.length > 0 ? telling : terms;
    return index
      .map((indexed) => {
        const worths = wanted.map((term) => score(indexed, term));
        const named = indexed.name === typedName ? 1000 : indexed.name.startsWith(typedName) ? 100 : 0;
        const total = worths.includes(0) ? 0 : worths.reduce((sum, worth) => sum + worth, 0);
        return { record: indexed.record, total: total + named };
      })
      .filter(({ total }) => total > 0)
      .sort((one, other) => other.total - one.total)
      .map(({ record }) => record);
  };
};
