import { functions } from "../catalogue/generated/functions";
import type { ArgumentRecord, FunctionRecord } from "../catalogue/record";
import { element } from "./element";
import { shownAnswer } from "./shownAnswer";
import { callFormula, typedArgument, type TypedArgument } from "./typedArgument";

export const callOf = new Map(functions);

export interface FormHost {
  /** Undefined in a plain browser. */
  readonly workbook?: {
    selection(): Promise<string>;
    read(reference: string): Promise<unknown[][]>;
  };
  readonly decimalSign: string;
  /** "Insert" or "Copy". */
  readonly verb: string;
  use(formula: string, size: { rows: number; columns: number }): void;
  say(words: string): void;
}

interface Field {
  readonly argument: ArgumentRecord;
  readonly input: HTMLInputElement;
}

const placeholder = ({ optional, default: standing, choices, shape, unit }: ArgumentRecord): string => {
  if (standing !== undefined) return `${String(standing)} if left empty`;
  if (optional) return "may be left empty";
  if (choices) return choices.slice(0, 3).join(", ");
  if (shape === "range") return "such as B4:B12 or {1;2;3}";
  return unit ? `in ${unit}, or with a unit` : "";
};

/** A form for one function: a field an argument, the answer as it is typed, and the formula as it will stand. */
export function makeFunctionForm(record: FunctionRecord, host: FormHost): HTMLElement {
  const fields: Field[] = record.arguments.map((argument) => ({
    argument,
    input: element("input", {
      id: `field-${argument.name}`,
      type: "text",
      autocomplete: "off",
      spellcheck: "false",
      placeholder: placeholder(argument),
      "aria-describedby": `about-${argument.name}`,
      "aria-required": argument.optional ? "false" : "true",
      ...(argument.choices ? { list: `choices-${argument.name}` } : {}),
    }),
  }));
  const formulaLine = element("code", { class: "formula", id: "form-formula" });
  const answerPlace = element("div", { id: "form-answer", role: "status" });
  let size = { rows: 1, columns: 1 };
  let asked = 0;

  const typed = (): TypedArgument[] =>
    fields.map(({ argument, input }) =>
      typedArgument(input.value, argument, { decimalSign: host.decimalSign, inWorkbook: host.workbook !== undefined }),
    );

  const missing = (args: readonly TypedArgument[]): string[] =>
    fields.flatMap(({ argument }, index) =>
      !argument.optional && args[index]!.kind === "omitted" ? [argument.name] : [],
    );

  const answer = async (): Promise<void> => {
    const ticket = ++asked;
    const args = typed();
    formulaLine.textContent = callFormula(record, args);
    const open = missing(args);
    if (open.length > 0) {
      answerPlace.replaceChildren(element("p", { class: "note" }, `Still to fill in: ${open.join(", ")}.`));
      return;
    }
    try {
      const cells = await Promise.all(
        args.map((each) =>
          each.kind === "omitted"
            ? undefined
            : each.kind === "constant"
              ? each.cells
              : host.workbook!.read(each.formula),
        ),
      );
      if (ticket !== asked) return;
      const result = callOf.get(record.id)!(...cells) as unknown[][];
      size = { rows: result.length, columns: result[0]!.length };
      answerPlace.replaceChildren(shownAnswer(result, record));
    } catch (fault) {
      if (ticket !== asked) return;
      const words = fault instanceof Error ? fault.message : "";
      answerPlace.replaceChildren(element("p", { class: "answer refused" }, `That range could not be read. ${words}`));
    }
  };

  const pick = async (input: HTMLInputElement): Promise<void> => {
    try {
      input.value = await host.workbook!.selection();
      await answer();
      input.focus();
    } catch {
      host.say("Excel did not tell the selection. Finish editing the cell, select a range and try again.");
    }
  };

  const use = async (): Promise<void> => {
    const args = typed();
    const [first] = missing(args);
    if (first !== undefined) {
      host.say(`${first} is still to be filled in.`);
      fields.find(({ argument }) => argument.name === first)!.input.focus();
      return;
    }
    host.use(callFormula(record, args), size);
  };

  const form = element(
    "form",
    { "aria-labelledby": "function-name", class: "fields" },
    ...fields.map(({ argument, input }) =>
      element(
        "div",
        { class: "field" },
        element(
          "label",
          { for: input.id },
          argument.name.replace(/_/g, " "),
          argument.unit ? ` [${argument.unit}]` : "",
        ),
        element(
          "div",
          { class: "entry" },
          input,
          host.workbook
            ? element(
                "button",
                {
                  type: "button",
                  onclick: () => void pick(input),
                  "aria-label": `Use selection for ${argument.name}`,
                },
                "Use selection",
              )
            : null,
        ),
        argument.choices
          ? element(
              "datalist",
              { id: `choices-${argument.name}` },
              ...argument.choices.map((choice) => element("option", { value: choice })),
            )
          : null,
        element("p", { class: "note", id: `about-${argument.name}` }, argument.description),
      ),
    ),
    answerPlace,
    formulaLine,
    element(
      "button",
      { type: "submit", class: "main" },
      host.verb === "Insert" ? "Insert into the active cell" : "Copy the formula",
    ),
  );
  form.addEventListener("input", () => void answer());
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    void use();
  });
  void answer();
  return form;
}
