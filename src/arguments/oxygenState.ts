import { zeroCelsius } from "../models/referenceConditions";
import { cylinderPressureRange, cylinderTemperatureRange } from "../models/cylinder";
import { formatNumber } from "./argument";
import { measured } from "./quantity";
import { measures } from "./units";

// Ends as a gauge shows them: 0.5 and 25 bar absolute less 1.01325 bar.
const leastVessel = -0.51325;
const mostVessel = 23.98675;

/** Pressure of a vessel with liquid and vapour [bar gauge], 0.5 to 25 bar absolute. */
export const vesselGauge = measured(measures.gaugePressure).within(
  leastVessel,
  mostVessel,
  `between ${leastVessel} and ${mostVessel} bar gauge (0.5 to 25 bar absolute)`,
);

/** A bare number from here on is most likely psi: liquid vessels of the trade stand at a few bar. */
const looksLikePsi = {
  from: leastVessel,
  to: 15 * (1 - Number.EPSILON),
  words: (value: number): string | undefined =>
    value < 15 || value > mostVessel
      ? undefined
      : `looks like psi: write "${formatNumber(value)} psi", or "${formatNumber(value)} bar" if it is bar`,
};

/** The same where liquid is held, drawn or weighed; a bare number of 15 or more is refused. */
export const liquidGauge = vesselGauge.doubted(looksLikePsi);

/** Pressure at which a relief valve opens [bar gauge], above 0 and up to 25 bar absolute. */
export const reliefGauge = measured(measures.gaugePressure)
  .within(Number.MIN_VALUE, mostVessel, `above 0 and at most ${mostVessel} bar gauge (25 bar absolute)`)
  .doubted(looksLikePsi);

const { least: leastGas, most: mostGas } = cylinderPressureRange;

/** Pressure of gaseous oxygen [bar gauge], in a cylinder too; 0.5 to 301.325 bar absolute. */
export const gasGauge = measured(measures.gaugePressure).within(
  leastGas,
  mostGas,
  `between ${leastGas} and ${mostGas} bar gauge (0.5 to 301.325 bar absolute)`,
);

/** Words on the range of `gasGauge` and `gasCelsius`. */
export const gasRange = "0.5 to 301.325 bar absolute and −40 to 60 °C";

/** Words on what the properties of gas are those of. */
export const pureOxygenGas =
  "Properties are those of pure oxygen; 93 % product holds argon and nitrogen and differs by about 1 % as gas.";

/** Temperature of gaseous oxygen [°C], −40 to 60. */
export const gasCelsius = measured(measures.temperature).between(
  cylinderTemperatureRange.least,
  cylinderTemperatureRange.most,
);

// Boiling points at 0.5 and 25 bar absolute, Schmidt & Wagner 1985, a hair wider so that either is taken back.
const coldest = -189.212911326;
const warmest = -135.60520049;
/** Temperature of boiling oxygen [°C] that belongs to a pressure from 0.5 to 25 bar absolute. */
export const boilingCelsius = measured(measures.temperature).within(
  coldest,
  warmest,
  `between ${formatNumber(coldest)} and ${formatNumber(warmest)} °C, where oxygen boils from 0.5 to 25 bar absolute`,
);

/** Temperature of metal that liquid cools [°C], up to 60. */
export const metalCelsius = measured(measures.temperature).between(-zeroCelsius, 60);
