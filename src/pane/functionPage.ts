import type { ArgumentRecord, Example, FunctionRecord } from "../catalogue/record";
import { exampleResult } from "../catalogue/exampleResult";
import { namespace } from "../cells/namespace";
import { signature } from "../catalogue/readmeTable";
import { element } from "./element";

export interface PageActions {
  back(): void;
  open(id: string): void;
  /** What the first button does with a formula, in one word: "Insert" or "Copy". */
  verb: "Insert" | "Copy";
  use(formula: string): void;
  /** The form in which the function is filled in. */
  form: HTMLElement;
  isFavourite: boolean;
  /** Marks or unmarks; gives whether it is marked now. */
  toggleFavourite(): boolean;
}

const shownResult = (example: Example, result: FunctionRecord["result"]): Node => {
  const shown = exampleResult(example, result);
  if (shown.kind === "value") return element("b", {}, shown.text);
  if (shown.kind === "error") return element("span", {}, element("b", {}, shown.code), ` ${shown.words}`);
  const row = (cells: readonly Node[]): Node => element("tr", {}, ...cells);
  return element(
    "div",
    { class: "scroll", tabindex: "0", role: "group", "aria-label": "Result table" },
    element(
      "table",
      {},
      shown.head ? element("thead", {}, row(shown.head.map((cell) => element("th", { scope: "col" }, cell)))) : null,
      element("tbody", {}, ...shown.rows.map((cells) => row(cells.map((cell) => element("td", {}, cell))))),
    ),
  );
};

const part = (heading: string, ...content: (Node | string)[]): HTMLElement =>
  element("section", { class: "part" }, element("h3", {}, heading), ...content);

const words = (text: string): HTMLElement => element("p", {}, text);

const argumentEntry = (argument: ArgumentRecord): HTMLElement => {
  const notes = [argument.optional ? "optional" : "needed", argument.shape === "range" ? "a range" : ""];
  return element(
    "div",
    { class: "argument" },
    element(
      "dt",
      {},
      element("code", {}, argument.name),
      " ",
      element("span", { class: "note" }, notes.filter(Boolean).join(" · ")),
    ),
    element("dd", {}, argument.description, argument.choices ? ` (${argument.choices.join(", ")})` : null),
  );
};

const exampleEntry = (example: Example, record: FunctionRecord, actions: PageActions): HTMLElement =>
  element(
    "div",
    { class: "example" },
    element("code", { class: "formula" }, example.formula),
    element("div", { class: "result" }, "gives ", shownResult(example, record.result)),
    example.note ? element("div", { class: "note" }, example.note) : null,
    example.source ? element("div", { class: "note" }, `Value from: ${example.source}`) : null,
    element(
      "button",
      {
        type: "button",
        onclick: () => actions.use(example.formula),
        "aria-label": `${actions.verb} ${example.formula}`,
      },
      actions.verb,
    ),
  );

/** Everything the catalogue says about one function. */
export const makeFunctionPage = (record: FunctionRecord, actions: PageActions): HTMLElement => {
  const star = element(
    "button",
    {
      type: "button",
      "aria-pressed": String(actions.isFavourite),
      onclick: () => star.setAttribute("aria-pressed", String(actions.toggleFavourite())),
    },
    "Favourite",
  );
  return element(
    "article",
    { "aria-labelledby": "function-name" },
    element("button", { type: "button", class: "back", onclick: () => actions.back() }, "All functions"),
    element("h2", { id: "function-name", tabindex: "-1" }, record.id),
    element("p", { class: "lead" }, record.description),
    element("p", {}, element("code", { class: "formula" }, `=${namespace}.${signature(record)}`)),
    star,
    record.caution
      ? element("div", { class: "caution", role: "note" }, element("b", {}, "Caution "), record.caution)
      : null,
    part("Fill it in", actions.form),
    part(
      "Arguments",
      record.arguments.length > 0 ? element("dl", {}, ...record.arguments.map(argumentEntry)) : words("None."),
    ),
    part("Result", words(record.result.description)),
    part("Rule", words(record.rule)),
    part("Range", words(record.range)),
    part(
      record.examples.length === 1 ? "Example" : "Examples",
      ...record.examples.map((example) => exampleEntry(example, record, actions)),
    ),
    part("Source", words(record.source)),
    record.seeAlso.length > 0
      ? part(
          "See also",
          element(
            "div",
            { class: "links" },
            ...record.seeAlso.map((id) =>
              element("button", { type: "button", class: "link", onclick: () => actions.open(id) }, id),
            ),
          ),
        )
      : null,
  );
};
