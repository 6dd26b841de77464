/** A number as a formula spells it: "1.50", ".5", "2.", "1E3", "1.5e-3". */
const numberPattern = /^(?:(\d+)(?:\.(\d*))?|\.(\d+))(?:[eE]([+-]?\d+))?$/;

const keptDigits = 15;

/**
 * The value of a number in a formula, undefined for any other text. Digits beyond the fifteenth count as 0, as in Excel:
 * "Excel specifications and limits" (Microsoft), number precision 15 digits, and "Floating-point arithmetic may give
 * inaccurate results in Excel" (Microsoft).
 */
export const readNumber = (text: string): number | undefined => {
  const match = numberPattern.exec(text);
  if (!match) return undefined;
  const whole = match[1] || "";
  const digits = whole + (match[2] || match[3] || "");
  const leading = /^0*/.exec(digits)![0].length;
  if (digits.length - leading <= keptDigits) return Number(text);
  const kept = digits.slice(0, leading + keptDigits);
  // The point stands behind `whole`; what was cut off is made up for in the exponent.
  return Number(`${kept}e${Number(match[4] || 0) + whole.length - kept.length}`);
};
