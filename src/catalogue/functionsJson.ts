import { host } from "./developmentHost.json";
import type { ReadFunction } from "./readCatalogue";
import type { Program } from "../cells/program";

/** Where Excel finds the help page of a function; the build puts the host it is served from in place of the development host. */
const helpPath = (id: string): string => `/help.html#${id}`;

/**
 * What a build tells Excel beside its functions. Microsoft 365 hands cells over as data types, error cells among them;
 * `allowErrorForDataTypeAny` beside that flag crashes Excel 2021 (OfficeDev/office-js 4385) and adds nothing. Perpetual
 * Excel knows no data types in functions (requirement set 1.4).
 */
const flags: Readonly<Record<Exclude<Program, "local engine">, object>> = {
  "Microsoft 365": { allowCustomDataForDataTypeAny: true },
  "perpetual Excel": {},
};

/**
 * Microsoft's generated metadata with what its generator leaves out: help addresses and the descriptions with their
 * defaults. The words a choice argument takes stand in its description: lists of choices (`customEnumId`) are documented
 * for text and numbers alone, and our arguments take any cell.
 */
export function functionsJson(found: readonly ReadFunction[], program: keyof typeof flags): object {
  const functions = found.map(({ record, metadata }) => ({
    id: record.id,
    name: record.id,
    description: record.description,
    helpUrl: `${host}${helpPath(record.id)}`,
    parameters: metadata.parameters.map((parameter, index) => ({
      ...parameter,
      description: record.arguments[index]!.description,
    })),
    result: metadata.result,
    options: metadata.options,
  }));
  return { ...flags[program], functions };
}
