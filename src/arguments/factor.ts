import { type CellArgument, type Failure, plainCell } from "./argument";
import { type Quantity, measured } from "./quantity";
import { barPerPsi } from "../models/unitFactors";
import { type Measure, unitKey } from "./units";

/** A cylinder's size factor [L/psi], more than 0; the letter of a size stands for its factor. */
class FactorArgument implements CellArgument<number> {
  readonly shape = "cell";
  readonly kind = "cylinder factor";
  readonly unit: string;
  readonly optional = false;
  readonly defaultValue = undefined;
  readonly wholeOnly = false;
  readonly min: number;
  readonly max: number;
  private readonly number: Quantity;

  constructor(private readonly sizes: Readonly<Record<string, number>>) {
    const measure: Measure = {
      kind: "cylinder factor",
      name: "a cylinder factor",
      unit: "L/psi",
      offer: `L/psi or L/bar, or a size ${Object.keys(sizes).join(", ")}`,
      units: new Map([
        [unitKey("L/psi"), { factor: 1 }],
        [unitKey("L/bar"), { factor: barPerPsi }],
      ]),
    };
    this.number = measured(measure).positive();
    this.unit = measure.unit;
    this.min = this.number.min;
    this.max = this.number.max;
  }

  read(cell: unknown, label: string): number | Failure {
    const plain = plainCell(cell);
    const known = typeof plain === "string" ? this.sizes[plain.trim().toUpperCase()] : undefined;
    return known ?? this.number.read(cell, label);
  }
}

/** A size factor [L/psi], or the letter of one of the sizes given. */
export const cylinderFactor = (sizes: Readonly<Record<string, number>>): CellArgument<number> =>
  new FactorArgument(sizes);
