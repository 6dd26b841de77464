import { cellJson } from "./cellText";
import { cellsOfArea } from "../cells/addresses";
import type { EngineValue } from "./engineValue";
import type { SavedWorkbook } from "./file/readWorkbook";
import { filledCells } from "./file/writeWorkbook";
import type { ComputedSheet } from "./workbookInput";

/** A cell that a formula fills now or filled when the workbook was saved. */
export interface ComparedCell {
  readonly sheet: string;
  readonly address: string;
  /** All cells the formula fills now; only on the formula's own cell. */
  readonly area?: string;
  /** "" where the formula no longer fills the cell. */
  readonly value: EngineValue;
  readonly cached: EngineValue | undefined;
  readonly differs: boolean;
}

const plain = (value: EngineValue | undefined): unknown => {
  // An empty text and no value look alike in a cell, and a file may hold either.
  if (value === undefined || value === "") return "";
  const cell = cellJson(value);
  // A file keeps no words.
  return typeof cell === "object" && cell !== null ? (cell as { error: string }).error : cell;
};

/** Equal but for what another order of adding does: a few units in the last of 15 digits. */
export const isSameValue = (a: EngineValue, b: EngineValue | undefined): boolean => {
  const left = plain(a);
  const right = plain(b);
  if (typeof left !== "number" || typeof right !== "number") return left === right;
  return Math.abs(left - right) <= 1e-12 * Math.max(1, Math.abs(left), Math.abs(right));
};

/** Every formula cell beside what the workbook showed when it was saved, spilled cells included. */
export const compareWithSaved = (saved: SavedWorkbook, computed: readonly ComputedSheet[]): ComparedCell[] =>
  computed.flatMap(({ name: sheet, cells }) => {
    const input = saved.sheets.find((candidate) => candidate.name === sheet)?.cells ?? {};
    const now = new Map(Object.entries(cells).flatMap(([address, cell]) => filledCells(address, cell)));
    const compared = Object.entries(cells).flatMap(([address, cell]) =>
      filledCells(address, cell).map(([inner, value]) => ({
        address: inner,
        value,
        ...(inner === address ? { area: cell.area } : {}),
      })),
    );
    const left = Object.keys(cells)
      .flatMap((address) =>
        cellsOfArea(input[address]?.formula !== undefined ? (input[address].ref ?? address) : address),
      )
      .filter((address) => !now.has(address))
      .map((address) => ({ address, value: "" }));
    return [...compared, ...left].map((cell): ComparedCell => {
      const cached = saved.cached(sheet, cell.address);
      return { sheet, cached, differs: !isSameValue(cell.value, cached), ...cell };
    });
  });
