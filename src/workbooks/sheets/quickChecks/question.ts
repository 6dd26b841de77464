import type { Scalar, Validation } from "../../writer";
import { choiceEntry, dateEntry } from "../entries";
import { readable } from "../numberInput";

/** Kinds that VALUE_CHECK knows. */
type CheckedKind = "fraction" | "flow" | "level" | "temperature" | "pressure" | "date" | "count";

export interface Entry {
  /** With its unit: "Capacity [L]". */
  label: string;
  value: Scalar;
  validation: Validation;
  format?: string;
  kind?: CheckedKind;
}

export interface Question {
  words: string;
  entries: readonly Entry[];
  /** With {1}, {2} … for the entries' cells. */
  formula: string;
  /** What the answer is, with its unit. */
  answer: string;
  format?: string;
  /** What #N/A means here. */
  noAnswer?: string;
  caution: string;
}

export interface Group {
  name: string;
  questions: readonly Question[];
}

interface Quantity {
  format?: string;
  kind?: CheckedKind;
  /** Units that text may carry, for the prompt. */
  units?: string;
}

/** A number between two limits, or text that carries a unit: "35 psi". Text is judged by the function. */
export const quantity = (
  name: string,
  unit: string,
  value: Scalar,
  least: number,
  most: number,
  more: Quantity = {},
): Entry => {
  const label = unit ? `${name} [${unit}]` : name;
  const offer = more.units ? ` Or text with its unit: ${more.units}.` : "";
  return {
    label,
    value,
    format: more.format ?? "General",
    ...(more.kind ? { kind: more.kind } : {}),
    validation: {
      // The first cell of the range stands for itself; the sheet puts its address in.
      rule: more.units
        ? { kind: "formula", formula: `=OR(ISTEXT({cell}),AND(ISNUMBER({cell}),{cell}>=${least},{cell}<=${most}))` }
        : { kind: "number", least, most },
      prompt: {
        title: name.slice(0, 32),
        words: `${readable(least)} to ${readable(most)}${unit ? ` ${unit}` : ""}.${offer}`,
      },
      refusal: {
        title: name.slice(0, 32),
        words: `Enter a number from ${readable(least)} to ${readable(most)}${unit ? ` ${unit}` : ""}.${offer}`,
      },
      blankPasses: false,
    },
  };
};

export const level = (name: string, value: Scalar, most = 20000): Entry =>
  quantity(name, "L", value, 0, most, { kind: "level", units: "10 gal, 0.2 m3" });
export const flow = (name: string, value: Scalar, most = 500): Entry =>
  quantity(name, "L/min", value, 0, most, { kind: "flow", units: "3 m3/h, 120 cfh" });
export const pressure = (name: string, value: Scalar, most = 300): Entry =>
  quantity(name, "bar gauge", value, 0, most, { kind: "pressure", units: "35 psi, 400 kPa" });
export const temperature = (name: string, value: Scalar): Entry =>
  quantity(name, "°C", value, -40, 60, { kind: "temperature", units: "85 °F" });
export const altitude = (value: Scalar): Entry => quantity("Altitude", "m", value, -400, 8000, { units: "5000 ft" });
export const makeRate = (value: Scalar): Entry =>
  quantity("Make here", "L/h", value, 0.01, 1000, { units: "30 L/day, 8 gal/day" });
export const hours = (name: string, value: Scalar, most = 2000): Entry =>
  quantity(name, "h", value, 0, most, { units: "90 min, 2 d" });
export const minutes = (name: string, value: Scalar, most = 100000): Entry =>
  quantity(name, "min", value, 0, most, { units: "2 h" });
export const days = (name: string, value: Scalar, least = 0, most = 3650): Entry =>
  quantity(name, "days", value, least, most);
export const fraction = (name: string, value: Scalar, least: number, most: number): Entry =>
  quantity(name, "", value, least, most, { kind: "fraction", format: "0.0%" });
export const count = (name: string, value: Scalar, most = 10000): Entry =>
  quantity(name, "", value, 0, most, { kind: "count", format: "#,##0" });
export const draw = (value = 1.25): Entry => quantity("Draw ratio", "", value, 1, 5, { format: "0.00" });

export const day = (name: string, value: number, format = "yyyy-mm-dd"): Entry => ({
  label: name,
  value,
  format,
  kind: "date",
  validation: dateEntry(name, "A date, by hand or from the sheet that keeps it."),
});

export const choice = (name: string, value: Scalar, values: readonly string[]): Entry => ({
  label: name,
  value,
  validation: choiceEntry(name.replace(/ \[.*/, ""), "Choose from the list.", values),
});
