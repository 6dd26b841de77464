import { type CellError, invalid } from "../cells/cellValues";
import type { Better } from "../models/options";
import { list } from "./range";
import { choice } from "./text";

/** For each measure which way it is better. */
export const better = list(choice<Better>(["less", "more"], { fewer: "less", lower: "less", higher: "more" }));

/** One word must stand for each column of the measures. */
export const wordForEachMeasure = (columns: number, words: readonly Better[]): CellError | undefined =>
  words.length === columns
    ? undefined
    : invalid(
        `measures has ${columns} column${columns === 1 ? "" : "s"} and better has ${words.length} word${words.length === 1 ? "" : "s"}; enter less or more for each column`,
      );
