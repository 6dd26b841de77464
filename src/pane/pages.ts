import { checkWorkbook } from "../check/checkWorkbook";
import { notesHeadings, notesSheet } from "../check/setAside";
import type { Finding } from "../check/workbook";
import { catalogue } from "../catalogue/catalogue";
import type { ActiveCell, OpenWorkbook } from "../excel/openWorkbook";
import { checkedContent } from "./checkedContent";
import { element } from "./element";
import { explainFormula, feedsOf, showsAnother, type ExplainedArgument, type ExplainedCall } from "./explainCell";
import { readyBlocks, type ReadyBlock } from "./readyBlocks";
import { cellWords, shownAnswer } from "./shownAnswer";

const back = (leave: () => void): HTMLElement =>
  element("button", { type: "button", class: "back", onclick: leave }, "All functions");

const page = (title: string, leave: () => void, ...content: (Node | string | null)[]): HTMLElement =>
  element(
    "article",
    { "aria-labelledby": "page-title" },
    back(leave),
    element("h2", { id: "page-title", tabindex: "-1" }, title),
    ...content,
  );

const mostShown = 6;

/** The values of an argument, the first of many. */
const valuesOf = ({ cells, untold, unit, text }: ExplainedArgument): string => {
  if (untold !== undefined) return `${text}: ${untold}; not shown here`;
  if (cells === undefined) return "";
  const flat = cells.flat();
  const shown = flat.slice(0, mostShown).map((cell) => {
    const words = cellWords(cell, unit);
    return typeof cell === "number" && unit && !/date/.test(unit) ? `${words} ${unit}` : words;
  });
  return shown.join("; ") + (flat.length > mostShown ? `; … ${flat.length} cells` : "");
};

const argumentLine = (call: ExplainedCall, argument: ExplainedArgument, index: number): HTMLElement => {
  const record = call.record.arguments[index]!;
  const standing = record.default === undefined ? "left out" : `left out: ${String(record.default)} is taken`;
  return element(
    "div",
    { class: "argument" },
    element("dt", {}, element("code", {}, argument.name), argument.text === "" ? "" : ` = ${argument.text}`),
    element("dd", {}, argument.text === "" ? standing : valuesOf(argument)),
    element("dd", { class: "note" }, argument.description),
  );
};

const explainedCall = (call: ExplainedCall, open: (id: string) => void): HTMLElement =>
  element(
    "section",
    { class: "part" },
    element(
      "h3",
      {},
      element("button", { type: "button", class: "link", onclick: () => open(call.record.id) }, call.record.id),
    ),
    element("code", { class: "formula" }, call.text),
    element("dl", {}, ...call.arguments.map((argument, index) => argumentLine(call, argument, index))),
    element("p", {}, element("b", {}, "Computed again here:")),
    call.result
      ? shownAnswer(call.result, call.record)
      : element(
          "p",
          { class: "answer refused" },
          "not computed: an argument can't be told here, or there are too many, so compare by hand",
        ),
    call.record.caution
      ? element("div", { class: "caution", role: "note" }, element("b", {}, "Caution "), call.record.caution)
      : null,
  );

/** What the active cell does: each call with its arguments as they are now, the answer again, errors with their words. */
export async function explainPage(
  cell: ActiveCell,
  workbook: OpenWorkbook,
  { leave, open }: { leave: () => void; open: (id: string) => void },
): Promise<HTMLElement> {
  const [calls, shown] = await Promise.all([
    explainFormula(cell.formula, (reference) => workbook.read(reference)),
    workbook.shown(),
  ]);
  const feeds = feedsOf(cell.formula);
  const isCalm = shown !== "" && shown !== 0;
  return page(
    `${cell.sheet}!${cell.address}`,
    leave,
    element("code", { class: "formula" }, cell.formula),
    element("p", {}, `Excel shows: ${cellWords(shown, "")}${isCalm ? "" : " (look whether that can be)"}`),
    showsAnother(cell.formula, shown, calls)
      ? element(
          "p",
          { class: "answer refused" },
          "What the cell shows and the answer computed again here differ. Recalculate the workbook (Ctrl+Alt+F9); if they still differ, use neither before the inputs are checked.",
        )
      : null,
    ...calls.map((call) => explainedCall(call, open)),
    element(
      "section",
      { class: "part" },
      element("h3", {}, "What feeds it"),
      element("p", {}, feeds.length > 0 ? feeds.join(", ") : "No other cell: all figures stand in the formula."),
    ),
  );
}

/** The fifteen commonest questions, to be laid out in the sheet. */
export const blocksPage = (leave: () => void, lay: (block: ReadyBlock) => void, canLay: boolean): HTMLElement =>
  page(
    "Ready blocks",
    leave,
    element(
      "p",
      { class: "lead" },
      canLay
        ? "Lays labels, inputs with units, the formula and its caution out from the active cell on. Fill in the yellow cells; those that are needed start empty."
        : "In Excel, these lay labels, inputs, the formula and its caution out from the active cell on.",
    ),
    element(
      "ul",
      { class: "plain" },
      ...readyBlocks.map((block) =>
        element(
          "li",
          {},
          element("button", { type: "button", disabled: !canLay, onclick: () => lay(block) }, block.question),
          " ",
          element("span", { class: "note" }, block.id),
        ),
      ),
    ),
  );

const samples: readonly (readonly [file: string, words: string])[] = [
  ["this-excel.xlsx", "Does this Excel do what the others count on? Open it first."],
  ["supply-plan.xlsx", "A planner's supply plan: inputs, demand, stock day by day, reorder, power."],
  ["quick-checks.xlsx", "One question a row, for the desk and the store."],
  ["options.xlsx", "Four sets of equipment side by side."],
  ["service-and-moving.xlsx", "Receipt, service, log, moving."],
  ["function-checks.xlsx", "Every example with its expected value."],
];

export const samplesPage = (leave: () => void): HTMLElement =>
  page(
    "Samples",
    leave,
    element("p", { class: "lead" }, "All of an invented island district. Opening one downloads it."),
    element(
      "ul",
      { class: "plain" },
      ...samples.map(([file, words]) =>
        element(
          "li",
          {},
          element("a", { href: `samples/${file}`, download: file }, file),
          element("span", { class: "note" }, ` ${words}`),
        ),
      ),
    ),
  );

const severityWords = { danger: "Danger", wrong: "Most likely wrong", look: "Worth a look" } as const;

/** Looks through the whole workbook; marks nothing in it. */
export async function checkPage(
  workbook: OpenWorkbook,
  { leave, say }: { leave: () => void; say: (words: string) => void },
): Promise<HTMLElement> {
  const { findings, setAside, formulas } = checkWorkbook(checkedContent(await workbook.content()), catalogue);

  const line = (finding: Finding): HTMLElement => {
    const reason = element("input", {
      type: "text",
      "aria-label": `Reason to let ${finding.cell} stand`,
      placeholder: "why it may stand",
    });
    const item = element(
      "li",
      { class: `finding ${finding.severity}` },
      element("b", {}, severityWords[finding.severity]),
      " ",
      element(
        "button",
        {
          type: "button",
          class: "link",
          onclick: () =>
            void workbook
              .goTo(finding.sheet, finding.cell)
              .catch(() => say(`Excel did not go to ${finding.sheet}!${finding.cell}; it may be on a hidden sheet.`)),
        },
        `${finding.sheet}!${finding.cell}`,
      ),
      element("p", {}, finding.words),
      finding.related.length > 0 ? element("p", { class: "note" }, `See ${finding.related.join(", ")}`) : null,
      element(
        "form",
        {
          class: "entry",
          onsubmit: (event: Event) => {
            event.preventDefault();
            const words = reason.value.trim();
            if (words === "") return say("Write why it may stand; a finding without a reason stays.");
            void workbook
              .addLine(notesSheet, notesHeadings, [finding.sheet, finding.cell, finding.rule, words])
              .then(() => {
                item.remove();
                say(`Kept on the sheet ${notesSheet}.`);
              })
              .catch(() => say(`Excel did not take the note; is the sheet ${notesSheet} protected?`));
          },
        },
        reason,
        element("button", { type: "submit" }, "Let it stand"),
      ),
    );
    return item;
  };

  return page(
    "Check of this workbook",
    leave,
    element(
      "p",
      { class: "lead", role: "status" },
      `${findings.length} ${findings.length === 1 ? "finding" : "findings"} in ${formulas} formulas${setAside.length > 0 ? `; ${setAside.length} let stand by the sheet ${notesSheet}` : ""}.`,
    ),
    findings.length === 0
      ? element(
          "p",
          {},
          "Nothing that looks like the wrong kind or unit. That is no proof: the check sees kinds and units, not whether a figure is true.",
        )
      : element("ul", { class: "plain" }, ...findings.map(line)),
    element(
      "p",
      { class: "note" },
      `The check changes nothing. A reason that you give is kept on a sheet named ${notesSheet}, which all can read.`,
    ),
  );
}
