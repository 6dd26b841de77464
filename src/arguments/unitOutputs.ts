import { refuse } from "./argument";

/** Of outputs whose last one equals the sum of the others: counting it as a unit would flatter the supply. */
export const totalRow = refuse(
  "unit_outputs",
  "looks like a total row at its end: the last unit gives as much as all others together. Leave the total out; if it is a unit, put the largest first",
);
