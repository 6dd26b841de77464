import { zeroCelsius } from "../models/referenceConditions";
import { cylinderPressureRange, cylinderTemperatureRange } from "../models/cylinder";
import { formatNumber } from "./argument";
import { gaugeBar, Quantity } from "./quantity";
import { measures } from "./units";

// Ends as a gauge shows them: 0.5, 1, 25 and 301.4 bar absolute less 1.01325 bar.
const leastVessel = -0.51325;
const mostVessel = 23.98675;
const leastGas = -0.01325;
const mostGas = 300.38675;

/** Pressure of a vessel with liquid and vapour [bar gauge], 0.5 to 25 bar absolute. */
export const vesselGauge = new Quantity(measures.gaugePressure, {
  min: leastVessel,
  max: mostVessel,
  words: `between ${leastVessel} and ${mostVessel} bar gauge (0.5 to 25 bar absolute)`,
});

/** Pressure of a vessel that opens its relief valve [bar gauge], 0 to 25 bar absolute. */
export const reliefGauge = new Quantity(measures.gaugePressure, {
  min: 0,
  max: mostVessel,
  words: `between 0 and ${mostVessel} bar gauge (up to 25 bar absolute)`,
});

/** Pressure of gaseous oxygen [bar gauge], 1 to 301.4 bar absolute. */
export const gasGauge = new Quantity(measures.gaugePressure, {
  min: leastGas,
  max: mostGas,
  words: `between ${leastGas} and ${mostGas} bar gauge (1 to 301.4 bar absolute)`,
});

/** Pressure of a cylinder [bar gauge], 0 to 300. */
export const cylinderGauge = gaugeBar.between(cylinderPressureRange.least, cylinderPressureRange.most);

/** Temperature of gaseous oxygen [°C], −40 to 60. */
export const gasCelsius = new Quantity(measures.temperature).between(
  cylinderTemperatureRange.least,
  cylinderTemperatureRange.most,
);

// Boiling points at 0.5 and 25 bar absolute, Schmidt & Wagner 1985, a hair wider so that either is taken back.
const coldest = -189.212911326;
const warmest = -135.60520049;
/** Temperature of boiling oxygen [°C] that belongs to a pressure from 0.5 to 25 bar absolute. */
export const boilingCelsius = new Quantity(measures.temperature, {
  min: coldest,
  max: warmest,
  words: `between ${formatNumber(coldest)} and ${formatNumber(warmest)} °C, where oxygen boils from 0.5 to 25 bar absolute`,
});

/** Temperature of metal that liquid cools [°C], up to 60. */
export const metalCelsius = new Quantity(measures.temperature).between(-zeroCelsius, 60);
