import type { IObjectMatrixPrimitiveType, Injector, Nullable } from "@univerjs/core";
import {
  CalculateFormulaService,
  FormulaDataModel,
  ICalculateFormulaService,
  IFormulaRuntimeService,
  type IFormulaDatasetConfig,
} from "@univerjs/engine-formula";
import type { CellRows, Session } from "./session";

export interface CalculationLimits {
  /** Told now and then how many formulas are done of how many; a workbook with spills is gone through more than once. */
  readonly progress?: (done: number, total: number) => void;
  /** The calculation is given up when this moment (`Date.now()`) is past. */
  readonly until?: number;
}

interface SpillState {
  cells: IFormulaDatasetConfig["arrayFormulaCellData"];
  ranges: IFormulaDatasetConfig["arrayFormulaRange"];
}

export interface Calculated extends SpillState {
  /** By sheet id, row and column. */
  values: Record<string, CellRows>;
  /** Some formulas depend on themselves; what they show is no answer. */
  isCircular: boolean;
}

export class CalculationTooLong extends Error {
  constructor() {
    super("the calculation takes longer than allowed");
  }
}

/** A chain of spills that feed on each other's inner cells settles one link a pass. */
const mostPasses = 50;

const formulaDataset = (injector: Injector, spilled: SpillState): IFormulaDatasetConfig => ({
  formulaData: injector.get(FormulaDataModel).getFormulaData(),
  arrayFormulaCellData: spilled.cells,
  arrayFormulaRange: spilled.ranges,
  forceCalculate: true,
  dirtyRanges: [],
  dirtyNameMap: {},
  dirtyDefinedNameMap: {},
  dirtyUnitFeatureMap: {},
  dirtyUnitOtherFormulaMap: {},
});

const runOnce = async (
  { injector, unitId }: Session,
  spilled: SpillState,
  { progress, until = Infinity }: CalculationLimits,
): Promise<Calculated> => {
  const service = injector.get(ICalculateFormulaService) as CalculateFormulaService;
  const runtime = injector.get(IFormulaRuntimeService);
  return new Promise<Calculated>((resolve, reject) => {
    const watching = service.executionInProgressListener$.subscribe((state) => {
      progress?.(state.completedFormulasCount, state.totalFormulasToCalculate);
      if (Date.now() > until) runtime.stopExecution();
    });
    const completed = service.executionCompleteListener$.subscribe((result) => {
      end();
      if (Date.now() > until) {
        reject(new CalculationTooLong());
        return;
      }
      const plain = <T>(data: Nullable<Record<string, { getMatrix(): IObjectMatrixPrimitiveType<T> }>>) =>
        Object.fromEntries(Object.entries(data ?? {}).map(([sheet, matrix]) => [sheet, matrix.getMatrix()]));
      resolve({
        values: structuredClone(plain(result.unitData[unitId])) as Record<string, CellRows>,
        cells: { [unitId]: structuredClone(plain(result.arrayFormulaCellData[unitId])) },
        ranges: structuredClone(result.arrayFormulaRange),
        isCircular: runtime.isCycleDependency(),
      });
    });
    const end = (): void => {
      watching.unsubscribe();
      completed.unsubscribe();
    };
    // A throw while dependencies are read would otherwise leave no result and no sign.
    const guarded = service as unknown as { _executeStep: () => Promise<unknown> };
    const step = CalculateFormulaService.prototype as unknown as { _executeStep: () => Promise<unknown> };
    const fail = (thrown: unknown): void => {
      end();
      reject(thrown instanceof Error ? thrown : new Error(String(thrown)));
    };
    guarded._executeStep = () => step._executeStep.call(service).catch(fail);
    service.execute(formulaDataset(injector, spilled)).catch(fail);
  });
};

/** Calculates until no cell changes: the engine orders formulas by their anchors, not by the cells they spill into. */
export const calculateSession = async (session: Session, limits: CalculationLimits = {}): Promise<Calculated> => {
  let spilled: SpillState = { cells: {}, ranges: {} };
  let before = "";
  for (let count = 1; ; count++) {
    const pass = await runOnce(session, spilled, limits);
    const hasSpills = Object.values(pass.ranges).some((sheets) =>
      Object.values(sheets ?? {}).some((rows) => Object.keys(rows ?? {}).length > 0),
    );
    const now = hasSpills ? JSON.stringify([pass.values, pass.cells]) : "";
    if (pass.isCircular || now === before || count === mostPasses) return pass;
    before = now;
    spilled = pass;
  }
};
