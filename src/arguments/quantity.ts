import { type Default } from "../models/defaults";
import { zeroCelsius } from "../models/referenceConditions";
import * as z from "zod/mini";
import { isErrorCell } from "../cells/cellValues";
import { type CellArgument, type Failure, formatNumber, isBlank, plainCell, quoteCell, refuse } from "./argument";
import { type Measure, measuredBy, measures, unitKey } from "./units";

const numberThenUnit = /^([+\-−]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)\s*(.*)$/i;
const groupedDigits = /^[+\-−]?\d{1,3}([,' \u00a0\u202f]\d{3})+(\.\d+)?(?!\d)/;
const decimalComma = /^[+\-−]?\d+,\d+(?!\d)/;

/** Reads a whole number or fraction with a unit, exactly by the measure's factors; a string is the reason why not. */
function readText(text: string, measure: Measure | null, wanted: string): number | { problem: string } {
  const trimmed = text.trim();
  if (groupedDigits.test(trimmed)) return { problem: `${quoteCell(text)} has a thousands separator; write it without` };
  if (decimalComma.test(trimmed))
    return { problem: `${quoteCell(text)} has a decimal comma inside text; write a full stop, or enter a number` };
  const match = numberThenUnit.exec(trimmed);
  if (!match) return { problem: `${quoteCell(text)} is not a number; ${wanted}` };
  const amount = Number(match[1]!.replace("−", "-"));
  const unit = match[2]!;
  if (unit === "")
    return {
      problem: `${quoteCell(text)} is text that looks like a number; enter it as a number${measure ? " or write its unit" : ""}`,
    };
  const conversion = measure?.units.get(unitKey(unit));
  if (conversion) return amount * conversion.factor + (conversion.offset ?? 0);
  const elsewhere = measuredBy(unit);
  if (elsewhere && elsewhere !== measure?.name) return { problem: `${quoteCell(text)} is ${elsewhere}; ${wanted}` };
  return { problem: `${quoteCell(text)}: the unit "${unit}" is not known here; ${wanted}` };
}

interface Limits {
  readonly min: number;
  readonly max: number;
  /** Completes "must be …". */
  readonly words: string;
  /** Ends that belong to the range: a number beyond one by rounding only, as 0.3 − 0.1 − 0.2 is below 0, is taken for it. */
  readonly ends?: readonly number[];
}

const unlimited: Limits = { min: -Number.MAX_VALUE, max: Number.MAX_VALUE, words: "a number" };

const isRoundingApart = (value: number, other: number): boolean =>
  Math.abs(value - other) <= 1e-12 * Math.max(1, Math.abs(other));

/** The largest double below a number, so that "under 1" needs no flag of its own on the fast path. */
const justBelow = (value: number): number => value - Math.abs(value) * Number.EPSILON * 0.5;
const justAbove = (value: number): number =>
  value === 0 ? Number.MIN_VALUE : value + Math.abs(value) * Number.EPSILON;

/**
 * A number with a unit. A cell that is already a finite number inside the limits is taken as it is; everything else
 * (text with a unit, a formatted number, a wrong kind) goes through the zod schema, which speaks.
 */
export class Quantity<T extends number | undefined = number> implements CellArgument<T> {
  readonly shape = "cell";
  readonly optional: boolean;
  readonly min: number;
  readonly max: number;
  private compiled: z.ZodMiniType<number> | undefined;

  constructor(
    readonly measure: Measure | null,
    private readonly limits: Limits = unlimited,
    readonly wholeOnly = false,
    readonly defaultValue: T | undefined = undefined,
    optional = false,
  ) {
    this.optional = optional;
    this.min = limits.min;
    this.max = limits.max;
  }

  get unit(): string {
    return this.measure?.unit ?? "";
  }

  private get unitWords(): string {
    return this.unit === "" ? "" : ` ${this.unit}`;
  }

  private limited(min: number, max: number, words: string, ends: readonly number[] = []): Quantity<T> {
    return new Quantity<T>(
      this.measure,
      { min: Math.max(min, this.limits.min), max: Math.min(max, this.limits.max), words, ends },
      this.wholeOnly,
      this.defaultValue,
      this.optional,
    );
  }

  /** More than 0: a 0 would be impossible. */
  positive(): Quantity<T> {
    return this.limited(Number.MIN_VALUE, Number.MAX_VALUE, `more than 0${this.unitWords}`);
  }

  atLeast(low: number): Quantity<T> {
    return this.limited(low, Number.MAX_VALUE, `${formatNumber(low)}${this.unitWords} or more`, [low]);
  }

  atMost(high: number): Quantity<T> {
    return this.limited(-Number.MAX_VALUE, high, `${formatNumber(high)}${this.unitWords} or less`, [high]);
  }

  between(low: number, high: number): Quantity<T> {
    return this.limited(low, high, `between ${formatNumber(low)} and ${formatNumber(high)}${this.unitWords}`, [
      low,
      high,
    ]);
  }

  /** From `low` to anything under `high`. */
  fromToBelow(low: number, high: number): Quantity<T> {
    return this.limited(
      low,
      justBelow(high),
      `from ${formatNumber(low)} to under ${formatNumber(high)}${this.unitWords}`,
      [low],
    );
  }

  /** Anything above `low`, up to `high`. */
  aboveTo(low: number, high: number): Quantity<T> {
    return this.limited(
      justAbove(low),
      high,
      `above ${formatNumber(low)} and at most ${formatNumber(high)}${this.unitWords}`,
      [high],
    );
  }

  /** Anything between the two, both left out. */
  inside(low: number, high: number): Quantity<T> {
    return this.limited(
      justAbove(low),
      justBelow(high),
      `above ${formatNumber(low)} and under ${formatNumber(high)}${this.unitWords}`,
    );
  }

  whole(): Quantity<T> {
    return new Quantity<T>(this.measure, this.limits, true, this.defaultValue, this.optional);
  }

  /** What an omitted or blank cell stands for. */
  default({ value }: Default<number>): Quantity<number> {
    return new Quantity<number>(this.measure, this.limits, this.wholeOnly, value, true);
  }

  /** May be omitted or blank, with no fixed default: reads as undefined. */
  mayBeOmitted(): Quantity<number | undefined> {
    return new Quantity<number | undefined>(this.measure, this.limits, this.wholeOnly, undefined, true);
  }

  private get wanted(): string {
    if (!this.measure) return "enter a number";
    if (this.measure === measures.fraction) return "enter a fraction such as 0.93, or 93%";
    return `wanted is ${this.measure.name} in ${this.unit}, or text with a unit (${this.measure.offer})`;
  }

  private percentHint(value: number): string {
    if (this.measure !== measures.fraction || value <= Math.max(1, this.max) || value > 100) return "";
    return `; ${formatNumber(value)} looks like a percent: enter ${formatNumber(value)}% or ${formatNumber(value / 100)}`;
  }

  /** A number out of range that would be in it in another unit: most likely the unit was forgotten. */
  private unitHint(value: number): string {
    const unit = this.measure?.mistakenFor;
    if (!unit || (value >= this.min && value <= this.max)) return "";
    const { factor, offset = 0 } = this.measure!.units.get(unitKey(unit))!;
    const converted = value * factor + offset;
    if (converted < this.min || converted > this.max) return "";
    return ` (if that is in ${unit}, enter "${formatNumber(value)} ${unit}")`;
  }

  private withoutRounding(value: number): number {
    if (value < this.min || value > this.max) {
      const end = this.limits.ends?.find((each) => isRoundingApart(value, each));
      if (end !== undefined) return end;
    }
    return this.wholeOnly && isRoundingApart(value, Math.round(value)) ? Math.round(value) : value;
  }

  private get schema(): z.ZodMiniType<number> {
    if (this.compiled) return this.compiled;
    const outside = (issue: { input?: unknown }): string => {
      const value = issue.input as number;
      return `must be ${this.limits.words}${this.percentHint(value) || `; this is ${formatNumber(value)}`}`;
    };
    const read = z.transform((cell: unknown, context) => {
      const problem = (message: string): never => {
        context.issues.push({ code: "custom", message, input: cell });
        return z.NEVER;
      };
      if (typeof cell === "number") return this.withoutRounding(cell);
      if (typeof cell === "boolean") return problem(`is ${quoteCell(cell)}; ${this.wanted}`);
      if (typeof cell !== "string") return problem(`is of a kind that is not a number; ${this.wanted}`);
      const value = readText(cell, this.measure, this.wanted);
      return typeof value === "number" ? this.withoutRounding(value) : problem(value.problem);
    });
    this.compiled = z.pipe(
      read,
      z.number({ error: () => `is not a finite number; ${this.wanted}` }).check(
        z.gte(this.limits.min, { error: outside }),
        z.lte(this.limits.max, { error: outside }),
        z.refine((value) => !this.wholeOnly || Number.isInteger(value), {
          error: (issue) => `must be a whole number; this is ${formatNumber(issue.input as number)}`,
        }),
      ),
    );
    return this.compiled;
  }

  read(cell: unknown, label: string): T | Failure {
    if (isErrorCell(cell)) return cell;
    const plain = plainCell(cell);
    if (isBlank(plain)) {
      if (this.optional) return this.defaultValue as T;
      return refuse(label, `is blank; ${this.wanted}`);
    }
    const result = z.safeParse(this.schema, plain);
    if (result.success) return result.data as T;
    return refuse(label, result.error.issues[0]!.message + (typeof plain === "number" ? this.unitHint(plain) : ""));
  }
}

const of = (measure: Measure): Quantity => new Quantity(measure);
const notNegative = (measure: Measure): Quantity => of(measure).atLeast(0);

/** Liquid oxygen, or a vessel's size in liquid [L]; 0 or more. */
export const litres = notNegative(measures.liquid);
/** Gaseous oxygen at 21.1 °C and 101.325 kPa [L]; 0 or more. */
export const gasLitres = notNegative(measures.gas);
/** A cylinder's water volume [L]; more than 0. */
export const waterVolume = of(measures.vesselVolume).positive();
/** Liquid made or drained an hour [L/h]; 0 or more. */
export const litresPerHour = notNegative(measures.makeRate);
/** Liquid a day [L/day]; 0 or more. */
export const litresPerDay = notNegative(measures.dailyLiquid);
/** Gas a day [L/day]; 0 or more. */
export const gasPerDay = notNegative(measures.dailyGas);
/** Gas flow [L/min]; 0 or more. */
export const litresPerMinute = notNegative(measures.flow);
/** Room volume [m³]; more than 0. */
export const cubicMetres = of(measures.room).positive();
/** Mass [kg]; 0 or more. */
export const kilograms = notNegative(measures.mass);
/** Pressure above 1.01325 bar [bar gauge]. */
export const gaugeBar = of(measures.gaugePressure);
/** Pressure above 1.01325 bar [psi gauge]; 0 or more. */
export const gaugePsi = notNegative(measures.gaugePsi);
/** Station pressure [kPa absolute]. */
export const absoluteKpa = of(measures.absoluteKpa);
/** Temperature [°C], not below absolute zero. */
export const celsius = of(measures.temperature).atLeast(-zeroCelsius);
/** Share lost for each degree [1/°C]; 0 or more. */
export const perDegree = notNegative(measures.degreeLoss);
/** Geopotential altitude [m]. */
export const metresHigh = of(measures.altitude);
/** Length [m]; 0 or more. */
export const metres = notNegative(measures.length);
/** Floor area [m²]; 0 or more. */
export const squareMetres = notNegative(measures.area);
/** Conductor cross-section [mm²]; more than 0. */
export const squareMillimetres = of(measures.wireArea).positive();
/** Angle [°]; 0 to 90. */
export const degrees = of(measures.angle).between(0, 90);
/** Power [kW]; 0 or more. */
export const kilowatts = notNegative(measures.power);
/** Power [W]; 0 or more. */
export const watts = notNegative(measures.watts);
/** Locked-rotor kVA per horsepower [kVA/hp]; 0 or more. */
export const kvaPerHorsepower = notNegative(measures.apparentPerHorsepower);
/** Current [A]; 0 or more. */
export const amperes = notNegative(measures.current);
/** Voltage [V]; more than 0. */
export const volts = of(measures.voltage).positive();
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
/** Time [min]; 0 or more. */
export const minutes = notNegative(measures.minutes);
/** Time [months]; 0 or more. */
export const months = notNegative(measures.months);
/** A fraction, 0 to 1; text may be a percent. */
export const fraction = of(measures.fraction).between(0, 1);
/** A fraction without an upper limit, 0 or more; text may be a percent. */
export const share = of(measures.fraction).atLeast(0);
/** A number without a unit. */
export const number = new Quantity(null);
/** Things that are counted: a whole number, 0 or more. */
export const count = new Quantity(null).atLeast(0).whole();
/** An amount in whatever unit the caller uses throughout (litres, cylinders, kilograms); 0 or more. */
export const sameUnit = new Quantity(null).atLeast(0);
