import { siteCheck } from "../../../src/functions/site/siteCheck";
import { errorOf } from "../oneCell";

const states = (clearance: unknown, tilt: unknown, surface: unknown, ventilated: unknown): Record<string, unknown> =>
  Object.fromEntries(
    siteCheck([[clearance]], [[tilt]], [[surface]], [[ventilated]])
      .slice(1)
      .map(([item, state]) => [item, state]),
  );
const allGood = { clearance: "ok", tilt: "ok", surface: "ok", ventilation: "ok" };

// Limits of 6 ft, 5°, no asphalt, no tile, no unventilated room: common practice, no source. Asphalt counts as combustible
// under a liquid oxygen transfer in 29 CFR 1910.104 (from memory).
test("the limits themselves pass, in metric and in feet", () => {
  expect(states(1.8, 5, "concrete", true)).toEqual(allGood);
  expect(states("6 ft", "5 deg", "Concrete", "yes")).toEqual(allGood);
});

test("each rule fails by itself", () => {
  expect(states(1.79, 5, "concrete", true)).toEqual({ ...allGood, clearance: "not ok" });
  expect(states("5.9 ft", 5, "concrete", true)).toEqual({ ...allGood, clearance: "not ok" });
  expect(states(2, 5.1, "concrete", true)).toEqual({ ...allGood, tilt: "not ok" });
  expect(states(2, 0, "concrete", false)).toEqual({ ...allGood, ventilation: "not ok" });
  for (const surface of ["asphalt", "tarmac", "tile", "tiles", "wood", "plastic", "carpet"])
    expect(states(2, 0, surface, true)).toEqual({ ...allGood, surface: "not ok" });
  for (const surface of ["soil", "gravel", "steel"])
    expect(states(2, 0, surface, true)).toEqual({ ...allGood, surface: "check" });
});

test("every row says what to do, and the ventilation row that cold vapour pools low", () => {
  const rows = siteCheck([[2]], [[0]], [["stone"]], [[true]]);
  expect(rows[0]).toEqual(["item", "state", "what to do"]);
  for (const row of rows) for (const cell of row) expect(String(cell).length).toBeGreaterThan(1);
  expect(rows[4]![2]).toContain("pools low");
});

test("an unknown floor is not taken for a good one", () => {
  expect(errorOf(siteCheck, 2, 0, "lava", true)).toMatch(/#VALUE! surface is "lava"; enter concrete, stone/);
});
