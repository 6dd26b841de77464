import { nearestName } from "../../models/nearestName";
import { namespace } from "../../cells/namespace";
import { finding, type Rule } from "../rule";
import type { Finding } from "../workbook";
import { ownId } from "../trace";

const name = "unknown function";

export const unknownName: Rule = {
  name,
  looksFor: "A function of this namespace that does not exist, with the nearest one.",
  find({ book, tracer, records }) {
    const ids = records.map(({ id }) => id);
    const found: Finding[] = [];
    for (const formula of book.formulas) {
      for (const part of formula.parts) {
        if (part.kind !== "call") continue;
        const id = ownId(part.name);
        if (id !== undefined) {
          if (tracer.record(part.name)) continue;
          const nearest = nearestName(id, ids);
          found.push(
            finding(
              name,
              "wrong",
              formula,
              `there is no function ${part.name}${nearest ? `; did you mean ${nearest}?` : ""}`,
            ),
          );
        } else if (ids.indexOf(part.name) >= 0)
          found.push(
            finding(
              name,
              "wrong",
              formula,
              `${part.name} stands without its namespace: write ${namespace}.${part.name}`,
            ),
          );
      }
    }
    return found;
  },
};
