import { BooleanNumber } from "@univerjs/core";
import { FunctionType, type IFunctionInfo, type IFunctionParam } from "@univerjs/engine-formula";
import type { ArgumentRecord, FunctionRecord } from "../catalogue/record";
import { callsIn, parseFormula, printFormula } from "../cells/formulaTree";

/** "Liquid in the vessel now [L], 0 if omitted; a range". */
export const argumentWords = ({ description, optional, choices, shape }: ArgumentRecord): string =>
  [
    description,
    choices ? `one of ${choices.join(", ")}` : "",
    shape === "range" ? "a range" : "",
    optional && !/ if omitted/.test(description) ? "may be left out" : "",
  ]
    .filter(Boolean)
    .join("; ");

const exampleArguments = (formula: string): string[] => {
  const [call] = callsIn(parseFormula(formula));
  return call?.args.map((argument) => printFormula(argument).trim()) ?? [];
};

/** What completion and the box beside a formula being typed say of a function. */
export const functionHint = (record: FunctionRecord, namespace: string): IFunctionInfo => {
  const example = exampleArguments(record.examples[0]?.formula ?? "");
  const { description, table } = record.result;
  const result = `Gives: ${description}${table ? "; a table that spills" : ""}.`;
  return {
    functionName: `${namespace}.${record.id}`,
    functionType: FunctionType.User,
    abstract: record.description,
    description: [record.description, result, record.caution ? `Caution: ${record.caution}` : ""]
      .filter(Boolean)
      .join(" "),
    functionParameter: record.arguments.map((argument, index): IFunctionParam => ({
      name: argument.name,
      detail: argumentWords(argument),
      example: example[index] ?? "",
      require: argument.optional ? BooleanNumber.FALSE : BooleanNumber.TRUE,
      repeat: BooleanNumber.FALSE,
    })),
  };
};
