import type { CheckedCell, CheckedSheet, CheckedValue, CheckedWorkbook } from "../check/workbook";
import { areaOf, cellName, placeOf } from "../cells/addresses";
import type { WorkbookContent } from "../excel/openWorkbook";

const isFormula = (content: unknown): content is string => typeof content === "string" && content.startsWith("=");

/** A workbook as Excel tells of it, as the check takes it. */
export function checkedContent({ sheets, names, tables }: WorkbookContent): CheckedWorkbook {
  return {
    sheets: sheets.map(({ name, hidden, first, formulas, values, formats, spills }): CheckedSheet => {
      const cells = new Map<string, CheckedCell>();
      const start = placeOf(first);
      formulas.forEach((line, down) =>
        line.forEach((content, right) => {
          const address = cellName(start.row + down, start.column + right);
          const format = formats[down]?.[right];
          const value = values[down]?.[right] as CheckedValue | undefined;
          if (content === "" && value === "") {
            if (format !== undefined && format !== "General") cells.set(address, { format });
            return;
          }
          const spill = spills[address];
          cells.set(address, {
            ...(isFormula(content) ? { formula: content.slice(1) } : {}),
            value,
            format,
            ...(spill !== undefined && spill.includes(":") && areaOf(spill) ? { spill } : {}),
          });
        }),
      );
      return { name, hidden, cells };
    }),
    names: new Map(Object.entries(names).map(([name, meaning]) => [name, meaning.replace(/^=/, "")])),
    tables: tables.map((table) => ({ ...table })),
  };
}
