import type { Injector } from "@univerjs/core";
import { FormulaDataModel, IFunctionService } from "@univerjs/engine-formula";
import { IUniverInstanceService, type Workbook } from "@univerjs/core";
import { namespace } from "../cells/namespace";
import { spokenWords, wordsOfCell, type EngineCell } from "./cellError";
import { fromEngineCell, isEngineError } from "./engineValue";
import { explainName } from "./explainName";
import { OxygenFunction, type EngineFunction } from "./oxygenFunction";
import { patchEngine, registerPatchFunctions } from "./upstreamPatches";

/**
 * Gives an engine (in Node or in a page) the functions of the add-in under `OXYGEN.<ID>`, and puts the patches of
 * `upstreamPatches.ts` in place. Call it after the formula plugins are registered and before formulas are computed.
 */
export const registerFunctions = (injector: Injector, functions: readonly EngineFunction[]): void => {
  patchEngine();
  registerPatchFunctions(injector);
  injector
    .get(IFunctionService)
    .registerExecutors(...functions.map(([id, call]) => new OxygenFunction(`${namespace}.${id}`, call)));
};

/** The error a cell of a live sheet shows: code and words, or undefined if it shows no error. Spilled cells too. */
export const errorAt = (
  injector: Injector,
  unitId: string,
  sheetId: string,
  row: number,
  column: number,
): { error: string; message: string } | undefined => {
  const spilled = injector.get(FormulaDataModel).getArrayFormulaCellData()[unitId]?.[sheetId]?.[row]?.[column];
  const own = injector
    .get(IUniverInstanceService)
    .getUnit<Workbook>(unitId)
    ?.getSheetBySheetId(sheetId)
    ?.getCellMatrix()
    .getValue(row, column);
  const hasFormula = Boolean(own?.f ?? own?.si);
  const cell = (hasFormula ? own : (spilled ?? own)) as EngineCell | null | undefined;
  if (!hasFormula && !spilled) return undefined;
  const value = fromEngineCell(cell);
  if (!isEngineError(value)) return undefined;
  const unknownName = value.error === "#NAME?" && typeof own?.f === "string" ? nameWords(injector, own.f) : "";
  return { error: value.error, message: wordsOfCell(cell) || unknownName || spokenWords(value.error, "") };
};

const nameWords = (injector: Injector, formula: string): string => {
  const service = injector.get(IFunctionService);
  return explainName(formula, [...service.getExecutors().keys()].map(String));
};
