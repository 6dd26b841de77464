import type { FunctionRecord } from "./record";
import generated from "./generated/records.json";

/** Every function of the add-in, in catalogue order. Made by `npm run generate`. */
export const catalogue = generated as unknown as FunctionRecord[];

export const findRecord = (id: string): FunctionRecord | undefined => catalogue.find((record) => record.id === id);
