import type { Injector } from "@univerjs/core";
import { IDefinedNamesService, ISuperTableService } from "@univerjs/engine-formula";
import { areaOf } from "../cells/addresses";
import type { WorkbookNames } from "./workbookInput";

/** Tells the engine a workbook's names and tables. A table whose sheet `sheetIdOf` does not know is left out. */
export const giveNames = (
  injector: Injector,
  unitId: string,
  { names = {}, tables = [] }: WorkbookNames,
  sheetIdOf: (name: string) => string | undefined,
): void => {
  const definedNames = injector.get(IDefinedNamesService);
  for (const [name, formulaOrRefString] of Object.entries(names)) {
    definedNames.registerDefinedName(unitId, { id: name, name, formulaOrRefString });
  }
  const superTables = injector.get(ISuperTableService);
  for (const { name, sheet, ref, columns } of tables) {
    const sheetId = sheetIdOf(sheet);
    if (sheetId === undefined) continue;
    superTables.registerTable(unitId, name, {
      sheetId,
      titleMap: new Map(columns.map((column, position) => [column, position])),
      range: { ...areaOf(ref) },
    });
  }
};
