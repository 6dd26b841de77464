import { argumentCells, firstExample } from "../../src/catalogue/constantFormula";
import { readCatalogue } from "../../src/catalogue/readCatalogue";
import { CellError } from "../../src/cells/cellValues";

/**
 * The lowest and the highest number that each argument takes, written by hand: "[" and "]" take the end in, "(" and ")"
 * leave it out, ∞ is none. Groups that are not here have a table of their own, with a reason a line.
 *
 * Why, where the sort of quantity says it: amounts, flows, times and counts are not negative; what divides or holds
 * something is above 0; a day has 24 hours; a draw ratio is 1 or more, since nothing is gained in a transfer; shares of
 * something real are above 0 and at most 1; pressures over boiling liquid are 0.5 to 25 bar absolute, the range of the
 * saturation line here; oxygen fractions start at the 0.21 of air; altitudes are those of ISO 2533's troposphere; the
 * dilution factor K is 1 for perfect mixing and more for poorer.
 */
/** A bare number of 15 or more is most likely psi; as text with its unit it passes up to 23.98675 bar. */
const vessel = "[-0.51325, 15)";
const altitude = "[-500, 11000]";
const notNegative = "[0, ∞)";
const above0 = "(0, ∞)";
const ratio = "[1, ∞)";
const share = "(0, 1]";
const room = { room: above0, altitude };

const limits: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  DAY_OUTPUT: {
    // Together at most 24 h, which their own test holds.
    make_hours: notNegative,
    gas_hours: notNegative,
    rate: above0,
    gas_flow: notNegative,
    start_delay: notNegative,
    draw_ratio: ratio,
  },
  DELIVERED_FLOW: { rate: above0, plants: notNegative, draw_ratio: ratio },
  FILLS_PER_DAY: { fill_each: above0, rate: above0, minutes_each: notNegative, plants: notNegative, draw_ratio: ratio },
  FULL_AT: { capacity: above0, rate: above0, level: notNegative, start_delay: notNegative },
  HOURS_TO_FILL: { capacity: above0, rate: above0, level: notNegative, start_delay: notNegative },
  LEVEL_AFTER: { hours: notNegative, capacity: above0, rate: above0, level: notNegative, start_delay: notNegative },
  LIQUID_MADE: { hours: notNegative, rate: above0, start_delay: notNegative, plants: notNegative },
  PATIENTS_CARRIED: { supply_flow: notNegative, flow_each: above0 },
  PLANT_LOADING: { daily_gas: notNegative, rate: above0, plants: "[1, ∞)", draw_ratio: ratio },
  PLANTS_NEEDED: { daily_gas: notNegative, rate: above0, spare: notNegative, availability: share, draw_ratio: ratio },
  READY_AT: { need: notNegative, rate: above0, start_delay: notNegative, plants: "[1, ∞)" },
  STANDBY_SHARE: { run_minutes: notNegative, cycle_hours: above0 },
  SWITCH_ON_BY: { need: notNegative, rate: above0, start_delay: notNegative, plants: "[1, ∞)" },
  DAILY_LOSS: { capacity: above0, empty_days: above0 },
  DAYS_UNTIL_EMPTY: {
    level: notNegative,
    capacity: above0,
    daily_draw: notNegative,
    empty_days: above0,
    daily_made: notNegative,
  },
  EMPTY_ON: {
    level: notNegative,
    capacity: above0,
    daily_draw: notNegative,
    empty_days: above0,
    daily_made: notNegative,
  },
  HEAT_LEAK: { daily_loss: notNegative, pressure: vessel },
  HOURS_TO_PRESSURE: {
    brim_volume: above0,
    level: notNegative,
    from_pressure: vessel,
    to_pressure: vessel,
    heat_leak: above0,
    mixed_share: share,
  },
  LEVEL_FROM_HEAD: { pressure_difference: notNegative, inner_height: above0, brim_volume: above0, pressure: vessel },
  LEVEL_FROM_WEIGHT: { gross_mass: notNegative, empty_mass: notNegative, pressure: vessel },
  LEVEL_LEFT: {
    days: notNegative,
    level: notNegative,
    capacity: above0,
    daily_draw: notNegative,
    empty_days: above0,
    daily_made: notNegative,
  },
  LOSS_FROM_HEAT: { heat_leak: notNegative, pressure: vessel },
  // Above a fifth a bare number is most likely a percent.
  LOSS_FROM_PLATE: { capacity: above0, share_a_day: "(0, 0.2]" },
  MOST_COLD_FILL: { brim_volume: above0, relief_pressure: "(0, 15)", full_share: share },
  OUTAGE_COST: {
    outage_hours: notNegative,
    restart_hours: notNegative,
    rate: above0,
    capacity: above0,
    plants: notNegative,
    empty_days: above0,
  },
  COOL_DOWN_LOSS: { metal_mass: notNegative, start_temperature: "[-273.15, 60]", vapour_use: "[0, 1]" },
  DRAIN_HOURS: { level: notNegative, drain_rate: above0 },
  DRAW_RATIO: { gross_draw: notNegative, net_fill: above0 },
  ESTIMATED_DRAW: {
    net_fill: notNegative,
    from_pressure: vessel,
    metal_mass: notNegative,
    start_temperature: "[-273.15, 60]",
    to_pressure: vessel,
    vapour_use: "[0, 1]",
  },
  FILL_ORDER: { stock: notNegative, keep: notNegative, draw_ratio: ratio },
  FILLS_AVAILABLE: { level: notNegative, fill_each: above0, keep: notNegative, draw_ratio: ratio },
  FLASH_LOSS: { from_pressure: vessel, to_pressure: vessel },
  GROSS_DRAW: { net_fill: notNegative, draw_ratio: ratio },
  HOSE_DROP: {
    // 0.5 to 301.325 bar absolute.
    pressure: "[-0.51325, 300.31175]",
    flow: notNegative,
    length: notNegative,
    bore_mm: above0,
    roughness_mm: notNegative,
  },
  NET_FILL: { gross_draw: notNegative, draw_ratio: ratio },
  TRANSFER_LOSS: { net_fill: notNegative, draw_ratio: ratio },
  VAPORISER_DUTY: {
    // The range of the gas here.
    gas_temperature: "[-40, 60]",
    flow: notNegative,
    pressure: vessel,
  },
  VESSEL_HOURS: {
    level: notNegative,
    flow: notNegative,
    capacity: above0,
    empty_days: above0,
    keep: notNegative,
    pressure: vessel,
  },
  DAYS_COVERED: { stock: notNegative, daily_loss: notNegative },
  DELIVERIES_NEEDED: {
    opening: notNegative,
    batch: above0,
    keep: notNegative,
    draw_ratio: ratio,
    empty_days: above0,
    restart_hours: notNegative,
  },
  DELIVERY_DATES: { opening: notNegative, batch: above0, keep: notNegative },
  FIRST_SHORT_DATE: { opening: notNegative, draw_ratio: ratio, empty_days: above0, restart_hours: notNegative },
  PLAN_CHANCE: {
    opening: notNegative,
    draw_ratio: ratio,
    empty_days: above0,
    restart_hours: notNegative,
    need_spread: notNegative,
    availability: share,
    repair_days: "[1, ∞)",
    late_days: notNegative,
    runs: "[1, 100000]",
    // What 32 bits hold.
    seed: "[0, 4294967295]",
  },
  PLANTS_FOR_PLAN: {
    opening: notNegative,
    draw_ratio: ratio,
    empty_days: above0,
    restart_hours: notNegative,
    most: "[0, 1000]",
  },
  STOCK_PLAN: { opening: notNegative, draw_ratio: ratio, empty_days: above0, restart_hours: notNegative },
  BATTERY_HOURS: { energy_kwh: notNegative, load: above0, usable_share: share, inverter_share: share },
  CABLE_DROP: {
    current: notNegative,
    length: notNegative,
    area_mm2: above0,
    voltage: above0,
    temperature: "[-40, 150]",
    phases: "[1, 3]",
  },
  CIRCUIT_NEEDED: { current: notNegative },
  DAILY_ENERGY: { make_power: notNegative, make_hours: "[0, 24]", standby_power: notNegative, standby_share: "[0, 1]" },
  ENERGY_PER_LITRE: { power: above0, rate: above0 },
  FUEL_DAYS: { fuel: notNegative, fuel_per_day: above0, keep: notNegative },
  FUEL_PER_DAY: { rate: notNegative, hours: "[0, 24]", generators: notNegative },
  FUEL_RATE: { load: notNegative, unit_power: above0 },
  GENERATOR_DERATED: {
    rated_power: above0,
    altitude,
    temperature: "[-60, 80]",
    loss_per_300m: "[0, 1]",
    loss_per_5c: "[0, 1]",
    from_altitude: altitude,
    from_temperature: "[-60, 80]",
  },
  GENERATORS_NEEDED: { load: notNegative, unit_power: above0, most_load: share, spare: notNegative },
  LINE_CURRENT: { power: notNegative, voltage: above0, power_factor: share, phases: "[1, 3]" },
  MOTOR_DIP: { start_kva: notNegative, generator_kva: above0, reactance: share },
  POWER_LOAD: { use_share: "[0, 1]" },
  SOLAR_POWER: { daily_energy: notNegative, sun_hours: "(0, 24]", kept_share: share },
  START_KVA: { motor_kw: notNegative, code_letter_kva_per_hp: above0, voltage_dip: "[0, 1)" },
  HOURS_PER_DAY: { first_hours: notNegative, last_hours: notNegative },
  NEXT_SERVICE_BY_HOURS: {
    last_hours: notNegative,
    interval_hours: above0,
    hours_now: notNegative,
    hours_per_day: "(0, 24]",
    harsh: share,
  },
  NEXT_SERVICE_DATE: { months: "[1, ∞)", harsh: share },
  OVERDUE_DAYS: { grace: notNegative },
  PARTS_NEEDED: { harsh: share },
  SERVICE_DUE: {
    months: "[1, ∞)",
    last_hours: notNegative,
    interval_hours: above0,
    hours_now: notNegative,
    hours_per_day: "(0, 24]",
    harsh: share,
  },
  SERVICE_LIST: { harsh: share },
  SERVICE_STATUS: { warn: notNegative, grace: notNegative },
  VISIT_FOR: { late: notNegative },
  AIRING_MINUTES: {
    // Below the 0.21 of air the room is short of oxygen, another danger.
    room_oxygen: "[0.21, 1]",
    air_changes: notNegative,
    limit: "(0.21, 1)",
    mixing: "[1, ∞)",
  },
  MINUTES_TO_LIMIT: { ...room, release: notNegative, air_changes: notNegative, limit: "(0.21, 1)", mixing: "[1, ∞)" },
  PLANT_ROOM_OXYGEN: {
    ...room,
    product_flow: notNegative,
    minutes: notNegative,
    air_changes: notNegative,
    purity: "(0.21, 1]",
  },
  RELEASE_LIMIT: { ...room, air_changes: notNegative, limit: "(0.21, 1)", mixing: "[1, ∞)" },
  ROOM_OXYGEN: {
    ...room,
    release: notNegative,
    air_changes: notNegative,
    minutes: notNegative,
    source_purity: "(0.21, 1]",
  },
  SPILL_OXYGEN: { ...room, liquid: notNegative },
  VENTILATION_NEEDED: { release: notNegative, limit: "(0.21, 1)", mixing: "[1, ∞)", altitude },
  DRAIN_BY: { level: notNegative, drain_rate: above0, warm_days: notNegative },
  DRAIN_CHECK: { capacity: above0, container: above0 },
  PALLETS_NEEDED: { pallet_mass: above0, pallet_floor: above0 },
  SHIPPED_MASS: { packing_share: "[0, 2]" },
  TIE_DOWNS_NEEDED: { mass: above0, length: above0, working_load: above0 },
  TRIPS_NEEDED: { mass: notNegative, capacity: above0, load_share: share },
  BOOK_BALANCE: {
    opening: notNegative,
    made: notNegative,
    received: notNegative,
    drawn: notNegative,
    lost: notNegative,
    closing: notNegative,
  },
  LOG_FAULTS: { capacity: above0, most_rise: notNegative, most_fall: notNegative },
};

const found = readCatalogue();
const callById = (id: string) => found.find(({ record }) => record.id === id)?.call;

const cases = Object.entries(limits).flatMap(([id, argumentsOf]) =>
  Object.entries(argumentsOf).map(([argument, range]) => [id, argument, range] as const),
);

/** Words that refuse the argument for its size, not for how it goes with others. */
const refusal = (id: string, argument: string, value: number): string | undefined => {
  const { record, call } = found.find((each) => each.record.id === id)!;
  const at = record.arguments.findIndex(({ name }) => name === argument);
  const cells = argumentCells(firstExample(record), callById);
  const given = Array.from({ length: Math.max(cells.length, at + 1) }, (_, index) =>
    index === at ? [[value]] : cells[index],
  );
  const got = call(...given)[0]![0];
  return got instanceof CellError &&
    new RegExp(`^${argument} (?:must be|\\S+ (?:would|looks like)|of \\S+ is below the)`).test(got.message)
    ? got.message
    : undefined;
};

test.each(cases)("%s: %s takes %s", (id, argument, range) => {
  const [, open, low, high, close] = /^([[(])(\S+), (\S+)([\])])$/.exec(range)!;
  const { args } = found.find(({ record }) => record.id === id)!;
  const { wholeOnly } = args.readers[args.names.indexOf(argument)] as { wholeOnly?: boolean };
  const step = (end: number): number => (wholeOnly ? 1 : Math.max(1e-6, Math.abs(end) * 1e-6));
  const bottom = Number(low);
  expect(refusal(id, argument, bottom - step(bottom))).toBeDefined();
  if (open === "[") expect(refusal(id, argument, bottom)).toBeUndefined();
  else expect(refusal(id, argument, bottom)).toBeDefined();
  if (high === "∞") return;
  const top = Number(high);
  expect(refusal(id, argument, top + step(top))).toBeDefined();
  if (close === "]") expect(refusal(id, argument, top)).toBeUndefined();
  else expect(refusal(id, argument, top)).toBeDefined();
});

test("the arguments that stand in no table here are those with reasons of their own", () => {
  const groups = new Set(["amounts", "cylinders", "demand", "options", "patients", "site", "stock"]);
  const untold = found
    .filter(({ record }) => !groups.has(record.group))
    .flatMap(({ record }) =>
      record.arguments
        .filter(
          ({ shape, kind, unit }) =>
            shape === "cell" &&
            !["text", "flag", "value", "date", "date-time"].includes(kind as string) &&
            !/date/.test(unit),
        )
        .filter(({ name }) => limits[record.id]?.[name] === undefined)
        .map(({ name }) => `${record.id}.${name}`),
    );
  expect(untold).toEqual([]);
});
