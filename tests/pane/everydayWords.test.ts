import { readCatalogue } from "../../src/catalogue/readCatalogue";
import { makeSearch } from "../../src/pane/searchFunctions";

const search = makeSearch(readCatalogue().map((each) => each.record));

/** What a planner types, and the function that must be among the first three found. */
it.each([
  ["air the room", "AIRING_MINUTES"],
  ["how long to air the room", "AIRING_MINUTES"],
  ["suffocation", "PLANT_ROOM_OXYGEN"],
  ["plant room", "PLANT_ROOM_OXYGEN"],
  ["nitrogen", "LOSS_FROM_PLATE"],
  ["plate", "LOSS_FROM_PLATE"],
  ["inches of water", "LEVEL_FROM_HEAD"],
  ["differential pressure", "LEVEL_FROM_HEAD"],
  ["hose", "HOSE_DROP"],
  ["pressure drop pipe", "HOSE_DROP"],
  ["vaporizer", "VAPORISER_DUTY"],
  ["patients in an epidemic", "OUTBREAK_CENSUS"],
  ["fio2 to set in a cabin", "FIO2_TO_SET"],
  ["what fio2 is worth at sea level", "SEA_LEVEL_FIO2"],
  ["bubble cpap", "PLANNED_FLOW"],
])("%s", (query, id) => {
  const found = search(query).map((record) => record.id);
  expect(found.slice(0, 3)).toContain(id);
});
