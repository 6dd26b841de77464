import type { Kind } from "../../../src/arguments/kinds";
import { readCatalogue } from "../../../src/catalogue/readCatalogue";
import { confusionOf } from "../../../src/check/confusion";

// A mean is exceeded much of the time: Poisson tables give P(N > 4) = 0.3712 at mean 4. So what carries the worst hour
// is sized by a level, and a workbook that puts a mean there is told so.

const records = readCatalogue().map((each) => each.record);
const recordOf = (id: string) => records.filter((each) => each.id === id)[0]!;
const gives = (id: string) => recordOf(id).result.gives;

const takes = (id: string, name: string) => recordOf(id).arguments.filter((each) => each.name === name)[0]!.kind;

const putInto = (given: string, id: string, name: string) => confusionOf(gives(given) as Kind, takes(id, name) as Kind);

it.each([
  ["DESIGN_FLOW", "beds"],
  ["SHARED_CENSUS", "patients"],
])("a mean of AVERAGE_CENSUS is a danger as %s %s", (id, name) => {
  expect(putInto("AVERAGE_CENSUS", id, name)).toMatchObject({ severity: "danger" });
});

it.each(["CENSUS_AT_LEVEL", "SHARED_CENSUS"])("%s is patients at once, fit for DESIGN_FLOW's beds", (given) => {
  expect(putInto(given, "DESIGN_FLOW", "beds")).toBeUndefined();
  expect(gives(given)).toBe("patients");
});

it.each([
  ["CENSUS_AT_LEVEL", "mean"],
  ["CENSUS_OVER_CHANCE", "mean"],
  ["TURNED_AWAY_SHARE", "mean"],
  ["FLOW_AT_LEVEL", "means"],
])("%s takes the mean of AVERAGE_CENSUS as its %s", (id, name) => {
  expect(takes(id, name)).toBe("mean patients");
  expect(putInto("AVERAGE_CENSUS", id, name)).toBeUndefined();
});

it("gives a mean and a number of patients a day in an outbreak", () => {
  expect(gives("OUTBREAK_CENSUS")).toEqual(["count", "mean patients", "patients"]);
});
