import type { CalculationLimits } from "./calculateSession";
import type { CellOfSheet } from "./dependencies";
import type { Engine } from "./engine";
import { engineError, isEngineError } from "./engineValue";
import type { SavedWorkbook } from "./file/readWorkbook";
import { holdSaved, type HeldFormula } from "./holdSaved";
import type { ComputedCell, ComputedSheet, SheetInput } from "./workbookInput";

export interface Recalculated {
  /** Formulas that were calculated, and those whose saved value is lost, which show an error. */
  readonly computed: readonly ComputedSheet[];
  /** Formulas that keep their saved values, or lost them. */
  readonly held: readonly HeldFormula[];
  /** Formulas that depend on themselves, "Plan!B4", with the way round. */
  readonly circular: readonly { readonly cell: string; readonly words: string }[];
}

/**
 * Calculates a saved workbook, with other inputs where `sheets` has them; `changed` are their cells. What can't be
 * calculated here keeps its saved value.
 */
export const recalculate = async (
  engine: Engine,
  saved: SavedWorkbook,
  sheets: readonly SheetInput[] = saved.sheets,
  changed: readonly CellOfSheet[] = [],
  limits: CalculationLimits = {},
): Promise<Recalculated> => {
  const ready = holdSaved(sheets, saved.names, saved.cached, engine.functionNames, changed);
  const computed = await engine.calculateWorkbook(ready.sheets, saved.names, limits);
  const circular = computed.flatMap(({ name, cells }) =>
    Object.entries(cells).flatMap(([address, { value, isCircular }]) =>
      isCircular && isEngineError(value) ? [{ cell: `${name}!${address}`, words: value.message }] : [],
    ),
  );
  const lost = new Map<string, Record<string, ComputedCell>>();
  for (const { sheet, address, isLost, why } of ready.held) {
    if (!isLost) continue;
    const value = engineError("#N/A", `this formula can't be calculated here (${why})`);
    lost.set(sheet, { ...lost.get(sheet), [address]: { value, area: address } });
  }
  return {
    computed: computed.map(({ name, cells }) => ({ name, cells: { ...cells, ...lost.get(name) } })),
    held: ready.held,
    circular,
  };
};
