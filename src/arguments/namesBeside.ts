import { type CellArgument, type Cells } from "./argument";
import { isHeading } from "./rows";

/**
 * Names of the rows of a list beside it, without their heading. Any text may be a name, so whether the names have a
 * heading is told by the list: where it has one and the names are one more than its values.
 */
export const namesBeside = (
  names: readonly string[] | undefined,
  list: Cells,
  element: CellArgument,
  values: readonly unknown[],
): readonly string[] | undefined =>
  names?.length === values.length + 1 && isHeading(list[0]![0], element) ? names.slice(1) : names;
