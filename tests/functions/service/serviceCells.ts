import { serialOfIso } from "../../../src/arguments/date";

/** Serial of a day written as yyyy-mm-dd. */
export const on = (day: string): number => {
  const serial = serialOfIso(day);
  if (serial === undefined) throw new Error(`no day: ${day}`);
  return serial;
};
