/** Properties of pure oxygen: one door to the equation of state, its saturation line and the gas. */
export { pressureFromDensity } from "./oxygenEquation";
export {
  absoluteFromGauge,
  flashFraction,
  gaugeFromAbsolute,
  type Saturation,
  saturationAtPressure,
  saturationAtTemperature,
  saturationPressureRange,
  saturationTemperatureRange,
} from "./oxygenSaturation";
export {
  compressibility,
  expansionRatio,
  gasDensity,
  gasEnthalpy,
  idealLiquefactionWork,
  referenceGasDensity,
  type Vapour,
  vapourAtOneAtmosphere,
} from "./oxygenGas";
export { gasReferenceCelsius, standardAtmosphere, zeroCelsius } from "./referenceConditions";
