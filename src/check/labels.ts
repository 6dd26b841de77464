import type { Book, Place } from "./book";
import { isFilled } from "./book";

/** A unit as people write it beside a number, and what it measures. */
interface LabelUnit {
  readonly unit: string;
  /** What it measures: another unit of the same thing is a slip, another thing is another matter. */
  readonly of: string;
  readonly spellings: RegExp;
}

/** Only units that can't be taken for an ordinary word; "m", "h" and "L" count in brackets or alone in a cell. */
const units: readonly LabelUnit[] = [
  { unit: "psi", of: "pressure", spellings: /^psi[ga]?$/i },
  { unit: "bar", of: "pressure", spellings: /^bar(?:g|\(g\)| gauge)?$/i },
  { unit: "kPa", of: "pressure", spellings: /^kpaa?$/i },
  { unit: "MPa", of: "pressure", spellings: /^mpa$/i },
  { unit: "hPa", of: "pressure", spellings: /^hpa$/i },
  { unit: "mbar", of: "pressure", spellings: /^mbar$/i },
  { unit: "inHg", of: "pressure", spellings: /^in ?hg$/i },
  { unit: "°F", of: "temperature", spellings: /^(?:°|º|deg ?)F$/i },
  { unit: "°C", of: "temperature", spellings: /^(?:°|º|deg ?)C$/i },
  { unit: "ft", of: "length", spellings: /^(?:ft|feet)$/i },
  { unit: "m", of: "length", spellings: /^(?:m|metres?|meters?)$/i },
  { unit: "km", of: "length", spellings: /^km$/i },
  { unit: "cm", of: "length", spellings: /^cm$/i },
  { unit: "gal", of: "volume", spellings: /^(?:us )?gal(?:lons?)?$/i },
  { unit: "L", of: "volume", spellings: /^(?:l|litres?|liters?)$/i },
  { unit: "mL", of: "volume", spellings: /^ml$/ },
  { unit: "m³", of: "volume", spellings: /^m(?:3|³)$/i },
  { unit: "ft³", of: "volume", spellings: /^(?:ft(?:3|³)|cu ?ft)$/i },
  { unit: "kg", of: "mass", spellings: /^kg$/i },
  { unit: "lb", of: "mass", spellings: /^lbs?$/i },
  { unit: "t", of: "mass", spellings: /^(?:tonnes?|t)$/i },
  { unit: "L/min", of: "volume a time", spellings: /^(?:l\/min|lpm)$/i },
  { unit: "L/h", of: "volume a time", spellings: /^(?:l\/h|l\/hr|lph)$/i },
  { unit: "L/day", of: "volume a time", spellings: /^l\/(?:d|day)$/i },
  { unit: "m³/h", of: "volume a time", spellings: /^m(?:3|³)\/h$/i },
  { unit: "m³/day", of: "volume a time", spellings: /^m(?:3|³)\/(?:d|day)$/i },
  { unit: "gal/h", of: "volume a time", spellings: /^gal\/h(?:r)?$/i },
  { unit: "gal/day", of: "volume a time", spellings: /^gal\/(?:d|day)$/i },
  { unit: "kW", of: "power", spellings: /^kw$/i },
  { unit: "W", of: "power", spellings: /^w(?:atts?)?$/i },
  { unit: "hp", of: "power", spellings: /^hp$/i },
  { unit: "min", of: "time", spellings: /^min(?:utes?)?$/i },
  { unit: "h", of: "time", spellings: /^(?:h|hr|hrs|hours?)$/i },
  { unit: "days", of: "time", spellings: /^(?:d|days?)$/i },
  { unit: "weeks", of: "time", spellings: /^weeks?$/i },
  { unit: "months", of: "time", spellings: /^months?$/i },
  { unit: "years", of: "time", spellings: /^(?:years?|yr)$/i },
  { unit: "%", of: "fraction", spellings: /^(?:%|percent)$/i },
];

const unitOf = (text: string): string | undefined => {
  const plain = text.trim();
  const found = units.filter(({ spellings }) => spellings.test(plain))[0];
  return found?.unit;
};

/** Do two units measure the same thing? "fraction" is the unit of a bare share. */
export const measureAlike = (one: string, other: string): boolean => {
  const of = (unit: string): string | undefined =>
    unit === "fraction" ? "fraction" : units.filter((each) => each.unit === unit)[0]?.of;
  return of(one) !== undefined && of(one) === of(other);
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
  if (!isFilled(cell) || cell.formula !== undefined || typeof cell.value !== "string") return undefined;
  // "7500 ft" is an input with its unit, no label.
  return /^\s*[+\-−]?[\d.]/.test(cell.value) ? undefined : cell.value;
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

interface Label {
  readonly text: string;
  readonly place: Place;
}

/** Headings found, by sheet and column: the rows of one column have one, so that a long column is walked once. */
const headings = new WeakMap<Book, Map<string, Label | undefined>>();

/** The heading of a column of numbers: the nearest text above, with nothing but filled cells between. */
export function headingOf(book: Book, place: Place): Label | undefined {
  const found = headings.get(book) ?? new Map<string, Label | undefined>();
  headings.set(book, found);
  const key = (row: number): string => `${place.sheet}!${row},${place.column}`;
  let row = place.row - 1;
  let heading: Label | undefined;
  for (; row >= 0; row--) {
    if (found.has(key(row + 1))) {
      heading = found.get(key(row + 1));
      break;
    }
    const above = { ...place, row };
    if (!isFilled(book.cell(above))) break;
    const text = textAt(book, above);
    if (text !== undefined) {
      heading = { text, place: above };
      break;
    }
  }
  for (let below = Math.max(row + 1, 1); below <= place.row; below++) found.set(key(below), heading);
  return heading;
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
