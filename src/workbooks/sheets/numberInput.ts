import { input, tableInput, type CellDescription, type Validation } from "../writer";

interface NumberRules {
  /** What the number is, with its unit: the prompt's words. */
  words: string;
  least: number;
  most: number;
  /** What the refusal calls the unit: "L/h". */
  unit?: string;
  whole?: boolean;
}

const shown = (value: number): string => value.toLocaleString("en-GB", { maximumFractionDigits: 6 });

/** Asks for a number between two ends and says so when it is refused; an emptied cell is refused too. */
export const numberRule = (
  title: string,
  { words, least, most, unit = "", whole = false }: NumberRules,
): Validation => ({
  rule: { kind: whole ? "whole" : "number", least, most },
  blankPasses: false,
  prompt: { title, words },
  refusal: {
    title,
    words: `Enter a${whole ? " whole" : ""} number from ${shown(least)} to ${shown(most)}${unit ? ` ${unit}` : ""}.`,
  },
});

type Extra = Omit<CellDescription, "role" | "value" | "formula" | "validation">;

/** An input cell that holds a number. */
export const numberInput = (
  value: number,
  title: string,
  rules: NumberRules,
  extra: Extra & { inTable?: boolean } = {},
): CellDescription => {
  const { inTable, ...looks } = extra;
  return (inTable ? tableInput : input)(value, { ...looks, validation: numberRule(title, rules) });
};
