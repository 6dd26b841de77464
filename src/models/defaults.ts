import { gasReferenceCelsius } from "./referenceConditions";

/** What an argument stands for where it is left out of a formula. */
export interface Default<V extends number | boolean | string = number | boolean | string> {
  readonly value: V;
  readonly unit: string;
  /** Published source, or "common practice, no source", or "own planning default". */
  readonly source: string;
  /** Name in CONSTANTS where it is not the key: one argument name may have another default in one function. */
  readonly name?: string;
}

/** A number stays a number, whatever its value. */
type Wide<V> = V extends number ? number : V extends boolean ? boolean : V;

const row = <V extends number | boolean | string>(value: V, unit: string, source: string): Default<Wide<V>> => ({
  value: value as unknown as Wide<V>,
  unit,
  source,
});
const named = <V extends number | boolean | string>(name: string, value: V, unit: string, source: string) => ({
  ...row(value, unit, source),
  name,
});

export const practice = "common practice, no source";
export const own = "own planning default";
const neutral = "neutral: nothing is assumed";
const referenceGas = "the usual North American reference of gas volumes, 70 °F";
const warmStart = `${practice}: liquid appears 2 to 3 h after a warm start; the cautious end`;

/**
 * The defaults of all arguments, one place each: schemas, the words of arguments, CONSTANTS, the sources of functions and
 * the sentences of the workbooks read them here.
 */
export const defaults = {
  draw_ratio: row(1.25, "L drawn per L filled", `${practice}: about 25 L drawn for a 20 L fill`),
  empty_days: row(8, "days", `${practice}: an unpowered full plant vessel is empty in 8 to 10 days; the cautious end`),
  start_delay: row(3, "h", warmStart),
  warm_start_hours: row(3, "h", warmStart),
  cold_extra_hours: row(1, "h", practice),
  cold_below: row(10, "°C", own),
  source_purity: row(0.93, "fraction", "middle of oxygen 93 of the Ph. Eur. and USP (0.90 to 0.96)"),
  released_purity: named("source_purity (ROOM_OXYGEN)", 1, "fraction", `${own}: the cautious end`),
  loss_per_degree: row(0.01, "1/°C", `${own}: an estimate; fit your own with FIT_DERATING`),
  rated_temperature: row(gasReferenceCelsius, "°C", own),
  pressure: row(0, "bar", neutral),
  temperature: row(gasReferenceCelsius, "°C", referenceGas),
  gas_temperature: row(gasReferenceCelsius, "°C", referenceGas),
  gas_pressure: row(0, "bar", referenceGas),
  start_temperature: row(gasReferenceCelsius, "°C", own),
  settled_temperature: row(gasReferenceCelsius, "°C", referenceGas),
  to_pressure: row(0, "bar", "vessel open to the air while it is filled"),
  vapour_use: row(0, "fraction", `${own}: the cautious end, no cold of the vapour is used`),
  clearance: row(2, "m", `${own}, above the usual 1.8 m (6 ft)`),
  units: row(1, "", neutral),
  level: row(0, "L", "an empty vessel"),
  plants: row(1, "", neutral),
  spare: row(1, "", `${practice}: one more than needed`),
  availability: row(0.9, "fraction", own),
  daily_draw: row(0, "L/day", neutral),
  daily_made: row(0, "L/day", neutral),
  keep: row(0, "", neutral),
  mixed_share: row(0.2, "", `${own}: real vessels stratify and rise several times faster than the uniform balance`),
  mixing: row(
    3,
    "",
    "dilution factor K, 1 for perfect mixing and 3 to 10 for poor mixing: industrial ventilation practice; from memory",
  ),
  full_share: row(
    0.98,
    "fraction",
    `${own}: the 98 % that ADR, packing instruction P203, sets for oxygen at filling, taken at the relief pressure`,
  ),
  economiser: row(false, "", neutral),
  to_temperature: row(gasReferenceCelsius, "°C", referenceGas),
  in_use: row(0, "", neutral),
  keep_pressure: row(
    14,
    "bar",
    "safe residual of cylinder duration rules: 200 psi, 13.8 bar (emergency-medical teaching texts), rounded up",
  ),
  keep_psi: row(200, "psi", "safe residual of cylinder duration rules: 200 psi (emergency-medical teaching texts)"),
  keep_share: row(0.1, "fraction", own),
  change_minutes: row(5, "min", own),
  boosters: row(1, "", neutral),
  drive_gas: row(0, "L/min", "a ventilator that is driven by electricity"),
  safety: row(2, "", `${practice}: twice the gas of the planned journey`),
  use_share: row(1, "fraction", `${own}: everyone at once`),
  hours: row(24, "h", "round the clock"),
  census_level: named("level (OUTBREAK_CENSUS)", 0.95, "fraction", own),
  cylinder_content: row(7000, "L", `${practice}: a large cylinder of 47 to 50 L`),
  lead_sd: row(0, "days", neutral),
  days_sd: row(0, "days", neutral),
  lot: row(1, "", neutral),
  same_day: row(false, "", `${own}: what arrives or is made today is drawn from tomorrow`),
  most: row(20, "", own),
  need_spread: row(0.2, "fraction", own),
  repair_days: row(2, "days", own),
  late_days: row(0, "days", neutral),
  runs: row(1000, "", `${own}: a chance of 0.1 is then known to about 0.01`),
  seed: row(1, "", neutral),
  power_factor: row(0.8, "", "usual rating of generating sets, ISO 8528-1; from memory"),
  phases: row(1, "", neutral),
  continuous: row(true, "", "a load of 3 h or more: NEC (NFPA 70) article 100"),
  conductor_temperature: named(
    "temperature (CABLE_DROP)",
    75,
    "°C",
    "conductor temperature of NEC (NFPA 70) chapter 9, table 8",
  ),
  from_altitude: row(300, "m", own),
  from_temperature: row(25, "°C", "standard reference of ISO 3046-1; from memory"),
  most_load: row(0.8, "fraction", practice),
  voltage_dip: row(0, "fraction", neutral),
  reactance: row(
    0.25,
    "",
    `${own}: subtransient reactances of small generators run from about 0.1 to 0.25; the cautious end`,
  ),
  usable_share: row(0.8, "fraction", `${practice}: lithium batteries`),
  inverter_share: row(0.9, "fraction", practice),
  kept_share: row(0.7, "fraction", `${practice}: dust, heat, wiring, charging and battery take the rest`),
  generators: row(1, "", neutral),
  harsh: row(1, "", neutral),
  grace: row(0, "days", neutral),
  warn: row(7, "days", own),
  late: row(0, "days", neutral),
  altitude: row(0, "m", "sea level"),
  purity: row(0.93, "fraction", "middle of oxygen 93 of the Ph. Eur. and USP (0.90 to 0.96)"),
  stated_for: row("oxygen", "", neutral),
  lying: row(false, "", "an upright vessel"),
  hose_pressure: named(
    "pressure (HOSE_DROP)",
    4,
    "bar",
    "lower end of the nominal 4 to 5 bar of medical gas pipelines, ISO 7396-1; from memory",
  ),
  roughness_mm: row(0.0015, "mm", "drawn tubing and plastic: Moody 1944, Trans. ASME 66:671; from memory"),
  air_changes: row(0, "1/h", "a closed room: the cautious end"),
  limit: row(0.235, "fraction", "oxygen-enriched atmosphere: OSHA 29 CFR 1910.146 (23.5 %)"),
  crate_damaged: row(false, "", neutral),
  packing_share: row(0, "fraction", neutral),
  pallet_mass: row(1000, "kg", own),
  pallet_floor: row(1.2, "m²", "1.2 m × 1.0 m flat pallet, ISO 6780; from memory"),
  load_share: row(1, "fraction", neutral),
  crew: row(0, "", neutral),
} satisfies Record<string, Default>;

/** Rows of CONSTANTS: the name of the argument, or "argument (FUNCTION)" where one function differs. */
export const defaultRows = Object.keys(defaults).map((key) => {
  const { name = key, value, unit, source }: Default = defaults[key as keyof typeof defaults];
  return { name, value, unit, source };
});

/** A default as words give it: "3 h", "1.25", "TRUE". */
export const inWords = ({ value, unit }: Default): string =>
  typeof value === "boolean"
    ? value
      ? "TRUE"
      : "FALSE"
    : `${value}${/^(h|days|min|m|bar|psi|°C|%)$/.test(unit) ? ` ${unit}` : ""}`;
