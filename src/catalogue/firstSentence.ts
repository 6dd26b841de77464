/** The words up to the first full stop that ends a sentence, for lists of one line a function. */
export const firstSentence = (words: string): string => /^.*?\.(?=\s|$)/.exec(words)?.[0] ?? words;
