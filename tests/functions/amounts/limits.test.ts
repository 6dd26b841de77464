import { checkLimits } from "../checkLimits";
import { liquidDensity } from "../../../src/functions/amounts/liquidDensity";
import { boilingPoint } from "../../../src/functions/amounts/boilingPoint";
import { latentHeat } from "../../../src/functions/amounts/latentHeat";
import { gasDensity } from "../../../src/functions/amounts/gasDensity";
import { compressibility } from "../../../src/functions/amounts/compressibility";
import { expansionRatio } from "../../../src/functions/amounts/expansionRatio";
import { gasFromLiquid } from "../../../src/functions/amounts/gasFromLiquid";
import { liquidFromGas } from "../../../src/functions/amounts/liquidFromGas";
import { liquidMass } from "../../../src/functions/amounts/liquidMass";
import { liquidFromMass } from "../../../src/functions/amounts/liquidFromMass";
import { convertAmount } from "../../../src/functions/amounts/convertAmount";
import { gasRestated } from "../../../src/functions/amounts/gasRestated";
import { blendedPurity } from "../../../src/functions/amounts/blendedPurity";
import { pureOxygen } from "../../../src/functions/amounts/pureOxygen";
import { purityClass } from "../../../src/functions/amounts/purityClass";

checkLimits(
  "LIQUID_DENSITY",
  liquidDensity,
  ["pressure"],
  [0],
  [
    {
      argument: "pressure",
      low: -0.51325,
      high: 23.98675,
      why: "saturation from 0.5 to 25 bar absolute, as agreed; less 1.01325",
    },
  ],
);
checkLimits(
  "BOILING_POINT",
  boilingPoint,
  ["pressure"],
  [0],
  [
    {
      argument: "pressure",
      low: -0.51325,
      high: 23.98675,
      why: "saturation from 0.5 to 25 bar absolute, as agreed; less 1.01325",
    },
  ],
);
checkLimits(
  "LATENT_HEAT",
  latentHeat,
  ["pressure"],
  [0],
  [
    {
      argument: "pressure",
      low: -0.51325,
      high: 23.98675,
      why: "saturation from 0.5 to 25 bar absolute, as agreed; less 1.01325",
    },
  ],
);
checkLimits(
  "GAS_DENSITY",
  gasDensity,
  ["pressure", "temperature"],
  [0, 20],
  [
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
  "COMPRESSIBILITY",
  compressibility,
  ["pressure", "temperature"],
  [0, 20],
  [
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
  "EXPANSION_RATIO",
  expansionRatio,
  ["pressure", "gas_temperature", "gas_pressure"],
  [0, 20, 0],
  [
    {
      argument: "pressure",
      low: -0.51325,
      high: 23.98675,
      why: "saturation from 0.5 to 25 bar absolute, as agreed; less 1.01325",
    },
    {
      argument: "gas_temperature",
      low: -40,
      high: 60,
      why: "climates on land, and where the equation of state is checked",
    },
    {
      argument: "gas_pressure",
      low: -0.51325,
      high: 300.31175,
      why: "gas from 0.5 to 301.325 bar absolute; less 1.01325",
    },
  ],
);
checkLimits(
  "GAS_FROM_LIQUID",
  gasFromLiquid,
  ["liquid", "pressure", "gas_temperature", "gas_pressure"],
  [30, 0, 20, 0],
  [
    { argument: "liquid", low: 0, high: "open", why: "an amount is never negative" },
    {
      argument: "pressure",
      low: -0.51325,
      high: 15,
      why: "0.5 bar absolute; a bare 15 or more of a liquid vessel is most likely psi",
      endsOut: "high",
    },
    {
      argument: "gas_temperature",
      low: -40,
      high: 60,
      why: "climates on land, and where the equation of state is checked",
    },
    {
      argument: "gas_pressure",
      low: -0.51325,
      high: 300.31175,
      why: "gas from 0.5 to 301.325 bar absolute; less 1.01325",
    },
  ],
);
checkLimits(
  "LIQUID_FROM_GAS",
  liquidFromGas,
  ["gas", "pressure", "gas_temperature", "gas_pressure"],
  [5000, 0, 20, 0],
  [
    { argument: "gas", low: 0, high: "open", why: "an amount is never negative" },
    {
      argument: "pressure",
      low: -0.51325,
      high: 15,
      why: "0.5 bar absolute; a bare 15 or more of a liquid vessel is most likely psi",
      endsOut: "high",
    },
    {
      argument: "gas_temperature",
      low: -40,
      high: 60,
      why: "climates on land, and where the equation of state is checked",
    },
    {
      argument: "gas_pressure",
      low: -0.51325,
      high: 300.31175,
      why: "gas from 0.5 to 301.325 bar absolute; less 1.01325",
    },
  ],
);
checkLimits(
  "LIQUID_MASS",
  liquidMass,
  ["liquid", "pressure"],
  [30, 0],
  [
    { argument: "liquid", low: 0, high: "open", why: "an amount is never negative" },
    {
      argument: "pressure",
      low: -0.51325,
      high: 15,
      why: "0.5 bar absolute; a bare 15 or more of a liquid vessel is most likely psi",
      endsOut: "high",
    },
  ],
);
checkLimits(
  "LIQUID_FROM_MASS",
  liquidFromMass,
  ["mass", "pressure"],
  [30, 0],
  [
    { argument: "mass", low: 0, high: "open", why: "an amount is never negative" },
    {
      argument: "pressure",
      low: -0.51325,
      high: 15,
      why: "0.5 bar absolute; a bare 15 or more of a liquid vessel is most likely psi",
      endsOut: "high",
    },
  ],
);
checkLimits(
  "CONVERT_AMOUNT",
  convertAmount,
  ["amount", "from", "to", "gas_temperature"],
  [30, "kg", "gas L", 20],
  [
    { argument: "amount", low: 0, high: "open", why: "an amount is never negative" },
    {
      argument: "gas_temperature",
      low: -40,
      high: 60,
      why: "climates on land, and where the equation of state is checked",
    },
  ],
);
checkLimits(
  "GAS_RESTATED",
  gasRestated,
  ["gas", "from_temperature", "to_temperature"],
  [500, 0, 20],
  [
    { argument: "gas", low: 0, high: "open", why: "an amount is never negative" },
    {
      argument: "from_temperature",
      low: -40,
      high: 60,
      why: "climates on land, and where the equation of state is checked",
    },
    {
      argument: "to_temperature",
      low: -40,
      high: 60,
      why: "climates on land, and where the equation of state is checked",
    },
  ],
);
checkLimits(
  "BLENDED_PURITY",
  blendedPurity,
  ["flow_1", "purity_1", "flow_2", "purity_2"],
  [30, 0.93, 10, 0.99],
  [
    { argument: "flow_1", low: 0, high: "open", why: "an amount is never negative" },
    { argument: "purity_1", low: 0, high: 1, why: "a share of a whole" },
    { argument: "flow_2", low: 0, high: "open", why: "an amount is never negative" },
    { argument: "purity_2", low: 0, high: 1, why: "a share of a whole" },
  ],
);
checkLimits(
  "PURE_OXYGEN",
  pureOxygen,
  ["gas", "source_purity"],
  [500, 0.93],
  [
    { argument: "gas", low: 0, high: "open", why: "an amount is never negative" },
    { argument: "source_purity", low: 0, high: 1, why: "a share of a whole" },
  ],
);
checkLimits(
  "PURITY_CLASS",
  purityClass,
  ["purity"],
  [0.93],
  [{ argument: "purity", low: 0, high: 1, why: "a share of a whole" }],
);
