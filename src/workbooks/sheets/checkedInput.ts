import { input, tableInput, type CellDescription, type Scalar, type Validation } from "../writer";

export type InputLooks = Omit<CellDescription, "role" | "value" | "formula" | "validation"> & { inTable?: boolean };

/** An input cell with a rule for what it may hold. */
export const checkedInput = (
  value: Scalar | undefined,
  validation: Validation,
  { inTable, ...looks }: InputLooks = {},
): CellDescription => (inTable ? tableInput : input)(value, { ...looks, validation });
