import {
  coldestAir,
  coldestOxygen,
  fullestCylinder,
  largestFlow,
  largestLevel,
  stuckReadings,
  warmestAir,
  warmestColdOxygen,
} from "./plausible";
import { plannedFlows, waterVapourPressure } from "./bedside";
import { sizeFactors } from "./cylinderUse";
import { defaultRows, own, practice } from "./defaults";
import { criticalPressure, criticalTemperature, molarMass } from "./oxygenEquation";
import { gasReferenceCelsius, standardAtmosphere, standardAtmosphereKpa } from "./referenceConditions";
import { barPerPsi, cubicFoot, foot, gallon, pound } from "./unitFactors";
import { oxygenInAir } from "./roomOxygen";
import { leastClearance, mostTilt } from "./site";

/** What CONSTANTS lists: every constant and every default of an argument, with its unit and source. */
export interface ConstantRow {
  /** A constant's own name, or the argument's name; "argument (FUNCTION)" where functions differ. */
  name: string;
  value: number | boolean | string;
  unit: string;
  source: string;
}

const factorTexts = "cylinder factors of respiratory-care and emergency-medical teaching texts";
const childFlowGuidance = "WHO, Oxygen therapy for children, 2016, top of the starting range (read second hand)";
const plannedFlowGuidance =
  "WHO, Oxygen sources and distribution for COVID-19 treatment centres, interim guidance, 4 April 2020 (read second hand)";
const exact = "NIST SP 811 (2008), appendix B.8";
const referenceGas = "gas volumes are stated at 70 °F and the standard atmosphere, the usual North American reference";

/** Least work that liquefies oxygen from gas at 300 K and 1 atm [kWh/L liquid]. */
export const idealLiquefactionWork = 0.2013592;

export const constantRows: readonly ConstantRow[] = [
  {
    name: "standard atmosphere",
    value: standardAtmosphere,
    unit: "bar",
    source: "ISO 2533:1975; gauge = absolute − this, at every altitude",
  },
  {
    name: "oxygen in air",
    value: oxygenInAir,
    unit: "fraction",
    source: "rounded from 0.2095 (ISO 2533:1975, composition of clean dry air)",
  },
  { name: "gas reference temperature", value: gasReferenceCelsius, unit: "°C", source: referenceGas },
  { name: "gas reference pressure", value: standardAtmosphereKpa, unit: "kPa", source: referenceGas },
  {
    name: "molar mass of oxygen",
    value: molarMass * 1000,
    unit: "g/mol",
    source: "Schmidt & Wagner 1985, Fluid Phase Equilib. 19:175",
  },
  {
    name: "critical temperature of oxygen",
    value: criticalTemperature,
    unit: "K",
    source: "Schmidt & Wagner 1985, Fluid Phase Equilib. 19:175",
  },
  {
    name: "critical pressure of oxygen",
    value: criticalPressure * 100,
    unit: "kPa",
    source: "Schmidt & Wagner 1985, Fluid Phase Equilib. 19:175",
  },
  { name: "US gallon", value: gallon, unit: "L", source: exact },
  { name: "cubic foot", value: cubicFoot, unit: "L", source: exact },
  { name: "pound", value: pound, unit: "kg", source: exact },
  { name: "foot", value: foot, unit: "m", source: exact },
  { name: "pound per square inch", value: barPerPsi, unit: "bar", source: exact },
  {
    name: "water vapour pressure at 37 °C",
    value: waterVapourPressure,
    unit: "kPa",
    source: "47 mmHg, usual in respiratory physiology texts; from memory",
  },
  {
    name: "ideal liquefaction work",
    value: idealLiquefactionWork,
    unit: "kWh/L",
    source: "T₀Δs − Δh from gas at 300 K, 1 atm to saturated liquid, Schmidt & Wagner 1985",
  },
  { name: "cylinder factor D", value: sizeFactors.D, unit: "L/psi", source: factorTexts },
  { name: "cylinder factor E", value: sizeFactors.E, unit: "L/psi", source: factorTexts },
  { name: "cylinder factor M", value: sizeFactors.M, unit: "L/psi", source: factorTexts },
  { name: "cylinder factor H/K", value: sizeFactors.H, unit: "L/psi", source: factorTexts },
  { name: "least clearance of a site", value: leastClearance, unit: "m", source: `${practice}: 6 ft` },
  { name: "most tilt of a site", value: mostTilt, unit: "°", source: practice },
  { name: "planned flow, severe", value: plannedFlows.severe, unit: "L/min", source: plannedFlowGuidance },
  { name: "planned flow, critical", value: plannedFlows.critical, unit: "L/min", source: plannedFlowGuidance },
  { name: "planned flow, newborn", value: plannedFlows.newborn, unit: "L/min", source: childFlowGuidance },
  { name: "planned flow, infant", value: plannedFlows.infant, unit: "L/min", source: childFlowGuidance },
  { name: "planned flow, child", value: plannedFlows.child, unit: "L/min", source: childFlowGuidance },
  { name: "planned flow, bubble CPAP", value: plannedFlows["bubble CPAP"], unit: "L/min", source: childFlowGuidance },

  ...defaultRows,

  {
    name: "warmest air (VALUE_CHECK)",
    value: warmestAir,
    unit: "°C",
    source: "World Meteorological Organization: Furnace Creek, 1913",
  },
  {
    name: "coldest air (VALUE_CHECK)",
    value: coldestAir,
    unit: "°C",
    source: "World Meteorological Organization: Vostok, 1983",
  },
  {
    name: "coldest oxygen (VALUE_CHECK)",
    value: coldestOxygen,
    unit: "°C",
    source: "freezing point, 54.36 K: Schmidt & Wagner 1985",
  },
  {
    name: "warmest cold oxygen (VALUE_CHECK)",
    value: warmestColdOxygen,
    unit: "°C",
    source: "critical point, 154.581 K: Schmidt & Wagner 1985",
  },
  { name: "fullest cylinder (VALUE_CHECK)", value: fullestCylinder, unit: "bar", source: own },
  { name: "largest flow (VALUE_CHECK)", value: largestFlow, unit: "L/min", source: own },
  { name: "largest level (VALUE_CHECK)", value: largestLevel, unit: "L", source: own },
  { name: "equal readings of a stuck gauge (LOG_FAULTS)", value: stuckReadings, unit: "", source: own },
];
