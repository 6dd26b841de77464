import { parseFormula, printFormula, significant, type FormulaNode } from "./formulaTree";
import { namespace } from "./namespace";

const customPrefix = "_xldudf_";

/**
 * Built-ins that a file names with a prefix because they came after Excel 2007.
 * Source: [MS-XLSX] 2.2.2 "future-function-list", and the list of dynamic-array functions in the XlsxWriter
 * documentation, "Working with Formulas". NETWORKDAYS.INTL, WORKDAY.INTL and ECMA.CEILING carry none there.
 */
const future = new Set(
  (
    "ACOT ACOTH AGGREGATE ARABIC ARRAYTOTEXT BASE BETA.DIST BETA.INV BINOM.DIST BINOM.DIST.RANGE BINOM.INV BITAND " +
    "BITLSHIFT BITOR BITRSHIFT BITXOR BYCOL BYROW CEILING.MATH CEILING.PRECISE CHISQ.DIST CHISQ.DIST.RT CHISQ.INV " +
    "CHISQ.INV.RT CHISQ.TEST CHOOSECOLS CHOOSEROWS COMBINA CONCAT CONFIDENCE.NORM CONFIDENCE.T COT COTH " +
    "COVARIANCE.P COVARIANCE.S CSC CSCH DAYS DECIMAL DROP ENCODEURL ERF.PRECISE ERFC.PRECISE EXPAND EXPON.DIST " +
    "F.DIST F.DIST.RT F.INV F.INV.RT F.TEST FILTERXML FLOOR.MATH FLOOR.PRECISE FORECAST.ETS FORECAST.ETS.CONFINT " +
    "FORECAST.ETS.SEASONALITY FORECAST.ETS.STAT FORECAST.LINEAR FORMULATEXT GAMMA GAMMA.DIST GAMMA.INV " +
    "GAMMALN.PRECISE GAUSS GROUPBY HSTACK HYPGEOM.DIST IFNA IFS IMCOSH IMCOT IMCSC IMCSCH IMSEC IMSECH IMSINH IMTAN " +
    "ISFORMULA ISOMITTED ISOWEEKNUM LAMBDA LET LOGNORM.DIST LOGNORM.INV MAKEARRAY MAP MAXIFS MINIFS MODE.MULT " +
    "MODE.SNGL MUNIT NEGBINOM.DIST NORM.DIST NORM.INV NORM.S.DIST NORM.S.INV NUMBERVALUE PDURATION PERCENTILE.EXC " +
    "PERCENTILE.INC PERCENTOF PERCENTRANK.EXC PERCENTRANK.INC PERMUTATIONA PHI PIVOTBY POISSON.DIST QUARTILE.EXC " +
    "QUARTILE.INC QUERYSTRING RANDARRAY RANK.AVG RANK.EQ REDUCE REGEXEXTRACT REGEXREPLACE REGEXTEST RRI SCAN SEC " +
    "SECH SEQUENCE SHEET SHEETS SKEW.P SORTBY STDEV.P STDEV.S SWITCH T.DIST T.DIST.2T T.DIST.RT T.INV T.INV.2T " +
    "T.TEST TAKE TEXTAFTER TEXTBEFORE TEXTJOIN TEXTSPLIT TOCOL TOROW TRIMRANGE UNICHAR UNICODE UNIQUE VALUETOTEXT " +
    "VAR.P VAR.S VSTACK WEBSERVICE WEIBULL.DIST WRAPCOLS WRAPROWS XLOOKUP XMATCH XOR Z.TEST"
  ).split(" "),
);

/** Two of them carry a second prefix. Same source. */
const worksheetFuture = new Set(["FILTER", "SORT"]);

const storedCallName = (name: string): string => {
  const upper = name.toUpperCase();
  if (upper.startsWith(`${namespace}.`)) return customPrefix + upper.replace(/\./g, "_");
  if (worksheetFuture.has(upper)) return `_xlfn._xlws.${upper}`;
  return future.has(upper) ? `_xlfn.${upper}` : name;
};

/** The name an argument consists of, nothing else around it. */
const onlyName = (argument: readonly FormulaNode[]): string | undefined => {
  const [node, ...others] = significant(argument);
  if (!node || others.length > 0) return undefined;
  // A parameter may look like a cell address to the reader ("x1"); Excel refuses such names, so only names count.
  return node.kind === "name" ? node.text : undefined;
};

const bare = (name: string): string => name.replace(/^\[\s*|\s*\]$/g, "");

const store = (nodes: readonly FormulaNode[], scope: ReadonlySet<string>): FormulaNode[] =>
  nodes.map((node): FormulaNode => {
    switch (node.kind) {
      case "name": {
        const isOptional = node.text.startsWith("[");
        if (!scope.has(bare(node.text).toUpperCase())) return node;
        return { kind: "name", text: (isOptional ? "_xlop." : "_xlpm.") + bare(node.text) };
      }
      case "call": {
        if (scope.has(node.name.toUpperCase())) {
          return { ...node, name: `_xlpm.${node.name}`, args: node.args.map((argument) => store(argument, scope)) };
        }
        const upper = node.name.toUpperCase();
        const declares = upper === "LET" || upper === "LAMBDA";
        if (!declares) {
          return {
            ...node,
            name: storedCallName(node.name),
            args: node.args.map((argument) => store(argument, scope)),
          };
        }
        const inner = new Set(scope);
        const args = node.args.map((argument, index) => {
          const isDeclaration = index < node.args.length - 1 && (upper === "LAMBDA" || index % 2 === 0);
          const name = isDeclaration ? onlyName(argument) : undefined;
          if (name !== undefined) inner.add(bare(name).toUpperCase());
          return store(argument, inner);
        });
        return { ...node, name: storedCallName(node.name), args };
      }
      case "group":
        return { kind: "group", items: store(node.items, scope) };
      case "spill":
        return { kind: "call", name: "_xlfn.ANCHORARRAY", args: [store([node.of], scope)] };
      case "single":
        return { kind: "call", name: "_xlfn.SINGLE", args: [store([node.of], scope)] };
      default:
        return node;
    }
  });

/**
 * A formula as typed (`=OXYGEN.HOURS_TO_FILL(60,1.5)`, with or without the "=") as Excel keeps it in a file's `<f>`
 * (`_xldudf_OXYGEN_HOURS_TO_FILL(60,1.5)`): prefixes of newer built-ins, of LET and LAMBDA names, ANCHORARRAY for `D4#`
 * and SINGLE for `@`. Plain text, not yet XML-escaped. English names and "," only, as in every file.
 */
export const toStored = (formula: string): string => printFormula(store(parseFormula(formula.trim()), new Set()));

const typedCallName = (name: string, idOf: ReadonlyMap<string, string>): string => {
  const custom = /^_xld?udf[_.](.*)$/i.exec(name);
  if (custom) {
    const flat = custom[1]!.toUpperCase();
    const known = idOf.get(flat.replace(/\./g, "_"));
    return known ?? flat.replace(/^([^_.]+)_/, "$1.");
  }
  return name.replace(/^(?:_xlfn\.|_xlws\.|_xlpm\.|_xleta\.)+/i, "");
};

const reveal = (nodes: readonly FormulaNode[], idOf: ReadonlyMap<string, string>): FormulaNode[] =>
  nodes.map((node): FormulaNode => {
    switch (node.kind) {
      case "name": {
        if (/^_xlop\./i.test(node.text)) return { kind: "name", text: `[${node.text.slice("_xlop.".length)}]` };
        return { kind: "name", text: node.text.replace(/^(?:_xlpm|_xlfn|_xleta)\./i, "") };
      }
      case "call": {
        const name = typedCallName(node.name, idOf);
        const args = node.args.map((argument) => reveal(argument, idOf));
        const isOperator = name === "ANCHORARRAY" || name === "SINGLE";
        if (!isOperator || args.length !== 1) return { kind: "call", name, args };
        const [operand, ...others] = significant(args[0]!);
        const of: FormulaNode = operand && others.length === 0 ? operand : { kind: "group", items: args[0]! };
        return { kind: name === "SINGLE" ? "single" : "spill", of };
      }
      case "group":
        return { kind: "group", items: reveal(node.items, idOf) };
      case "spill":
      case "single":
        return { kind: node.kind, of: reveal([node.of], idOf)[0]! };
      default:
        return node;
    }
  });

/**
 * The inverse of `toStored`, with a leading "=". A file writes the dots of a custom function's name as underscores, so
 * the ids (HOURS_TO_FILL, without namespace) tell where they were; an id not listed gets its dot after the namespace.
 */
export const toTyped = (stored: string, ids: readonly string[]): string => {
  const idOf = new Map(ids.map((id) => [`${namespace}_${id.replace(/\./g, "_")}`.toUpperCase(), `${namespace}.${id}`]));
  return `=${printFormula(reveal(parseFormula(stored.trim()), idOf))}`;
};
