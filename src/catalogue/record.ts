import { type Kind } from "../arguments/kinds";
import type { Example } from "../arguments/about";

export type { Example };

/** One argument as every reader of the catalogue sees it. */
export interface ArgumentRecord {
  /** snake_case, as Excel's own functions write them. */
  name: string;
  /** What it is, with its unit in brackets and what stands for it when left out. */
  description: string;
  /** Unit of a bare number, "" for counts and text. */
  unit: string;
  optional: boolean;
  /** What an omitted optional argument stands for; absent when there is no fixed default. */
  default?: number | string | boolean;
  /** "cell" broadcasts; "range" is taken whole. */
  shape: "cell" | "range";
  /** What it is, beyond its unit: of one kind, or a kind for each column of a table. */
  kind: Kind | readonly Kind[];
  /** The words a choice argument accepts. */
  choices?: string[];
}

/** One function, joined from its JSDoc, its schema, its `about` and its generated metadata. */
export interface FunctionRecord {
  /** Without namespace: HOURS_TO_FILL. */
  id: string;
  /** Heading of the catalogue; the folder name. */
  group: string;
  description: string;
  arguments: ArgumentRecord[];
  /** The description names the unit in brackets. */
  result: { description: string; unit: string; table: boolean; gives: Kind | readonly Kind[] };
  rule: string;
  range: string;
  source: string;
  caution?: string;
  examples: Example[];
  seeAlso: string[];
  /** Path of the function's file below src/functions, with "/". */
  file: string;
}
