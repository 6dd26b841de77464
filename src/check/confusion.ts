import type { Severity } from "./workbook";
import { type Kind, kinds } from "../catalogue/kinds";

export interface Confusion {
  readonly severity: Severity;
  /** Why it matters, in a few words; "" where the two kinds say it. */
  readonly why: string;
}

/** Pairs that look alike in a cell and differ by a lot, or flatter: [group given, group wanted, why]. */
const dangerous: readonly (readonly [given: string, wanted: string, why: string])[] = [
  ["gas", "liquid", "a litre of liquid is about 860 litres of gas"],
  ["liquid", "gas", "a litre of liquid is about 860 litres of gas"],
  ["gas flow", "make rate", "one is gas a minute, the other liquid an hour"],
  ["make rate", "gas flow", "one is liquid an hour, the other gas a minute"],
  ["gas", "water volume", "the content of a cylinder is many times its water volume"],
  ["absolute pressure", "gauge pressure", "they differ by 1.01325 bar, and here in their unit too"],
  ["gauge pressure", "absolute pressure", "they differ by 1.01325 bar, and here in their unit too"],
];

/** A day's amount and an amount may stand for each other: a row of a plan is a day, and a day's need is drawn as one. */
const withoutDay = (group: string): string => group.replace(/ a day$/, "");

/** What goes wrong when a number of one kind is used as another, or undefined when nothing does. */
export function confusionOf(given: Kind, wanted: Kind): Confusion | undefined {
  if (given === wanted) return undefined;
  const [from, to] = [kinds[given].group, kinds[wanted].group];
  if (from === "any" || to === "any") return undefined;
  if (from === to) {
    if (given.indexOf("net ") === 0 && wanted.indexOf("gross ") === 0)
      return { severity: "danger", why: "a fill draws more from the store than it leaves in the vessel" };
    if (given.indexOf("gross ") === 0 && wanted.indexOf("net ") === 0)
      return { severity: "danger", why: "less is left in the vessel than was drawn for it" };
    if (given === "mean patients" && wanted === "patients")
      return { severity: "danger", why: "what must carry the worst hour is not sized by the mean" };
    return undefined;
  }
  if (withoutDay(from) === withoutDay(to) && /^(?:liquid|gas|fuel)/.test(from)) return undefined;
  const known = dangerous.filter(
    ([one, other]) => (one === from && other === to) || (one === withoutDay(from) && other === withoutDay(to)),
  )[0];
  return known ? { severity: "danger", why: known[2] } : { severity: "wrong", why: "" };
}
