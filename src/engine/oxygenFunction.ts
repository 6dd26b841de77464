import { type CellCall } from "../cells/cellValues";
import type { Nullable } from "@univerjs/core";
import {
  ArrayValueObject,
  BaseFunction,
  BooleanValueObject,
  NumberValueObject,
  StringValueObject,
  type BaseValueObject,
} from "@univerjs/engine-formula";
import { CellError, isCellDate, isErrorCell } from "../cells/cellValues";
import { errorWithWords, wordsOfValue } from "./cellError";
import { isArrayValue } from "./engineValue";
import { omitted } from "./spillReference";

/** A function of the add-in: its id without namespace, and its call on 2-D arrays of cells. */
export type EngineFunction = readonly [id: string, call: CellCall];

/** An error that came in, in the form of Excel's data types; `value` brings it back out unchanged. */
interface IncomingError {
  readonly type: "Error";
  readonly basicType: "Error";
  readonly basicValue: string;
  readonly message: string;
  readonly value: BaseValueObject;
}

const cellOf = (value: Nullable<BaseValueObject>): unknown => {
  if (value == null || value.isNull()) return null;
  if (value.isError()) {
    const code = String(value.getValue());
    const error: IncomingError = {
      type: "Error",
      basicType: "Error",
      basicValue: code,
      message: wordsOfValue(value),
      value,
    };
    return error;
  }
  const raw = value.getValue();
  return value.isBoolean() ? raw === true || raw === 1 : raw;
};

const cellsOf = (argument: BaseValueObject): unknown[][] => {
  if (!isArrayValue(argument)) return [[cellOf(argument)]];
  const rows = argument.getArrayValue();
  const width = argument.getColumnCount();
  return rows.map((row) => Array.from({ length: width }, (_, column) => cellOf(row[column])));
};

const valueOf = (cell: unknown): BaseValueObject => {
  if (typeof cell === "number") {
    return Number.isFinite(cell)
      ? NumberValueObject.create(cell)
      : errorWithWords("#NUM!", "the function gave no finite number");
  }
  if (typeof cell === "string") return StringValueObject.create(cell);
  if (typeof cell === "boolean") return BooleanValueObject.create(cell);
  if (cell === null || cell === undefined) return StringValueObject.create("");
  if (cell instanceof CellError) return errorWithWords(cell.code, cell.message);
  if (isCellDate(cell)) return NumberValueObject.create(cell.basicValue, cell.numberFormat);
  if (isErrorCell(cell)) {
    const incoming = cell as Partial<IncomingError> & { code?: string };
    return incoming.value ?? errorWithWords(incoming.basicValue ?? incoming.code ?? "#VALUE!", incoming.message ?? "");
  }
  return errorWithWords("#VALUE!", "the function gave something that is no cell value");
};

/** One function of the add-in as the engine calls it. It never throws: a throw would end the whole recalculation. */
export class OxygenFunction extends BaseFunction {
  constructor(
    private readonly fullName: string,
    private readonly call: EngineFunction[1],
  ) {
    super(fullName);
  }

  override calculate(...args: BaseValueObject[]): BaseValueObject {
    try {
      // `length` counts every parameter of the function file, since optional ones have no language default.
      const most = this.call.length;
      if (most > 0 && args.length > most) {
        return errorWithWords("#VALUE!", `${this.fullName} takes at most ${most} arguments; ${args.length} came`);
      }
      const cells = this.call(...args.map((argument) => (argument === omitted ? undefined : cellsOf(argument))));
      const width = Math.max(0, ...cells.map((row) => row.length));
      if (cells.length === 0 || width === 0) return errorWithWords("#VALUE!", `${this.fullName} gave an empty table`);
      if (cells.length === 1 && width === 1) return valueOf(cells[0]![0]);
      return ArrayValueObject.create({
        calculateValueList: cells.map((row) => Array.from({ length: width }, (_, column) => valueOf(row[column]))),
        rowCount: cells.length,
        columnCount: width,
        // The array is no part of a sheet.
        unitId: "",
        sheetId: "",
        row: -1,
        column: -1,
      });
    } catch (thrown) {
      const words = thrown instanceof Error ? thrown.message : String(thrown);
      return errorWithWords("#VALUE!", `${this.fullName} failed: ${words}`);
    }
  }
}
