/**
 * A function's rule, typeset: where its words are arithmetic ("start delay + (capacity − level) / rate") they become
 * fractions, roots and sums; what is prose stays as it is.
 */

export type Term =
  | { readonly kind: "number"; readonly text: string }
  | { readonly kind: "name"; readonly text: string }
  | { readonly kind: "group"; readonly of: Term; readonly fence: "(" | "|" }
  | { readonly kind: "minus"; readonly of: Term }
  | { readonly kind: "root"; readonly of: Term }
  | { readonly kind: "sum"; readonly of: Term }
  | { readonly kind: "power"; readonly base: Term; readonly exponent: Term }
  | { readonly kind: "call"; readonly name: string; readonly args: readonly Term[] }
  | { readonly kind: "pair"; readonly sign: string; readonly left: Term; readonly right: Term };

export type RulePart = { readonly text: string } | { readonly formula: Term };

/** No words of a formula hold one of these; they make a clause prose. */
const prose = new Set(
  "by with that when which where until is are gets makes every after whose than not none never else least both while as it whether and or".split(
    " ",
  ),
);

const mostWordsOfName = 7;
const wordPattern = /^(?:[\p{L}°"][\p{L}\p{N}'"₀-₉ᵢ_°]*(?:-[\p{L}]+)*)/u;
const unitPattern = /^(?:J\/\(kg·K\)|m\/s²|Ω\/m|mL\/min|L\/min|L\/day|L\/psi|loss\/day)/;
const numberPattern = /^(?:\d{1,3}(?: \d{3})+|\d+(?:\.\d+)?)(?![\p{L}])/u;
const relations = new Set(["=", "≥", "≤", ">", "<"]);
const exponents: Readonly<Record<string, string>> = { "²": "2", "³": "3", ⁿ: "n" };
const functionNames = new Set([
  "min",
  "max",
  "ln",
  "exp",
  "cos",
  "sin",
  "arctangent",
  "INT",
  "P",
  "Φ",
  "φ",
  "round up",
]);

class NoFormula extends Error {}

/** Reads one clause; throws NoFormula where it is no arithmetic. */
class ClauseReader {
  private at = 0;
  operators = 0;

  constructor(private readonly text: string) {}

  private get rest(): string {
    return this.text.slice(this.at);
  }

  private skip(): void {
    while (this.text[this.at] === " ") this.at++;
  }

  private take(sign: string): boolean {
    this.skip();
    if (!this.rest.startsWith(sign)) return false;
    this.at += sign.length;
    return true;
  }

  private fail(): never {
    throw new NoFormula(this.text);
  }

  whole(): Term {
    const read = this.relation();
    this.skip();
    if (this.at < this.text.length || this.operators === 0) this.fail();
    return read;
  }

  private relation(): Term {
    let left = this.sum();
    for (;;) {
      this.skip();
      const sign = this.rest[0];
      if (sign === undefined || !relations.has(sign)) return left;
      this.at++;
      this.operators++;
      left = { kind: "pair", sign, left, right: this.sum() };
    }
  }

  private sum(): Term {
    let left = this.product();
    let last = left;
    for (;;) {
      this.skip();
      const sign = this.rest[0];
      if (sign !== "+" && sign !== "−") return left;
      // "density at pressure + 1 bar" is a density at a sum, no sum with a density.
      if (sign === "+" && last.kind === "name" && / at /.test(last.text)) this.fail();
      this.at++;
      this.operators++;
      last = this.product();
      left = { kind: "pair", sign, left, right: last };
    }
  }

  private product(): Term {
    let left = this.factor();
    for (;;) {
      this.skip();
      const sign = this.rest[0];
      // "(1 − a)(1 − b)": a bracket right after one multiplies.
      if (sign === "(" && left.kind === "group") {
        left = { kind: "pair", sign: "×", left, right: this.factor() };
        continue;
      }
      if (sign !== "×" && sign !== "/") return left;
      this.at++;
      this.operators++;
      left = { kind: "pair", sign, left, right: this.factor() };
    }
  }

  private factor(): Term {
    if (this.take("−")) return { kind: "minus", of: this.factor() };
    if (this.take("√")) {
      this.operators++;
      return { kind: "root", of: this.atom() };
    }
    if (this.take("Σ")) {
      this.operators++;
      return { kind: "sum", of: this.product() };
    }
    let base = this.atom();
    for (;;) {
      const raised = exponents[this.rest[0] ?? ""];
      if (raised !== undefined) {
        this.at++;
        base = {
          kind: "power",
          base,
          exponent: /\d/.test(raised) ? { kind: "number", text: raised } : { kind: "name", text: raised },
        };
      } else if (this.rest[0] === "^") {
        this.at++;
        this.operators++;
        base = { kind: "power", base, exponent: this.atom() };
      } else return base;
    }
  }

  private atom(): Term {
    this.skip();
    if (this.take("(")) {
      const of = this.relation();
      if (!this.take(")")) this.fail();
      return { kind: "group", of, fence: "(" };
    }
    if (this.take("|")) {
      const of = this.sum();
      if (!this.take("|")) this.fail();
      return { kind: "group", of, fence: "|" };
    }
    const number = numberPattern.exec(this.rest);
    if (number) {
      this.at += number[0].length;
      const value: Term = { kind: "number", text: number[0] };
      const unit = /^ (kPa|bar|s|h|min|m\/s²|J\/\(kg·K\)|Ω\/m|mL\/min)(?=$|[ ),])/u.exec(this.rest);
      if (!unit) return value;
      this.at += unit[0].length;
      return { kind: "number", text: `${number[0]} ${unit[1]!}` };
    }
    return this.name();
  }

  private name(): Term {
    const words: string[] = [];
    for (;;) {
      this.skip();
      const unit = unitPattern.exec(this.rest);
      const word = unit ?? wordPattern.exec(this.rest);
      if (word) {
        if (prose.has(word[0]) || word[0] === "√" || word[0] === "Σ") this.fail();
        words.push(word[0]);
        this.at += word[0].length;
      } else {
        // "flow 1", "share of 300 m": a number inside a name, never its beginning.
        const number = words.length > 0 ? numberPattern.exec(this.rest) : null;
        if (!number) break;
        words.push(number[0]);
        this.at += number[0].length;
      }
      if (/[ⁿ²³^(]/.test(this.rest[0] ?? "")) break;
    }
    if (words.length === 0 || words.length > mostWordsOfName) this.fail();
    const text = words.join(" ");
    if (this.rest[0] !== "(") return { kind: "name", text };
    if (!functionNames.has(text)) this.fail();
    this.at++;
    this.operators++;
    const args = [this.relation()];
    while (this.take(",")) args.push(this.relation());
    if (!this.take(")")) this.fail();
    return { kind: "call", name: text, args };
  }
}

/** Places of a sign that stand outside brackets. */
function splitOutside(text: string, sign: string): string[] {
  const parts: string[] = [];
  let depth = 0;
  let from = 0;
  for (let at = 0; at < text.length; at++) {
    if (text[at] === "(" || text[at] === "[") depth++;
    if (text[at] === ")" || text[at] === "]") depth--;
    if (depth > 0 || !text.startsWith(sign, at)) continue;
    parts.push(text.slice(from, at));
    from = at + sign.length;
  }
  return [...parts, text.slice(from)];
}

const formulaOf = (text: string): Term | undefined => {
  try {
    return new ClauseReader(text).whole();
  } catch (error) {
    if (error instanceof NoFormula) return undefined;
    throw error;
  }
};

/** The parts of a rule in order; joined, their words are the rule again. */
export function ruleParts(rule: string): RulePart[] {
  const parts: RulePart[] = [];
  const words = (text: string): void => {
    const last = parts[parts.length - 1];
    if (text === "") return;
    if (last && "text" in last) parts[parts.length - 1] = { text: last.text + text };
    else parts.push({ text });
  };
  splitOutside(rule, "; ").forEach((clause, index) => {
    if (index > 0) words("; ");
    const [label, ...after] = splitOutside(clause, ": ");
    const labelled = after.length > 0;
    const body = labelled ? after.join(": ") : label!;
    if (labelled) words(`${label!}: `);
    const pieces = splitOutside(body, ", ");
    pieces.forEach((piece, place) => {
      if (place > 0) words(", ");
      // "… at 21.1 °C, 101.325 kPa × …" goes on after its comma.
      const goesOn = /^[\d.]+ kPa\b/.test(pieces[place + 1] ?? "");
      const formula = goesOn ? undefined : formulaOf(piece);
      if (formula) parts.push({ formula });
      else words(piece);
    });
  });
  return parts;
}

const escaped = (text: string): string => text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");

/** A fraction's bar and a root's roof hold together what brackets held. */
const unfenced = (term: Term): Term => (term.kind === "group" && term.fence === "(" ? term.of : term);

function mathOf(term: Term): string {
  switch (term.kind) {
    case "number":
      return `<mn>${escaped(term.text.replace(/ /g, "\u00a0"))}</mn>`;
    case "name":
      // Not mtext, which a browser takes for space, so that a sign beside it loses its own.
      return `<mi>${escaped(term.text.replace(/ /g, "\u00a0"))}</mi>`;
    case "group":
      return term.fence === "("
        ? `<mrow><mo>(</mo>${mathOf(term.of)}<mo>)</mo></mrow>`
        : `<mrow><mo>|</mo>${mathOf(term.of)}<mo>|</mo></mrow>`;
    case "minus":
      return `<mrow><mo>−</mo>${mathOf(term.of)}</mrow>`;
    case "root":
      return `<msqrt>${mathOf(unfenced(term.of))}</msqrt>`;
    case "sum":
      return `<mrow><mo>∑</mo>${mathOf(term.of)}</mrow>`;
    case "power":
      return `<msup>${mathOf(term.base)}${mathOf(unfenced(term.exponent))}</msup>`;
    case "call":
      return `<mrow><mi>${escaped(term.name)}</mi><mo>(</mo>${term.args.map(mathOf).join("<mo>,</mo>")}<mo>)</mo></mrow>`;
    case "pair":
      if (term.sign === "/") return `<mfrac>${mathOf(unfenced(term.left))}${mathOf(unfenced(term.right))}</mfrac>`;
      return `<mrow>${mathOf(term.left)}<mo>${escaped(term.sign)}</mo>${mathOf(term.right)}</mrow>`;
  }
}

/** MathML of a formula in a line of text, its fractions as large as in a line of their own. */
export const mathML = (formula: Term): string => `<math displaystyle="true">${mathOf(formula)}</math>`;
