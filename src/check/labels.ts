import type { Book, Place } from "./book";
import { isFilled } from "./book";

/** A unit as people write it beside a number, and what it measures. */
interface LabelUnit {
  readonly unit: string;
  readonly spellings: RegExp;
}

/** Only units that can't be taken for an ordinary word; "m", "h" and "L" count in brackets or alone in a cell. */
const units: readonly LabelUnit[] = [
  { unit: "psi", spellings: /^psi[ga]?$/i },
  { unit: "bar", spellings: /^bar(?:g|\(g\)| gauge)?$/i },
  { unit: "kPa", spellings: /^kpaa?$/i },
  { unit: "MPa", spellings: /^mpa$/i },
  { unit: "hPa", spellings: /^(?:hpa|mbar)$/i },
  { unit: "inHg", spellings: /^in ?hg$/i },
  { unit: "°F", spellings: /^(?:°|º|deg ?)F$/i },
  { unit: "°C", spellings: /^(?:°|º|deg ?)C$/i },
  { unit: "ft", spellings: /^(?:ft|feet)$/i },
  { unit: "m", spellings: /^(?:m|metres?|meters?)$/i },
  { unit: "km", spellings: /^km$/i },
  { unit: "cm", spellings: /^cm$/i },
  { unit: "gal", spellings: /^(?:us )?gal(?:lons?)?$/i },
  { unit: "L", spellings: /^(?:l|litres?|liters?)$/i },
  { unit: "mL", spellings: /^ml$/ },
  { unit: "m³", spellings: /^m(?:3|³)$/i },
  { unit: "ft³", spellings: /^(?:ft(?:3|³)|cu ?ft)$/i },
  { unit: "kg", spellings: /^kg$/i },
  { unit: "lb", spellings: /^lbs?$/i },
  { unit: "t", spellings: /^(?:tonnes?|t)$/i },
  { unit: "L/min", spellings: /^(?:l\/min|lpm)$/i },
  { unit: "L/h", spellings: /^(?:l\/h|l\/hr|lph)$/i },
  { unit: "L/day", spellings: /^l\/(?:d|day)$/i },
  { unit: "m³/h", spellings: /^m(?:3|³)\/h$/i },
  { unit: "m³/day", spellings: /^m(?:3|³)\/(?:d|day)$/i },
  { unit: "gal/h", spellings: /^gal\/h(?:r)?$/i },
  { unit: "gal/day", spellings: /^gal\/(?:d|day)$/i },
  { unit: "kW", spellings: /^kw$/i },
  { unit: "W", spellings: /^w(?:atts?)?$/i },
  { unit: "hp", spellings: /^hp$/i },
  { unit: "min", spellings: /^min(?:utes?)?$/i },
  { unit: "h", spellings: /^(?:h|hr|hrs|hours?)$/i },
  { unit: "days", spellings: /^(?:d|days?)$/i },
  { unit: "weeks", spellings: /^weeks?$/i },
  { unit: "months", spellings: /^months?$/i },
  { unit: "years", spellings: /^(?:years?|yr)$/i },
  { unit: "%", spellings: /^(?:%|percent)$/i },
];

const unitOf = (text: string): string | undefined => {
  const plain = text.trim();
  const found = units.filter(({ spellings }) => spellings.test(plain))[0];
  return found?.unit;
};

/** The unit in a label's brackets or behind its last comma: "Pressure (psi)", "Store [bar]", "Height, ft". */
export const unitInLabel = (label: string): string | undefined => {
  const brackets = /[([]([^()[\]]+)[)\]]\s*:?\s*$/.exec(label);
  if (brackets) return unitOf(brackets[1]!);
  const comma = /,\s*([^,]+?)\s*:?\s*$/.exec(label);
  if (comma) return unitOf(comma[1]!);
  const words = label.trim().replace(/:$/, "").split(/\s+/);
  const last = words[words.length - 1] ?? "";
  // A bare last word only where it is no ordinary letter or word: "Pressure psi", not "Plan A m".
  return words.length > 1 && /^(?:psi[ga]?|bar|kpa|°[CF]|ft|gal|kg|lbs?|l\/min|l\/h|lpm|kw|hp|%)$/i.test(last)
    ? unitOf(last)
    : undefined;
};

/** The unit in a number format's quoted text: `0.0 "psi"`. */
export const unitInFormat = (format: string | undefined): string | undefined => {
  if (format === undefined) return undefined;
  const first = format.split(";")[0]!;
  const quoted = /"\s*([^"]+?)\s*"/.exec(first);
  if (quoted) return unitOf(quoted[1]!);
  return undefined;
};

export interface LabelledUnit {
  readonly unit: string;
  /** Where it stands, for words: `its format`, `the label A4`. */
  readonly where: string;
  readonly place: Place | undefined;
}

const textAt = (book: Book, place: Place): string | undefined => {
  const cell = book.cell(place);
  return isFilled(cell) && cell.formula === undefined && typeof cell.value === "string" ? cell.value : undefined;
};

/** The label of a single input: the nearest text to its left, at most three cells away. */
export function labelOf(book: Book, place: Place): { readonly text: string; readonly place: Place } | undefined {
  for (let column = place.column - 1; column >= Math.max(0, place.column - 3); column--) {
    const left = { ...place, column };
    const text = textAt(book, left);
    if (text !== undefined) return { text, place: left };
    if (isFilled(book.cell(left))) return undefined;
  }
  return undefined;
}

/** The heading of a column of numbers: the nearest text above, with nothing but filled cells between. */
export function headingOf(book: Book, place: Place): { readonly text: string; readonly place: Place } | undefined {
  for (let row = place.row - 1; row >= 0; row--) {
    const above = { ...place, row };
    const cell = book.cell(above);
    if (!isFilled(cell)) return undefined;
    const text = textAt(book, above);
    if (text !== undefined) return { text, place: above };
  }
  return undefined;
}

/** Units named around a cell that holds a plain number. */
export function unitsNamed(book: Book, place: Place, isColumn: boolean): LabelledUnit[] {
  const found: LabelledUnit[] = [];
  const inFormat = unitInFormat(book.cell(place)?.format);
  if (inFormat) found.push({ unit: inFormat, where: "its number format", place: undefined });
  const heading = headingOf(book, place);
  const inHeading = heading && unitInLabel(heading.text);
  if (isColumn || inHeading) {
    if (inHeading) found.push({ unit: inHeading, where: "its heading", place: heading.place });
    if (isColumn) return found;
  }
  const label = labelOf(book, place);
  const inLabel = label && unitInLabel(label.text);
  if (inLabel) found.push({ unit: inLabel, where: "its label", place: label.place });
  const right = { ...place, column: place.column + 1 };
  const beside = textAt(book, right);
  const unitBeside = beside === undefined ? undefined : unitOf(beside);
  if (unitBeside) found.push({ unit: unitBeside, where: "the unit beside it", place: right });
  return found;
}
