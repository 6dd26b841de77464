import { readCatalogue } from "../../src/catalogue/readCatalogue";
import { makeSearch } from "../../src/catalogue/searchFunctions";

const records = readCatalogue().map((each) => each.record);
const search = makeSearch(records);

/** What a planner types, and the function that must be among the first three found. No source: the trade's everyday words. */
const questions = `
air the room | AIRING_MINUTES
how long to air the room | AIRING_MINUTES
suffocation | PLANT_ROOM_OXYGEN
plant room | PLANT_ROOM_OXYGEN
nitrogen | LOSS_FROM_PLATE
plate | LOSS_FROM_PLATE
inches of water | LEVEL_FROM_HEAD
differential pressure | LEVEL_FROM_HEAD
hose | HOSE_DROP
pressure drop pipe | HOSE_DROP
vaporizer | VAPORISER_DUTY
patients in an epidemic | OUTBREAK_CENSUS
fio2 to set in a cabin | FIO2_TO_SET
what fio2 is worth at sea level | SEA_LEVEL_FIO2
bubble cpap | PLANNED_FLOW
filter | SERVICE_DUE PARTS_NEEDED SERVICE_LIST
filters | PARTS_NEEDED SERVICE_DUE SPARES_TO_KEEP
which filter must be changed? | SERVICE_DUE SERVICE_LIST NEXT_SERVICE_DATE
power cut | OUTAGE_COST RESERVE_FOR_OUTAGE
what if the power is cut for 12 hours | OUTAGE_COST RESERVE_FOR_OUTAGE
blackout tonight | OUTAGE_COST RESERVE_FOR_OUTAGE
backup | RESERVE_FOR_OUTAGE SAFETY_STOCK
backup cylinders for one day | CYLINDERS_NEEDED
concentrator | PLANT_ROOM_OXYGEN PLANTS_NEEDED OPTION_TABLE BEST_MIX
how many concentrators do we need | PLANTS_NEEDED
scenario | STOCK_PLAN SURGE_DEMAND OUTBREAK_CENSUS
what if demand doubles | SURGE_DEMAND
how many hours does a cylinder last | CYLINDER_MINUTES MINUTES_ON_CYLINDER
how long will this bottle last at 5 litres per minute | CYLINDER_MINUTES MINUTES_ON_CYLINDER
cylinder at 120 bar how many minutes left | MINUTES_ON_CYLINDER
days left | DAYS_OF_SUPPLY DAYS_UNTIL_EMPTY
how many days of oxygen are left | DAYS_OF_SUPPLY
run out | STOCK_OUT_ON DAYS_OF_SUPPLY DAYS_UNTIL_EMPTY
when do we run out of oxygen? | STOCK_OUT_ON EMPTY_ON
when is the tank empty | EMPTY_ON DAYS_UNTIL_EMPTY
how long does the dewar last | DAYS_UNTIL_EMPTY
when will the vessel be full | FULL_AT HOURS_TO_FILL
time to fill a 60 litre tank | HOURS_TO_FILL
at what time is the tank full | FULL_AT
when do I have to switch the plant on | SWITCH_ON_BY
latest time to start the machine | SWITCH_ON_BY
how much liquid will be made overnight | LIQUID_MADE
level after six hours | LEVEL_AFTER
boil off | DAILY_LOSS
boil-off per day | DAILY_LOSS
evaporation of the standing tank | DAILY_LOSS
measure boil off from readings | LOSS_FROM_READINGS
how many patients can we carry | PATIENTS_CARRIED
how many patients can be treated at once with this flow | PATIENTS_CARRIED
one plant enough? | PLANT_LOADING
how much does it make at altitude | DERATED_RATE
output in hot weather | DERATED_RATE
thin air | AIR_DENSITY_RATIO DERATED_RATE
gauge at altitude | GAUGE_CORRECTED
barometer | ALTITUDE_FROM_PRESSURE AIR_PRESSURE
cold start | START_DELAY
sloping floor | TILT_ANGLE
is this spot fit for the plant | SITE_CHECK
floor space for three plants | SITE_AREA
convert gallons to litres | CONVERT_AMOUNT
cubic feet to litres | CONVERT_AMOUNT
kg to litres of liquid | LIQUID_FROM_MASS CONVERT_AMOUNT
weight of a full vessel of liquid | LIQUID_MASS LEVEL_FROM_WEIGHT
how much gas from one litre of liquid | EXPANSION_RATIO GAS_FROM_LIQUID
normal cubic metres | GAS_RESTATED
purity 93 percent | PURITY_CLASS PURE_OXYGEN
purity of a blend of two sources | BLENDED_PURITY
weigh the tank | LEVEL_FROM_WEIGHT
scale reading | LEVEL_FROM_WEIGHT
relief valve opens when | HOURS_TO_PRESSURE
how full can I fill a cold vessel | MOST_COLD_FILL
vessel insulation heat leak | HEAT_LEAK
how much to draw for a fill | GROSS_DRAW
loss while filling | TRANSFER_LOSS
how many portables can be filled from the tank | FILLS_AVAILABLE
fills per day | FILLS_PER_DAY
which vessel first | FILL_ORDER
flash | FLASH_LOSS
filling a warm vessel | COOL_DOWN_LOSS
how long does a portable last on a patient | VESSEL_HOURS
content of a cylinder at 150 bar | CYLINDER_CONTENT
litres in a bottle | CYLINDER_CONTENT
tank factor psi | CONTENT_BY_FACTOR
how long to fill a cylinder with the booster | CYLINDER_FILL_MINUTES
cylinders a day | CYLINDERS_PER_DAY
how many cylinders should we buy | CYLINDERS_TO_OWN
how many bottles to bring | CYLINDERS_NEEDED
pressure dropped overnight in the cylinder | SETTLED_PRESSURE
cascade | CASCADE_FILL
oxygen for an ambulance transfer | JOURNEY_GAS
oxygen for a two hour flight with a patient | JOURNEY_GAS FIO2_TO_SET
nasal prongs 2 litres | CANNULA_FIO2
ventilator oxygen use | VENTILATOR_FLOW
how much oxygen does a ventilator use | VENTILATOR_FLOW
blender flow for 60 percent | SOURCE_FLOW
air and oxygen mixture fio2 | MIXED_FIO2
flow per patient | PLANNED_FLOW
newborn flow | PLANNED_FLOW
closed circuit | OXYGEN_UPTAKE
daily use of the ward | DAILY_DEMAND DEMAND_TABLE
how much oxygen do we use per day | DAILY_DEMAND
use from the log | DEMAND_FROM_LOG
pipeline size for ten beds | DESIGN_FLOW
peak flow | FLOW_AT_LEVEL DEMAND_FLOW
peak patients | CENSUS_AT_LEVEL
average number of patients | AVERAGE_CENSUS
chance that all beds are full | CENSUS_OVER_CHANCE
patients turned away | TURNED_AWAY_SHARE
epidemic wave | OUTBREAK_CENSUS
mass casualty surge | SURGE_DEMAND
when to reorder | REORDER_POINT
how much should I order | ORDER_QUANTITY
safety stock | SAFETY_STOCK
economic order quantity | ECONOMIC_ORDER
share the oxygen between clinics | SHARE_OUT
divide stock among sites | SHARE_OUT
how many spare parts to keep | SPARES_TO_KEEP
risk of running out | STOCK_OUT_CHANCE
reserve for outages | RESERVE_FOR_OUTAGE
min and max stock | STOCK_LEVELS
day by day plan | STOCK_PLAN
forecast of stock | STOCK_PLAN
first day short | FIRST_SHORT_DATE
when must the next delivery come | DELIVERY_DATES DELIVERIES_NEEDED
tanker deliveries | DELIVERIES_NEEDED DELIVERY_DATES
compare plan and readings | PLAN_AGAINST_LOG
how reliable is the plan | PLAN_CHANCE
monte carlo | PLAN_CHANCE
add two sites together | PLANS_TOGETHER
totals of the plan | PLAN_TOTALS
report for today | DAY_REPORT
how long does the battery last | BATTERY_HOURS
UPS | BATTERY_HOURS
voltage drop in a long cable | CABLE_DROP
which breaker | CIRCUIT_NEEDED
electricity per day | DAILY_ENERGY
kwh per litre | ENERGY_PER_LITRE
how long does the diesel last | FUEL_DAYS
diesel per day | FUEL_PER_DAY
fuel at half load | FUEL_RATE
generator in the mountains | GENERATOR_DERATED
how many generators | GENERATORS_NEEDED
amps | LINE_CURRENT
compressor start makes lights flicker | MOTOR_DIP
solar panels | SOLAR_POWER
motor inrush | START_KVA
total watts of the equipment | POWER_LOAD
uptime | AVAILABILITY_FROM_LOG
how often does it break down | AVAILABILITY_FROM_LOG
hour meter | NEXT_SERVICE_BY_HOURS HOURS_PER_DAY
next service | NEXT_SERVICE_DATE NEXT_SERVICE_BY_HOURS SERVICE_DUE
is the service overdue | OVERDUE_DAYS SERVICE_STATUS
maintenance schedule | SERVICE_LIST
parts for maintenance | PARTS_NEEDED
oxygen leak in a room | ROOM_OXYGEN MINUTES_TO_LIMIT RELEASE_LIMIT
fire danger enriched room | ROOM_OXYGEN AIRING_MINUTES MINUTES_TO_LIMIT
spilled liquid oxygen | SPILL_OXYGEN
how much ventilation | VENTILATION_NEEDED
safety warnings | CAUTIONS
crate arrived damaged | RECEIPT_CHECK
how many pallets | PALLETS_NEEDED
straps for the truck | TIE_DOWNS_NEEDED
helicopter trips | TRIPS_NEEDED
weight of the shipment | SHIPPED_MASS
drain before shipping | DRAIN_BY
time to drain | DRAIN_HOURS
catch container for draining | DRAIN_CHECK
which equipment should we send | BEST_MIX
compare options | OPTION_TABLE
break even | BREAK_EVEN_DAYS
cost per day | COST_PER_DAY
what if one machine fails | ONE_UNIT_DOWN
redundancy | ENOUGH_UNITS_CHANCE
missing oxygen in the books | BOOK_BALANCE
errors in the log | LOG_FAULTS
does my excel version work | THIS_EXCEL
where does this rule come from | SOURCE_OF
wrong unit typed | VALUE_CHECK
default values | CONSTANTS
cyclinder last | CYLINDER_MINUTES
vapourizer | VAPORISER_DUTY
`
  .trim()
  .split("\n")
  .map((line) => line.split(" | ") as [string, string]);

it("asks at least 150 questions, each naming functions that exist", () => {
  expect(questions.length).toBeGreaterThanOrEqual(150);
  const ids = new Set(records.map(({ id }) => id));
  expect(questions.flatMap(([, wanted]) => wanted.split(" ")).filter((id) => !ids.has(id))).toEqual([]);
});

/** Where several functions answer a question, one of them must be among the first three. */
it.each(questions)("%s", (question, wanted) => {
  const found = search(question).map((record) => record.id);
  const ids = wanted.split(" ");
  expect(found.slice(0, 3).some((id) => ids.includes(id))).toBe(true);
});
