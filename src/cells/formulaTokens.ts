import { isOnSheet } from "./addresses";

/** What a piece of a formula is; `other` holds operators and whatever is not understood. */
export type TokenKind =
  | "space"
  | "number"
  | "quoted"
  | "array"
  | "error"
  | "reference"
  | "name"
  | "open"
  | "close"
  | "comma"
  | "hash"
  | "at"
  | "other";

export interface FormulaToken {
  readonly kind: TokenKind;
  readonly text: string;
  /** Where it starts in the formula. */
  readonly at: number;
  /** Lacks its closing quotation mark or brace, as while it is being typed. */
  readonly isOpen?: boolean;
}

/** Letters of names: "_" and whatever is beyond ASCII and no space. */
const letter = "A-Za-z_\\u00a1-\\u1fff\\u2070-\\u2fff\\u3001-\\uffff";
const inName = `${letter}0-9.`;

const space = /\s+/y;
const quoted = /"(?:[^"]|"")*("?)/y;
const array = /\{(?:"(?:[^"]|"")*"|[^"}])*(\}?)/y;
const number = /(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/y;
const errorValue = /#(?:N\/A|[A-Z_]+(?:\/0)?[!?]|GETTING_DATA)/iy;
const sheetPrefix = new RegExp(
  `(?:'(?:[^']|'')*'|(?:\\[\\d+\\])?[${letter}][${inName}]*(?::[${letter}][${inName}]*)?)!`,
  "y",
);
const column = "\\$?[A-Za-z]{1,3}";
const cell = `${column}\\$?\\d{1,7}`;
const end = `(?![${inName}(!])`;
const cellOrArea = new RegExp(`${cell}(?::${cell})?${end}|${column}:${column}${end}|\\$?\\d+:\\$?\\d+`, "y");
const identifier = new RegExp(`[${letter}\\\\][${inName}\\\\?]*`, "y");
const optionalParameter = new RegExp(`\\[\\s*[${letter}\\\\][${inName}]*\\s*\\]`, "y");
const openSheetName = /'(?:[^']|'')*$/y;

const match = (pattern: RegExp, formula: string, at: number): RegExpExecArray | undefined => {
  pattern.lastIndex = at;
  return pattern.exec(formula) || undefined;
};

/** From "[" to its partner; an apostrophe in a structured reference escapes the character after it. */
const bracketed = (formula: string, start: number): string => {
  let depth = 0;
  for (let at = start; at < formula.length; at++) {
    if (formula[at] === "'") at++;
    else if (formula[at] === "[") depth++;
    else if (formula[at] === "]" && --depth === 0) return formula.slice(start, at + 1);
  }
  return formula.slice(start);
};

const marks: { [mark: string]: TokenKind } = { "(": "open", ")": "close", ",": "comma", "@": "at" };

/** Kinds after which "#" asks for the spill of what stands before it. */
const endsOperand = (kind: TokenKind): boolean =>
  kind !== "open" && kind !== "comma" && kind !== "at" && kind !== "other" && kind !== "space";

/** The pieces of a formula, with or without its "=". Joined they give the text back; nothing throws. */
export const tokensOf = (formula: string): FormulaToken[] => {
  const tokens: FormulaToken[] = [];
  let at = 0;
  let afterOperand = false;
  const add = (kind: TokenKind, text: string, isOpen = false): void => {
    tokens.push(isOpen ? { kind, text, at, isOpen } : { kind, text, at });
    at += text.length;
    if (kind !== "space") afterOperand = endsOperand(kind);
  };
  while (at < formula.length) {
    const blank = match(space, formula, at);
    if (blank) {
      add("space", blank[0]);
      continue;
    }
    const character = formula.charAt(at);
    if (character === "#") {
      const error = afterOperand ? undefined : match(errorValue, formula, at);
      if (error) add("error", error[0]);
      else add("hash", "#");
      continue;
    }
    const whole = match(quoted, formula, at) || match(array, formula, at);
    if (whole) {
      add(character === "{" ? "array" : "quoted", whole[0], whole[0].length === 1 || !whole[1]);
      continue;
    }
    const unfinished = character === "'" && match(openSheetName, formula, at);
    if (unfinished && !match(sheetPrefix, formula, at)) {
      add("reference", unfinished[0], true);
      continue;
    }
    const sheet = match(sheetPrefix, formula, at);
    const prefix = sheet ? sheet[0] : "";
    const rest = at + prefix.length;
    const reference = match(cellOrArea, formula, rest) || (prefix && match(errorValue, formula, rest));
    if (reference && reference[0].split(":").every(isOnSheet)) {
      add("reference", prefix + reference[0]);
      continue;
    }
    const name = match(identifier, formula, rest);
    if (name) {
      const afterName = rest + name[0].length;
      const table = formula[afterName] === "[" ? bracketed(formula, afterName) : "";
      add(prefix || table ? "reference" : "name", prefix + name[0] + table);
      continue;
    }
    const digits = match(number, formula, at);
    if (digits) add("number", digits[0]);
    else if (character === "[") {
      const parameter = match(optionalParameter, formula, at);
      add("name", parameter ? parameter[0] : bracketed(formula, at));
    } else add(marks[character] || "other", character);
  }
  return tokens;
};

/** The characters of a quoted text. */
export const unquoted = (text: string): string => text.slice(1, -1).replace(/""/g, '"');
