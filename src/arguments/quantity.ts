import { type Kind } from "./kinds";
import { type Default } from "../models/defaults";
import { rounding } from "../models/exceeds";
import { zeroCelsius } from "../models/referenceConditions";
import * as z from "zod/mini";
import { isErrorCell } from "../cells/cellValues";
import {
  type CellArgument,
  type Failure,
  formatNumber,
  isBlank,
  plainCell,
  quoteCell,
  quoteNumber,
  refuse,
  refuseBlank,
  strangeCell,
} from "./argument";
import { type Measure, convert, measuredBy, measures, unitKey } from "./units";

const numberThenUnit = /^([+\-−]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)\s*(.*)$/i;
const groupedDigits = /^[+\-−]?\d{1,3}([,' \u00a0\u202f]\d{3})+(\.\d+)?(?!\d)/;
const decimalComma = /^[+\-−]?\d+,\d+(?!\d)/;
/** "1.500": a thousand and a half to one reader, one and a half to another. */
const pointBeforeThree = /^[+\-−]?[1-9]\d{0,2}\.\d{3}$/;

/** Reads a number with a unit, exactly by the measure's factors; a string is the reason why not. */
function readText(
  text: string,
  { measure, limits }: { measure: Measure | null; limits: Limits },
  wanted: string,
): number | { problem: string } {
  const trimmed = text.trim();
  if (groupedDigits.test(trimmed)) return { problem: `${quoteCell(text)} has a thousands separator; write it without` };
  if (decimalComma.test(trimmed))
    return { problem: `${quoteCell(text)} has a decimal comma inside text; write a full stop, or enter a number` };
  const match = numberThenUnit.exec(trimmed);
  if (!match) return { problem: `${quoteCell(text)} is not a number; ${wanted}` };
  const digits = match[1]!;
  const amount = Number(digits.replace("−", "-"));
  const unit = match[2]!;
  if (unit === "")
    return {
      problem: `${quoteCell(text)} is text that looks like a number; enter it as a number${measure ? " or write its unit" : ""}`,
    };
  const conversion = measure ? measure.units.get(unitKey(unit)) : undefined;
  if (!conversion) {
    const elsewhere = measuredBy(unit);
    if (elsewhere && elsewhere !== measure?.name)
      return { problem: `${quoteCell(text)} is ${elsewhere}; ${wanted}${measure?.elsewhere?.(elsewhere) ?? ""}` };
    return {
      problem: `${quoteCell(text)}: the unit ${quoteCell(unit)} is not known here; ${wanted}${measure?.unknown?.(unitKey(unit)) ?? ""}`,
    };
  }
  const value = convert(amount, conversion);
  const thousandfold = convert(amount * 1000, conversion);
  if (pointBeforeThree.test(digits) && thousandfold >= limits.min && thousandfold <= limits.max) {
    return {
      problem: `${quoteCell(text)} may be ${quoteNumber(amount)} or ${quoteNumber(amount * 1000)}; write "${quoteNumber(amount)} ${unit}" or "${quoteNumber(amount * 1000)} ${unit}"`,
    };
  }
  return value;
}

interface Limits {
  readonly min: number;
  readonly max: number;
  /** Completes "must be …". */
  readonly words: string;
  /** Follows the number where it is above the range. */
  readonly above?: string;
  /** Ends that belong to the range: a number beyond one by rounding only, as 0.3 − 0.1 − 0.2 is below 0, is taken for it. */
  readonly ends?: readonly number[];
}

/**
 * Numbers that are possible but, without a unit, most likely in another unit or of another kind: they are refused with
 * the likely reading offered, and pass as text with their unit.
 */
interface Doubt {
  /** From here to `to` no number is in doubt, and the fast path takes it. */
  readonly from: number;
  readonly to: number;
  /** Completes "<argument> <number> …"; undefined where there is no doubt. */
  readonly words: (value: number) => string | undefined;
}

const unlimited: Limits = { min: -Number.MAX_VALUE, max: Number.MAX_VALUE, words: "a number" };

const isRoundingApart = (value: number, other: number): boolean =>
  Math.abs(value - other) <= rounding * Math.max(1, Math.abs(other));

/** The largest double below a number, so that "under 1" needs no flag of its own on the fast path. */
const justBelow = (value: number): number => value - Math.abs(value) * Number.EPSILON * 0.5;
const justAbove = (value: number): number =>
  value === 0 ? Number.MIN_VALUE : value + Math.abs(value) * Number.EPSILON;

interface Settings {
  readonly kind: Kind | undefined;
  readonly measure: Measure | null;
  readonly limits: Limits;
  readonly wholeOnly: boolean;
  readonly defaultValue: number | undefined;
  readonly optional: boolean;
  readonly mayBeBlank: boolean;
  readonly doubt: Doubt | undefined;
}

const plain: Settings = {
  kind: undefined,
  measure: null,
  limits: unlimited,
  wholeOnly: false,
  defaultValue: undefined,
  optional: false,
  mayBeBlank: false,
  doubt: undefined,
};

/**
 * A number with a unit. A cell that is already a finite number inside the limits is taken as it is; everything else
 * (text with a unit, a formatted number, a wrong kind) goes through the zod schema, which speaks.
 */
export class Quantity<T extends number | undefined = number> implements CellArgument<T> {
  readonly shape = "cell";
  readonly measure: Measure | null;
  readonly wholeOnly: boolean;
  readonly optional: boolean;
  readonly mayBeBlank: boolean;
  readonly defaultValue: T | undefined;
  readonly min: number;
  readonly max: number;
  private readonly settings: Settings;
  private compiled: z.ZodMiniType<number> | undefined;

  constructor(settings: Partial<Settings>) {
    this.settings = Object.assign({}, plain, settings);
    const { measure, limits, wholeOnly, defaultValue, optional, mayBeBlank, doubt } = this.settings;
    this.measure = measure;
    this.wholeOnly = wholeOnly;
    this.optional = optional;
    this.mayBeBlank = mayBeBlank;
    this.defaultValue = defaultValue as T | undefined;
    this.min = doubt ? Math.max(limits.min, doubt.from) : limits.min;
    this.max = doubt ? Math.min(limits.max, doubt.to) : limits.max;
  }

  get kind(): Kind {
    return this.settings.kind ?? (this.measure ? this.measure.kind : "number");
  }

  /** Says more closely than its unit what the number is. */
  as(kind: Kind): Quantity<T> {
    return this.changed({ kind });
  }

  get unit(): string {
    return this.measure ? this.measure.unit : "";
  }

  private get unitWords(): string {
    return this.unit === "" ? "" : ` ${this.unit}`;
  }

  private changed<V extends number | undefined = T>(changes: Partial<Settings>): Quantity<V> {
    return new Quantity<V>(Object.assign({}, this.settings, changes));
  }

  private limited(min: number, max: number, words: string, ends: readonly number[] = []): Quantity<T> {
    const { limits } = this.settings;
    return this.changed({ limits: { min: Math.max(min, limits.min), max: Math.min(max, limits.max), words, ends } });
  }

  /** Limits with words of their own, which complete "must be …"; `above` follows a number that is too large. */
  within(min: number, max: number, words: string, above?: string): Quantity<T> {
    const limited = this.limited(min, max, words);
    return above === undefined ? limited : limited.changed({ limits: { ...limited.settings.limits, above } });
  }

  /** More than 0: a 0 would be impossible. */
  positive(): Quantity<T> {
    return this.limited(Number.MIN_VALUE, Number.MAX_VALUE, `more than 0${this.unitWords}`);
  }

  atLeast(low: number): Quantity<T> {
    return this.limited(low, Number.MAX_VALUE, `${quoteNumber(low)}${this.unitWords} or more`, [low]);
  }

  atMost(high: number): Quantity<T> {
    return this.limited(-Number.MAX_VALUE, high, `${quoteNumber(high)}${this.unitWords} or less`, [high]);
  }

  between(low: number, high: number): Quantity<T> {
    return this.limited(low, high, `between ${quoteNumber(low)} and ${quoteNumber(high)}${this.unitWords}`, [
      low,
      high,
    ]);
  }

  /** From `low` to anything under `high`. */
  fromToBelow(low: number, high: number): Quantity<T> {
    return this.limited(
      low,
      justBelow(high),
      `from ${quoteNumber(low)} to under ${quoteNumber(high)}${this.unitWords}`,
      [low],
    );
  }

  /** Anything above `low`, up to `high`. */
  aboveTo(low: number, high: number): Quantity<T> {
    return this.limited(
      justAbove(low),
      high,
      `above ${quoteNumber(low)} and at most ${quoteNumber(high)}${this.unitWords}`,
      [high],
    );
  }

  /** Anything between the two, both left out. */
  inside(low: number, high: number): Quantity<T> {
    return this.limited(
      justAbove(low),
      justBelow(high),
      `above ${quoteNumber(low)} and under ${quoteNumber(high)}${this.unitWords}`,
    );
  }

  whole(): Quantity<T> {
    return this.changed({ wholeOnly: true });
  }

  /** Bare numbers that are most likely meant otherwise are refused with words that offer the likely reading. */
  doubted(doubt: Doubt): Quantity<T> {
    return this.changed({ doubt });
  }

  /** What stands for it where it is left out of the formula. */
  default({ value }: Default<number>): Quantity<number> {
    return this.changed<number>({ defaultValue: value, optional: true });
  }

  /** May be left out of the formula, with no fixed default: then reads as undefined. */
  mayBeOmitted(): Quantity<number | undefined> {
    return this.changed<number | undefined>({ defaultValue: undefined, optional: true });
  }

  /** A cell of a table that may be empty: then reads as undefined. */
  orBlank(): Quantity<number | undefined> {
    return this.changed<number | undefined>({ mayBeBlank: true });
  }

  private get wanted(): string {
    if (!this.measure) return "enter a number";
    if (this.measure === measures.fraction) return "enter a fraction such as 0.93, or 93%";
    return `wanted is ${this.measure.name} in ${this.unit}, or text with a unit (${this.measure.offer})`;
  }

  private percentHint(value: number): string {
    const { max } = this.settings.limits;
    if (this.measure !== measures.fraction || value <= 1 || value > 100 || value / 100 > max) return "";
    return `; ${quoteNumber(value)} looks like a percent: enter ${quoteNumber(value)}% or ${formatNumber(value / 100)}`;
  }

  /** A number out of range that would be in it in another unit: most likely the unit was forgotten. */
  private unitHint(value: number): string {
    const unit = this.measure ? this.measure.mistakenFor : undefined;
    const { min, max } = this.settings.limits;
    if (!unit || (value >= min && value <= max)) return "";
    const converted = convert(value, this.measure!.units.get(unitKey(unit))!);
    if (converted < min || converted > max) return "";
    return ` (if that is in ${unit}, enter "${quoteNumber(value)} ${unit}")`;
  }

  private withoutRounding(value: number): number {
    const { min, max, ends } = this.settings.limits;
    if (value < min || value > max) {
      const end = ends ? ends.filter((each) => isRoundingApart(value, each))[0] : undefined;
      if (end !== undefined) return end;
    }
    return this.wholeOnly && isRoundingApart(value, Math.round(value)) ? Math.round(value) : value;
  }

  private get schema(): z.ZodMiniType<number> {
    if (this.compiled) return this.compiled;
    const { limits } = this.settings;
    const outside = (issue: { input?: unknown }): string => {
      const value = issue.input as number;
      const above = limits.above !== undefined && value > limits.max ? `: ${limits.above}` : "";
      return `must be ${limits.words}${this.percentHint(value) || `; this is ${quoteNumber(value)}`}${above}`;
    };
    const read = z.transform((cell: unknown, context) => {
      const problem = (message: string): never => {
        context.issues.push({ code: "custom", message, input: cell });
        return z.NEVER;
      };
      if (typeof cell === "number") return this.withoutRounding(cell);
      if (typeof cell === "boolean") return problem(`is ${quoteCell(cell)}; ${this.wanted}`);
      if (typeof cell !== "string") return problem(`${strangeCell}; ${this.wanted}`);
      const value = readText(cell, this.settings, this.wanted);
      return typeof value === "number" ? this.withoutRounding(value) : problem(value.problem);
    });
    this.compiled = z.pipe(
      read,
      z.number({ error: () => `is not a finite number; ${this.wanted}` }).check(
        z.gte(limits.min, { error: outside }),
        z.lte(limits.max, { error: outside }),
        z.refine((value) => !this.wholeOnly || Number.isInteger(value), {
          error: (issue) => `must be a whole number; this is ${quoteNumber(issue.input as number)}`,
        }),
      ),
    );
    return this.compiled;
  }

  read(cell: unknown, label: string): T | Failure {
    if (isErrorCell(cell)) return cell;
    const given = plainCell(cell);
    if (isBlank(given)) return this.mayBeBlank ? (undefined as T) : refuseBlank(this, label, this.wanted);
    const { doubt } = this.settings;
    const otherReading = doubt && typeof given === "number" ? doubt.words(given) : undefined;
    if (otherReading !== undefined) return refuse(label, `${quoteNumber(given as number)} ${otherReading}`);
    const result = z.safeParse(this.schema, given);
    if (result.success) return result.data as T;
    return refuse(label, result.error.issues[0]!.message + (typeof given === "number" ? this.unitHint(given) : ""));
  }
}

/** A number of one measure, without limits. */
export const measured = (measure: Measure): Quantity => new Quantity({ measure });
const notNegative = (measure: Measure): Quantity => measured(measure).atLeast(0);

/** Liquid oxygen, or a vessel's size in liquid [L]; 0 or more. */
export const litres = notNegative(measures.liquid);
/** Gaseous oxygen at 21.1 °C and 101.325 kPa [L]; 0 or more. */
export const gasLitres = notNegative(measures.gas);
/** Largest single cylinder [L of water]; a tube or bundle is counted cylinder by cylinder. */
const largestCylinder = 250;
/** A cylinder's water volume [L]; more than 0, at most 250. */
export const waterVolume = measured(measures.vesselVolume).within(
  Number.MIN_VALUE,
  largestCylinder,
  `more than 0 and at most ${largestCylinder} L`,
  "is this the gas content? The water volume is stamped on the shoulder of the cylinder, and a bundle is counted cylinder by cylinder",
);
/** Water volume of a bank of cylinders [L]; more than 0. */
export const bankVolume = measured(measures.vesselVolume).positive();
/** Liquid made an hour [L/h]; 0 or more. */
export const litresPerHour = notNegative(measures.makeRate);
/** Liquid drained an hour [L/h]; 0 or more. */
export const drainedPerHour = notNegative(measures.drainRate);
/** Liquid a day [L/day]; 0 or more. */
export const litresPerDay = notNegative(measures.dailyLiquid);
/** Gas a day [L/day]; 0 or more. */
export const gasPerDay = notNegative(measures.dailyGas);
/** Gas flow [L/min]; 0 or more. */
export const litresPerMinute = notNegative(measures.flow);
/** Room volume [m³]; more than 0. */
export const cubicMetres = measured(measures.room).positive();
/** Mass [kg]; 0 or more. */
export const kilograms = notNegative(measures.mass);
/** Pressure above 1.01325 bar [bar gauge]. */
export const gaugeBar = measured(measures.gaugePressure);
/** Difference of two pressures [mbar]; 0 or more. */
export const pressureDifference = notNegative(measures.pressureDifference);
/** Pressure above 1.01325 bar [psi gauge]; 0 or more. */
export const gaugePsi = notNegative(measures.gaugePsi);
/** Station pressure [kPa absolute]; a bare number under 40 is most likely inches of mercury or psi. */
export const absoluteKpa = measured(measures.absoluteKpa).doubted({
  from: 40,
  to: Number.MAX_VALUE,
  words: (value) => {
    if (!(value > 0 && value < 40)) return undefined;
    const [name, unit] = value > 20 ? ["inches of mercury", "inHg"] : ["pounds per square inch", "psia"];
    return `looks like ${name}: write "${formatNumber(value)} ${unit}", or "${formatNumber(value)} kPa" if it is kPa`;
  },
});
/** Temperature [°C], not below absolute zero. */
export const celsius = measured(measures.temperature).atLeast(-zeroCelsius);
/** Share lost for each degree [1/°C]; 0 or more. */
export const perDegree = notNegative(measures.degreeLoss);
/** Geopotential altitude [m]. */
export const metresHigh = measured(measures.altitude);
/** Length [m]; 0 or more. */
export const metres = notNegative(measures.length);
/** Bore or roughness of a hose [mm]; 0 or more. */
export const millimetres = notNegative(measures.smallLength);
/** Floor area [m²]; 0 or more. */
export const squareMetres = notNegative(measures.area);
/** Conductor cross-section [mm²]; more than 0. */
export const squareMillimetres = measured(measures.wireArea).positive();
/** Angle [°]; 0 to 90. */
export const degrees = measured(measures.angle).between(0, 90);
/** Power [kW]; 0 or more. */
export const kilowatts = notNegative(measures.power);
/** Power [W]; 0 or more. */
export const watts = notNegative(measures.watts);
/** Apparent power [kVA]; 0 or more. */
export const kilovoltAmperes = notNegative(measures.apparentPower);
/** Energy [kWh]; 0 or more. */
export const kilowattHours = notNegative(measures.energy);
/** Locked-rotor kVA per horsepower [kVA/hp]; 0 or more. */
export const kvaPerHorsepower = notNegative(measures.apparentPerHorsepower);
/** Current [A]; 0 or more. */
export const amperes = notNegative(measures.current);
/** Voltage [V]; more than 0. */
export const volts = measured(measures.voltage).positive();
/** Fuel [L]; 0 or more. */
export const fuelLitres = notNegative(measures.fuel);
/** Fuel an hour [L/h]; 0 or more. */
export const fuelPerHour = notNegative(measures.fuelRate);
/** Fuel a day [L/day]; 0 or more. */
export const fuelPerDay = notNegative(measures.fuelPerDay);
/** Time [days]; 0 or more. */
export const days = notNegative(measures.days);
/** Time [h]; 0 or more. */
export const hours = notNegative(measures.hours);
/** Time [min]; 0 or more. A bare number between 0 and 1 is most likely a time of day, 1/24 an hour. */
export const minutes = notNegative(measures.minutes).doubted({
  from: 1,
  to: Number.MAX_VALUE,
  words: (value) => {
    if (!(value > 0 && value < 1)) return undefined;
    const asTime = formatNumber(Math.round(value * 1440 * 100) / 100);
    return `looks like a time of day; enter ${asTime} or "${formatNumber(Math.round(value * 24 * 1000) / 1000)} h", and a part of a minute as text such as "30 s"`;
  },
});
/**
 * Days in which a full vessel boils empty [days]; more than 0. Text may state the loss as a plate does, "1.5 %/day";
 * a bare number under half a day is most likely such a share.
 */
export const emptyDays = measured(measures.emptyDays)
  .positive()
  .doubted({
    from: 0.5,
    to: Number.MAX_VALUE,
    words: (value) =>
      value > 0 && value < 0.5
        ? `looks like a share a day: enter "${formatNumber(value * 100)} %/day", or the time with its unit, "${formatNumber(value)} days"`
        : undefined,
  });
/** Share of a capacity lost a day; a bare number above a fifth is most likely a percent. */
export const shareADay = measured(measures.dailyShare)
  .aboveTo(0, 1)
  .doubted({
    from: 0,
    to: 0.2,
    words: (value) =>
      value > 0.2 && value <= 100
        ? `looks like a percent: enter ${formatNumber(value)}% or ${formatNumber(value / 100)}`
        : undefined,
  });
/** Time [months]; 0 or more. */
export const months = notNegative(measures.months);
/** A fraction, 0 to 1; text may be a percent. */
export const fraction = measured(measures.fraction).between(0, 1);
/** A fraction without an upper limit, 0 or more; text may be a percent. */
export const share = measured(measures.fraction).atLeast(0);
/** A number without a unit. */
export const number = new Quantity({});
/** Things that are counted: a whole number, 0 or more. */
export const count = new Quantity({ kind: "count" }).atLeast(0).whole();
/** An amount in whatever unit the caller uses throughout (litres, cylinders, kilograms); 0 or more. */
export const sameUnit = new Quantity({ kind: "amount" }).atLeast(0);
