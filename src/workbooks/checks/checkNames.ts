/** Names that a book with checks defines. Cells named Headline… are what a reader goes by; all of them hang on the total. */
export const checkNames = {
  /** How many checks found something. */
  total: "CheckTotal",
  /** "CHECK INPUTS: Inputs!B8 (Liquid in the plants) is blank", or nothing. */
  words: "CheckWords",
  headline: "Headline",
} as const;

/** What a figure says while something is to be checked. */
export const checkFirst = "CHECK INPUTS";

const bare = (formula: string): string => formula.replace(/^=/, "");

/** Words that only stand while every check holds; else which entry to look at. */
export const gated = (formula: string): string =>
  `=IF(${checkNames.total}>0,${checkNames.words},IFERROR(${bare(formula)},"${checkFirst}: no answer"))`;

/** A figure beside its label, where there is no room for more than two words. */
export const gatedFigure = (formula: string): string =>
  `=IF(${checkNames.total}>0,"${checkFirst}",IFERROR(${bare(formula)},"${checkFirst}"))`;
