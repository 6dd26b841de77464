import { averageCensus } from "../../../src/functions/demand/averageCensus";
import { censusAtLevel } from "../../../src/functions/demand/censusAtLevel";
import { censusOverChance } from "../../../src/functions/demand/censusOverChance";
import { dailyDemand } from "../../../src/functions/demand/dailyDemand";
import { demandFlow } from "../../../src/functions/demand/demandFlow";
import { demandTable } from "../../../src/functions/demand/demandTable";
import { designFlow } from "../../../src/functions/demand/designFlow";
import { flowAtLevel } from "../../../src/functions/demand/flowAtLevel";
import { outbreakCensus } from "../../../src/functions/demand/outbreakCensus";
import { sharedCensus } from "../../../src/functions/demand/sharedCensus";
import { surgeDemand } from "../../../src/functions/demand/surgeDemand";
import { turnedAwayShare } from "../../../src/functions/demand/turnedAwayShare";
import { CellError } from "../../../src/cells/cellValues";
import { oneCell } from "../oneCell";
import { checkLimits, type Limit } from "../checkLimits";

const flow = (argument: string): Limit => ({ argument, low: 0, high: "open", why: "a flow has one direction" });
const counted = (argument: string): Limit => ({ argument, low: 0, high: "open", why: "nobody is less than none" });
const share = (argument: string): Limit => ({ argument, low: 0, high: 1, why: "none to all of them" });
const million = "a million is beyond any plan";

checkLimits(
  "AVERAGE_CENSUS",
  averageCensus,
  ["arrivals", "stay"],
  [4, 5],
  [counted("arrivals"), { argument: "stay", low: 0, high: "open", why: "a time is never negative" }],
);
checkLimits(
  "CENSUS_AT_LEVEL",
  censusAtLevel,
  ["mean", "level"],
  [4, 0.95],
  [
    { argument: "mean", low: 0, high: 1e6, why: million },
    { argument: "level", low: 0, high: 1, why: "a chance between never and certainty", endsOut: "both" },
  ],
);
checkLimits(
  "CENSUS_OVER_CHANCE",
  censusOverChance,
  ["mean", "places"],
  [4, 8],
  [{ argument: "mean", low: 0, high: 1e6, why: million, endsOut: "low" }],
);
checkLimits(
  "TURNED_AWAY_SHARE",
  turnedAwayShare,
  ["mean", "places"],
  [4, 8],
  [{ argument: "mean", low: 0, high: 1e6, why: million, endsOut: "low" }],
);
checkLimits(
  "SHARED_CENSUS",
  sharedCensus,
  ["patients", "share", "level"],
  [20, 0.25, 0.95],
  [
    share("share"),
    { argument: "level", low: 0, high: 1, why: "a chance between never and certainty", endsOut: "both" },
  ],
);
checkLimits(
  "DAILY_DEMAND",
  dailyDemand,
  ["counts", "flows", "hours", "use_share"],
  [3, 5, 12, 0.5],
  [
    counted("counts"),
    flow("flows"),
    { argument: "hours", low: 0, high: 24, why: "a day has 24 hours" },
    share("use_share"),
  ],
);
checkLimits(
  "DEMAND_FLOW",
  demandFlow,
  ["counts", "flows", "use_share"],
  [3, 5, 0.5],
  [counted("counts"), flow("flows"), share("use_share")],
);
checkLimits(
  "DEMAND_TABLE",
  demandTable,
  ["names", "counts", "flows", "cylinder_content"],
  ["ward", 3, 5, 7000],
  [
    counted("counts"),
    flow("flows"),
    { argument: "cylinder_content", low: 0, high: "open", why: "an empty cylinder gives nothing", endsOut: "low" },
  ],
);
checkLimits(
  "DESIGN_FLOW",
  designFlow,
  ["beds", "first_flow", "next_flow", "use_share"],
  [20, 10, 6, 0.25],
  [flow("first_flow"), flow("next_flow"), share("use_share")],
);
checkLimits(
  "FLOW_AT_LEVEL",
  flowAtLevel,
  ["means", "flows", "level"],
  [6, 10, 0.95],
  [
    { argument: "means", low: 0, high: 1e6, why: million },
    flow("flows"),
    { argument: "level", low: 0, high: 1, why: "a chance between never and certainty", endsOut: "both" },
  ],
);
checkLimits(
  "OUTBREAK_CENSUS",
  outbreakCensus,
  ["arrivals", "stay", "level"],
  [6, 5, 0.95],
  [
    { argument: "arrivals", low: 0, high: 1e6, why: million },
    { argument: "stay", low: 0, high: "open", why: "who comes is there for a while", endsOut: "low" },
    { argument: "level", low: 0, high: 1, why: "a chance between never and certainty", endsOut: "both" },
  ],
);
checkLimits(
  "SURGE_DEMAND",
  surgeDemand,
  ["base", "days", "start_day", "factor", "rise", "hold", "fall"],
  [100, 8, 2, 3, 2, 2, 2],
  [counted("base"), { argument: "factor", low: 0, high: "open", why: "demand is never negative" }],
);

/** Whole numbers only: each end passes and so does one inside it, one beyond and a part are refused. */
test.each([
  ["SHARED_CENSUS", sharedCensus, [20, 0.25, 0.95], 0, 0, 1e6, "patients"],
  ["TURNED_AWAY_SHARE", turnedAwayShare, [4, 8], 1, 0, 1e6, "places"],
  ["SURGE_DEMAND", surgeDemand, [100, 8, 2, 3, 2, 2, 2], 1, 1, 10000, "days"],
  ["SURGE_DEMAND", surgeDemand, [100, 8, 2, 3, 2, 2, 2], 2, -10000, 10000, "start_day"],
  ["SURGE_DEMAND", surgeDemand, [100, 8, 2, 3, 2, 2, 2], 4, 0, 10000, "rise"],
  ["SURGE_DEMAND", surgeDemand, [100, 8, 2, 3, 2, 2, 2], 5, 0, 10000, "hold"],
  ["SURGE_DEMAND", surgeDemand, [100, 8, 2, 3, 2, 2, 2], 6, 0, 10000, "fall"],
] as const)("%s: argument %#, whole", (_id, call, cells, index, low, high, name) => {
  const got = (value: number): unknown =>
    oneCell(call as (...each: unknown[]) => any[][], ...cells.map((cell, at) => (at === index ? value : cell)));
  for (const inside of [low, low + 1, high - 1, high]) expect(got(inside)).not.toBeInstanceOf(CellError);
  for (const beyond of [low - 1, high + 1, low + 0.5])
    expect(got(beyond)).toMatchObject({ code: "#VALUE!", message: expect.stringMatching(new RegExp(`^${name}`)) });
});
