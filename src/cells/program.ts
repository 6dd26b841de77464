/** The programs that the functions are made for. */
export type Program = "Microsoft 365" | "perpetual Excel" | "local engine";

/** A build for Excel writes its program in here; where nothing is built, the local engine runs. */
declare const OXYGEN_PROGRAM: Program | undefined;

export const program: Program = typeof OXYGEN_PROGRAM === "undefined" ? "local engine" : OXYGEN_PROGRAM;

/** Do dates carry a number format into the cell? Perpetual Excel knows no formatted numbers from functions. */
export const formattedDates: boolean = program !== "perpetual Excel";
