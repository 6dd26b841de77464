import { type FormulaNode, parseFormula } from "../../cells/formulaTree";
import type { FormulaCell } from "../book";
import { referenceOf } from "../expression";
import { finding, type Rule } from "../rule";
import type { Finding } from "../workbook";

const name = "odd formula";

interface Shape {
  /** Operands in order: references relative to their cell, numbers, texts. */
  readonly operands: readonly string[];
  readonly skeleton: string;
}

/** A formula seen from its cell, so that a copied one is the same. */
function shapeOf({ formula, row, column }: FormulaCell): Shape {
  const operands: string[] = [];
  const relative = (text: string): string => {
    const reference = referenceOf(text);
    if (!reference) return text;
    const ends = text.slice(text.lastIndexOf("!") + 1).split(":");
    const place = (end: string, at: { row: number; column: number }): string => {
      const [, fixedColumn, , fixedRow] = /^(\$?)([A-Za-z]*)(\$?)(\d*)$/.exec(end) ?? [];
      return `R${fixedRow ? at.row : `[${at.row - row}]`}C${fixedColumn ? at.column : `[${at.column - column}]`}`;
    };
    const first = place(ends[0]!, { row: reference.top, column: reference.left });
    const last = ends[1] ? `:${place(ends[1], { row: reference.bottom, column: reference.right })}` : "";
    return `${reference.sheet === undefined ? "" : `${reference.sheet}!`}${first}${last}`;
  };
  const write = (nodes: readonly FormulaNode[]): string =>
    nodes
      .map((node): string => {
        switch (node.kind) {
          case "call":
            return `${node.name.toUpperCase()}(${node.args.map(write).join(",")})`;
          case "group":
            return `(${write(node.items)})`;
          case "spill":
            return `${write([node.of])}#`;
          case "single":
            return `@${write([node.of])}`;
          case "name":
            operands.push(node.text.toLowerCase());
            return "?";
          default: {
            const text = node.text.trim();
            if (!/^[\w"'$.{#]/.test(text)) return text;
            operands.push(relative(text));
            return "?";
          }
        }
      })
      .join("");
  return { skeleton: write(parseFormula(formula)), operands };
}

const keyOf = ({ skeleton, operands }: Shape): string => `${skeleton}|${operands.join("|")}`;
const same = (one: Shape, other: Shape): boolean => keyOf(one) === keyOf(other);

const isTypedNumber = (operand: string): boolean => /^(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/.test(operand);

/** Runs of formulas standing one below the other (or side by side), at least this long, say what is usual in them. */
const shortestRun = 4;

function runsOf(formulas: readonly FormulaCell[], down: boolean): FormulaCell[][] {
  const sorted = [...formulas].sort((one, other) =>
    one.sheet !== other.sheet
      ? one.sheet < other.sheet
        ? -1
        : 1
      : down
        ? one.column - other.column || one.row - other.row
        : one.row - other.row || one.column - other.column,
  );
  const runs: FormulaCell[][] = [];
  for (const each of sorted) {
    const run = runs[runs.length - 1];
    const before = run?.[run.length - 1];
    const follows =
      before !== undefined &&
      before.sheet === each.sheet &&
      (down
        ? before.column === each.column && before.row === each.row - 1
        : before.row === each.row && before.column === each.column - 1);
    if (follows) run!.push(each);
    else runs.push([each]);
  }
  return runs.filter((run) => run.length >= shortestRun);
}

export const oddFormula: Rule = {
  name,
  looksFor:
    "One cell of a column or row whose formula differs from its neighbours, or in which a number is typed where they use a cell.",
  find({ book }) {
    const found: Finding[] = [];
    const said = new Set<FormulaCell>();
    const shapes = new Map<FormulaCell, Shape>();
    const shape = (cell: FormulaCell): Shape => {
      const known = shapes.get(cell) ?? shapeOf(cell);
      shapes.set(cell, known);
      return known;
    };
    const across = new Map<FormulaCell, FormulaCell[]>();
    for (const run of runsOf(book.formulas, false)) for (const each of run) across.set(each, run);
    for (const down of [true, false]) {
      for (const run of runsOf(book.formulas, down)) {
        const keys = run.map((each) => keyOf(shape(each)));
        const times = new Map<string, number>();
        for (const key of keys) times.set(key, (times.get(key) ?? 0) + 1);
        const usualKey = keys.reduce((most, key) => (times.get(key)! > times.get(most)! ? key : most), keys[0]!);
        // Nearly all must be alike, so that there is a way in which the others are odd.
        if (times.get(usualKey)! < Math.max(3, 0.8 * (run.length - 1))) continue;
        const usual = shape(run[keys.indexOf(usualKey)]!);
        for (let at = 0; at < run.length; at++) {
          const each = run[at]!;
          if (keys[at] === usualKey || times.get(keys[at]!)! > 1 || said.has(each)) continue;
          const own = shape(each);
          // A column whose rows differ from the column but are alike across is read across.
          if (down) {
            const row = across.get(each);
            if (row && row.filter((other) => other !== each && same(shape(other), own)).length >= 2) continue;
          } else if (run.length < shortestRun + 1 || own.skeleton !== usual.skeleton) continue;
          // The first or last formula of a run is often an opening, a heading or a total of another form.
          if ((at === 0 || at === run.length - 1) && (own.skeleton !== usual.skeleton || own.skeleton === "?"))
            continue;
          const before = down ? "R[-1]C" : "C[-1]";
          // A running balance begins from an opening where its other rows take the row before them.
          const opens =
            at === 0 &&
            own.operands.every((operand, index) => {
              const other = usual.operands[index]!;
              return operand === other || (down ? other.startsWith(before) : other.endsWith(before));
            });
          if (opens) continue;
          said.add(each);
          const neighbour = run[at === 0 ? 1 : at - 1]!;
          const differing =
            own.skeleton === usual.skeleton
              ? own.operands
                  .map((operand, index) => [operand, usual.operands[index]!] as const)
                  .filter(([one, other]) => one !== other)
              : [];
          const typed = differing.length === 1 && isTypedNumber(differing[0]![0]) && !isTypedNumber(differing[0]![1]);
          found.push(
            finding(
              name,
              typed ? "wrong" : "look",
              each,
              typed
                ? `has the number ${differing[0]![0]} typed in where its neighbours use a cell`
                : `has another formula than the ${times.get(usualKey)!} beside it`,
              [neighbour],
            ),
          );
        }
      }
    }
    return found;
  },
};
