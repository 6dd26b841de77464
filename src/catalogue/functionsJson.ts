import type { IEnum } from "custom-functions-metadata/lib/parseTree";
import { host } from "./developmentHost.json";
import type { ReadFunction } from "./readCatalogue";

/** Where Excel finds the help page of a function; the build puts the host it is served from in place of the development host. */
const helpPath = (id: string): string => `/help.html#${id}`;

const enumId = (id: string, argument: string): string => `${id}_${argument}`.toUpperCase();

/**
 * Microsoft's generated metadata with what its generator leaves out: help addresses, the words a choice argument accepts
 * and `allowErrorForDataTypeAny`, without which Excel answers for us when an error cell comes in.
 */
export function functionsJson(found: readonly ReadFunction[]): object {
  const enums: IEnum[] = [];
  const functions = found.map(({ record, metadata }) => {
    const parameters = metadata.parameters.map((parameter, index) => {
      const argument = record.arguments[index]!;
      const patched = { ...parameter, description: argument.description };
      if (!argument.choices) return patched;
      const id = enumId(record.id, argument.name);
      enums.push({
        id,
        type: "string",
        values: argument.choices.map((choice) => ({ name: choice, stringValue: choice, tooltip: choice })),
      });
      return { ...patched, customEnumId: id };
    });
    return {
      id: record.id,
      name: record.id,
      description: record.description,
      helpUrl: `${host}${helpPath(record.id)}`,
      parameters,
      result: metadata.result,
      options: metadata.options,
    };
  });
  return {
    allowCustomDataForDataTypeAny: true,
    allowErrorForDataTypeAny: true,
    functions,
    ...(enums.length > 0 ? { enums } : {}),
  };
}
