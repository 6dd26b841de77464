import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { DailyAmountsArgument } from "../../arguments/column";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { consecutiveRows } from "../../arguments/planArguments";
import { days, number } from "../../arguments/quantity";
import { refuseLevel, serviceLevel } from "../../arguments/serviceLevel";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { invalid } from "../../cells/cellValues";
import { countAtLevel, mostMean, poisson } from "../../models/counts";
import { outbreakMeans } from "../../models/demand";

/** More days than this are no outbreak, and would keep a cell busy. */
const mostDays = 1000;

export const args = tableArguments({
  arrivals: new DailyAmountsArgument(number.between(0, mostMean)),
  stay: days.positive(),
  level: serviceLevel.default(defaults.census_level),
});

/**
 * Patients there day by day through an outbreak, from how many come each day and how long they stay.
 *
 * @customfunction OUTBREAK_CENSUS
 * @param arrivals Patients who come each day, the first row is day 1; two columns give dates or day numbers, one after the other, and arrivals
 * @param stay Days that a patient stays, on average [days]
 * @param [level] Chance that the last column is enough on its day, above 0 and under 1
 * @returns A row for each day: day, mean patients, patients at the level
 */
export function outbreakCensus(arrivals: any[][], stay: any[][], level?: any[][]): any[][] {
  return wholeTable(args, [arrivals, stay, level], (given) => {
    const refused = refuseLevel(given.level) ?? consecutiveRows(given.arrivals, "arrivals");
    if (refused) return refused;
    if (given.arrivals.length > mostDays)
      return invalid(`arrivals has ${given.arrivals.length} days; at most ${mostDays} are reckoned here`);
    const means = outbreakMeans(
      given.arrivals.map(({ amount }) => amount),
      given.stay,
    );
    const fullest = means.reduce((most, mean) => Math.max(most, mean), 0);
    if (fullest > mostMean)
      return invalid(
        `arrivals and stay come to ${formatNumber(fullest)} patients at once; at most ${mostMean} are reckoned here`,
      );
    return [
      ["day", "mean patients", "patients at the level"],
      ...means.map((mean, index) => [index + 1, mean, countAtLevel(poisson(mean), given.level)]),
    ];
  });
}

export const about: About = {
  gives: ["count", "mean patients", "patients"],
  rule: "mean of a day = Σ arrivals k days before × e^(−k / stay), k from 0; least n with P(N ≤ n) ≥ level, N Poisson of that mean",
  range: `Arrivals a day 0 to a million, one row a day, at most ${mostDays} days; stay above 0. Who comes counts in full on the day of coming, and no one is turned away. Patients who were there before day 1 are left out: add them. Stays are exponential, some short and some long; where all stay alike, the peak is higher. The level covers chance about these arrivals, not arrivals that turn out higher: try them half as high again. ${blankAsZero}`,
  source:
    "Poisson numbers of the Mt/G/∞ queue: Eick, Massey & Whitt, The physics of the Mt/G/∞ queue, Operations Research 41(4) (1993) 731 (abstract read)",
  examples: [
    {
      formula: "=OXYGEN.OUTBREAK_CENSUS({8;16;26;0},1.4426950408889634)",
      result: [
        ["day", "mean patients", "patients at the level"],
        [1, 8, 13],
        [2, 20, 28],
        [3, 36, 46],
        [4, 18, 25],
      ],
      note: "A stay of 1/ln 2 days: half of them leave each day",
      source:
        "16 + 8/2 = 20, 26 + 20/2 = 36, 36/2 = 18; Poisson by SciPy: P(≤ 12) = 0.936 and P(≤ 13) = 0.966 at mean 8, 0.948 and 0.966 at 20, 0.939 and 0.955 at 36, 0.932 and 0.955 at 18",
    },
    {
      formula: '=OXYGEN.OUTBREAK_CENSUS({"2026-03-01",3;"2026-03-02",5;"2026-03-03",9;"2026-03-04",4},"120 h",99%)',
      result: [
        ["day", "mean patients", "patients at the level"],
        [1, 3.0, 8],
        [2, 7.456192, 14],
        [3, 15.104614, 25],
        [4, 16.366612, 26],
      ],
      tolerance: 0.000001,
      note: "A stay of five days, seen with the dates beside",
      source: "e^(−1/5) = 0.818731 stay on each day, from SciPy's Poisson quantiles",
    },
  ],
  seeAlso: ["AVERAGE_CENSUS", "CENSUS_AT_LEVEL", "SURGE_DEMAND", "FLOW_AT_LEVEL"],
  caution:
    "A planning figure: an outbreak comes in families and clusters, and the true spread is wider than this level says. Know what happens on the day above it.",
};
