import { callsIn, nodesIn, parseFormula, type FormulaNode } from "../cells/formulaTree";
import { editDistance } from "../models/nearestName";

/** The known name that is nearest to a mistyped one, if it is near enough to be meant. */
const nearest = (name: string, known: readonly string[]): string | undefined => {
  let best: string | undefined;
  let least = Math.max(2, Math.floor(name.length / 4)) + 1;
  for (const candidate of known) {
    if (Math.abs(candidate.length - name.length) >= least) continue;
    const distance = editDistance(name, candidate);
    if (distance < least) {
      least = distance;
      best = candidate;
    }
  }
  return best;
};

/** Names that LET and LAMBDA declare somewhere in the formula, and TRUE and FALSE. */
const declaredIn = (nodes: readonly FormulaNode[]): Set<string> => {
  const declared = new Set(["TRUE", "FALSE"]);
  for (const call of callsIn(nodes)) {
    const name = call.name.toUpperCase();
    if (name !== "LET" && name !== "LAMBDA") continue;
    for (const argument of call.args.slice(0, -1)) {
      for (const node of argument) {
        if (node.kind === "name") declared.add(node.text.replace(/^\[\s*|\s*\]$/g, "").toUpperCase());
      }
    }
  }
  return declared;
};

/**
 * Why a formula shows #NAME?: the first function or name in it that is not known, with the known function that may be
 * meant. "" if every name is known.
 */
export const explainName = (
  formula: string,
  knownFunctions: readonly string[],
  definedNames: readonly string[] = [],
): string => {
  const tree = parseFormula(formula);
  const known = new Set(knownFunctions.map((name) => name.toUpperCase()));
  const declared = declaredIn(tree);
  for (const name of definedNames) declared.add(name.toUpperCase());
  for (const { name } of callsIn(tree)) {
    const upper = name.toUpperCase();
    if (known.has(upper) || declared.has(upper)) continue;
    const [namespace] = upper.split(".");
    const family = upper.includes(".") ? knownFunctions.filter((other) => other.startsWith(`${namespace}.`)) : [];
    const bare = knownFunctions.find((other) => other.endsWith(`.${upper}`));
    const endOf = new Map(knownFunctions.map((other) => [other.slice(other.indexOf(".") + 1), other]));
    const meant =
      bare ??
      nearest(upper, family) ??
      nearest(upper, knownFunctions) ??
      endOf.get(nearest(upper, [...endOf.keys()]) ?? "");
    return `no function ${upper}${meant ? `; did you mean ${meant}?` : ""}`;
  }
  for (const node of nodesIn(tree)) {
    if (node.kind !== "name") continue;
    const name = node.text;
    const upper = name.toUpperCase();
    if (declared.has(upper)) continue;
    if (known.has(upper)) return `${upper} is a function: write ${upper}(…)`;
    return `no name ${name} here; a text needs quotation marks: "${name}"`;
  }
  return "";
};
