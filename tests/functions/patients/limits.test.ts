import { airParts } from "../../../src/functions/patients/airParts";
import { cannulaFio2 } from "../../../src/functions/patients/cannulaFio2";
import { fio2ToSet } from "../../../src/functions/patients/fio2ToSet";
import { journeyGas } from "../../../src/functions/patients/journeyGas";
import { mixedFio2 } from "../../../src/functions/patients/mixedFio2";
import { oxygenUptake } from "../../../src/functions/patients/oxygenUptake";
import { seaLevelFio2 } from "../../../src/functions/patients/seaLevelFio2";
import { sourceFlow } from "../../../src/functions/patients/sourceFlow";
import { totalFlow } from "../../../src/functions/patients/totalFlow";
import { ventilatorFlow } from "../../../src/functions/patients/ventilatorFlow";
import { checkLimits, type Limit } from "../checkLimits";

const breathed: Limit = { argument: "fio2", low: 0.21, high: 1, why: "from air to pure oxygen" };
const purity: Limit = {
  argument: "source_purity",
  low: 0.21,
  high: 1,
  why: "a source is richer than air",
  endsOut: "low",
};
const altitude: Limit = {
  argument: "altitude",
  low: -500,
  high: 11000,
  why: "the troposphere of ISO 2533 down to the lowest land",
};
const flow = (argument: string): Limit => ({ argument, low: 0, high: "open", why: "a flow has one direction" });

// fio2 stands at 0.21, so that any source reaches it.
checkLimits(
  "SOURCE_FLOW",
  sourceFlow,
  ["total_flow", "fio2", "source_purity"],
  [10, 0.21, 1],
  [flow("total_flow"), breathed, purity],
);
checkLimits(
  "MIXED_FIO2",
  mixedFio2,
  ["source_flow", "air_flow", "source_purity"],
  [10, 5, 1],
  [flow("source_flow"), flow("air_flow"), purity],
);
checkLimits(
  "AIR_PARTS",
  airParts,
  ["fio2", "source_purity"],
  [0.5, 1],
  [{ ...breathed, why: "above air, up to pure oxygen", endsOut: "low" }],
);
checkLimits(
  "TOTAL_FLOW",
  totalFlow,
  ["source_flow", "fio2", "source_purity"],
  [10, 0.5, 1],
  [flow("source_flow"), { ...breathed, why: "above air, up to pure oxygen", endsOut: "low" }],
);
checkLimits(
  "VENTILATOR_FLOW",
  ventilatorFlow,
  ["minute_volume", "fio2", "bias_flow", "drive_gas", "source_purity"],
  [8, 0.21, 2, 0, 1],
  [
    { argument: "minute_volume", low: 0, high: "open", why: "a patient who breathes", endsOut: "low" },
    breathed,
    flow("bias_flow"),
    flow("drive_gas"),
    purity,
  ],
);
checkLimits(
  "CANNULA_FIO2",
  cannulaFio2,
  ["flow"],
  [2],
  [{ argument: "flow", low: 1, high: 6, why: "the teaching rule's table ends there" }],
);
checkLimits(
  "JOURNEY_GAS",
  journeyGas,
  ["flow", "minutes", "safety"],
  [5, 60, 2],
  [flow("flow"), { argument: "safety", low: 1, high: "open", why: "less than the planned gas is no plan" }],
);
checkLimits("SEA_LEVEL_FIO2", seaLevelFio2, ["fio2", "altitude"], [0.5, 1000], [breathed, altitude]);
checkLimits(
  "FIO2_TO_SET",
  fio2ToSet,
  ["fio2", "altitude", "source_purity"],
  [0.21, -500, 1],
  [breathed, altitude, purity],
);
checkLimits(
  "OXYGEN_UPTAKE",
  oxygenUptake,
  ["body_mass"],
  [70],
  [{ argument: "body_mass", low: 0, high: "open", why: "a body has a mass", endsOut: "low" }],
);
