import { callsIn, nodesIn, parseFormula, type FormulaNode } from "../cells/formulaTree";
import { nearestName } from "../models/nearestName";

/** The known function that a mistyped name most likely means; names of one namespace are compared without it. */
const meantBy = (name: string, known: readonly string[]): string | undefined => {
  const namespace = name.slice(0, name.indexOf(".") + 1);
  const family = namespace === "" ? [] : known.filter((other) => other.startsWith(namespace));
  if (family.length > 0) {
    const tail = name.slice(namespace.length);
    if (known.includes(tail)) return tail;
    const nearest = nearestName(
      tail,
      family.map((other) => other.slice(namespace.length)),
    );
    return nearest && namespace + nearest;
  }
  const wholeName = new Map(known.map((other) => [other.slice(other.indexOf(".") + 1), other]));
  for (const other of known) wholeName.set(other, other);
  return wholeName.get(nearestName(name, [...wholeName.keys()]) ?? "");
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
    const meant = meantBy(upper, knownFunctions);
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
