import { checkLimits } from "../checkLimits";
import { airPressure } from "../../../src/functions/site/airPressure";
import { altitudeFromPressure } from "../../../src/functions/site/altitudeFromPressure";
import { gaugeCorrected } from "../../../src/functions/site/gaugeCorrected";
import { airDensityRatio } from "../../../src/functions/site/airDensityRatio";
import { deratedRate } from "../../../src/functions/site/deratedRate";
import { startDelay } from "../../../src/functions/site/startDelay";
import { tiltAngle } from "../../../src/functions/site/tiltAngle";
import { siteCheck } from "../../../src/functions/site/siteCheck";
import { siteArea } from "../../../src/functions/site/siteArea";

checkLimits(
  "AIR_PRESSURE",
  airPressure,
  ["altitude"],
  [500],
  [{ argument: "altitude", low: -500, high: 11000, why: "the troposphere of ISO 2533 down to the lowest land" }],
);
checkLimits(
  "ALTITUDE_FROM_PRESSURE",
  altitudeFromPressure,
  ["pressure_kpa"],
  [90],
  [
    {
      argument: "pressure_kpa",
      low: 40,
      high: 107.4775,
      why: "a bare number under 40 is most likely inHg or psi; the standard atmosphere at −500 m",
    },
  ],
);
checkLimits(
  "GAUGE_CORRECTED",
  gaugeCorrected,
  ["pressure", "altitude"],
  [2, 500],
  [
    {
      argument: "pressure",
      low: 0,
      high: 300.31175,
      why: "a gauge stands at 0 in the open; the highest pressure of gas here",
    },
    { argument: "altitude", low: -500, high: 11000, why: "the troposphere of ISO 2533 down to the lowest land" },
  ],
);
checkLimits(
  "AIR_DENSITY_RATIO",
  airDensityRatio,
  ["altitude", "temperature"],
  [500, 20],
  [
    { argument: "altitude", low: -500, high: 11000, why: "the troposphere of ISO 2533 down to the lowest land" },
    { argument: "temperature", low: -90, high: 60, why: "beyond the extremes on record, −89.2 and 56.7 °C" },
  ],
);
checkLimits(
  "DERATED_RATE",
  deratedRate,
  ["rated_rate", "altitude", "temperature", "loss_per_degree", "rated_temperature"],
  [2, 500, 30, 0.01, 20],
  [
    {
      argument: "rated_rate",
      low: 0,
      high: "open",
      why: "a plant that makes nothing has no rate to derate",
      endsOut: "low",
    },
    { argument: "altitude", low: -500, high: 11000, why: "the troposphere of ISO 2533 down to the lowest land" },
    { argument: "temperature", low: -90, high: 60, why: "beyond the extremes on record, −89.2 and 56.7 °C" },
    { argument: "loss_per_degree", low: 0, high: 1, why: "heat earns nothing, and a degree can't cost more than all" },
    { argument: "rated_temperature", low: -90, high: 60, why: "beyond the extremes on record, −89.2 and 56.7 °C" },
  ],
);
checkLimits(
  "START_DELAY",
  startDelay,
  ["temperature", "warm_start_hours", "cold_extra_hours", "cold_below"],
  [20, 3, 1, 10],
  [
    { argument: "temperature", low: -90, high: 60, why: "beyond the extremes on record, −89.2 and 56.7 °C" },
    { argument: "warm_start_hours", low: 0, high: "open", why: "a time is never negative" },
    { argument: "cold_extra_hours", low: 0, high: "open", why: "a time is never negative" },
    { argument: "cold_below", low: -90, high: 60, why: "beyond the extremes on record, −89.2 and 56.7 °C" },
  ],
);
checkLimits(
  "TILT_ANGLE",
  tiltAngle,
  ["rise", "run"],
  [1, 5],
  [
    { argument: "rise", low: 0, high: "open", why: "measured from the lower end" },
    { argument: "run", low: 0, high: "open", why: "a wall has no tilt", endsOut: "low" },
  ],
);
checkLimits(
  "SITE_CHECK",
  siteCheck,
  ["clearance", "tilt", "surface", "ventilated"],
  [2, 1, "stone", true],
  [
    { argument: "clearance", low: 0, high: "open", why: "a distance is never negative" },
    { argument: "tilt", low: 0, high: 90, why: "from level to upright" },
  ],
);
checkLimits(
  "SITE_AREA",
  siteArea,
  ["length", "width", "clearance", "units"],
  [2, 1, 2, 1],
  [
    { argument: "length", low: 0, high: "open", why: "a plant has a length", endsOut: "low" },
    { argument: "width", low: 0, high: "open", why: "a plant has a width", endsOut: "low" },
    { argument: "clearance", low: 0, high: "open", why: "a distance is never negative" },
  ],
);
