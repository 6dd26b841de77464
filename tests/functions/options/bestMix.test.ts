import loadHighs from "highs";
import { bestMix } from "../../../src/functions/options/bestMix";
import { type MixItem, bestMix as leastMix } from "../../../src/models/mix";

type Highs = Awaited<ReturnType<typeof loadHighs>>;
let highs: Highs;
beforeAll(async () => {
  highs = await loadHighs();
});

/** A seeded sequence (mulberry32), so that a failing programme can be run again. */
function sequence(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

interface Programme {
  items: MixItem[];
  needs: number[];
}

/** Up to 10 items and 4 needs; a third with tenths, some goals 0, some items that take, half of them without a limit. */
function randomProgramme(seed: number): Programme {
  const random = sequence(seed);
  const items = 1 + Math.floor(random() * 10);
  const needs = 1 + Math.floor(random() * 4);
  const tenths = random() < 0.3;
  const dear = random() < 0.5 ? 12 : 2000;
  const value = (low: number, high: number): number => {
    const drawn = low + random() * (high - low);
    return tenths ? Math.round(drawn * 10) / 10 : Math.round(drawn);
  };
  return {
    items: Array.from({ length: items }, () => ({
      goal: random() < 0.08 ? 0 : value(1, dear),
      most: random() < 0.5 ? undefined : Math.floor(random() * 8),
      gives: Array.from({ length: needs }, () => (random() < 0.15 ? 0 : random() < 0.2 ? -value(1, 20) : value(1, 60))),
    })),
    needs: Array.from({ length: needs }, () => (random() < 0.2 ? 0 : value(5, 400))),
  };
}

const signed = (coefficient: number, index: number): string =>
  `${coefficient < 0 ? "-" : "+"} ${Math.abs(coefficient)} x${index}`;

/** The same programme for HiGHS; `extra` holds further rows of the CPLEX LP format. */
function solveByHighs({ items, needs }: Programme, objective: number[], extra: string[]) {
  const rows = needs.map(
    (need, at) => ` c${at}: ${items.map((item, index) => signed(item.gives[at]!, index)).join(" ")} >= ${need}`,
  );
  const bounds = items.map((item, index) => ` 0 <= x${index}${item.most === undefined ? "" : ` <= ${item.most}`}`);
  const text = [
    "Minimize",
    ` obj: ${objective.map(signed).join(" ")}`,
    "Subject To",
    ...rows,
    ...extra,
    "Bounds",
    ...bounds,
    "General",
    ` ${items.map((_, index) => `x${index}`).join(" ")}`,
    "End",
  ].join("\n");
  return highs.solve(text, { mip_rel_gap: 0, mip_abs_gap: 0, output_flag: false });
}

/** Least goal, then fewest idle units, then most of each item in turn, by solving once for each with HiGHS. */
function wantedCounts(programme: Programme, least: number): number[] {
  const goals = programme.items.map((item) => item.goal);
  const extra = [` goal: ${goals.map(signed).join(" ")} <= ${least + 1e-7}`];
  const idle = goals.map((goal) => (goal === 0 ? 1 : 0));
  if (idle.some((each) => each === 1)) {
    extra.push(
      ` idle: ${idle.map(signed).join(" ")} <= ${Math.round(solveByHighs(programme, idle, extra).ObjectiveValue)}`,
    );
  }
  return goals.map((_, item) => {
    const answer = solveByHighs(
      programme,
      goals.map((__, index) => (index === item ? -1 : 0)),
      extra,
    );
    const count = Math.round(-answer.ObjectiveValue) || 0;
    extra.push(` fixed${item}: x${item} = ${count}`);
    return count;
  });
}

const sheet = (items: unknown[][], needs: unknown[], goalName?: unknown): any[][] =>
  bestMix(
    items,
    needs.map((each) => [each]),
    goalName === undefined ? undefined : [[goalName]],
  );
const words = (items: unknown[][], needs: unknown[]): any => sheet(items, needs)[0]![0];

describe("BEST_MIX", () => {
  it("agrees with HiGHS on 250 random programmes, ties and impossible ones included", () => {
    let best = 0;
    let impossible = 0;
    for (let seed = 1; seed <= 250; seed++) {
      const programme = randomProgramme(seed);
      const answer = leastMix(programme.items, programme.needs);
      const check = solveByHighs(
        programme,
        programme.items.map((item) => item.goal),
        [],
      );
      if (check.Status !== "Optimal") {
        expect([seed, answer.kind]).toEqual([seed, "short"]);
        impossible++;
        continue;
      }
      expect([seed, answer.kind]).toEqual([seed, "best"]);
      if (answer.kind === "best")
        expect([seed, answer.counts]).toEqual([seed, wantedCounts(programme, check.ObjectiveValue)]);
      best++;
    }
    expect(best).toBeGreaterThan(180);
    expect(impossible).toBeGreaterThan(30);
  }, 60000);

  it("says by how much a need fails, as HiGHS finds it with the needs before it", () => {
    let checked = 0;
    for (let seed = 1; seed <= 250; seed++) {
      const programme = randomProgramme(seed);
      const answer = leastMix(programme.items, programme.needs);
      if (answer.kind !== "short") continue;
      // The needs before it as they are, and the failing one as the aim (with a bound too low to matter).
      const before = answer.together ? answer.need : 0;
      const asked = {
        items: programme.items.map((item) => ({
          ...item,
          gives: [...item.gives.slice(0, before), item.gives[answer.need]!],
        })),
        needs: [...programme.needs.slice(0, before), -1e9],
      };
      const most = solveByHighs(
        asked,
        programme.items.map((item) => -item.gives[answer.need]!),
        [],
      );
      expect([seed, most.Status]).toEqual([seed, "Optimal"]);
      expect(answer.reach).toBeCloseTo(-most.ObjectiveValue, 6);
      expect(answer.reach).toBeLessThan(programme.needs[answer.need]!);
      checked++;
    }
    expect(checked).toBeGreaterThan(30);
  }, 60000);

  it("prefers more of earlier items among mixes of one goal, whatever the solver finds first", () => {
    expect(
      sheet(
        [
          ["A", 1, "", 1],
          ["B", 1, "", 1],
          ["C", 2, "", 2],
        ],
        [6],
      ).map((line) => line[1]),
    ).toEqual(["count", 6, 0, 0, 6]);
    expect(
      sheet(
        [
          ["C", 2, 2, 2],
          ["A", 1, "", 1],
          ["B", 1, "", 1],
        ],
        [6],
      ).map((line) => line[1]),
    ).toEqual(["count", 2, 2, 0, 4]);
  });

  it("takes no needless units of an item without a goal", () => {
    expect(
      sheet(
        [
          ["free", 0, "", 2],
          ["also free", 0, "", 2],
          ["dear", 5, "", 10],
        ],
        [5],
      ).map((line) => line[1]),
    ).toEqual(["count", 3, 0, 0, 3]);
  });

  it("names needs by the header, or by number without one, and the goal column as asked", () => {
    const header = ["item", "cost", "most", "L/day", "kW"];
    expect(words([header, ["plant", 5, 2, 10, -1]], [30, -9]).message).toBe(
      'the need "L/day" can\'t be met: the items give at most 20 of 30, 10 short',
    );
    expect(words([header, ["plant", 5, "", 10, -1]], [30, -2]).message).toBe(
      'the need "kW" can\'t be met together with the needs before it (L/day): at most -3 of -2, 1 short',
    );
    expect(words([["plant", 5, 2, 10]], [30]).message).toContain('the need "need 1"');
    expect(words([header, ["plant", 5, 2, 10, -1]], [30, 0]).code).toBe("#N/A");
    expect(sheet([header, ["plant", 5, "", 10, 0]], [30, 0], "cost")[0]).toEqual(["item", "count", "cost"]);
  });

  it("says that a goal without end has no least", () => {
    expect(words([["gain", -1, "", 1]], [0]).message).toContain("lowers it without end");
    expect(sheet([["gain", -1, 4, 1]], [0]).map((line) => line[1])).toEqual(["count", 4, 4]);
  });

  it("gives up after a count of branches (an even sum can't be odd: every branch must be tried), the same each time", () => {
    const items = Array.from({ length: 41 }, () => ({ goal: 1, most: 1, gives: [2, -2] }));
    const answer = leastMix(items, [41, -41], 200000);
    expect(answer).toEqual({ kind: "slow", branches: Math.ceil(200000 / (42 * 44)) });
    expect(leastMix(items, [41, -41], 200000)).toEqual(answer);
  });

  it("says in words that it gave up, and asks no clock", () => {
    jest.isolateModules(() => {
      jest.doMock("yalps", () => ({ solve: () => ({ status: "timedout", result: NaN, variables: [] }) }));
      const { bestMix: givingUp } =
        require("../../../src/functions/options/bestMix") as typeof import("../../../src/functions/options/bestMix");
      const answer = givingUp([["plant", 5, "", 10]], [[30]])[0]![0];
      expect(answer.code).toBe("#N/A");
      expect(answer.message).toMatch(/no sure answer: given up after \d+ branches/);
    });
    jest.dontMock("yalps");
    const clock = jest.spyOn(Date, "now");
    let time = 0;
    clock.mockImplementation(() => (time += 1e9));
    try {
      expect(sheet([["plant", 5, "", 10]], [25])[1]).toEqual(["plant", 3, 15]);
    } finally {
      clock.mockRestore();
    }
  });

  it("refuses what it can't read, with the place", () => {
    expect(words([["plant", 5, 2]], [30]).message).toContain("items has 3 columns");
    expect(words([["plant", 5, 2, 10]], [30, 1]).message).toContain("needs has 2 and items has 1 need columns");
    expect(words([["plant", 5, 1.5, 10]], [30]).message).toContain("items row 1, most must be a whole number");
    expect(
      words(
        [
          ["item", "kg", "most", "L"],
          ["plant", 5, "", null],
        ],
        [30],
      ).message,
    ).toContain("items row 2, L is blank");
    expect(words([["plant", "7", "", 10]], [30]).message).toContain("items row 1, goal each");
    expect(words([["item", "kg", "most", "L"]], [30]).message).toContain('items row 1, goal each "kg" is not a number');
    expect(words([[null, "", null, ""]], [30]).message).toContain("items is blank");
  });

  it("passes over headings alone: a first row of mistyped numbers is refused, and so is a blank row in between", () => {
    const rows = [
      ["small", 3, 4, 20],
      ["large", 5, "", 40],
    ];
    expect(sheet([["item", "kg", "most", "L/day"], ...rows, ["", null, "", ""]], [70])).toEqual(sheet(rows, [70]));
    expect(words([["free", "0,5", "", "l00"], ...rows], [70]).message).toContain("items row 1, goal each");
    expect(words([rows[0]!, [null, "", null, null], rows[1]!], [70]).message).toContain("items row 2 is blank");
    expect(words([rows[0]!, ["large", null, null, null]], [70]).message).toContain("items row 2, goal each is blank");
  });

  it("finds the least goal of twenty-five items within its count of branches, as HiGHS does", () => {
    const programme: Programme = {
      items: Array.from({ length: 25 }, (_, index) => ({
        goal: 100 + ((index * 37) % 29),
        most: 3,
        gives: [97 + ((index * 53) % 31)],
      })),
      needs: [2345],
    };
    const answer = leastMix(programme.items, programme.needs);
    const goals = programme.items.map((item) => item.goal);
    expect(answer.kind).toBe("best");
    if (answer.kind === "best")
      expect(answer.counts.reduce((sum, count, index) => sum + count * goals[index]!, 0)).toBe(
        Math.round(solveByHighs(programme, goals, []).ObjectiveValue),
      );
  }, 30000);
});
