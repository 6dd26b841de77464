import { solve } from "yalps";

/** One kind of thing that a mix may hold. */
export interface MixItem {
  /** What one unit adds to the goal. */
  readonly goal: number;
  /** Most units there may be; undefined = no limit. */
  readonly most: number | undefined;
  /** What one unit gives to each need; negative if it takes. */
  readonly gives: readonly number[];
}

export type MixAnswer =
  | { readonly kind: "best"; readonly counts: readonly number[] }
  /** Need `need` can't be met: at most `reach` of it, with the needs before it met too if `together`. */
  | { readonly kind: "short"; readonly need: number; readonly reach: number; readonly together: boolean }
  /** No least goal: it falls without end. */
  | { readonly kind: "endless" }
  /** Given up after this many branches of a search. */
  | { readonly kind: "slow"; readonly branches: number }
  /** The numbers lie too far apart in size for a reliable answer. */
  | { readonly kind: "uneven" };

type Unanswered = "none" | "endless" | "uneven";

/** Σ coefficients × counts, at least `atLeast` and at most `atMost`. */
interface Row {
  readonly coefficients: readonly number[];
  readonly atLeast?: number;
  readonly atMost?: number;
}

/** Counts above this are not told apart from their neighbours by the solver's precision. */
const largestCount = 1e7;
/**
 * Cells of the simplex table times branches after which a search is given up: a count and not a time, so that every machine
 * answers alike. Some 5,000 branches of 40 items, about a third of a second.
 */
const mostWork = 1e7;
/** Searches that choose between mixes of the same goal are mostly short; this many may be as long as the first. */
const mostLongChoices = 5;
/** A choice is long when it takes more than this part of the branches. */
const shortPart = 1 / 20;
/** Share of a need that rounding may leave open. */
const roundingShare = 1e-9;

const weigh = (coefficients: readonly number[], counts: readonly number[]): number =>
  coefficients.reduce((total, coefficient, index) => total + coefficient * counts[index]!, 0);

const largest = (numbers: readonly number[]): number =>
  numbers.reduce((most, each) => Math.max(most, Math.abs(each)), 0);

/** What rounding may leave open where `coefficients` × `counts` is compared with `bound`. */
const slackOf = (coefficients: readonly number[], counts: readonly number[], bound: number): number =>
  roundingShare * coefficients.reduce((total, each, index) => total + Math.abs(each) * counts[index]!, Math.abs(bound));

const holds = (row: Row, counts: readonly number[]): boolean => {
  const total = weigh(row.coefficients, counts);
  return (
    (row.atLeast === undefined || total >= row.atLeast - slackOf(row.coefficients, counts, row.atLeast)) &&
    (row.atMost === undefined || total <= row.atMost + slackOf(row.coefficients, counts, row.atMost))
  );
};

type Outcome =
  | { kind: "found"; counts: number[]; total: number }
  | { kind: "slow"; branches: number }
  | { [K in Unanswered]: { kind: K } }[Unanswered];

/** Largest Σ aim × counts in whole counts, each between its `low` and `high`, that keeps every row. */
function largestTotal(
  aim: readonly number[],
  rows: readonly Row[],
  low: readonly number[],
  high: readonly (number | undefined)[],
  mostBranches: number,
): Outcome {
  const constraints: [string, { min?: number; max?: number }][] = [];
  const coefficients: [string, number][][] = aim.map(() => []);
  const scaleOfAim = largest(aim) || 1;
  aim.forEach((each, index) => coefficients[index]!.push(["aim", each / scaleOfAim]));
  rows.forEach((row, at) => {
    // Rows are brought to one size, since the solver's precision is absolute.
    const scale = largest(row.coefficients) || 1;
    const floor = row.atLeast === undefined ? undefined : (row.atLeast - roundingShare * Math.abs(row.atLeast)) / scale;
    const ceiling = row.atMost === undefined ? undefined : (row.atMost + roundingShare * Math.abs(row.atMost)) / scale;
    constraints.push([
      `row ${at}`,
      { ...(floor !== undefined && { min: floor }), ...(ceiling !== undefined && { max: ceiling }) },
    ]);
    row.coefficients.forEach((each, index) => {
      if (each !== 0) coefficients[index]!.push([`row ${at}`, each / scale]);
    });
  });
  aim.forEach((_, index) => {
    const limit = high[index];
    if (low[index]! <= 0 && limit === undefined) return;
    constraints.push([
      `unit ${index}`,
      { ...(low[index]! > 0 && { min: low[index]! }), ...(limit !== undefined && { max: limit }) },
    ]);
    coefficients[index]!.push([`unit ${index}`, 1]);
  });

  const answer = solve(
    {
      direction: "maximize",
      objective: "aim",
      constraints,
      variables: coefficients.map((each, index) => [index, each] as [number, [string, number][]]),
      integers: true,
    },
    { timeout: Infinity, maxIterations: mostBranches, checkCycles: true },
  );
  if (answer.status === "infeasible") return { kind: "none" };
  if (answer.status === "unbounded") return { kind: "endless" };
  if (answer.status === "timedout") return { kind: "slow", branches: mostBranches };
  if (answer.status === "cycled") return { kind: "uneven" };
  const counts = aim.map(() => 0);
  for (const [index, value] of answer.variables) counts[index] = Math.round(value);
  const sound = counts.every(
    (each, index) => each <= largestCount && each >= low[index]! && (high[index] === undefined || each <= high[index]!),
  );
  if (!sound || !rows.every((row) => holds(row, counts))) return { kind: "uneven" };
  return { kind: "found", counts, total: weigh(aim, counts) };
}

/** Why no mix meets the needs: the first need that can't be met alone, else the first that fails with those before it. */
function findShortNeed(items: readonly MixItem[], needs: readonly number[], mostBranches: number): MixAnswer {
  const low = items.map(() => 0);
  const high = items.map((item) => item.most);
  const given = (need: number): number[] => items.map((item) => item.gives[need]!);
  for (let need = 0; need < needs.length; need++) {
    // Alone, every item that gives is taken to its most and every other left out.
    const reach = items.reduce((total, item) => {
      const gives = item.gives[need]!;
      return gives > 0 && item.most !== 0 ? total + gives * (item.most ?? Infinity) : total;
    }, 0);
    if (reach < needs[need]! - roundingShare * Math.abs(needs[need]!))
      return { kind: "short", need, reach, together: false };
  }
  for (let need = 1; need < needs.length; need++) {
    const before = needs.slice(0, need).map((atLeast, index) => ({ coefficients: given(index), atLeast }));
    const most = largestTotal(given(need), before, low, high, mostBranches);
    if (most.kind === "endless") continue;
    if (most.kind === "none") return { kind: "uneven" };
    if (most.kind !== "found") return most;
    if (most.total < needs[need]! - slackOf(given(need), most.counts, needs[need]!)) {
      return { kind: "short", need, reach: most.total, together: true };
    }
  }
  return { kind: "uneven" };
}

/**
 * Whole counts of the items with the least Σ goal × count that give at least every need. Among mixes of the same least
 * goal: first the fewest units that add nothing to the goal, then more of the first item, more of the second, and so on.
 * Branch and bound by yalps.
 *
 * @param work Cells of the simplex table times branches after which it gives up
 */
export function bestMix(items: readonly MixItem[], needs: readonly number[], work = mostWork): MixAnswer {
  const mostBranches = Math.ceil(work / ((items.length + 1) * (items.length + needs.length + 1)));
  const goals = items.map((item) => item.goal);
  const rows: Row[] = needs.map((atLeast, need) => ({ coefficients: items.map((item) => item.gives[need]!), atLeast }));
  const low = items.map(() => 0);
  const high = items.map((item) => item.most);

  const first = largestTotal(
    goals.map((goal) => -goal),
    rows,
    low,
    high,
    mostBranches,
  );
  if (first.kind === "none") return findShortNeed(items, needs, mostBranches);
  if (first.kind !== "found") return first;
  let { counts } = first;
  rows.push({ coefficients: goals, atMost: weigh(goals, counts) });

  let longChoices = 0;
  const choose = (aim: readonly number[], from: readonly number[]): Outcome => {
    const quick = largestTotal(aim, rows, from, high, Math.ceil(mostBranches * shortPart));
    if (quick.kind !== "slow" || longChoices === mostLongChoices) return quick;
    longChoices++;
    return largestTotal(aim, rows, from, high, mostBranches);
  };

  const idle = goals.map((goal) => (goal === 0 ? 1 : 0));
  if (weigh(idle, counts) > 0) {
    const fewest = choose(
      idle.map((each) => -each),
      low,
    );
    if (fewest.kind === "slow") return fewest;
    if (fewest.kind === "found") counts = fewest.counts;
  }
  rows.push({ coefficients: idle, atMost: weigh(idle, counts) });

  for (let item = 0; item < items.length; item++) {
    const raised = low.slice();
    raised[item] = counts[item]! + 1;
    if (high[item] === undefined || raised[item]! <= high[item]!) {
      const more = choose(
        items.map((_, index) => (index === item ? 1 : 0)),
        raised,
      );
      if (more.kind === "slow") return more;
      if (more.kind === "found") counts = more.counts;
    }
    low[item] = counts[item]!;
    high[item] = counts[item]!;
  }
  return { kind: "best", counts };
}
