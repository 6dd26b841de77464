import { CellError, type CellDate } from "../../src/cells/cellValues";

type CellFunction = (...cells: any[]) => any[][];

/** What a cell-facing function answers to single cells; a date is taken out of its form as a serial. */
export function oneCell(call: CellFunction, ...cells: unknown[]): unknown {
  const result = call(...cells.map((cell) => (cell === undefined ? undefined : [[cell]])))[0]![0] as unknown;
  return typeof result === "object" && result !== null && !(result instanceof CellError) && "basicValue" in result
    ? (result as CellDate).basicValue
    : result;
}

/** The same where a number must come out. */
export function oneNumber(call: CellFunction, ...cells: unknown[]): number {
  const result = oneCell(call, ...cells);
  if (typeof result !== "number")
    throw new Error(`a number was wanted, not ${result instanceof CellError ? result.message : String(result)}`);
  return result;
}

/** The code and words of the error that comes out. */
export function errorOf(call: CellFunction, ...cells: unknown[]): string {
  const result = oneCell(call, ...cells);
  if (!(result instanceof CellError)) throw new Error(`an error was wanted, not ${String(result)}`);
  return `${result.code} ${result.message}`;
}
