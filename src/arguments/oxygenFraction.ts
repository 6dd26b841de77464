import { defaults } from "../models/defaults";
import { type CellError, invalid } from "../cells/cellValues";
import { formatNumber } from "./argument";
import { oxygenInAir } from "../models/roomOxygen";
import { fraction } from "./quantity";

/** Oxygen fraction that a patient breathes; 0.21 is air. */
export const breathedFraction = fraction.between(oxygenInAir, 1);

/** Oxygen fraction of a source that is richer than air. */
export const sourcePurity = fraction.aboveTo(oxygenInAir, 1).default(defaults.source_purity);

/** Words against a fraction that no mixture of the source with air gives. */
export const refuseRicherThanSource = (fio2: number, purity: number): CellError | undefined =>
  fio2 > purity
    ? invalid(
        `fio2 ${formatNumber(fio2)} can't be reached: the source holds ${formatNumber(purity)}; take a lower fio2 or give its true source_purity`,
      )
    : undefined;
