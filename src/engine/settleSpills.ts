import { ICommandService, type IDisposable, type Injector, type IRange, type IUnitRange } from "@univerjs/core";
import {
  FormulaDataModel,
  SetArrayFormulaDataMutation,
  SetFormulaCalculationStartMutation,
} from "@univerjs/engine-formula";

interface Spill {
  readonly range: IUnitRange;
  readonly values: string;
}

/** A ring of spills that never settles is given up; a sheet seldom needs more than three passes. */
const mostPasses = 50;

/**
 * Univer 0.25.1 orders formulas by the cells they stand in, not by those they spill into, so what reads an inner cell of
 * a spill may have been calculated too early. This calculates the readers of every spill that has changed again, until
 * none changes; cells that a spill has left count as changed.
 */
export const settleSpills = (injector: Injector, unitId: string): IDisposable => {
  const commands = injector.get(ICommandService);
  const formulas = injector.get(FormulaDataModel);
  let known = new Map<string, Spill>();
  let passes = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const spills = (): Map<string, Spill> => {
    const found = new Map<string, Spill>();
    const cells = formulas.getArrayFormulaCellData()[unitId] ?? {};
    for (const [sheetId, rows] of Object.entries(formulas.getArrayFormulaRange()[unitId] ?? {})) {
      for (const [row, columns] of Object.entries((rows ?? {}) as Record<string, Record<string, IRange>>)) {
        for (const [column, range] of Object.entries(columns)) {
          const values: unknown[] = [];
          for (let r = range.startRow; r <= range.endRow; r++) {
            for (let c = range.startColumn; c <= range.endColumn; c++) values.push(cells[sheetId]?.[r]?.[c]?.v);
          }
          const key = [sheetId, row, column].join();
          found.set(key, { range: { unitId, sheetId, range }, values: JSON.stringify([range, values]) });
        }
      }
    }
    return found;
  };

  const settle = (): void => {
    const now = spills();
    const changed: IUnitRange[] = [];
    for (const key of new Set([...known.keys(), ...now.keys()])) {
      const [before, after] = [known.get(key), now.get(key)];
      if (before?.values === after?.values) continue;
      for (const spill of [before, after]) if (spill) changed.push(spill.range);
    }
    known = now;
    passes = changed.length === 0 ? 0 : passes + 1;
    if (passes === 0 || passes > mostPasses) return;
    void commands.executeCommand(
      SetFormulaCalculationStartMutation.id,
      {
        forceCalculation: false,
        dirtyRanges: changed,
        dirtyNameMap: {},
        dirtyDefinedNameMap: {},
        dirtySuperTableMap: {},
        dirtyUnitFeatureMap: {},
        dirtyUnitOtherFormulaMap: {},
        clearDependencyTreeCache: {},
      },
      { onlyLocal: true },
    );
  };

  const listening = commands.onCommandExecuted(({ id }) => {
    if (id !== SetArrayFormulaDataMutation.id) return;
    // After the other listeners of the same result.
    clearTimeout(timer);
    timer = setTimeout(settle);
  });
  return {
    dispose: () => {
      clearTimeout(timer);
      listening.dispose();
    },
  };
};
