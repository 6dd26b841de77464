import type { CheckedCell, CheckedSheet, CheckedWorkbook } from "../check/workbook";
import { isCellDate } from "../cells/cellValues";
import { isEngineError, type EngineValue } from "./engineValue";
import type { SavedWorkbook } from "./file/readWorkbook";
import type { ComputedSheet, SheetInput } from "./workbookInput";

const plain = (value: EngineValue | undefined): Pick<CheckedCell, "value" | "words"> => {
  if (value === undefined) return {};
  if (isEngineError(value)) return { value: value.error, words: value.message };
  return { value: isCellDate(value) ? value.basicValue : value };
};

/**
 * A workbook that was read and calculated, as the check takes it: formulas and formats as saved, results as calculated;
 * `sheets` hold other inputs than the saved ones.
 */
export function checkedWorkbook(
  saved: SavedWorkbook,
  computed: readonly ComputedSheet[],
  inputs: readonly SheetInput[] = saved.sheets,
): CheckedWorkbook {
  const typed = new Map(inputs.map(({ name, cells }) => [name, cells]));
  const results = new Map(computed.map(({ name, cells }) => [name, cells]));
  const sheets = saved.sheets.map((sheet): CheckedSheet => {
    const cells = new Map<string, CheckedCell>();
    const given = typed.get(sheet.name) ?? sheet.cells;
    // A cell that held something typed in and holds it no longer is blank, whatever was saved.
    for (const [address, { value, format }] of sheet.saved)
      cells.set(address, address in sheet.cells && !(address in given) ? { format } : { ...plain(value), format });
    for (const [address, cell] of Object.entries(given)) {
      const format = sheet.saved.get(address)?.format;
      if (cell.formula === undefined) {
        cells.set(address, { value: cell.value, ...(cell.words === undefined ? {} : { words: cell.words }), format });
        continue;
      }
      const result = results.get(sheet.name)?.[address];
      const area = result?.area ?? cell.ref;
      const spill = area?.includes(":") ? area : undefined;
      cells.set(address, {
        formula: cell.formula.replace(/^=/, ""),
        ...plain(result?.value ?? sheet.saved.get(address)?.value),
        format,
        ...(spill === undefined ? {} : { spill }),
      });
    }
    return { name: sheet.name, hidden: sheet.isHidden, cells };
  });
  const { names = {}, tables = [] } = saved.names;
  return {
    sheets,
    names: new Map(Object.entries(names).map(([name, meaning]) => [name, meaning.replace(/^=/, "")])),
    tables: tables.map(({ name, sheet, ref, columns }) => ({ name, sheet, area: ref, columns })),
  };
}
