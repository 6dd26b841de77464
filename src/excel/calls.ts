import { functions } from "../catalogue/generated/functions";
import { wrapForExcel } from "./boundary";

const calls = new Map(functions.map(([id, call]) => [id, wrapForExcel(call)] as const));

/** What Excel calls for a function. */
export const callOf = (id: string): ((...given: unknown[]) => unknown[][]) => calls.get(id)!;
