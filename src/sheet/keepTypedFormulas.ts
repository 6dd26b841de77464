import type { IFunctionService } from "@univerjs/engine-formula";
import { EditingRenderController } from "@univerjs/sheets-ui";
import { typedFormula } from "../cells/typedFormula";
import { replaceMethod } from "../engine/replaceMethod";
import { ask } from "./ask";
import { dateReadings, type DateReading } from "./dayOrder";

/** Which day is meant; Univer 0.25.1 takes the month first without a word. */
const choose = async (readings: readonly DateReading[]): Promise<string | undefined> => {
  if (readings.length === 1) return readings[0]!.entry;
  return ask(
    "Which day is meant?",
    readings.map(({ words, entry }) => ({ value: entry, words })),
  );
};

interface Snapshot {
  readonly body?: { readonly dataStream: string };
}

interface Editing {
  _lexerTreeBuilder: object;
  readonly _functionService: IFunctionService;
}

/**
 * Univer 0.25.1 rewrites a formula that was typed: it shortens 1.50 to 1.5 and then takes later texts from where they
 * stood before. Without the pieces it asks its lexer for, it keeps the formula as it comes.
 */
export const keepTypedFormulas = (): void => {
  type Submit = (this: Editing, snapshot: Snapshot, wholeSelection?: boolean) => Promise<boolean>;
  replaceMethod<Submit>(
    EditingRenderController,
    "_submitEdit",
    (original) =>
      function (snapshot, wholeSelection) {
        if (!Object.hasOwn(this._lexerTreeBuilder, "sequenceNodesBuilder")) {
          this._lexerTreeBuilder = Object.create(this._lexerTreeBuilder, {
            sequenceNodesBuilder: { value: () => undefined },
          }) as object;
        }
        const { body } = snapshot;
        const readings = body ? dateReadings(body.dataStream) : [];
        if (body && readings.length > 0) {
          return choose(readings).then((entry) =>
            // Escape gives the entry up.
            entry === undefined
              ? true
              : original.call(this, { ...snapshot, body: { ...body, dataStream: `${entry}\r\n` } }, wholeSelection),
          );
        }
        if (!body?.dataStream.startsWith("=")) return original.call(this, snapshot, wholeSelection);
        const dataStream = typedFormula(body.dataStream, (name) => this._functionService.hasExecutor(name));
        return original.call(this, { ...snapshot, body: { ...body, dataStream } }, wholeSelection);
      },
  );
};
