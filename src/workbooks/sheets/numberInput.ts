import type { CellDescription, Validation } from "../writer";
import { checkedInput, type InputLooks } from "./checkedInput";

interface NumberRules {
  /** What the number is, with its unit: the prompt's words. */
  words: string;
  least: number;
  most: number;
  /** What the refusal calls the unit: "L/h"; without it the refusal repeats the words. */
  unit?: string;
  whole?: boolean;
  /** The entry goes to functions alone, which read "35 psi" too. */
  units?: boolean;
}

/** As words give it: "20,000". */
export const readable = (value: number): string => value.toLocaleString("en-GB", { maximumFractionDigits: 6 });

/** Asks for a number between two ends and says so when it is refused; an emptied cell is refused too. */
export const numberRule = (
  title: string,
  { words, least, most, unit = "", whole = false, units = false }: NumberRules,
): Validation => ({
  rule: { kind: units ? "quantity" : whole ? "whole" : "number", least, most },
  blankPasses: false,
  prompt: { title, words },
  refusal: {
    title,
    words: `Enter a${whole ? " whole" : ""} number from ${readable(least)} to ${readable(most)}${unit ? ` ${unit}.` : `. ${words}`}${units ? " Or a number, a blank and its unit." : ""}`,
  },
});

/** An input cell that holds a number. */
export const numberInput = (value: number, title: string, rules: NumberRules, looks?: InputLooks): CellDescription =>
  checkedInput(value, numberRule(title, rules), looks);
