import { cellsOfArea } from "../cells/addresses";
import type { EngineValue } from "./engineValue";
import type { SavedWorkbook } from "./file/readWorkbook";
import { filledCells, type Entries } from "./file/writeWorkbook";
import type { ComputedSheet } from "./workbookInput";

/** What every cell shows after a calculation: entries, results, and what the file holds elsewhere. */
export const shownValues = (
  saved: SavedWorkbook,
  entries: Entries,
  computed: readonly ComputedSheet[],
): ((sheet: string, address: string) => EngineValue | undefined) => {
  const shown = new Map<string, Map<string, EngineValue | undefined>>();
  for (const { name, cells } of computed) {
    const own = new Map<string, EngineValue | undefined>();
    const input = saved.sheets.find((sheet) => sheet.name === name)?.cells ?? {};
    // What a spill filled when the workbook was saved is empty unless something fills it now.
    for (const address of Object.keys(cells)) {
      const cell = input[address];
      if (cell?.formula !== undefined && cell.ref) for (const inner of cellsOfArea(cell.ref)) own.set(inner, undefined);
    }
    for (const [address, cell] of Object.entries(cells)) {
      for (const [inner, value] of filledCells(address, cell)) own.set(inner, value);
    }
    for (const [address, { value }] of entries.get(name) ?? []) own.set(address, value);
    shown.set(name, own);
  }
  return (sheet, address) => {
    const own = shown.get(sheet);
    return own?.has(address) ? own.get(address) : saved.cached(sheet, address);
  };
};
