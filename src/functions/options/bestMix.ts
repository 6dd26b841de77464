import type { About } from "../../arguments/about";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { type CellArgument, type Failure, formatNumber, isBlankRow, isFailure, refuse } from "../../arguments/argument";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { countedRows } from "../../arguments/rows";
import { count, number } from "../../arguments/quantity";
import { firstErrorIn, list, rawRange } from "../../arguments/range";
import { text } from "../../arguments/text";
import { type CellError, type CellTable, invalid, noAnswer } from "../../cells/cellValues";
import { type MixAnswer, type MixItem, bestMix as leastMix } from "../../models/mix";

export const args = tableArguments({
  items: rawRange,
  needs: list(number),
  goal_name: text.mayBeOmitted(),
});

interface NamedItems {
  names: string[];
  items: MixItem[];
  needNames: string[];
}

const mostOf = count.orBlank();
const readers: readonly CellArgument[] = [text, number, mostOf];
const readerOf = (column: number): CellArgument => readers[column] ?? number;

/** Reads name, goal each, most and what one unit gives to each need; the first row may name the needs. */
function readItems(cells: readonly (readonly unknown[])[]): NamedItems | Failure {
  const error = firstErrorIn(cells);
  if (error) return error;
  const width = cells[0]!.length;
  if (width < 4)
    return refuse(
      "items",
      `has ${width} column${width === 1 ? "" : "s"}; enter name, goal each, most, then one column a need`,
    );
  const { from, to } = countedRows(cells, readerOf);
  const needNames = cells[0]!.slice(3).map((cell, index) => (from > 0 ? String(cell).trim() : `need ${index + 1}`));
  const names: string[] = [];
  const items: MixItem[] = [];
  for (let row = from; row < to; row++) {
    const line = cells[row]!;
    if (isBlankRow(line)) return refuse("items", `row ${row + 1} is blank; leave no blank row between filled ones`);
    const label = `items row ${row + 1}`;
    const name = text.read(line[0], `${label}, name`);
    if (isFailure(name)) return name;
    const goal = number.read(line[1], `${label}, goal each`);
    if (isFailure(goal)) return goal;
    const most = mostOf.read(line[2], `${label}, most`);
    if (isFailure(most)) return most;
    const gives: number[] = [];
    for (let column = 3; column < width; column++) {
      const each = number.read(line[column], `${label}, ${needNames[column - 3]}`);
      if (isFailure(each)) return each;
      gives.push(each);
    }
    names.push(name);
    items.push({ goal, most, gives });
  }
  return items.length > 0 ? { names, items, needNames } : refuse("items", "is blank; enter a row for each item");
}

function wordsOf(
  answer: Exclude<MixAnswer, { kind: "best" }>,
  needs: readonly number[],
  needNames: readonly string[],
): CellError {
  switch (answer.kind) {
    case "short": {
      const need = needs[answer.need]!;
      const most = `at most ${formatNumber(answer.reach)} of ${formatNumber(need)}, ${formatNumber(need - answer.reach)} short`;
      const name = `the need "${needNames[answer.need]}"`;
      return noAnswer(
        answer.together
          ? `${name} can't be met together with the needs before it (${needNames.slice(0, answer.need).join(", ")}): ${most}`
          : `${name} can't be met: the items give ${most}`,
      );
    }
    case "endless":
      return noAnswer(
        "the goal has no least: more of some items lowers it without end; fill in most for items whose goal is below 0",
      );
    case "slow":
      return noAnswer(
        `no sure answer: given up after ${answer.branches} branches of the search. Use fewer items, smaller mosts or rounder numbers`,
      );
    case "uneven":
      return noAnswer(
        "the numbers lie too far apart in size for a sure answer; state goals, needs and gives in units that make them alike in size",
      );
  }
}

/**
 * Cheapest mix of whole items that meets every need: how many of each, with the least total of a goal such as mass or cost.
 *
 * @customfunction BEST_MIX
 * @param items One row an item: name, goal of one unit, most units (blank = no limit), then for each need what one unit gives (negative if it takes). A header row names the needs
 * @param needs Amount of each need, in the order of its columns
 * @param [goal_name] Header of the goal column in the result, the word goal if omitted
 * @returns Item, count and goal, one row an item, and a total
 */
export function bestMix(items: any[][], needs: any[][], goal_name?: any[][]): any[][] {
  return wholeTable(args, [items, needs, goal_name], (given): CellTable | CellError => {
    const read = readItems(given.items);
    if (isFailure(read)) return [[read]];
    const { needNames } = read;
    if (given.needs.length !== needNames.length) {
      return invalid(
        `needs has ${given.needs.length} and items has ${needNames.length} need columns; they must go together one by one`,
      );
    }
    const answer = leastMix(read.items, given.needs);
    if (answer.kind !== "best") return wordsOf(answer, given.needs, needNames);
    const goals = read.items.map((item, index) => item.goal * answer.counts[index]!);
    const sum = (numbers: readonly number[]): number => numbers.reduce((total, each) => total + each, 0);
    return [
      ["item", "count", given.goal_name ?? "goal"],
      ...read.names.map((name, index) => [name, answer.counts[index]!, goals[index]!]),
      ["total", sum(answer.counts), sum(goals)],
    ];
  });
}

export const about: About = {
  gives: ["text", "count", "amount"],
  rule: "least Σ count × goal with Σ count × gives ≥ each need, 0 ≤ count ≤ most, counts whole",
  range: `Among mixes of the same least goal: first the fewest units that add nothing to the goal, then more of the first item, then of the second, and so on down the list. Needs that can't be met are #N/A and name the first that fails; a search given up after a set count of branches, the same on every machine, is #N/A. ${blankAsZero}`,
  source: "Whole-number linear programme, solved by branch and bound (Land & Doig, Econometrica 28, 1960; from memory)",
  examples: [
    {
      formula:
        '=OXYGEN.BEST_MIX({"item","kg","most","L/day","kW";"large plant",900,"",36,-6;"small plant",400,3,15,-3;"generator",300,"",0,10},{60;0},"kg")',
      result: [
        ["item", "count", "kg"],
        ["large plant", 1, 900],
        ["small plant", 2, 800],
        ["generator", 2, 600],
        ["total", 5, 2300],
      ],
      note: "Plants take power that generators give. Two large ones also give 60 L, but weigh 2400 kg with their two generators; three small ones give too little",
      source: "By hand: 36 + 2 × 15 = 66 L, −6 − 2 × 3 + 2 × 10 = 8 kW, 900 + 800 + 600 kg",
    },
    {
      formula: '=OXYGEN.BEST_MIX({"A",1,"",1;"B",2,"",2},{4})',
      result: [
        ["item", "count", "goal"],
        ["A", 4, 4],
        ["B", 0, 0],
        ["total", 4, 4],
      ],
      note: "A tie goes to the item earlier in the list",
      source: "4 × 1 = 2 × 2",
    },
    {
      formula: '=OXYGEN.BEST_MIX({"item","kg","most","L/day";"plant",900,2,36},{100})',
      result: { error: "#N/A", words: 'the need "L/day" can\'t be met: the items give at most 72 of 100, 28 short' },
    },
  ],
  seeAlso: ["OPTION_TABLE", "BEATEN_BY", "PLANTS_NEEDED"],
  caution:
    "A starting point for planning: leave room for a unit that fails (ONE_UNIT_DOWN, SUPPLY_CHANCE) before patients depend on it.",
};
