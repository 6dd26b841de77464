import { CellError, dateCell, isErrorCell } from "../../src/cells/cellValues";
import type { EngineFunction } from "../../src/engine/oxygenFunction";

/** What the stand-ins were called with, newest last. */
export const received: unknown[][] = [];

const note = (...cells: unknown[]): void => void received.push(cells);

/** Functions invented for tests of the engine, so that these don't hang on any function of the add-in. */
export const standIns: EngineFunction[] = [
  [
    "PLUS",
    (a: unknown[][], b?: unknown[][]) => {
      note(a, b);
      const rows = Math.max(a.length, b?.length ?? 1);
      return Array.from({ length: rows }, (_, row) => {
        const left = (a[row] ?? a[0]!)[0];
        const right = b ? (b[row] ?? b[0]!)[0] : 100;
        if (isErrorCell(left)) return [left];
        if (left === null) return [new CellError("#VALUE!", "a is blank; a number is wanted")];
        return [Number(left) + Number(right ?? 100)];
      });
    },
  ],
  [
    "SQUARES",
    (count: unknown[][]) => [
      ["n", "square"],
      ...Array.from({ length: Number(count[0]![0]) }, (_, index) => [index + 1, (index + 1) ** 2]),
    ],
  ],
  ["NO_ANSWER", (a: unknown[][]) => (note(a), [[new CellError("#N/A", "the vessel never empties")]])],
  ["THROWS", (a: unknown[][]) => (note(a), fail())],
  ["DAY_OF", (serial: unknown[][]) => [[dateCell(Number(serial[0]![0]))]]],
  ["ECHO", (a: unknown[][]) => (note(a), a.map((row) => row.map((cell) => cell ?? "(blank)")))],
  ["NOT_A_NUMBER", (a: unknown[][]) => (note(a), [[Number.NaN]])],
];

const fail = (): never => {
  throw new Error("out of order");
};
