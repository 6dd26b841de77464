import { ICommandService, type Workbook } from "@univerjs/core";
import { InsertSheetCommand, SetRangeValuesCommand } from "@univerjs/sheets";
import { catalogue } from "../catalogue/catalogue";
import { placeOf } from "../cells/addresses";
import { checkWorkbook } from "../check/checkWorkbook";
import { notesHeadings, notesSheet } from "../check/setAside";
import type { CheckedCell, CheckedValue, Finding } from "../check/workbook";
import { checkedWorkbook } from "../engine/checkedWorkbook";
import { element } from "../pane/element";
import type { Grid } from "./grid";
import { openedFormats, readGrid } from "./gridChanges";
import type { OpenedWorkbook } from "./openWorkbook";

export interface CheckActions {
  /** Leaves the findings for the grid. */
  leave(): void;
  say(words: string): void;
}

const severityWords = { danger: "Danger", wrong: "Most likely wrong", look: "Worth a look" } as const;

const noteRows = (workbook: Workbook): number => {
  const sheet = workbook.getSheetBySheetName(notesSheet);
  if (!sheet) return 0;
  let row = 0;
  while (String(sheet.getCellRaw(row, 0)?.v ?? "") !== "") row++;
  return row;
};

/** Writes why a finding may stand on a sheet that all can read, which is made where it is missing. */
async function keepReason(grid: Grid, { sheet, cell, rule }: Finding, reason: string): Promise<boolean> {
  const commands = grid.injector.get(ICommandService);
  const unitId = grid.workbook.getUnitId();
  const before = grid.workbook.getActiveSheet()?.getSheetId();
  if (!grid.workbook.getSheetBySheetName(notesSheet)) {
    await commands.executeCommand(InsertSheetCommand.id, { unitId, sheet: { name: notesSheet } });
    if (before) grid.showSheet(before);
  }
  const notes = grid.workbook.getSheetBySheetName(notesSheet);
  if (!notes) return false;
  const rows = noteRows(grid.workbook);
  const lines = [...(rows === 0 ? [notesHeadings] : []), [sheet, cell, rule, reason]];
  return commands.executeCommand(SetRangeValuesCommand.id, {
    unitId,
    subUnitId: notes.getSheetId(),
    range: { startRow: rows, endRow: rows + lines.length - 1, startColumn: 0, endColumn: 3 },
    value: lines.map((line) => line.map((v) => ({ v }))),
  });
}

/** What the check finds in the workbook as the grid holds it now; a press goes to the cell, nothing is changed. */
export function checkView(grid: Grid, opened: OpenedWorkbook, { leave, say }: CheckActions): HTMLElement {
  const content = readGrid(grid, opened.saved, openedFormats(opened));
  const book = checkedWorkbook(opened.saved, content.computed, content.inputs);
  // Sheets that were added here stand in no file yet.
  const known = new Set(book.sheets.map(({ name }) => name));
  const added = content.inputs
    .filter(({ name }) => !known.has(name))
    .map(({ name, cells }) => ({
      name,
      cells: new Map(
        Object.entries(cells).map(([at, { formula, value }]): [string, CheckedCell] => [
          at,
          { formula: formula?.replace(/^=/, ""), value: value as CheckedValue | undefined },
        ]),
      ),
    }));
  const { findings, setAside, formulas } = checkWorkbook({ ...book, sheets: [...book.sheets, ...added] }, catalogue);

  const goTo = ({ sheet, cell }: Finding): void => {
    const target = grid.workbook.getSheetBySheetName(sheet);
    if (!target) return say(`There is no sheet ${sheet} any more.`);
    const { row, column } = placeOf(cell);
    leave();
    grid.goTo(target.getSheetId(), row, column);
  };

  const line = (finding: Finding): HTMLElement => {
    const place = `${finding.sheet}!${finding.cell}`;
    const reason = element("input", {
      type: "text",
      "aria-label": `Why ${place} may stand`,
      placeholder: "why it may stand",
    });
    const item = element(
      "li",
      { class: `finding ${finding.severity}` },
      element("b", {}, severityWords[finding.severity]),
      " ",
      element("button", { type: "button", onclick: () => goTo(finding) }, place),
      element("p", {}, finding.words),
      finding.related.length > 0 ? element("p", {}, `See ${finding.related.join(", ")}`) : null,
      element(
        "form",
        {
          onsubmit: (event: Event) => {
            event.preventDefault();
            const words = reason.value.trim();
            if (words === "") return say("Write why it may stand; a finding without a reason stays.");
            void keepReason(grid, finding, words).then((kept) => {
              if (kept) item.remove();
              say(kept ? `Kept on the sheet ${notesSheet}.` : `The sheet ${notesSheet} could not be written.`);
            });
          },
        },
        reason,
        " ",
        element("button", { type: "submit" }, "Let it stand"),
      ),
    );
    return item;
  };

  return element(
    "section",
    { "aria-labelledby": "check-title" },
    element("h2", { id: "check-title" }, "Check of this workbook"),
    element(
      "p",
      { role: "status" },
      `${findings.length} ${findings.length === 1 ? "finding" : "findings"} in ${formulas} formulas${
        setAside.length > 0 ? `; ${setAside.length} let stand by the sheet ${notesSheet}` : ""
      }.`,
    ),
    findings.length === 0
      ? element(
          "p",
          {},
          "Nothing that looks like the wrong kind or unit. That is no proof: the check sees kinds and units, not whether a figure is true.",
        )
      : element("ul", {}, ...findings.map(line)),
    element(
      "p",
      {},
      `The check changes nothing. A reason that you give is kept on a sheet named ${notesSheet}, which goes into a saved copy.`,
    ),
  );
}
