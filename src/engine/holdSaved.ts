import { cellsOfArea, placeOf } from "../cells/addresses";
import { tokensOf } from "../cells/formulaTokens";
import { callsIn, nodesIn, parseFormula, type FormulaNode } from "../cells/formulaTree";
import { isCellDate } from "../cells/cellValues";
import { Dependencies, type CellOfSheet } from "./dependencies";
import { isEngineError, type EngineValue } from "./engineValue";
import type { SheetCell, SheetInput, WorkbookNames } from "./workbookInput";

/** A formula that can't be calculated here. */
export interface HeldFormula {
  readonly sheet: string;
  readonly address: string;
  /** All cells it fills. */
  readonly area: string;
  readonly why: string;
  /** Its saved value can't be trusted: there is none, or what it depends on was changed. */
  readonly isLost: boolean;
}

export interface HeldWorkbook {
  /** Held formulas are values here. */
  readonly sheets: readonly SheetInput[];
  readonly held: readonly HeldFormula[];
}

/** Names that LET and LAMBDA declare anywhere in a formula, in capitals. */
const declaredIn = (tree: readonly FormulaNode[]): Set<string> => {
  const declared = new Set<string>();
  for (const call of callsIn(tree)) {
    if (!/^(?:LET|LAMBDA)$/i.test(call.name)) continue;
    for (const argument of call.args.slice(0, -1)) {
      for (const node of argument)
        if (node.kind === "name") declared.add(node.text.replace(/[[\]\s]/g, "").toUpperCase());
    }
  }
  return declared;
};

const linksOut = (formula: string): boolean =>
  tokensOf(formula).some(
    ({ kind, text }) => kind === "reference" && /^(?:\[\d+\]|'[^']*\[[^\]]+\][^']*'!|\[[^\]]+\])/.test(text),
  );

const spansSheets = (formula: string): boolean =>
  tokensOf(formula).some(({ kind, text }) => {
    const mark = text.lastIndexOf("!");
    return kind === "reference" && mark > 0 && text.slice(0, mark).includes(":");
  });

/** `A1:A9 B3:C3`, the cells two ranges share; the engine takes the space for nothing. */
const intersects = (formula: string): boolean => {
  const tokens = tokensOf(formula);
  const isRange = (at: number): boolean => tokens[at]?.kind === "reference" || tokens[at]?.kind === "name";
  return tokens.some(({ kind }, at) => kind === "space" && isRange(at - 1) && isRange(at + 1));
};

/** Says why a formula can't be calculated here, "" if it can. */
export class Calculable {
  private readonly functions: ReadonlySet<string>;
  private readonly ambiguous: ReadonlySet<string>;
  private readonly names: ReadonlyMap<string, string>;
  private readonly hasOddNames: boolean;
  private readonly whyOfNames = new Map<string, string>();

  constructor(functionNames: readonly string[], { names = {}, ambiguous = [] }: WorkbookNames) {
    this.functions = new Set(functionNames.map((name) => name.toUpperCase()));
    this.ambiguous = new Set(ambiguous);
    this.hasOddNames = ambiguous.length > 0 || Object.values(names).some((content) => content.startsWith("="));
    this.names = new Map(Object.entries(names).map(([name, content]) => [name.toUpperCase(), content]));
  }

  whyNot(formula: string): string {
    if (this.isPlain(formula)) return "";
    if (linksOut(formula)) return "it reads another workbook";
    if (spansSheets(formula)) return "it reads several sheets at once";
    if (intersects(formula)) return "it asks for the cells that two ranges share";
    const tree = parseFormula(formula);
    const declared = declaredIn(tree);
    for (const { name } of callsIn(tree)) {
      const upper = name.toUpperCase();
      if (this.functions.has(upper) || declared.has(upper) || this.names.has(upper)) continue;
      return upper === "TABLE" ? "it is a what-if data table" : `${upper} is not known here`;
    }
    for (const node of nodesIn(tree)) {
      const name = node.kind === "name" ? node.text : node.kind === "call" ? node.name : "";
      const upper = name.toUpperCase();
      if (upper === "" || declared.has(upper)) continue;
      if (this.ambiguous.has(upper)) return `its name ${name} means different things on different sheets`;
      const why = this.whyNotName(upper);
      if (why) return `its name ${name}: ${why}`;
    }
    return "";
  }

  /** Without names, links and spaces that matter, a glance at the function names is enough. */
  private isPlain(formula: string): boolean {
    if (this.hasOddNames || /[[!\s]/.test(formula)) return false;
    return (formula.match(/[^-+*/^&=<>(),;:{}%"'@#]+(?=\()/g) ?? []).every((name) =>
      this.functions.has(name.toUpperCase()),
    );
  }

  private whyNotName(upper: string): string {
    const content = this.names.get(upper);
    if (content === undefined || !content.startsWith("=")) return "";
    const known = this.whyOfNames.get(upper);
    if (known !== undefined) return known;
    // A name that leads back to itself ends here.
    this.whyOfNames.set(upper, "");
    const why = this.whyNot(content);
    this.whyOfNames.set(upper, why);
    return why;
  }
}

const constantOf = (value: EngineValue): SheetCell => {
  if (isEngineError(value)) return { value: value.error, words: value.message };
  return { value: isCellDate(value) ? value.basicValue : value };
};

const lostWords = (why: string, hasValue: boolean): string =>
  `this formula can't be calculated here (${why}), and ${hasValue ? "what it depends on was changed" : "no value was saved"}`;

/**
 * Puts saved values in the place of formulas that can't be calculated here, so that the others go on from them. One whose
 * saved value is missing, or depends on a changed cell, becomes an error.
 */
export const holdSaved = (
  sheets: readonly SheetInput[],
  names: WorkbookNames,
  cached: (sheet: string, address: string) => EngineValue | undefined,
  functionNames: readonly string[],
  changed: readonly CellOfSheet[] = [],
): HeldWorkbook => {
  const calculable = new Calculable(functionNames, names);
  const held: HeldFormula[] = [];
  let dependencies: Dependencies | undefined;
  const dependsOnChanged = (home: CellOfSheet, formula: string): boolean => {
    if (changed.length === 0) return false;
    // What a formula reads through INDIRECT or OFFSET, or from a function that is not known, is not in its text.
    if (/\b(?:INDIRECT|OFFSET|TABLE)\s*\(/i.test(formula)) return true;
    dependencies ??= new Dependencies(sheets, names);
    return dependencies.dependsOn(home, formula, changed);
  };
  const ready = sheets.map((sheet): SheetInput => {
    let cells: Record<string, SheetCell> | undefined;
    for (const [address, cell] of Object.entries(sheet.cells)) {
      if (cell.formula === undefined) continue;
      const why = calculable.whyNot(cell.formula);
      if (why === "") continue;
      const area = cell.ref ?? address;
      const isChanged = dependsOnChanged({ sheet: sheet.name, ...placeOf(address) }, cell.formula);
      const hasValue = cached(sheet.name, address) !== undefined;
      const isLost = isChanged || !hasValue;
      held.push({ sheet: sheet.name, address, area, why, isLost });
      cells ??= { ...sheet.cells };
      delete cells[address];
      for (const inner of isLost ? [address] : cellsOfArea(area)) {
        const value = cached(sheet.name, inner);
        if (isLost) cells[inner] = { value: "#N/A", words: lostWords(why, hasValue) };
        else if (value !== undefined && value !== "") cells[inner] = constantOf(value);
      }
    }
    return cells ? { ...sheet, cells } : sheet;
  });
  return { sheets: ready, held };
};
