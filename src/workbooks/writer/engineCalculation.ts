import type { Engine } from "../../engine/engine";
import { addressOf, placeOf } from "../../cells/addresses";
import { formulaKey, type CachedCell, type Calculate } from "./calculation";

/** Has the local engine work out a workbook's formulas. The caller disposes of the engine. */
export const calculateWith =
  (engine: Pick<Engine, "calculateWorkbook">): Calculate =>
  async ({ sheets, names }) => {
    const computed = await engine.calculateWorkbook(
      sheets.map(({ name, cells }) => ({
        name,
        cells: Object.fromEntries(
          cells.map(({ formula, value, ...place }) => [
            addressOf(place),
            formula === undefined ? { value: value! } : { formula },
          ]),
        ),
      })),
      { names: Object.fromEntries(names.map(({ name, refersTo }) => [name, refersTo])) },
    );
    return new Map(
      computed.flatMap(({ name, cells }) =>
        Object.entries(cells).map(([address, { value, spill }]): [string, CachedCell[][]] => [
          formulaKey(name, placeOf(address)),
          spill ?? [[value]],
        ]),
      ),
    );
  };
