import { callsIn, parseFormula } from "../../cells/formulaTree";
import { toStored } from "../../cells/storedFormula";

/** Recalculated on every change, or on opening: a file with one never keeps its cached values. */
const volatile = new Set(["NOW", "TODAY", "RAND", "RANDBETWEEN", "RANDARRAY", "OFFSET", "INDIRECT", "INFO", "CELL"]);

/** The formula for `<f>`; refuses volatile functions. */
export const storedFormula = (formula: string): string => {
  const calls = callsIn(parseFormula(formula));
  const found = calls.find((call) => volatile.has(call.name.toUpperCase()));
  if (found) throw new Error(`${formula}: ${found.name} is volatile and would spoil the cached values`);
  return toStored(formula);
};

/** A formula for a validation, a conditional format or a defined name, where Excel runs no add-in's functions. */
export const builtInFormula = (formula: string): string => {
  const stored = storedFormula(formula);
  if (stored.includes("_xldudf_")) throw new Error(`${formula}: Excel runs no custom function here; refer to a cell`);
  return stored;
};
