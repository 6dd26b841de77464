import { type Default } from "../models/defaults";
import * as z from "zod/mini";
import { isErrorCell } from "../cells/cellValues";
import {
  type CellArgument,
  type Failure,
  isBlank,
  plainCell,
  quoteCell,
  refuse,
  refuseBlank,
  strangeCell,
} from "./argument";

/** No number takes the fast path of an argument that is not a number. */
const noFastPath = { min: Infinity, max: -Infinity, wholeOnly: false } as const;

const textNumberOrFlag = () => z.union([z.string(), z.number(), z.boolean()]);
/** Made when a cell is first read. */
let spoken: ReturnType<typeof textNumberOrFlag> | undefined;

/** Text such as a name; a number is taken as its digits. */
export class TextArgument<T extends string | undefined = string> implements CellArgument<T> {
  readonly shape = "cell";
  readonly kind = "text";
  readonly unit = "";
  readonly min = noFastPath.min;
  readonly max = noFastPath.max;
  readonly wholeOnly = noFastPath.wholeOnly;
  readonly choices?: readonly string[];

  constructor(
    readonly defaultValue: T | undefined = undefined,
    readonly optional = false,
    readonly mayBeBlank = false,
  ) {}

  default({ value }: Default<string>): TextArgument<string> {
    return new TextArgument<string>(value, true);
  }

  mayBeOmitted(): TextArgument<string | undefined> {
    return new TextArgument<string | undefined>(undefined, true);
  }

  /** A cell of a table that may be empty: then reads as undefined. */
  orBlank(): TextArgument<string | undefined> {
    return new TextArgument<string | undefined>(undefined, false, true);
  }

  read(cell: unknown, label: string): T | Failure {
    if (isErrorCell(cell)) return cell;
    const plain = plainCell(cell);
    if (isBlank(plain)) return this.mayBeBlank ? (undefined as T) : refuseBlank(this, label, "enter text");
    const result = z.safeParse((spoken ??= textNumberOrFlag()), plain);
    return result.success ? (String(result.data).trim() as T) : refuse(label, `${strangeCell}; enter text`);
  }
}

/** A cell may hold "constructor", which every object has without owning it. */
const ownEntry = <V>(entries: Readonly<Record<string, V>>, key: string): V | undefined =>
  Object.prototype.hasOwnProperty.call(entries, key) ? entries[key] : undefined;

/** One word of a list, without regard to case. */
export class ChoiceArgument<T extends string | undefined> implements CellArgument<T> {
  readonly shape = "cell";
  readonly kind = "text";
  readonly unit = "";
  readonly min = noFastPath.min;
  readonly max = noFastPath.max;
  readonly wholeOnly = noFastPath.wholeOnly;

  /** `aliases` are further spellings, lower case, to the choice they stand for. */
  constructor(
    readonly choices: readonly NonNullable<T>[],
    private readonly aliases: Readonly<Record<string, NonNullable<T>>> = {},
    readonly defaultValue: T | undefined = undefined,
    readonly optional = false,
  ) {}

  default({ value }: Default<NonNullable<T>>): ChoiceArgument<NonNullable<T>> {
    return new ChoiceArgument<NonNullable<T>>(this.choices, this.aliases, value, true);
  }

  mayBeOmitted(): ChoiceArgument<T | undefined> {
    return new ChoiceArgument<T | undefined>(this.choices, this.aliases, undefined, true);
  }

  read(cell: unknown, label: string): T | Failure {
    if (isErrorCell(cell)) return cell;
    const plain = plainCell(cell);
    const wanted = `enter ${this.choices.slice(0, -1).join(", ")} or ${this.choices[this.choices.length - 1]}`;
    if (isBlank(plain)) return refuseBlank(this, label, wanted);
    if (typeof plain === "object") return refuse(label, `${strangeCell}; ${wanted}`);
    const key = String(plain).trim().toLowerCase();
    const found = this.choices.find((choice) => choice.toLowerCase() === key) ?? ownEntry(this.aliases, key);
    return found ?? refuse(label, `is ${quoteCell(plain)}; ${wanted}`);
  }
}

/** One word of a list. */
export const choice = <C extends string>(
  choices: readonly C[],
  aliases: Readonly<Record<string, C>> = {},
): ChoiceArgument<C> => new ChoiceArgument<C>(choices, aliases);

const flagWords: Readonly<Record<string, boolean>> = {
  true: true,
  yes: true,
  "1": true,
  false: false,
  no: false,
  "0": false,
};

/** TRUE or FALSE; 1, 0, yes and no are taken too, since some sheets hold them for it. */
export class FlagArgument<T extends boolean | undefined = boolean> implements CellArgument<T> {
  readonly shape = "cell";
  readonly kind = "flag";
  readonly unit = "";
  readonly min = noFastPath.min;
  readonly max = noFastPath.max;
  readonly wholeOnly = noFastPath.wholeOnly;

  constructor(
    readonly defaultValue: T | undefined = undefined,
    readonly optional = false,
  ) {}

  default({ value }: Default<boolean>): FlagArgument<boolean> {
    return new FlagArgument<boolean>(value, true);
  }

  read(cell: unknown, label: string): T | Failure {
    if (isErrorCell(cell)) return cell;
    const plain = plainCell(cell);
    if (isBlank(plain)) return refuseBlank(this, label, "enter TRUE or FALSE");
    if (typeof plain === "object") return refuse(label, `${strangeCell}; enter TRUE or FALSE`);
    const flag = ownEntry(flagWords, String(plain).trim().toLowerCase());
    return flag === undefined ? refuse(label, `is ${quoteCell(plain)}; enter TRUE or FALSE`) : (flag as T);
  }
}

export const text = new TextArgument();
export const flag = new FlagArgument();
