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
import { gasReferenceCelsius, standardAtmosphere } from "./oxygen";
import { oxygenInAir } from "./roomOxygen";
import { leastClearance, mostTilt } from "./site";

/**
 * Every constant and every default of an argument, with its unit and source: what CONSTANTS lists. A test compares this
 * list with the schemas, so that a default can't change in one place only.
 */
export interface ConstantRow {
  /** A constant's own name, or the argument's name; "argument (FUNCTION)" where functions differ. */
  name: string;
  value: number | boolean | string;
  unit: string;
  source: string;
}

const practice = "common practice, no source";
const own = "own planning default";
const neutral = "neutral: nothing is assumed";
const factorTexts = "cylinder factors of respiratory-care and emergency-medical teaching texts";
const plannedFlowGuidance =
  "WHO, Oxygen sources and distribution for COVID-19 treatment centres, interim guidance, 4 April 2020 (read second hand)";
const exact = "NIST SP 811 (2008), appendix B.8";
const referenceGas = "gas volumes are stated at 70 °F (21.1 °C) and 101.325 kPa, the usual North American reference";

/** Least work that liquefies oxygen from gas at 300 K and 1 atm [kWh/L liquid]. */
export const idealLiquefactionWork = 0.2013592;

export const constantRows: readonly ConstantRow[] = [
  {
    name: "standard atmosphere",
    value: standardAtmosphere,
    unit: "bar",
    source: "ISO 2533:1975: 101.325 kPa; gauge = absolute − this, at every altitude",
  },
  {
    name: "oxygen in air",
    value: oxygenInAir,
    unit: "fraction",
    source: "rounded from 0.2095 (ISO 2533:1975, composition of clean dry air)",
  },
  { name: "gas reference temperature", value: gasReferenceCelsius, unit: "°C", source: referenceGas },
  { name: "gas reference pressure", value: 101.325, unit: "kPa", source: referenceGas },
  {
    name: "molar mass of oxygen",
    value: 31.9988,
    unit: "g/mol",
    source: "Schmidt & Wagner 1985, Fluid Phase Equilib. 19:175",
  },
  {
    name: "critical temperature of oxygen",
    value: 154.581,
    unit: "K",
    source: "Schmidt & Wagner 1985, Fluid Phase Equilib. 19:175",
  },
  {
    name: "critical pressure of oxygen",
    value: 5043,
    unit: "kPa",
    source: "Schmidt & Wagner 1985, Fluid Phase Equilib. 19:175",
  },
  { name: "US gallon", value: 3.785411784, unit: "L", source: exact },
  { name: "cubic foot", value: 28.316846592, unit: "L", source: exact },
  { name: "pound", value: 0.45359237, unit: "kg", source: exact },
  { name: "foot", value: 0.3048, unit: "m", source: exact },
  { name: "pound per square inch", value: 0.0689475729316836, unit: "bar", source: exact },
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

  {
    name: "draw_ratio",
    value: 1.25,
    unit: "L drawn per L filled",
    source: `${practice}: about 25 L drawn for a 20 L fill`,
  },
  {
    name: "empty_days",
    value: 8,
    unit: "days",
    source: `${practice}: an unpowered full plant vessel is empty in 8 to 10 days; the cautious end`,
  },
  {
    name: "start_delay",
    value: 3,
    unit: "h",
    source: `${practice}: liquid appears 2 to 3 h after a warm start; the cautious end`,
  },
  {
    name: "warm_start_hours",
    value: 3,
    unit: "h",
    source: `${practice}: liquid appears 2 to 3 h after a warm start; the cautious end`,
  },
  { name: "cold_extra_hours", value: 1, unit: "h", source: practice },
  { name: "cold_below", value: 10, unit: "°C", source: own },
  {
    name: "source_purity",
    value: 0.93,
    unit: "fraction",
    source: "middle of oxygen 93 of the Ph. Eur. and USP (0.90 to 0.96)",
  },
  { name: "source_purity (ROOM_OXYGEN)", value: 1, unit: "fraction", source: `${own}: the cautious end` },
  { name: "loss_per_degree", value: 0.01, unit: "1/°C", source: `${own}: an estimate; fit your own with FIT_DERATING` },
  { name: "rated_temperature", value: 21.1, unit: "°C", source: own },
  { name: "pressure", value: 0, unit: "bar", source: neutral },
  { name: "temperature", value: 21.1, unit: "°C", source: referenceGas },
  { name: "gas_temperature", value: 21.1, unit: "°C", source: referenceGas },
  { name: "gas_pressure", value: 0, unit: "bar", source: referenceGas },
  { name: "start_temperature", value: 21.1, unit: "°C", source: own },
  { name: "settled_temperature", value: 21.1, unit: "°C", source: referenceGas },
  { name: "to_pressure", value: 0, unit: "bar", source: "vessel open to the air while it is filled" },
  { name: "vapour_use", value: 0, unit: "fraction", source: `${own}: the cautious end, no cold of the vapour is used` },
  { name: "clearance", value: 2, unit: "m", source: `${own}, above the usual 1.8 m (6 ft)` },
  { name: "units", value: 1, unit: "", source: neutral },
  { name: "level", value: 0, unit: "L", source: "an empty vessel" },
  { name: "plants", value: 1, unit: "", source: neutral },
  { name: "spare", value: 1, unit: "", source: `${practice}: one more than needed` },
  { name: "availability", value: 0.9, unit: "fraction", source: own },
  { name: "daily_draw", value: 0, unit: "L/day", source: neutral },
  { name: "daily_made", value: 0, unit: "L/day", source: neutral },
  { name: "daily_loss", value: 0, unit: "", source: neutral },
  { name: "keep", value: 0, unit: "", source: neutral },
  {
    name: "mixing",
    value: 0.2,
    unit: "",
    source: `${own}: real vessels stratify and rise several times faster than the uniform balance`,
  },
  {
    name: "mixing (VENTILATION_NEEDED)",
    value: 3,
    unit: "",
    source:
      "dilution factor K, 1 for perfect mixing and 3 to 10 for poor mixing: industrial ventilation practice; from memory",
  },
  {
    name: "full_share",
    value: 0.98,
    unit: "fraction",
    source: "largest liquid share at relief pressure: 49 CFR 173.318 filling limits; from memory",
  },
  { name: "economiser", value: false, unit: "", source: neutral },
  {
    name: "keep_psi",
    value: 200,
    unit: "psi",
    source: "safe residual of cylinder duration rules: 200 psi (emergency-medical teaching texts)",
  },
  { name: "keep_share", value: 0.1, unit: "fraction", source: own },
  { name: "change_minutes", value: 5, unit: "min", source: own },
  { name: "boosters", value: 1, unit: "", source: neutral },
  { name: "drive_gas", value: 0, unit: "L/min", source: "a ventilator that is driven by electricity" },
  { name: "safety", value: 2, unit: "", source: `${practice}: twice the gas of the planned journey` },
  { name: "use_share", value: 1, unit: "fraction", source: `${own}: everyone at once` },
  { name: "hours", value: 24, unit: "h", source: "round the clock" },
  { name: "cylinder_content", value: 7000, unit: "L", source: `${practice}: a large cylinder of 47 to 50 L` },
  { name: "lead_sd", value: 0, unit: "days", source: neutral },
  { name: "days_sd", value: 0, unit: "days", source: neutral },
  { name: "lot", value: 1, unit: "", source: neutral },
  { name: "same_day", value: false, unit: "", source: `${own}: what is made today is drawn tomorrow` },
  { name: "most", value: 20, unit: "", source: own },
  { name: "power_factor", value: 0.8, unit: "", source: "usual rating of generating sets, ISO 8528-1; from memory" },
  { name: "phases", value: 1, unit: "", source: neutral },
  { name: "continuous", value: true, unit: "", source: "a load of 3 h or more: NEC (NFPA 70) article 100" },
  {
    name: "temperature (CABLE_DROP)",
    value: 75,
    unit: "°C",
    source: "conductor temperature of NEC (NFPA 70) chapter 9, table 8",
  },
  { name: "from_altitude", value: 300, unit: "m", source: own },
  { name: "from_temperature", value: 25, unit: "°C", source: "standard reference of ISO 3046-1; from memory" },
  { name: "most_load", value: 0.8, unit: "fraction", source: practice },
  { name: "voltage_dip", value: 0, unit: "fraction", source: neutral },
  { name: "generators", value: 1, unit: "", source: neutral },
  { name: "harsh", value: 1, unit: "", source: neutral },
  { name: "grace", value: 0, unit: "days", source: neutral },
  { name: "warn", value: 7, unit: "days", source: own },
  { name: "late", value: 0, unit: "days", source: neutral },
  { name: "air_changes", value: 0, unit: "1/h", source: "a closed room: the cautious end" },
  {
    name: "limit",
    value: 0.235,
    unit: "fraction",
    source: "oxygen-enriched atmosphere: OSHA 29 CFR 1910.146 (23.5 %)",
  },
  { name: "crate_damaged", value: false, unit: "", source: neutral },
  { name: "packing_share", value: 0, unit: "fraction", source: neutral },
  { name: "pallet_mass", value: 1000, unit: "kg", source: own },
  { name: "pallet_floor", value: 1.2, unit: "m²", source: "1.2 m × 1.0 m flat pallet, ISO 6780; from memory" },
  { name: "load_share", value: 1, unit: "fraction", source: neutral },
  { name: "crew", value: 0, unit: "", source: neutral },
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
