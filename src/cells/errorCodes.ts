/**
 * The codes of an error cell and what each means to a reader who sees only the code. Excel's own, as a file and
 * `CustomFunctions.Error` may hold them: ECMA-376 part 1, 18.17.3 "Error values".
 */
const fileErrorWords = {
  "#DIV/0!": "a division by zero",
  "#N/A": "no value is available",
  "#NAME?": "a name in the formula is not known here",
  "#NULL!": "the two ranges have no cell in common",
  "#NUM!": "a number is outside what the function takes",
  "#REF!": "a reference points to a cell that does not exist, or to no spill",
  "#VALUE!": "an input is of the wrong kind",
};

/** Codes that Excel shows and a file keeps as one of the codes above. */
const shownErrorWords = {
  "#SPILL!": "the result needs cells that are not empty, or leaves the sheet",
  "#CALC!": "the result is an empty array",
};

/** Codes of the local engine alone. */
const engineErrorWords = {
  "#CYCLE!": "the formula depends on itself",
  "#ERROR!": "the formula cannot be read: look at its parentheses, commas and quotes",
};

export const errorWords: { readonly [code: string]: string | undefined } = {
  ...fileErrorWords,
  ...shownErrorWords,
  ...engineErrorWords,
};

const holds = (words: object, code: string): boolean => Object.prototype.hasOwnProperty.call(words, code);

/** Is this the text of an error that a file, and Excel's runtime, can carry? */
export const isFileError = (code: string): boolean => holds(fileErrorWords, code);

/** Is this the text of an error that Excel shows? */
export const isExcelError = (code: string): boolean => isFileError(code) || holds(shownErrorWords, code);

/** Is this the text of an error that a cell can show here? */
export const isErrorCode = (code: string): boolean => holds(errorWords, code);
