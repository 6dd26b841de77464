import { functions } from "../../src/catalogue/generated/functions";
import { createEngine, type Engine } from "../../src/engine/engine";
import type { EngineFunction } from "../../src/engine/oxygenFunction";
import { workbook } from "../../src/workbooks/functionChecks";
import { checks } from "../../src/workbooks/sheets/functionChecks/checks";
import { buildWorkbook, calculateWith, type CachedCell } from "../../src/workbooks/writer";

/** The verdict with some functions replaced by others of the same name. */
const verdictWith = async (replaced: Record<string, EngineFunction[1]>): Promise<CachedCell> => {
  const engine: Engine = createEngine(functions.map(([id, call]) => [id, replaced[id] ?? call]));
  try {
    let verdict: CachedCell = null;
    await buildWorkbook(workbook, async (asked) => {
      const values = await calculateWith(engine)(asked);
      verdict = values.get("Checks!B2")![0]![0]!;
      return values;
    });
    return verdict;
  } finally {
    engine.dispose();
  }
};

const callOf = (id: string): EngineFunction[1] => functions.find(([known]) => known === id)![1];
const rowsOf = (id: string): number[] => checks.filter(({ record }) => record.id === id).map(({ row }) => row);

// Plain logic of the sheet, no source: it must pass as built and name each function that is spoilt.
test("the workbook finds every example as its page says", async () => {
  expect(await verdictWith({})).toBe(`All ok: ${checks.length} of ${checks.length} checks`);
}, 60_000);

test("the workbook names functions that give a wrong number, word, error or table", async () => {
  const verdict = await verdictWith({
    // Just beyond the tolerance of an exact number.
    HOURS_TO_FILL: (...cells) => callOf("HOURS_TO_FILL")(...cells).map(([hours]) => [hours * (1 + 1e-8)]),
    SERVICE_STATUS: () => [["OK"]],
    CIRCUIT_NEEDED: () => [[{ type: "Error", errorType: "Value" }]],
    // A number where the cell should be empty, and a row too many.
    BEATEN_BY: (...cells) => callOf("BEATEN_BY")(...cells).map(([row]) => [row === "" ? 0 : row]),
    DELIVERY_DATES: (...cells) => [...callOf("DELIVERY_DATES")(...cells), ["", ""]],
  });
  for (const id of ["HOURS_TO_FILL", "BEATEN_BY", "DELIVERY_DATES", "CIRCUIT_NEEDED"]) {
    for (const row of rowsOf(id)) expect(verdict).toContain(`${id} (row ${row})`);
  }
  expect(verdict).toContain("SERVICE_STATUS (row");
  expect(verdict).not.toContain("LIQUID_DENSITY");
}, 60_000);
