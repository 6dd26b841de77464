import { formats, input, tableInput, type CellDescription, type Validation } from "../writer";

/** 2000-01-01 to 2099-12-31. */
const ends = { least: 36526, most: 73050 };

export const dateRule = (title: string, words: string, blankPasses = false): Validation => ({
  rule: { kind: "date", ...ends },
  blankPasses,
  prompt: { title, words },
  refusal: { title, words: "Enter a date from 2000-01-01 to 2099-12-31." },
});

type Extra = Omit<CellDescription, "role" | "value" | "formula" | "validation">;

/** An input cell that holds a date. */
export const dateInput = (
  value: number | undefined,
  title: string,
  words: string,
  extra: Extra & { inTable?: boolean } = {},
): CellDescription => {
  const { inTable, ...looks } = extra;
  return (inTable ? tableInput : input)(value, {
    format: formats.date,
    ...looks,
    validation: dateRule(title, words, value === undefined),
  });
};
