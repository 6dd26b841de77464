import boilOffAndTransfer from "../reference/boilOffAndTransfer.json";
import oxygenProperties from "../reference/oxygenProperties.json";
import vesselsAndHoses from "../reference/vesselsAndHoses.json";
import type { ReferenceRow } from "../reference/rows";

const rows: ReferenceRow[] = [...oxygenProperties, ...boilOffAndTransfer, ...vesselsAndHoses];

/**
 * Compares with a reference row, in the row's unit and within its tolerance; source and provenance stand in the row.
 *
 * @param closest Relative deviation allowed of a computed row, whose tolerance leaves room for correlations: 0.05 %,
 * more where the row starts from rounded figures
 */
export function expectRow(id: string, got: number, closest = 5e-4): void {
  const row = rows.find((each) => each.id === id);
  if (!row) throw new Error(`no reference row ${id}`);
  const allowed =
    row.provenance === "computed" ? Math.min(row.tolerance, closest * Math.abs(row.expected)) : row.tolerance;
  expect({ id, got, within: Math.abs(got - row.expected) <= allowed }).toEqual({ id, got, within: true });
}

/** Gauge pressure [bar] of an absolute one [kPa]. */
export const gaugeOfKpa = (kpa: number): number => kpa / 100 - 1.01325;
