import { formats, type CellDescription, type Validation } from "../writer";
import { checkedInput, type InputLooks } from "./checkedInput";

/** 2000-01-01 to 2099-12-31. */
export const dateLimits = { least: 36526, most: 73050 };

export const dateRule = (title: string, words: string, blankPasses = false): Validation => ({
  rule: { kind: "date", ...dateLimits },
  blankPasses,
  prompt: { title, words },
  refusal: { title, words: "Enter a date from 2000-01-01 to 2099-12-31." },
});

/** An input cell that holds a date. */
export const dateInput = (
  value: number | undefined,
  title: string,
  words: string,
  looks?: InputLooks,
): CellDescription =>
  checkedInput(value, dateRule(title, words, value === undefined), { format: formats.date, ...looks });
