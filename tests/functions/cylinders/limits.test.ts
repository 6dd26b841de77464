import { checkLimits } from "../checkLimits";
import { cylinderContent } from "../../../src/functions/cylinders/cylinderContent";
import { minutesOnCylinder } from "../../../src/functions/cylinders/minutesOnCylinder";
import { cylindersToOwn } from "../../../src/functions/cylinders/cylindersToOwn";
import { cylinderPressure } from "../../../src/functions/cylinders/cylinderPressure";
import { settledPressure } from "../../../src/functions/cylinders/settledPressure";
import { contentByFactor } from "../../../src/functions/cylinders/contentByFactor";
import { cylinderMinutes } from "../../../src/functions/cylinders/cylinderMinutes";
import { cylindersNeeded } from "../../../src/functions/cylinders/cylindersNeeded";
import { cylinderFillMinutes } from "../../../src/functions/cylinders/cylinderFillMinutes";
import { cylindersPerDay } from "../../../src/functions/cylinders/cylindersPerDay";
import { cascadeFill } from "../../../src/functions/cylinders/cascadeFill";

checkLimits(
  "CYLINDER_CONTENT",
  cylinderContent,
  ["water_volume", "pressure", "temperature"],
  [10, 100, 20],
  [
    {
      argument: "water_volume",
      low: 0,
      high: 250,
      why: "no cylinder is empty of room, none is larger than some 250 L",
      endsOut: "low",
    },
    { argument: "pressure", low: -0.51325, high: 300.31175, why: "gas from 0.5 to 301.325 bar absolute; less 1.01325" },
    {
      argument: "temperature",
      low: -40,
      high: 60,
      why: "climates on land, and where the equation of state is checked",
    },
  ],
);
checkLimits(
  "MINUTES_ON_CYLINDER",
  minutesOnCylinder,
  ["water_volume", "pressure", "flow", "keep_pressure", "temperature"],
  [10, 100, 5, 14, 20],
  [
    {
      argument: "water_volume",
      low: 0,
      high: 250,
      why: "no cylinder is empty of room, none is larger than some 250 L",
      endsOut: "low",
    },
    { argument: "pressure", low: -0.51325, high: 300.31175, why: "gas from 0.5 to 301.325 bar absolute; less 1.01325" },
    { argument: "flow", low: 0, high: "open", why: "without a flow it lasts for ever", endsOut: "low" },
    { argument: "keep_pressure", low: 0, high: 300, why: "nothing flows out below 0; the fullest cylinders" },
    {
      argument: "temperature",
      low: -40,
      high: 60,
      why: "climates on land, and where the equation of state is checked",
    },
  ],
);
checkLimits(
  "CYLINDERS_TO_OWN",
  cylindersToOwn,
  ["used_per_day", "turnaround_days", "level", "in_use"],
  [0.1, 2, 0.95, 3],
  [
    { argument: "in_use", low: 0, high: 1e6, why: "things are never fewer than none; a hundred times beyond any plan" },
    { argument: "level", low: 0, high: 1, why: "a chance, neither nothing nor certainty", endsOut: "both" },
    {
      argument: "turnaround_days",
      low: 0,
      high: "open",
      why: "a time is never negative; what is away is limited together with the use",
    },
  ],
);
checkLimits(
  "CYLINDER_PRESSURE",
  cylinderPressure,
  ["water_volume", "content", "temperature"],
  [10, 1000, 20],
  [
    {
      argument: "temperature",
      low: -40,
      high: 60,
      why: "climates on land, and where the equation of state is checked",
    },
  ],
);
checkLimits(
  "SETTLED_PRESSURE",
  settledPressure,
  ["pressure", "temperature", "settled_temperature"],
  [100, 20, 15],
  [
    {
      argument: "temperature",
      low: -40,
      high: 60,
      why: "climates on land, and where the equation of state is checked",
    },
    {
      argument: "settled_temperature",
      low: -40,
      high: 60,
      why: "climates on land, and where the equation of state is checked",
    },
  ],
);
checkLimits(
  "CONTENT_BY_FACTOR",
  contentByFactor,
  ["pressure_psi", "factor", "keep_psi"],
  [1000, 0.28, 200],
  [
    { argument: "pressure_psi", low: 0, high: "open", why: "a gauge stands at 0 in the open" },
    { argument: "factor", low: 0, high: "open", why: "a cylinder holds something", endsOut: "low" },
    { argument: "keep_psi", low: 0, high: "open", why: "a gauge stands at 0 in the open" },
  ],
);
checkLimits(
  "CYLINDER_MINUTES",
  cylinderMinutes,
  ["content", "flow", "keep_share"],
  [680, 5, 0.1],
  [
    { argument: "content", low: 0, high: "open", why: "an amount is never negative" },
    { argument: "flow", low: 0, high: "open", why: "without a flow it lasts for ever", endsOut: "low" },
    { argument: "keep_share", low: 0, high: 1, why: "a share; all of it would leave nothing", endsOut: "high" },
  ],
);
checkLimits(
  "CYLINDERS_NEEDED",
  cylindersNeeded,
  ["gas", "content", "keep_share"],
  [680, 500, 0.1],
  [
    { argument: "gas", low: 0, high: "open", why: "an amount is never negative" },
    { argument: "content", low: 0, high: "open", why: "empty cylinders bring nothing", endsOut: "low" },
    { argument: "keep_share", low: 0, high: 1, why: "a share; all of it would leave nothing", endsOut: "high" },
  ],
);
checkLimits(
  "CYLINDER_FILL_MINUTES",
  cylinderFillMinutes,
  ["water_volume", "from_pressure", "to_pressure", "fill_flow", "temperature"],
  [10, -0.5, 300.31, 5, 20],
  [
    {
      argument: "water_volume",
      low: 0,
      high: 250,
      why: "no cylinder is empty of room, none is larger than some 250 L",
      endsOut: "low",
    },
    { argument: "fill_flow", low: 0, high: "open", why: "nothing would come", endsOut: "low" },
    {
      argument: "temperature",
      low: -40,
      high: 60,
      why: "climates on land, and where the equation of state is checked",
    },
  ],
);
checkLimits(
  "CYLINDERS_PER_DAY",
  cylindersPerDay,
  ["hours", "fill_minutes", "change_minutes", "boosters"],
  [8, 60, 5, 1],
  [{ argument: "hours", low: 0, high: 24, why: "a day" }],
);
checkLimits(
  "CASCADE_FILL",
  cascadeFill,
  ["water_volume", "pressure", "bank_volumes", "bank_pressures", "temperature"],
  [10, 15, 500, 140, 20],
  [
    {
      argument: "water_volume",
      low: 0,
      high: 250,
      why: "no cylinder is empty of room, none is larger than some 250 L",
      endsOut: "low",
    },
    { argument: "pressure", low: -0.51325, high: 300.31175, why: "gas from 0.5 to 301.325 bar absolute; less 1.01325" },
    { argument: "bank_volumes", low: 0, high: "open", why: "a bank has room", endsOut: "low" },
    {
      argument: "bank_pressures",
      low: -0.51325,
      high: 300.31175,
      why: "gas from 0.5 to 301.325 bar absolute; less 1.01325",
    },
    {
      argument: "temperature",
      low: -40,
      high: 60,
      why: "climates on land, and where the equation of state is checked",
    },
  ],
);
