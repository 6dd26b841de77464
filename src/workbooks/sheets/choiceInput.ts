import { input, tableInput, type CellDescription, type Scalar } from "../writer";

type Extra = Omit<CellDescription, "role" | "value" | "formula" | "validation">;

/** An input cell with a list of what it may hold. */
export const choiceInput = (
  value: Scalar,
  title: string,
  choices: readonly string[],
  words: string,
  extra: Extra & { inTable?: boolean } = {},
): CellDescription => {
  const { inTable, ...looks } = extra;
  return (inTable ? tableInput : input)(value, {
    ...looks,
    validation: {
      rule: { kind: "list", values: choices },
      blankPasses: false,
      prompt: { title, words },
      refusal: { title, words: `Choose one of: ${choices.join(" · ")}.` },
    },
  });
};

/** yes or no, which the functions take for TRUE and FALSE. */
export const yesOrNo = (value: boolean, title: string, words: string): CellDescription =>
  choiceInput(value ? "yes" : "no", title, ["yes", "no"], words, { align: "center" });
