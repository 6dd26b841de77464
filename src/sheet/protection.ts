import {
  CustomCommandExecutionError,
  ICommandService,
  type ICellData,
  type IDisposable,
  type Nullable,
} from "@univerjs/core";
import { MoveRangeMutation, SetRangeValuesMutation, type ISetRangeValuesMutationParams } from "@univerjs/sheets";
import {
  SetCellEditVisibleArrowOperation,
  SetCellEditVisibleOperation,
  SetCellEditVisibleWithF2Operation,
} from "@univerjs/sheets-ui";
import { cellName } from "../cells/addresses";
import type { Grid } from "./grid";
import type { SheetNotes } from "./openWorkbook";

/** Operations that open a cell for editing. */
const startsEditing = new Set<string>([
  SetCellEditVisibleOperation.id,
  SetCellEditVisibleWithF2Operation.id,
  SetCellEditVisibleArrowOperation.id,
]);

export interface Protection {
  /** The shown sheet's: "none", as the file has it, or taken off here. */
  state(): "none" | "on" | "off";
  hasPassword(): boolean;
  /** Takes the shown sheet's protection off, or puts it on again; it never goes out of the file. */
  toggle(): void;
  dispose(): void;
}

/**
 * Keeps what the file locks: typing, pasting, deleting and moving in a locked cell of a protected sheet is refused, with
 * words to `refused`. Results of formulas are written all the same.
 */
export const keepProtection = (
  grid: Grid,
  notes: Readonly<Record<string, SheetNotes>>,
  refused: (words: string) => void,
): Protection => {
  const off = new Set<string>();
  const isOn = (sheetId: string): boolean => Boolean(notes[sheetId]?.protection) && !off.has(sheetId);
  const isLocked = (sheetId: string, row: number, column: number): boolean => {
    if (!isOn(sheetId)) return false;
    const sheet = grid.workbook.getSheetBySheetId(sheetId);
    const merged = sheet?.getMergedCell(row, column);
    return !notes[sheetId]!.inputs.has(cellName(merged?.startRow ?? row, merged?.startColumn ?? column));
  };
  const refuse = (sheetId: string, row: number, column: number): never => {
    const name = grid.workbook.getSheetBySheetId(sheetId)?.getName() ?? "";
    refused(
      `${cellName(row, column)} is locked: the sheet ${name} is protected so that only its inputs change. ${
        notes[sheetId]?.protection?.hasPassword
          ? "It has a password, so the protection can be taken off in Excel only."
          : "To change it all the same, press Unprotect sheet above."
      }`,
    );
    throw new CustomCommandExecutionError("locked");
  };
  const shown = (): string => grid.workbook.getActiveSheet()?.getSheetId() ?? "";
  const check = (sheetId: string, cells: ISetRangeValuesMutationParams["cellValue"]): void => {
    if (!cells || !isOn(sheetId)) return;
    for (const [row, columns] of Object.entries(cells)) {
      for (const column of Object.keys((columns ?? {}) as Record<string, Nullable<ICellData>>)) {
        if (isLocked(sheetId, Number(row), Number(column))) refuse(sheetId, Number(row), Number(column));
      }
    }
  };
  const listening: IDisposable = grid.injector.get(ICommandService).beforeCommandExecuted(({ id, params }, options) => {
    const given = options as { fromFormula?: boolean; applyFormulaCalculationResult?: boolean } | undefined;
    if (startsEditing.has(id)) {
      const { visible } = params as { visible: boolean };
      const { row, column } = grid.activeCell();
      if (visible && isLocked(shown(), row, column)) refuse(shown(), row, column);
    }
    if (id === SetRangeValuesMutation.id && !given?.fromFormula && !given?.applyFormulaCalculationResult) {
      const { subUnitId, unitId, cellValue } = params as ISetRangeValuesMutationParams;
      if (unitId === grid.workbook.getUnitId()) check(subUnitId, cellValue);
    }
    if (id === MoveRangeMutation.id) {
      const { from, to } = params as Record<
        "from" | "to",
        { subUnitId: string; value: ISetRangeValuesMutationParams["cellValue"] }
      >;
      for (const side of [from, to]) check(side.subUnitId, side.value);
    }
  });
  return {
    state: () => (!notes[shown()]?.protection ? "none" : isOn(shown()) ? "on" : "off"),
    hasPassword: () => notes[shown()]?.protection?.hasPassword ?? false,
    toggle: () => {
      if (off.has(shown())) off.delete(shown());
      else if (!notes[shown()]?.protection?.hasPassword) off.add(shown());
    },
    dispose: () => listening.dispose(),
  };
};
