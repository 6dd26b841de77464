import type { CellDescription, Scalar } from "../writer";
import { checkedInput, type InputLooks } from "./checkedInput";

/** An input cell with a list of what it may hold. */
export const choiceInput = (
  value: Scalar,
  title: string,
  choices: readonly string[],
  words: string,
  looks?: InputLooks,
): CellDescription =>
  checkedInput(
    value,
    {
      rule: { kind: "list", values: choices },
      blankPasses: false,
      prompt: { title, words },
      refusal: { title, words: `Choose one of: ${choices.join(" · ")}.` },
    },
    looks,
  );

/** yes or no, which the functions take for TRUE and FALSE. */
export const yesOrNo = (value: boolean, title: string, words: string): CellDescription =>
  choiceInput(value ? "yes" : "no", title, ["yes", "no"], words, { align: "center" });
