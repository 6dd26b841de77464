/** Where the Start sheets send the reader of a new computer. */
export const newComputer =
  "On a new computer, and after an update, open this-excel.xlsx first: it tells whether this Excel does what the sheets count on, and what to do where it does not.";
