import { CellValueType, type ICellData, type Nullable, type Worksheet } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { findRecord } from "../catalogue/catalogue";
import { namespace } from "../cells/namespace";
import { cellName } from "../cells/addresses";
import { parseFormula, significant } from "../cells/formulaTree";
import { errorAt } from "../engine/registerFunctions";
import type { Grid } from "./grid";
import type { SheetNotes } from "./openWorkbook";

/** What the line below the grid, the live region and the results table say of a cell. */
export interface CellWords {
  readonly address: string;
  /** "" for a constant. */
  readonly formula: string;
  /** As shown in the cell; "" if it is empty. */
  readonly value: string;
  /** The value behind what is shown: a number in full, a date as its serial. */
  readonly raw: string;
  /** Unit of a result whose number format shows none, "" if unknown. */
  readonly unit: string;
  /** Code and words, "" if it shows no error. */
  readonly error: string;
  readonly isInput: boolean;
  readonly isLink: boolean;
  /** What the workbook asks for here. */
  readonly prompt: string;
}

const showsUnit = (shown: string): boolean => /[^\d.,\s+\-−%()]/.test(shown);

/** The unit of a formula that is one call of a function of ours and nothing else. */
const unitOf = (formula: string): string => {
  const nodes = significant(parseFormula(formula));
  const [node] = nodes;
  if (nodes.length !== 1 || node?.kind !== "call") return "";
  const [space, id] = node.name.toUpperCase().split(".");
  const record = space === namespace && id ? findRecord(id) : undefined;
  return record && !record.result.table ? record.result.unit : "";
};

/** The text a cell shows, with its number format. */
const shownText = (cell: Nullable<ICellData>): string => {
  if (cell?.p) return cell.p.body?.dataStream.replace(/\r?\n$/, "").replace(/\r/g, " ") ?? "";
  const value = cell?.v;
  if (value === null || value === undefined) return "";
  if (cell?.t === CellValueType.BOOLEAN || typeof value === "boolean") {
    return value === true || value === 1 || value === "1" || value === "TRUE" ? "TRUE" : "FALSE";
  }
  return typeof value === "number" ? String(Number(value.toPrecision(15))) : value;
};

export const describeCell = (
  grid: Grid,
  sheet: Worksheet,
  row: number,
  column: number,
  notes: SheetNotes | undefined,
): CellWords => {
  const address = cellName(row, column);
  const value = shownText(sheet.getCell(row, column));
  const spilled = grid.injector.get(FormulaDataModel).getArrayFormulaCellData()[grid.workbook.getUnitId()];
  const own = sheet.getCellRaw(row, column);
  const formula = own?.f ?? "";
  const held = own?.f || own?.si ? own : (spilled?.[sheet.getSheetId()]?.[row]?.[column] ?? own);
  const error = errorAt(grid.injector, grid.workbook.getUnitId(), sheet.getSheetId(), row, column);
  const unit = formula && !error && value !== "" && !showsUnit(value) ? unitOf(formula) : "";
  const prompt = notes?.prompts.find(
    ({ area }) => row >= area.startRow && row <= area.endRow && column >= area.startColumn && column <= area.endColumn,
  );
  return {
    address,
    formula,
    value,
    raw: String(held?.v ?? ""),
    unit,
    error: error ? `${error.error} ${error.message}` : "",
    isInput: notes?.inputs.has(address) ?? false,
    isLink: notes?.links[address] !== undefined,
    prompt: prompt?.words ?? "",
  };
};

/** A cell in one spoken sentence. */
export const spoken = ({ address, formula, value, unit, error, isInput, isLink, prompt }: CellWords): string =>
  [
    address,
    error ? `error ${error}` : value === "" ? "empty" : `${value}${unit ? ` ${unit}` : ""}`,
    formula ? "formula" : "",
    isInput ? "input cell" : "",
    isLink ? "link, Enter follows it" : "",
    prompt,
  ]
    .filter(Boolean)
    .join(", ");
